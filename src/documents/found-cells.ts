import { columnHeads, type TableCell } from './column-heads.ts';

/** A table's cell with the paragraphs that were found in it: `first` up to, not including, `next`. */
export interface FoundCell extends Omit<TableCell, 'text'> {
  readonly first: number;
  readonly next: number;
}

/** Paragraphs that have a head already are those of a table within the table. */
export function headTableCells<T extends { readonly text: string; readonly columnHead?: string }>(
  paragraphs: T[],
  cells: readonly FoundCell[],
  marked: number,
): void {
  const told = cells.map(cell => {
    const text = paragraphs
      .slice(cell.first, cell.next)
      .map(p => p.text)
      .join(' ');
    return { ...cell, text };
  });
  const headOf = columnHeads(told, marked);
  for (const cell of told) {
    const columnHead = headOf(cell);
    if (columnHead === undefined) continue;
    for (let at = cell.first; at < cell.next; at++) {
      if (paragraphs[at]!.columnHead === undefined) paragraphs[at] = { ...paragraphs[at]!, columnHead };
    }
  }
}
