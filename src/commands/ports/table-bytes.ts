import type { CellValue } from '../../tables/plain-sheet.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';

/** A plain table in the format that its file's name ends in: a workbook for .xlsx, else csv. */
export function tableBytes(
  path: string,
  name: string,
  header: readonly string[],
  rows: readonly (readonly CellValue[])[],
): Uint8Array {
  if (/\.xlsx$/i.test(path)) return writeXlsx([{ name, header, rows }]);
  return new TextEncoder().encode(writeCsv([header, ...rows.map(row => row.map(cell => String(cell ?? '')))]));
}
