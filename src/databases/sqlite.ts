import { accessSync, constants, realpathSync } from 'node:fs';
import sqlite from 'node-sqlite3-wasm';
import { CatalogError } from '../model/errors.ts';
import type { Database, Dialect, Row, TheirColumn, TheirTable, Value } from './database.ts';
import { noKey, noTable } from './no-table.ts';
import type { OpenOptions } from './open-database.ts';
import { literal, quoted } from './quoted.ts';
import { claimFile } from './sqlite-claim.ts';

/** White space as people leave it at the ends of a cell. */
const SPACES = 'char(32, 9, 10, 11, 12, 13, 160)';

const dialect: Dialect = {
  cell: c => `coalesce(cast(t.${quoted(c.name)} as text), '') collate binary`,
  isNumber: c => `(typeof(t.${quoted(c.name)}) in ('real', 'integer'))`,
  trimmed: text => `trim(${text}, ${SPACES})`,
  bytewise: text => `${text} collate binary`,
  column: (alias, c) => `${alias}.${quoted(c.name)}`,
  sameType: c => c.type,
  value: n => `$${n}`,
  keysAfterRows: false,
};

/** A database in a file, by the engine that is embedded in the program. */
export function openSqlite(named: string, { readOnly }: OpenOptions): Database {
  const path = trueName(named);
  const claim = claimFile(path);
  let db: InstanceType<typeof sqlite.Database> | undefined;
  const saying = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw said(error, named);
    }
  };
  const close = () => {
    try {
      db?.close();
    } finally {
      claim.release();
    }
  };
  try {
    const mayWrite = isWritable(path);
    if (!mayWrite && !readOnly) throw readOnlyFile(named);
    db = saying(() => new sqlite.Database(path, mayWrite ? { fileMustExist: true } : { readOnly: true }));
    // Exclusive: without memory shared with other programs a database in WAL mode cannot be opened in any other way.
    for (const pragma of ['locking_mode = exclusive', 'cache_size = -65536', 'foreign_keys = on'])
      saying(() => db!.all(`pragma ${pragma}`));
    saying(() => db!.all('select count(*) from sqlite_schema'));
  } catch (error) {
    close();
    throw error;
  }
  const rows = (sql: string, values: readonly Value[] = []) =>
    saying(() => db!.all(sql, values.map(bindable)) as Row[]);
  return {
    kind: 'sqlite',
    name: named,
    dialect,
    table: async name => describe(rows, name),
    standing: async (_, names) =>
      rows(
        `select name from sqlite_schema where type in ('table', 'view') and lower(name) in (${names.map(n => literal(n.toLowerCase())).join(', ')})`,
      ).map(r => String(r.name)),
    schemasWith: async table =>
      rows("select 1 as x from sqlite_schema where type = 'table' and name = $1", [table]).map(() => 'main'),
    rows: async (sql, values) => rows(sql, values),
    run: async (sql, values = []) => saying(() => db!.run(sql, values.map(bindable)).changes),
    insert: async (table, columns, _types, many) => {
      if (many.length === 0) return;
      saying(() => {
        const places = columns.map(() => '?').join(', ');
        const insert = db!.prepare(`insert into ${table} (${columns.map(quoted).join(', ')}) values (${places})`);
        try {
          for (const row of many) insert.run(row.map(bindable));
        } finally {
          insert.finalize();
        }
      });
    },
    measured: async () => {},
    claim: async () => {},
    together: async work => {
      claim.check();
      saying(() => db!.exec(readOnly ? 'begin' : 'begin immediate'));
      try {
        const result = await work();
        saying(() => db!.exec('commit'));
        return result;
      } catch (error) {
        if (db!.inTransaction) db!.exec('rollback');
        throw error;
      }
    },
    close: async () => close(),
  };
}

function describe(rows: (sql: string, values?: readonly Value[]) => Row[], name: string): TheirTable {
  const all = rows(`select name, type, wr from pragma_table_list where schema = 'main' order by name`);
  const theirs = all.filter(r => !String(r.name).startsWith('sqlite_'));
  const found = theirs.find(r => String(r.name).toLowerCase() === name.replace(/^main\./i, '').toLowerCase());
  if (!found)
    throw noTable(
      name,
      theirs.filter(r => r.type === 'table').map(r => String(r.name)),
    );
  const label = String(found.name);
  const said = rows(`select name, type, pk, hidden from pragma_table_xinfo($1) order by cid`, [label]);
  const columns = said
    .filter(r => r.hidden !== 1)
    .map((r): TheirColumn & { pk: number } => {
      return { name: String(r.name), type: declared(String(r.type)), pk: Number(r.pk) };
    });
  const key = columns.filter(c => c.pk > 0).sort((a, b) => a.pk - b.pk);
  if (found.type !== 'table') throw noKey(label, String(found.type));
  const rowId = ['rowid', '_rowid_', 'oid'].find(n => !columns.some(c => c.name.toLowerCase() === n));
  if (key.length === 0 && (found.wr === 1 || rowId === undefined)) throw noKey(label, 'table');
  return {
    schema: 'main',
    name: label,
    columns: columns.map(({ name: n, type }) => ({ name: n, type })),
    key: key.length > 0 ? key.map(({ name: n, type }) => ({ name: n, type })) : [{ name: rowId!, type: 'integer' }],
  };
}

/** A type as declared, which may be anything at all: only what cannot end a declaration is repeated. */
function declared(type: string): string {
  return /^[\w ]+(?:\(\s*\d+\s*(?:,\s*\d+\s*)?\))?$/.test(type) ? type : '';
}

function bindable(value: Value): string | number | null {
  return typeof value === 'boolean' ? Number(value) : (value ?? null);
}

/** Links followed: the engine's journal and lock stand beside the true file. */
function trueName(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}

function isWritable(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

function readOnlyFile(name: string): CatalogError {
  return new CatalogError(
    'WriteFailed',
    `${name} is read-only for you; ask for the right to write it, or see the outcomes with --dry-run.`,
    { name },
  );
}

/** What the engine says, as a sentence that ends in what to do. A statement of ours that it does not understand is a defect. */
function said(error: unknown, name: string): unknown {
  if (!(error instanceof sqlite.SQLite3Error)) return error;
  const { message } = error;
  if (/readonly/.test(message)) return readOnlyFile(name);
  const failed = (code: 'Busy' | 'BadFile' | 'WriteFailed', sentence: string) =>
    new CatalogError(code, sentence, { name, message });
  if (/locked/.test(message))
    return failed(
      'Busy',
      `${name} is in use by another program; close it and run again. What was not finished was taken back.`,
    );
  if (/not a database|malformed/.test(message))
    return failed('BadFile', `${name} is damaged (${message}); mend it or take a copy that is whole.`);
  if (/disk is full/.test(message))
    return failed('WriteFailed', `The disk is full, so nothing was written to ${name}; free some space and run again.`);
  if (/unable to open|disk I\/O/.test(message))
    return failed('WriteFailed', `${name} could not be read or written (${message}); check the disk and its rights.`);
  if (/out of memory/.test(message))
    return failed('WriteFailed', `${name} is too large to be carried at once; run again with --batch 500000.`);
  return error;
}
