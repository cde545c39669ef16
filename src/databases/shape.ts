import type { Database, Row, Value } from './database.ts';
import { quoted } from './quoted.ts';

export interface ShapeColumn {
  readonly name: string;
  /** As SQL says it; both engines know text, integer, bigint, boolean and real. */
  readonly type: string;
  readonly required?: boolean;
}

/** A table of ours: its columns, what tells its rows apart, and which of our tables its columns lead to. */
export interface Shape {
  readonly name: string;
  readonly columns: readonly ShapeColumn[];
  readonly key: readonly string[];
  readonly leadsTo: readonly (readonly [columns: readonly string[], table: string, there: readonly string[]])[];
}

/** Where our tables stand: beside theirs, or in a place that goes with the connection. */
export interface Place {
  readonly schema: string;
  readonly temporary: boolean;
}

export function tableIn(db: Database, { schema, temporary }: Place, name: string): string {
  return `${quoted(temporary ? (db.kind === 'postgres' ? 'pg_temp' : 'temp') : schema)}.${quoted(name)}`;
}

/** @param bare without its keys, which `addKeys` brings once the rows are there: checked one by one they take longer than the rows */
export async function makeTable(db: Database, place: Place, shape: Shape, bare = false): Promise<void> {
  const columns = shape.columns.map(c => `${quoted(c.name)} ${c.type}${c.required ? ' not null' : ''}`);
  const keys = bare ? [] : [keyOf(shape), ...shape.leadsTo.map(lead => leadOf(db, place, lead))];
  await db.run(`create table ${tableIn(db, place, shape.name)} (${[...columns, ...keys].join(', ')})`);
}

export async function addKeys(db: Database, place: Place, shape: Shape): Promise<void> {
  const keys = [keyOf(shape), ...shape.leadsTo.map(lead => leadOf(db, place, lead))];
  await db.run(`alter table ${tableIn(db, place, shape.name)} ${keys.map(k => `add ${k}`).join(', ')}`);
}

/** Writes rows whose cells stand in the order of the shape's columns. */
export async function fillTable(
  db: Database,
  place: Place,
  shape: Shape,
  rows: readonly (readonly Value[])[],
): Promise<void> {
  const { columns, name } = shape;
  await db.insert(
    tableIn(db, place, name),
    columns.map(c => c.name),
    columns.map(c => c.type),
    rows,
  );
}

/** The rows of a table of ours by its whole number, some at a time: a table of a million cases fits no memory twice. */
export async function* pagesOf(
  db: Database,
  table: string,
  number: string,
  size = 5000,
): AsyncGenerator<readonly Row[]> {
  const sql = `select * from ${table} where ${quoted(number)} > $1 order by ${quoted(number)} limit ${size}`;
  for (let after = 0; ; ) {
    const rows = await db.rows(sql, [after]);
    if (rows.length > 0) yield rows;
    if (rows.length < size) return;
    after = Number(rows.at(-1)![number]);
  }
}

function keyOf({ key }: Shape): string {
  return `primary key (${key.map(quoted).join(', ')})`;
}

/** An embedded file knows only foreign keys within one place and refuses to hear it named. */
function leadOf(db: Database, place: Place, [columns, table, there]: Shape['leadsTo'][number]): string {
  const target = db.kind === 'sqlite' ? quoted(table) : tableIn(db, place, table);
  return `foreign key (${columns.map(quoted).join(', ')}) references ${target} (${there.map(quoted).join(', ')})`;
}
