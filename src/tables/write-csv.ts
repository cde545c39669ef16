import { stringify } from 'csv-stringify/sync';

/**
 * Rows of cells as csv with CRLF (RFC 4180). A cell that a spreadsheet would run as a formula gets an apostrophe before
 * it; a plain negative number is left alone, which the library's own `escape_formulas` would alter.
 */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return stringify(
    rows.map(row => row.map(neutral)),
    // The library quotes only the record's own line end: a lone LF inside a bare cell would end the record.
    { record_delimiter: '\r\n', quoted_match: /[\r\n]/ },
  );
}

function neutral(cell: string): string {
  return /^[=+\-@\t\r]/.test(cell) && !/^[+-]?\d+(?:[.,]\d+)?$/.test(cell) ? `'${cell}` : cell;
}
