import { readTable } from '../../tables/read-table.ts';
import type { ReadTable } from '../../tables/read-xlsx.ts';
import type { Ports } from '../ports/ports.ts';

/** Reads several tables, in order. Throws NoSuchFile or BadTable for the first that cannot be read. */
export async function readTables(ports: Ports, files: readonly string[]): Promise<ReadTable[]> {
  const tables: ReadTable[] = [];
  for (const file of files) tables.push(readTable(file, await ports.files.read(file)));
  return tables;
}
