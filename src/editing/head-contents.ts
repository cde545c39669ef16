import type { Table } from '../model/table.ts';
import type { ItemColumn } from './columns.ts';

/** Rows that are looked at. */
const SAMPLE = 500;

/** Whether most cells look like numbers of items, and not like a level or a type that many rows share. */
export function looksLikeNumbers(table: Table, header: string): boolean {
  const cells = filled(table, header);
  const fitting = cells.filter(isNumber).length;
  return cells.length > 0 && fitting >= 0.8 * cells.length && new Set(cells).size > cells.length / 2;
}

/** `4.2.3`, `HT-104.2`, `§ 4`, `IV`; not `deep`, and no sentence. */
function isNumber(cell: string): boolean {
  return (
    cell.length <= 20 && (/^\S*(?: \S*)?\p{N}\S*$/u.test(cell) || /^(?:[IVXLC]{1,6}|\p{L}{1,2})[.)]?$/u.test(cell))
  );
}

/** What a person may want to say of columns that nobody named: by what is in them, so to be looked at. */
export function offeredColumns(
  table: Table,
  read: ReadonlyMap<ItemColumn, string>,
  unused: readonly string[],
): ReadonlyMap<ItemColumn, string> {
  const offered = new Map<ItemColumn, string>();
  const left = new Set(unused.filter(header => filled(table, header).length > 0));
  const offer = (role: ItemColumn, header: string | undefined) => {
    if (read.has(role) || header === undefined) return;
    offered.set(role, header);
    left.delete(header);
  };
  offer(
    'number',
    [...left].find(header => looksLikeNumbers(table, header)),
  );
  const wordy = [...left]
    .map(header => ({ header, length: meanLength(table, header), values: filled(table, header) }))
    .filter(({ length, values }) => length > 3 && new Set(values).size > values.length / 2)
    .sort((a, b) => b.length - a.length);
  const [longest, next] = wordy.map(w => w.header);
  if (read.has('text')) offer('title', longest);
  else {
    offer('text', longest);
    offer('title', next);
  }
  return new Map((['number', 'title', 'text'] as const).flatMap(r => (offered.has(r) ? [[r, offered.get(r)!]] : [])));
}

function meanLength(table: Table, header: string): number {
  const cells = filled(table, header);
  return cells.reduce((sum, cell) => sum + cell.length, 0) / Math.max(1, cells.length);
}

function filled(table: Table, header: string): string[] {
  return table.rows.slice(0, SAMPLE).flatMap(row => row.cells.get(header) || []);
}
