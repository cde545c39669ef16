import type { DefaultTreeAdapterTypes } from 'parse5';
import { columnHeads, type TableCell, WIDEST } from './column-heads.ts';

type Element = DefaultTreeAdapterTypes.Element;

/** A text of a table's cell, with the passage that it is. */
export interface CellText {
  readonly cell: Element;
  readonly text: string;
  readonly passage: number;
}

/** What stands at the heads of the columns of passages in tables, by passage. A table in a cell has heads of its own. */
export function htmlColumnHeads(texts: readonly CellText[]): ReadonlyMap<number, string> {
  const said = new Map<Element, string[]>();
  const tables = new Set<Element>();
  for (const { cell, text } of texts) {
    const known = said.get(cell);
    if (known) known.push(text);
    else said.set(cell, [text]);
    const table = tableOf(cell);
    if (table) tables.add(table);
  }
  const heads = new Map<Element, string>();
  for (const table of tables) {
    const rows = rowsOf(table);
    const laidOut = layOut(rows, cell => (said.get(cell) ?? []).join(' '));
    const headOf = columnHeads([...laidOut.values()], markedRows(rows));
    for (const [cell, place] of laidOut) {
      const head = headOf(place);
      if (head !== undefined) heads.set(cell, head);
    }
  }
  return new Map(texts.flatMap(({ cell, passage }) => (heads.has(cell) ? [[passage, heads.get(cell)!]] : [])));
}

/** The cells of a table where a browser draws them; see "forming a table" in the HTML standard. */
function layOut(rows: readonly Element[], textOf: (cell: Element) => string): ReadonlyMap<Element, TableCell> {
  const placed = new Map<Element, TableCell>();
  /** For each column, the first row that is free in it. */
  const free: number[] = [];
  for (const [row, tr] of rows.entries()) {
    let column = 0;
    for (const cell of childrenOf(tr, 'td', 'th')) {
      if (column > WIDEST) break;
      while ((free[column] ?? 0) > row) column++;
      const [columns, height] = [span(cell, 'colspan', WIDEST), span(cell, 'rowspan', rows.length - row)];
      placed.set(cell, { row, column, columns, rows: height, text: textOf(cell) });
      for (let at = column; at < column + columns; at++) free[at] = row + height;
      column += columns;
    }
  }
  return placed;
}

/** Rows in a `thead`; without one, those at the top that are made of `th` alone. */
function markedRows(rows: readonly Element[]): number {
  const inHead = rows.filter(tr => tr.parentNode && 'tagName' in tr.parentNode && tr.parentNode.tagName === 'thead');
  if (inHead.length > 0) return inHead.length;
  const first = rows.findIndex(tr => childrenOf(tr, 'td').length > 0 || childrenOf(tr, 'th').length === 0);
  return Math.max(0, first);
}

/** The head's rows come first, wherever it is written. */
function rowsOf(table: Element): readonly Element[] {
  const parts = childrenOf(table, 'thead', 'tbody', 'tfoot');
  const heads = parts.filter(p => p.tagName === 'thead');
  return [...heads, ...parts.filter(p => p.tagName !== 'thead')].flatMap(p => childrenOf(p, 'tr'));
}

function childrenOf(element: Element, ...names: readonly string[]): readonly Element[] {
  return element.childNodes.filter((n): n is Element => 'tagName' in n && names.includes(n.tagName));
}

function tableOf(cell: Element): Element | undefined {
  let at = cell.parentNode;
  while (at && 'tagName' in at && at.tagName !== 'table') at = at.parentNode;
  return at && 'tagName' in at ? at : undefined;
}

function span(cell: Element, name: string, most: number): number {
  const said = Number.parseInt(cell.attrs.find(a => a.name === name)?.value ?? '', 10);
  // rowspan="0" reaches to the end of the table.
  if (said === 0 && name === 'rowspan') return most;
  return said > 0 ? Math.min(said, most) : 1;
}
