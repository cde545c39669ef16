import { stringify } from 'csv-stringify/sync';
import type { Dialect } from './dialect.ts';

/**
 * The cells as one piece of a line, without a line end. Cells of ours that begin like a formula get a leading
 * apostrophe, so that a spreadsheet shows and does not run them; the user's own cells are never altered.
 */
export function csvCells(cells: readonly string[], dialect: Dialect, whose: 'ours' | 'theirs'): string {
  return stringify([[...cells]], {
    delimiter: dialect.delimiter,
    escape_formulas: whose === 'ours',
    eof: false,
    // Every line end is quoted, whatever the file's own is: a lone CR inside a bare cell would end the record.
    quoted_match: /[\r\n]/,
  });
}
