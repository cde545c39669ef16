import type { Database } from '../../databases/database.ts';
import { CatalogError } from '../../model/errors.ts';
import { dropRun, readRuns } from './database-runs.ts';

export interface DatabaseUndoReport {
  readonly database: string;
  readonly table: string;
  readonly removed: readonly string[];
}

/**
 * Takes a run in a database back: all that it wrote goes, and their table was never touched.
 *
 * @throws CatalogError BadArgument: no run has this id
 */
export async function undoDatabaseRun(db: Database, id: string): Promise<DatabaseUndoReport> {
  return db.together(async () => {
    const known: string[] = [];
    for (const schema of await db.schemasWith('fishplate_runs')) {
      const place = { schema, temporary: false };
      for (const record of (await readRuns(db, place)) ?? []) {
        if (record.run === id)
          return { database: db.name, table: record.table, removed: await dropRun(db, place, record) };
        known.push(`${record.run} (${record.table}, ${record.from} to ${record.to})`);
      }
    }
    const there = known.length > 0 ? `it has ${known.join(', ')}` : 'it has none at all';
    throw new CatalogError('BadArgument', `${db.name} has no run ${id}; ${there}.`, { id });
  });
}
