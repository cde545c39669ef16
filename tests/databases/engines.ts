import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sqlite from 'node-sqlite3-wasm';
import type { Database, Row, Value } from '../../src/databases/database.ts';
import { openDatabase } from '../../src/databases/open-database.ts';
import { quoted } from '../../src/databases/quoted.ts';
import { hasPostgres, type PostgresServer, startPostgres } from './postgres-server.ts';

/** A database of one test. */
export interface TestDatabase {
  readonly address: string;
  /** Runs statements of the test's own and gives the rows of the last one. */
  sql(...statements: readonly string[]): Promise<readonly Row[]>;
  /** Makes a table of texts with a primary key `id` from 1 on. */
  table(
    name: string,
    header: readonly string[],
    rows: readonly (readonly Value[])[],
    types?: readonly string[],
  ): Promise<void>;
  /** Everything that stands in it but rows, as text. */
  schema(): Promise<string>;
  with<T>(work: (db: Database) => Promise<T>): Promise<T>;
}

export interface Engine {
  readonly name: string;
  readonly absent: boolean;
  start(): Promise<void>;
  fresh(): Promise<TestDatabase>;
  stop(): Promise<void>;
}

export const ENGINES: readonly Engine[] = [sqliteEngine(), postgresEngine()];

function testDatabase(address: string, schema: () => Promise<string>): TestDatabase {
  const withDatabase: TestDatabase['with'] = async work => {
    const db = await openDatabase(address, { readOnly: false });
    try {
      return await work(db);
    } finally {
      await db.close();
    }
  };
  return {
    address,
    with: withDatabase,
    schema,
    sql: (...statements) =>
      withDatabase(async db => {
        let rows: readonly Row[] = [];
        for (const statement of statements) rows = await db.rows(statement);
        return rows;
      }),
    table: (name, header, rows, types = header.map(() => 'text')) =>
      withDatabase(async db => {
        const columns = header.map((h, at) => `${quoted(h)} ${types[at]}`);
        await db.run(`create table ${quoted(name)} (id integer primary key, ${columns.join(', ')})`);
        const numbered = rows.map((row, at) => [at + 1, ...row]);
        await db.together(() => db.insert(quoted(name), ['id', ...header], ['integer', ...types], numbered));
      }),
  };
}

function sqliteEngine(): Engine {
  let folder = '';
  let made = 0;
  return {
    name: 'the embedded engine',
    absent: false,
    start: async () => {
      folder = mkdtempSync(join(tmpdir(), 'fishplate-db-'));
    },
    fresh: async () => {
      const path = join(folder, `${++made}.db`);
      emptyFile(path);
      const test: TestDatabase = testDatabase(path, async () => {
        const rows = await test.sql('select type, name, sql from sqlite_schema order by type, name');
        return rows.map(r => `${r.type} ${r.name}: ${r.sql}`).join('\n');
      });
      return test;
    },
    stop: async () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A file that is a database and holds nothing. */
export function emptyFile(path: string): void {
  const db = new sqlite.Database(path);
  db.exec('create table a (b); drop table a');
  db.close();
}

function postgresEngine(): Engine {
  let server: PostgresServer | undefined;
  let made = 0;
  return {
    name: 'a PostgreSQL server',
    absent: !hasPostgres,
    start: async () => {
      server = startPostgres();
    },
    fresh: async () => {
      const name = `works${++made}`;
      server!.run('createdb', '-h', server!.folder, '-U', server!.user, name);
      return testDatabase(server!.address(name), async () => server!.dump(name));
    },
    stop: async () => server?.stop(),
  };
}
