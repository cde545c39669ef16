import { lineageFromTables } from '../../editing/lineage-rows.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { Placed, Places } from '../../model/places.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';

/** The records of lineage tables, checked against both editions, and what is wrong with their lines. */
export async function readLineageTables(
  ports: Ports,
  files: readonly string[],
  old: Places<Placed>,
  newer: Places<Placed>,
  decisions: readonly Decision[],
) {
  const tables = [];
  for (const file of files) tables.push(readTable(file, await ports.files.read(file)));
  return lineageFromTables(tables, old, newer, decisions);
}
