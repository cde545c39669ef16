/** The letters of a column, counted from 0: A, Z, AA. */
export function columnName(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : columnName(Math.floor(at / 26) - 1) + last;
}

/** A cell's place by its address (`B12`, `$B$12`): both counted from 0; undefined where it is no address. */
export function cellPlace(address: string): { readonly row: number; readonly column: number } | undefined {
  const found = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/.exec(address);
  if (!found) return undefined;
  let column = 0;
  for (const letter of found[1]!) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(found[2]) - 1, column: column - 1 };
}

/** `B12` of a row and a column counted from 0. */
export function cellAddress(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

/** A rectangle of cells, ends included, counted from 0. */
export interface CellRange {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** `A1:C4` or a single cell; undefined where it is neither. */
export function cellRange(reference: string): CellRange | undefined {
  const [from, to = from] = reference.split(':');
  const [start, end] = [cellPlace(from ?? ''), cellPlace(to ?? '')];
  return start && end && { top: start.row, left: start.column, bottom: end.row, right: end.column };
}
