import { ourLineageHeads } from '../../editing/lineage-heads.ts';
import { lineageFromTables } from '../../editing/lineage-rows.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { Placed, Places } from '../../model/places.ts';
import type { ReadTable } from '../../tables/read-xlsx.ts';
import type { Ports } from '../ports/ports.ts';
import { readTables } from '../reading/read-tables.ts';

/** Lineage tables as they stand, under our heads. Throws NoSuchFile or BadTable. */
export async function readLineageFiles(ports: Ports, files: readonly string[]): Promise<ReadTable[]> {
  return (await readTables(ports, files)).map(ourLineageHeads);
}

/** The records of lineage tables, checked against both editions, and what is wrong with their lines. */
export async function readLineageTables(
  ports: Ports,
  files: readonly string[],
  old: Places<Placed>,
  newer: Places<Placed>,
  decisions: readonly Decision[],
) {
  return lineageFromTables(await readLineageFiles(ports, files), old, newer, decisions);
}
