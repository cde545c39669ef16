import { fixedPackage } from '../../exports/fixed-package.ts';
import { capital } from '../../model/said-words.ts';
import { type CirculationPack, MARK_MEANINGS } from '../../release/circulation-pack.ts';
import { FORM_HEADERS } from '../../release/comments-columns.ts';
import { type Docx, type DocxText, docxTable } from './comments-docx-table.ts';

/** Rows of the form at the end that are left blank. */
const BLANK_ROWS = 12;

/** The pack as a document to read and to write on: the draft with its lines numbered, the old texts beside it. */
export async function packDocx(pack: CirculationPack, day: string): Promise<Uint8Array> {
  const docx = await import('docx');
  const { Document, Footer, HeadingLevel, Packer, PageNumber, PageOrientation, Paragraph, TextRun } = docx;
  const kind = pack.published ? 'edition' : 'draft';
  const title = `${capital(kind)} ${pack.draft} for comment`;
  const heading = (text: string) =>
    new Paragraph({ text, heading: HeadingLevel.HEADING_1, keepNext: true, spacing: { before: 360, after: 120 } });
  const said = (text: string) => new Paragraph({ text, spacing: { after: 120 } });
  const marks = Object.entries(MARK_MEANINGS).map(([mark, meaning]) => `${mark} ${meaning}`);
  const document = new Document({
    title: `${pack.title}: ${title}`,
    creator: pack.publisher,
    styles: {
      default: {
        document: { run: { font: 'Georgia', size: 20 } },
        title: { run: { font: 'Georgia', size: 40, bold: true } },
        heading1: { run: { font: 'Georgia', size: 26, bold: true } },
      },
    },
    sections: [
      {
        properties: {
          page: {
            size: { orientation: PageOrientation.LANDSCAPE },
            margin: { top: 900, bottom: 900, left: 900, right: 900 },
          },
        },
        footers: {
          default: new Footer({
            children: [
              new Paragraph({
                children: [
                  new TextRun({ children: [`${pack.title} · ${kind} ${pack.draft} · `, PageNumber.CURRENT], size: 16 }),
                ],
              }),
            ],
          }),
        },
        children: [
          new Paragraph({ text: pack.title, heading: HeadingLevel.TITLE }),
          said(`${title}, beside ${pack.replaces}, which it ${pack.published ? 'replaced' : 'is to replace'}. ${day}.`),
          ...(pack.caution ? [said(`Caution: ${pack.caution}`)] : []),
          said(
            `Cite the number of a clause, or of a line where there is none. Of what is to go, cite the old number with its edition, as it stands in the table. Write into the last columns of "What is withdrawn", or into the form at the end; any table with the same columns will do. Marks: ${marks.join(', ')}.`,
          ),
          heading(`The ${kind}`),
          draftTable(docx, pack),
          ...(pack.withdrawn.length > 0 ? [heading('What is withdrawn'), withdrawnTable(docx, pack)] : []),
          heading('Comments'),
          docxTable(docx, [9, 10, 13, 15, 13, 40, 34, 20], FORM_HEADERS, blankRows()),
        ],
      },
    ],
  });
  return fixedPackage(await Packer.toBuffer(document), `${pack.title}: ${title}`, pack.publisher, day);
}

function draftTable(docx: Docx, pack: CirculationPack) {
  const rows = pack.items.map(({ entry, level, mark, lines, old, why }): DocxText[][] => {
    const [title, ...rest] = lines;
    return [
      [{ text: mark, small: true }],
      [
        { line: title!.line, text: `${entry.number} ${title!.text}`.trim(), bold: true },
        ...rest.map(l => ({ line: l.line, text: l.text })),
      ],
      old.length === 0
        ? [{ text: `No ${level.toLowerCase()} like it.`, small: true }]
        : old.flatMap(o => [
            { text: `${o.clause} ${o.title}`.trim(), bold: true },
            { text: o.text === '' ? 'The same words.' : o.text, small: o.text === '' },
          ]),
      why.map(text => ({ text, small: true })),
    ];
  });
  return docxTable(
    docx,
    [7, 52, 52, 30],
    ['Mark', `Line and text of ${pack.draft}`, `Text of ${pack.replaces}`, 'Why'],
    rows,
  );
}

function withdrawnTable(docx: Docx, pack: CirculationPack) {
  const rows = pack.withdrawn.map(({ clause, title, text, mark, why, governs, see }): DocxText[][] => [
    [],
    [{ text: clause, bold: true }],
    [
      { text: `${title}${mark === 'SUP*' ? ' (for some installation types)' : ''}`, bold: true },
      { text, small: true },
    ],
    [
      ...why.map(line => ({ text: line, small: true })),
      ...(governs ? [{ text: `What governs then: ${governs}`, small: true }] : []),
      ...(see ? [{ text: `See ${see}`, small: true }] : []),
    ],
    [],
    [],
    [],
  ]);
  const heads = [
    FORM_HEADERS[0],
    FORM_HEADERS[2],
    'What it says',
    'Why it goes',
    FORM_HEADERS[4],
    'Comments (objection)',
    FORM_HEADERS[6],
  ];
  return docxTable(docx, [9, 13, 38, 32, 13, 24, 18], heads, rows);
}

function blankRows(): DocxText[][][] {
  return Array.from({ length: BLANK_ROWS }, () => FORM_HEADERS.map(() => []));
}
