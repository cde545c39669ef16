export type Docx = typeof import('docx');

/** A paragraph of a cell; with a line number before it where it is a line of a numbered draft. */
export interface DocxText {
  readonly text: string;
  readonly line?: number;
  readonly bold?: boolean;
  readonly small?: boolean;
}

/** Width of an A4 page on its side between its margins, in twentieths of a point. */
const PAGE = 15_000;
const QUIET = '5A6470';

/**
 * A table with a head that is repeated on each page.
 *
 * @param shares of the page's width
 */
export function docxTable(
  docx: Docx,
  shares: readonly number[],
  head: readonly string[],
  rows: readonly (readonly (readonly DocxText[])[])[],
) {
  const { Table, TableLayoutType, TableRow } = docx;
  const sum = shares.reduce((a, b) => a + b, 0);
  const widths = shares.map(s => Math.round((s / sum) * PAGE));
  const row = (cells: readonly (readonly DocxText[])[], tableHeader = false) =>
    new TableRow({
      tableHeader,
      cantSplit: tableHeader,
      children: cells.map((c, at) => cell(docx, widths[at]!, c, tableHeader)),
    });
  return new Table({
    columnWidths: widths,
    layout: TableLayoutType.FIXED,
    rows: [
      row(
        head.map(text => [{ text, bold: true, small: true }]),
        true,
      ),
      ...rows.map(r => row(r)),
    ],
  });
}

function cell(docx: Docx, width: number, texts: readonly DocxText[], isHead: boolean) {
  const { BorderStyle, Paragraph, ShadingType, TableCell, TextRun, WidthType } = docx;
  const edge = { style: BorderStyle.SINGLE, size: 4, color: 'B8C0C8' };
  const size = (small: boolean | undefined) => ({ size: small ? 16 : 19 });
  return new TableCell({
    width: { size: width, type: WidthType.DXA },
    borders: { top: edge, bottom: edge, left: edge, right: edge },
    margins: { left: 80, right: 80, top: 40, bottom: 40 },
    ...(isHead ? { shading: { type: ShadingType.CLEAR, fill: 'E3ECF0' } } : {}),
    // A cell without a paragraph is refused by Word.
    children: (texts.length > 0 ? texts : [{ text: '' }]).map(
      ({ text, line, bold = false, small }) =>
        new Paragraph({
          spacing: { after: 40 },
          ...(line === undefined
            ? {}
            : { indent: { left: 520, hanging: 520 }, tabStops: [{ type: 'left', position: 520 }] }),
          children: [
            ...(line === undefined ? [] : [new TextRun({ text: `${line}\t`, size: 15, color: QUIET })]),
            ...(text === '' ? [] : [new TextRun({ text, bold, ...size(small) })]),
          ],
        }),
    ),
  });
}
