import { lineageFromTables } from '../../editing/lineage-rows.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { Placed, Places } from '../../model/places.ts';
import type { Ports } from '../ports/ports.ts';
import { readTables } from '../reading/read-tables.ts';

/** The records of lineage tables, checked against both editions, and what is wrong with their lines. */
export async function readLineageTables(
  ports: Ports,
  files: readonly string[],
  old: Places<Placed>,
  newer: Places<Placed>,
  decisions: readonly Decision[],
) {
  return lineageFromTables(await readTables(ports, files), old, newer, decisions);
}
