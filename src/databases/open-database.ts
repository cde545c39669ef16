import { CatalogError } from '../model/errors.ts';
import type { Database } from './database.ts';

export interface OpenOptions {
  /** Nothing will be written but temporary tables. */
  readonly readOnly: boolean;
}

/**
 * Opens a database by its address: `postgres://user@host:port/name`, `sqlite:FILE`, or a path that ends in .sqlite,
 * .sqlite3 or .db.
 *
 * @throws CatalogError BadArgument, NoSuchFile, BadFile, Busy
 */
export async function openDatabase(address: string, options: OpenOptions): Promise<Database> {
  if (/^postgres(?:ql)?:\/\//i.test(address)) return (await import('./postgres.ts')).openPostgres(address);
  const path = /^sqlite:(?:\/\/(?=\/))?(.+)$/is.exec(address)?.[1] ?? (/\.(?:sqlite3?|db)$/i.test(address) && address);
  if (path) return (await import('./sqlite.ts')).openSqlite(path, options);
  // The address itself is not repeated: it may hold a password.
  throw new CatalogError(
    'BadArgument',
    'The address of the database cannot be read; write --db postgres://user@host/name or --db sqlite:FILE.',
  );
}
