import {
  Document,
  HeightRule,
  Packer,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TextRun,
  VerticalMergeType,
  WidthType,
} from 'docx';
import ExcelJS from 'exceljs';
import { FORM_HEADERS } from '../../src/release/comments-columns.ts';

/** A row of a form: MB/NC, line, clause, paragraph, type, comment, proposed change, observations. */
export type Row = readonly string[];

/** A form as Word documents hold it: a table, bold head, a merged MB/NC where `''` follows a name, text around it. */
export async function docxForm(tables: readonly (readonly Row[])[], options: { head?: Row } = {}): Promise<Uint8Array> {
  const cell = (text: string, merge?: 'restart' | 'continue', bold = false) =>
    new TableCell({
      width: { size: 1200, type: WidthType.DXA },
      ...(merge ? { verticalMerge: merge === 'restart' ? VerticalMergeType.RESTART : VerticalMergeType.CONTINUE } : {}),
      children: text
        .split('\n')
        .map(line => new Paragraph({ children: [new TextRun({ text: line, bold, size: 18 })] })),
    });
  const children = tables.flatMap((rows, at) => [
    new Paragraph({ text: `Comments, sheet ${at + 1} & last` }),
    new Table({
      rows: [
        new TableRow({
          tableHeader: true,
          children: (options.head ?? FORM_HEADERS).map(h => cell(h, undefined, true)),
        }),
        ...rows.map(
          (row, r) =>
            new TableRow({
              height: { value: 300, rule: HeightRule.ATLEAST },
              children: row.map((text, c) => {
                if (c !== 0) return cell(text);
                const goesOn = rows[r + 1]?.[0] === '' && rows[r + 1]!.some(t => t !== '');
                return text === '' && r > 0 ? cell('', 'continue') : cell(text, goesOn ? 'restart' : undefined);
              }),
            }),
        ),
      ],
    }),
  ]);
  return Packer.toBuffer(new Document({ creator: 'A reviewer', sections: [{ children }] }));
}

/** A form as workbooks hold it: a title above, a column of the reviewer's own, MB/NC merged down, a second sheet. */
export async function xlsxForm(
  rows: readonly Row[],
  options: { head?: Row; title?: boolean } = {},
): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet('Our comments');
  const notes = workbook.addWorksheet('Notes');
  notes.addRow(['Total', { formula: "COUNTA('Our comments'!F3:F99)" }]);
  if (options.title ?? true) {
    sheet.addRow(['Comments on the committee draft']);
    sheet.mergeCells('A1:I1');
  }
  const head = sheet.addRow([...(options.head ?? FORM_HEADERS), 'Priority for us']);
  head.font = { bold: true, color: { argb: 'FF336699' } };
  const first = sheet.rowCount + 1;
  for (const row of rows)
    sheet.addRow([...row.map(t => (t === '' ? null : t)), row.some(t => t !== '') ? 'high' : null]);
  rows.forEach((row, at) => {
    if (row[0] !== '' && rows[at + 1]?.[0] === '' && rows[at + 1]!.some(t => t !== '')) {
      let last = at + 1;
      while (rows[last + 1]?.[0] === '' && rows[last + 1]!.some(t => t !== '')) last++;
      sheet.mergeCells(`A${first + at}:A${first + last}`);
    }
    sheet.getCell(`H${first + at}`).fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFFF2CC' } };
  });
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
}
