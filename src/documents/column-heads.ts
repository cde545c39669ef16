import { FILL, MASK } from './reading.ts';

/** A cell of a table where it is drawn; merged cells lie over several columns or rows. */
export interface TableCell {
  readonly row: number;
  readonly column: number;
  readonly columns: number;
  readonly rows: number;
  readonly text: string;
}

/** A row that nobody marked as the head holds longer texts only where it is no head. */
const LONGEST = 60;
/** A head of more rows is none: some programs mark all rows of a table. */
const MOST_ROWS = 4;
/** Tables wider than this are made to trouble a reader, or to lay out a page. */
export const WIDEST = 500;

/**
 * Tells what stands at the head of a cell's columns, the rows of the head joined; undefined for the head itself.
 *
 *     | Edition 2018 |       | Edition 2024 |       |        the head of "4.1.1" is
 *     | no.          | title | no.          | title |        "Edition 2024 no."
 *     | 3.1.1        | Base  | 4.1.1        | Base  |
 *
 * @param cells in any order; none lies over another
 * @param marked how many rows the file marks as head. Where it marks none the first row is one, unless it holds a number
 *   with a dot, as data do; so is the row below it while the head has merged cells that leave something to say.
 */
export function columnHeads(cells: readonly TableCell[], marked: number): (cell: TableCell) => string | undefined {
  const width = Math.max(0, ...cells.map(c => c.column + c.columns));
  const height = Math.max(0, ...cells.map(c => c.row + 1));
  if (width > WIDEST) return () => undefined;
  const first = marked > 0 && marked <= MOST_ROWS ? marked : unmarked(rowsOf(cells), height);
  const heads = cells.filter(c => c.row < first);
  // A line over the whole table is about no column, unless there is no other head.
  const isTitle = (c: TableCell) => width > 1 && c.columns === width;
  const telling = heads.some(c => !isTitle(c)) ? heads.filter(c => !isTitle(c)) : heads;
  const over = Array.from({ length: width }, (): TableCell[] => []);
  for (const head of [...telling].sort((a, b) => a.row - b.row)) {
    for (let at = head.column; at < head.column + head.columns; at++) over[at]!.push(head);
  }
  return cell => {
    if (cell.row < first || isTitle(cell)) return undefined;
    const own = new Set(over.slice(cell.column, cell.column + cell.columns).flat());
    const said = [...own].map(h => plainText(h.text)).filter(text => text !== '');
    return said.length === 0 ? undefined : said.join(' ');
  };
}

function rowsOf(cells: readonly TableCell[]): ReadonlyMap<number, readonly TableCell[]> {
  const rows = new Map<number, TableCell[]>();
  for (const cell of cells) {
    const row = rows.get(cell.row);
    if (row) row.push(cell);
    else rows.set(cell.row, [cell]);
  }
  return rows;
}

function unmarked(rows: ReadonlyMap<number, readonly TableCell[]>, height: number): number {
  let first = 0;
  while (first < Math.min(height - 1, MOST_ROWS)) {
    const row = rows.get(first) ?? [];
    if (row.some(c => /\d[.-]\d/.test(c.text) || plainText(c.text).length > LONGEST)) break;
    first++;
    if (!row.some(c => c.columns > 1 || c.row + c.rows > first)) break;
  }
  return first;
}

function plainText(text: string): string {
  return text.replaceAll(FILL, '').replaceAll(MASK, ' ').replace(/\s+/g, ' ').trim();
}
