// Writes views/letters/letter.docx, the letter to the holder of a local rule or variance. Needs a build.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  BorderStyle,
  Document,
  Footer,
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

const SLATE = '4a5a68';
const OCHRE = 'a8741a';
const NONE = { style: BorderStyle.NONE, size: 0, color: 'auto' };
const SERIF = 'Georgia';

const p = (text, more = {}) =>
  new Paragraph({
    spacing: { after: 160 },
    ...more,
    children: (Array.isArray(text) ? text : [text]).map(t => new TextRun(typeof t === 'string' ? { text: t } : t)),
  });
const small = text => ({ text, size: 18, color: '555555' });

/** Two rails: the old text along a slate rule on the left, the new one along an ochre rule on the right. */
const rail = (heading, text, side, colour) =>
  new TableCell({
    width: { size: 4650, type: WidthType.DXA },
    margins: { left: 160, right: 160, top: 80, bottom: 80 },
    borders: {
      top: NONE,
      bottom: NONE,
      left: NONE,
      right: NONE,
      [side]: { style: BorderStyle.SINGLE, size: 24, color: colour },
    },
    children: [p({ text: heading, bold: true }, { keepNext: true }), p({ text, font: SERIF })],
  });

const letter = new Document({
  title: 'Letter to the holder of a local rule or variance',
  styles: { default: { document: { run: { font: 'Calibri', size: 22 } } } },
  sections: [
    {
      properties: { page: { margin: { top: 1300, bottom: 1100, left: 1300, right: 1300 } } },
      footers: {
        default: new Footer({
          children: [
            new Paragraph({
              children: [
                new TextRun(small('{{catalog}}, edition {{to_edition}} · page ')),
                new TextRun({ ...small(undefined), children: [PageNumber.CURRENT] }),
              ],
            }),
          ],
        }),
      },
      children: [
        p('{{catalog}}', { spacing: { after: 0 } }),
        p('{{date}}', { spacing: { after: 360 } }),
        p('To: {{holder}}', { spacing: { after: 360 } }),
        p({
          text: 'Your {{kind}} “{{title}}”, {{place}}: what edition {{to_edition}} means for it',
          bold: true,
          size: 26,
        }),
        p(
          'Edition {{to_edition}} takes the place of edition {{from_edition}} on {{effective}}. Your {{kind}} cites {{old_number}} {{old_title}} of {{from_edition}}.',
        ),
        p('{{became}} {{standing}}'),
        p([{ text: 'What we ask of you. ', bold: true }, '{{to_do}}']),
        new Table({
          width: { size: 9300, type: WidthType.DXA },
          columnWidths: [4650, 4650],
          borders: { top: NONE, bottom: NONE, left: NONE, right: NONE, insideHorizontal: NONE, insideVertical: NONE },
          rows: [
            new TableRow({
              children: [
                rail('{{from_edition}}: {{old_number}} {{old_title}}', '{{old_text}}', 'left', SLATE),
                rail('{{to_edition}}: {{new_number}} {{new_title}}', '{{new_text}}', 'right', OCHRE),
              ],
            }),
          ],
        }),
        p('', { spacing: { after: 0 } }),
        p('This letter changes nothing of its state: {{state}}, {{until}}.'),
        new Paragraph({
          border: {
            top: { style: BorderStyle.SINGLE, size: 8, space: 6, color: '000000' },
            bottom: { style: BorderStyle.SINGLE, size: 8, space: 6, color: '000000' },
            left: { style: BorderStyle.SINGLE, size: 8, space: 6, color: '000000' },
            right: { style: BorderStyle.SINGLE, size: 8, space: 6, color: '000000' },
          },
          spacing: { before: 120, after: 360 },
          children: [new TextRun({ text: 'CAUTION  ', bold: true }), new TextRun('{{caution}}')],
        }),
        p('{{approver}}'),
      ],
    },
  ],
});

// Packed anew without the time of packing, so that the same words give the same file.
const parts = openZip(new Uint8Array(await Packer.toBuffer(letter)), 'letter');
const core = new TextDecoder().decode(parts.get('docProps/core.xml'));
const dated = core.replace(/(<dcterms:(?:created|modified)[^>]*>)[^<]*/g, '$12024-02-01T08:00:00Z');
parts.set('docProps/core.xml', new TextEncoder().encode(dated));
const folder = join(import.meta.dirname, '..', 'views', 'letters');
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'letter.docx'), writeZip(parts));
