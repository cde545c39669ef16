import { CatalogError } from '../model/errors.ts';
import type { Table } from '../model/table.ts';
import { plainName } from './columns.ts';

/** What offices call the columns of a table that says what became of old items: our name → theirs. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  from: ['from_number', 'from_id', 'old', 'old_number', 'old_no', 'old_no.', 'old_id', 'alt', 'alte_nummer', 'bisher'],
  to: ['to_number', 'to_id', 'new', 'new_number', 'new_no', 'new_no.', 'new_id', 'heir', 'neu', 'neue_nummer'],
  reason: ['why', 'grund'],
  note: ['comment', 'remark', 'remarks', 'bemerkung', 'bem.'],
};

/**
 * A lineage table under our names. Numbers before ids where a table has both: the columns are tried in this order.
 *
 * @throws CatalogError BadTable where neither side can be found, once for the table and not for each of its lines
 */
export function ourLineageHeads<T extends Table>(table: T): T {
  const plain = table.columns.map(plainName);
  const ours = new Map<string, string>();
  for (const [role, words] of Object.entries(WORDS)) {
    if (plain.includes(role)) continue;
    const word = words.find(w => plain.includes(w));
    if (word !== undefined) ours.set(table.columns[plain.indexOf(word)]!, role);
  }
  const names = table.columns.map(column => ours.get(column) ?? column);
  if (!names.some(name => ['from', 'to'].includes(plainName(name)))) {
    throw new CatalogError(
      'BadTable',
      `No column of ${table.file} says which old item a line is about; its heads are ${table.columns.join(', ')} - call the column of old items from and that of their heirs to.`,
      { file: table.file },
    );
  }
  if (ours.size === 0) return table;
  const rows = table.rows.map(row => ({
    ...row,
    cells: new Map([...row.cells].map(([column, cell]) => [ours.get(column) ?? column, cell])),
  }));
  return { ...table, columns: names, rows };
}
