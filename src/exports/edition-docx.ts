import type { Item } from '../model/item.ts';
import { MOMENT_WORDS } from '../model/said-words.ts';
import { typeName } from '../model/settings.ts';
import { cautionParagraph } from './docx-caution.ts';
import { fixedPackage } from './fixed-package.ts';
import type { Publication } from './publication.ts';

type Docx = typeof import('docx');

const INK = '1D2126';

/** The published edition as a document to print: its outline as headings, each requirement with what belongs to it. */
export async function writeEditionDocx(publication: Publication): Promise<Uint8Array> {
  const docx = await import('docx');
  const { Document, Footer, HeadingLevel, PageNumber, Packer, Paragraph, TextRun } = docx;
  const { header, settings, entries } = publication.joint.to;
  const { published, effective } = header.dates;
  const publisher = settings.publisher ?? '';
  const foot = `${settings.title}, edition ${header.name}${effective ? `, in force from ${effective}` : ''} · page `;
  const heading = { font: 'Georgia', bold: true, color: INK };
  const document = new Document({
    title: `${settings.title}, edition ${header.name}`,
    creator: publisher,
    styles: {
      default: {
        document: { run: { font: 'Georgia', size: 21 } },
        title: { run: { ...heading, size: 44 } },
        heading1: { run: { ...heading, size: 32 }, paragraph: { spacing: { before: 480, after: 120 } } },
        heading2: { run: { ...heading, size: 27 }, paragraph: { spacing: { before: 360, after: 100 } } },
        heading3: { run: { ...heading, size: 24 }, paragraph: { spacing: { before: 280, after: 80 } } },
        heading4: { run: { ...heading, size: 21 }, paragraph: { spacing: { before: 200, after: 40 } } },
      },
    },
    sections: [
      {
        footers: {
          default: new Footer({
            children: [
              new Paragraph({
                children: [
                  new TextRun({ text: foot, size: 16 }),
                  new TextRun({ children: [PageNumber.CURRENT], size: 16 }),
                ],
              }),
            ],
          }),
        },
        children: [
          new Paragraph({ text: settings.title, heading: HeadingLevel.TITLE }),
          new Paragraph({ text: `Edition ${header.name}` }),
          ...(publisher ? [new Paragraph({ text: publisher })] : []),
          ...(settings.caution ? [cautionParagraph(docx, settings.caution)] : []),
          ...entries.flatMap(entry => {
            const item = publication.newItems.get(entry.id);
            const types = entry.appliesTo?.map(type => typeName(settings, type)).join(', ');
            return itemParagraphs(docx, entry.level, `${entry.number} ${entry.title}`.trim(), item, types);
          }),
        ],
      },
    ],
  });
  return fixedPackage(await Packer.toBuffer(document), settings.title, publisher, published ?? effective);
}

function itemParagraphs(docx: Docx, level: number, name: string, item: Item | undefined, types: string | undefined) {
  const { HeadingLevel, Paragraph, TextRun } = docx;
  const headings = [HeadingLevel.HEADING_1, HeadingLevel.HEADING_2, HeadingLevel.HEADING_3, HeadingLevel.HEADING_4];
  const told = (word: string, text: string | undefined) =>
    text ? [new Paragraph({ children: [new TextRun({ text: `${word}: `, italics: true }), new TextRun(text)] })] : [];
  const verified = item?.verified?.map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : '')).join('; ');
  return [
    new Paragraph({ text: name, heading: headings[Math.min(level, headings.length) - 1]!, keepNext: true }),
    ...(item?.text ? item.text.split('\n\n').map(text => new Paragraph({ text, spacing: { after: 60 } })) : []),
    ...told('Purpose', item?.purpose),
    ...told('Outcome', item?.outcome),
    ...told('Applies to', types),
    ...told('Verified', verified),
    ...told('Refers to', item?.references?.join('; ')),
    ...(item?.caution ? [cautionParagraph(docx, item.caution)] : []),
  ];
}
