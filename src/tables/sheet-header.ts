import type { CellRange } from './cell-address.ts';
import type { Sheet, SheetRow } from './read-sheet.ts';

/** Where the head of a table stands in a sheet, and what its columns are called. */
export interface SheetHeader {
  /** Index into the sheet's rows of the last row of the head; the table's lines follow. */
  readonly at: number;
  /** Names by column of the sheet, from column 0; a column without a name has ''. */
  readonly names: readonly string[];
  /** Rows of the head: 2 where groups stand above the names. */
  readonly rows: 1 | 2;
}

/** How far down a head is looked for: titles, logos and notes stand above it. */
const LOOKED = 40;
/** A number of parts, written as a text. */
const NUMBER = /^\d+(?:[.-]\d+)+\.?$/;
/** A head fills at least this share of the widest row near it; a title above the table fills one cell. */
const FILLED = 0.6;

/**
 * Finds the head of a table: the first row that is filled nearly as widely as the rows below, in words. Where cells of
 * it span several columns, their names go before the names below them.
 */
export function sheetHeader(sheet: Sheet): SheetHeader | undefined {
  const filled = sheet.rows.flatMap((row, at) => (row.cells.length > 0 ? [at] : [])).slice(0, LOOKED);
  const width = Math.max(0, ...filled.map(at => sheet.rows[at]!.cells.length));
  const words = (row: SheetRow) => row.cells.every(c => c.kind === 'text');
  const wide = (at: number) => {
    const row = sheet.rows[at]!;
    return !isTitle(sheet, row, width) && namesIn(sheet, row).filter(n => n !== '').length >= FILLED * width;
  };
  let at = filled.find(f => wide(f) && words(sheet.rows[f]!)) ?? filled.find(wide) ?? filled[0];
  if (at === undefined) return undefined;
  const next = sheet.rows[at + 1];
  const isNames = next && words(next) && isNextRow(sheet, at) && !next.cells.some(c => NUMBER.test(c.text.trim()));
  // A merged cell above names is a group; above a job it is one name for two columns.
  if (isNames && spans(sheet, sheet.rows[at]!).some(s => isSplit(s, next))) at++;
  const own = namesIn(sheet, sheet.rows[at]!);
  const above = at > 0 && isNextRow(sheet, at - 1) ? sheet.rows[at - 1]! : undefined;
  const groups = above && spans(sheet, above).length > 0 && !isTitle(sheet, above, width) ? namesIn(sheet, above) : [];
  const names = Array.from({ length: Math.max(own.length, groups.length) }, (_, c) => {
    const [name, group] = [own[c] ?? '', groups[c] ?? ''];
    const twice = name === '' || own.filter(n => n === name).length > 1;
    return twice && group !== name ? `${group} ${name}`.trim() : name;
  });
  return { at, names, rows: groups.length > 0 ? 2 : 1 };
}

/** The text of each column in a row; a merged cell stands in each column and row that it covers. */
function namesIn(sheet: Sheet, row: SheetRow): string[] {
  const names: string[] = [];
  const put = (column: number, text: string) => {
    while (names.length <= column) names.push('');
    names[column] ||= text.replace(/\s+/g, ' ').trim();
  };
  for (const cell of row.cells) put(cell.column, cell.text);
  for (const { top, bottom, left, right } of sheet.merged) {
    if (row.row < top || row.row > bottom || right - left > 200) continue;
    const text = sheet.rows.find(r => r.row === top)?.cells.find(c => c.column === left)?.text;
    if (text !== undefined) for (let column = left; column <= right; column++) put(column, text);
  }
  return names;
}

/** Cells of a row that are merged over several columns. */
export function spans(sheet: Sheet, row: SheetRow): readonly CellRange[] {
  return sheet.merged.filter(m => m.top === row.row && m.bottom === row.row && m.right > m.left);
}

function isTitle(sheet: Sheet, row: SheetRow, width: number): boolean {
  return width > 1 && row.cells.length === 1 && spans(sheet, row).some(s => s.right - s.left + 1 >= FILLED * width);
}

function isSplit(span: CellRange, below: SheetRow): boolean {
  return below.cells.filter(c => c.column >= span.left && c.column <= span.right).length > 1;
}

function isNextRow(sheet: Sheet, at: number): boolean {
  return sheet.rows[at + 1]?.row === sheet.rows[at]!.row + 1;
}
