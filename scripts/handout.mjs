// Writes catalog/course/1-handout.docx, the Word handout that goes with lesson 1 of the invented course. Needs a build.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  CommentRangeEnd,
  CommentRangeStart,
  CommentReference,
  Document,
  Footer,
  FootnoteReferenceRun,
  Header,
  HeadingLevel,
  Packer,
  PageNumber,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import { openZip } from '../dist/office/open-zip.js';
import { writeZip } from '../dist/office/write-zip.js';

const ROOT = join(import.meta.dirname, '..');
const text = (...parts) =>
  parts.map(p =>
    typeof p === 'string' ? new TextRun(p) : Array.isArray(p) ? new TextRun({ text: p[0], bold: true }) : p,
  );
const p = (...parts) => new Paragraph({ children: text(...parts), spacing: { after: 120 } });
const item = (...parts) => new Paragraph({ children: text(...parts), bullet: { level: 0 } });
const h = words => new Paragraph({ text: words, heading: HeadingLevel.HEADING_1 });
const row = (...cells) =>
  new TableRow({
    children: cells.map(
      c =>
        new TableCell({
          children: [new Paragraph({ children: text(c) })],
          width: { size: 33, type: WidthType.PERCENTAGE },
        }),
    ),
  });

const document = new Document({
  creator: 'Marrow Vale Rainwater Partnership, course desk',
  title: 'Handout 1: Before you fill it',
  customProperties: [{ name: 'edition', value: '2018' }],
  comments: {
    children: [
      {
        id: 0,
        author: 'Course desk',
        date: new Date(Date.UTC(2019, 2, 4)),
        children: [p('Ask Lower Vale whether they still want the photograph.')],
      },
    ],
  },
  footnotes: {
    1: { children: [p('Written consent, kept with the job: 2.3.2.3 Consent for shared downpipe.')] },
    2: { children: [p('On a house lot see 3.1.1.1, where the slabs project 50 mm.')] },
  },
  sections: [
    {
      headers: {
        default: new Header({ children: [p('Handout 1. The tap heights of 3.1.1.3 and 3.1.2.4 are on the back.')] }),
      },
      footers: {
        default: new Footer({
          children: [
            new Paragraph({ children: [new TextRun('Page '), new TextRun({ children: [PageNumber.CURRENT] })] }),
          ],
        }),
      },
      children: [
        new Paragraph({ text: 'Handout 1: Before you fill it', heading: HeadingLevel.TITLE }),
        p(
          'For the toolbox box. One page, read aloud in the yard, then pinned inside the lid. The numbers are those of the 2018 edition.',
        ),
        h('Where it stands'),
        item(
          'In a shared passage 900 mm stay clear past the butt and its fittings: ',
          ['3.1.2.2'],
          ' Clear way in a shared passage.',
        ),
        item('Two households on one downpipe: nobody cuts it before both have signed.', new FootnoteReferenceRun(1)),
        item(
          'At the party wall leave the joint open that ',
          ['2.1.'],
          '2.3 asks for, and do not fill it with mortar afterwards because it looks better.',
        ),
        h('What it stands on'),
        p(
          'A frame will do in a terrace row (3.1.2.1)',
          new FootnoteReferenceRun(2),
          '; a court tank has a slab of concrete, and the stone under it is ',
          new CommentRangeStart(0),
          'photographed',
          new CommentRangeEnd(0),
          new TextRun({ children: [new CommentReference(0)] }),
          ' before the concrete goes on (3.1.3.1 Slab under the tank).',
        ),
        h('What it spills'),
        new Table({
          width: { size: 100, type: WidthType.PERCENTAGE },
          rows: [
            row('', ['House lot'], ['Terrace row']),
            row('Pipe', '75 mm (3.2.1.1)', '63 mm (3.2.2.1)'),
            row('Capacity', '2 L/s (3.2.1.3)', '1.5 L/s (3.2.2.2)'),
          ],
        }),
        p(''),
        h('In the ground'),
        p(
          'A cover that a vehicle may cross is never the garden kind: 3.3.2.2 Cover where vehicles cross. The pump draws from a floating intake (3.3.4.5), a hand below the surface, where the water is cleanest.',
        ),
        p(
          'Caution: a pit is the dangerous part of the day. The authority\u2019s excavation rules and local codes come before anything on this page.',
        ),
        p('Handed out by: ____________________'),
      ],
    },
  ],
});

// Packed anew without the time of packing, so that the same words give the same file.
const parts = openZip(new Uint8Array(await Packer.toBuffer(document)), 'handout');
const core = new TextDecoder().decode(parts.get('docProps/core.xml'));
const dated = core.replace(/(<dcterms:(?:created|modified)[^>]*>)[^<]*/g, '$12019-03-04T08:00:00Z');
parts.set('docProps/core.xml', new TextEncoder().encode(dated));
writeFileSync(join(ROOT, 'catalog', 'course', '1-handout.docx'), writeZip(parts));
