import { createHash } from 'node:crypto';
import type { Database, TheirTable, Value } from '../../databases/database.ts';
import { fillTable, makeTable, type Place, tableIn } from '../../databases/shape.ts';
import { CatalogError } from '../../model/errors.ts';
import { CROSSWALK_SHAPES, clearCrosswalk, clearEditions, makeCrosswalkTables } from './database-crosswalk.ts';
import { LAYOUT, RUN_CROSSWALKS, RUNS, type RunShapes, runShapes, tablesOf } from './database-shapes.ts';

/** What is kept of a run: enough to go on with it, and to take it back. */
export interface RunRecord {
  readonly run: string;
  readonly table: string;
  readonly from: string;
  readonly to: string;
  /** What each column was taken for, as JSON. */
  readonly columns: string;
  readonly finished: boolean;
  /** Key of the last line done, as JSON; undefined before the first. */
  readonly doneTo: string | undefined;
}

/** Our tables that all runs of a schema share, in the order in which they can be made. */
const SHARED = [...CROSSWALK_SHAPES, RUNS, RUN_CROSSWALKS];

/** The same input has the same id, so that a run can be gone on with; different input is a different run. */
export function runId(input: readonly unknown[], decisions: Uint8Array | undefined): string {
  const hash = createHash('sha256').update(JSON.stringify(input));
  return hash
    .update(decisions ?? '')
    .digest('hex')
    .slice(0, 16);
}

/**
 * The runs that a schema knows of; undefined where there are no tables of ours yet.
 *
 * @throws CatalogError BadTable where a table that is not ours has one of our names, or one of ours has another layout
 */
export async function readRuns(db: Database, place: Place): Promise<readonly RunRecord[] | undefined> {
  const standing = await db.standing(
    place.schema,
    SHARED.map(s => s.name),
  );
  if (standing.length === 0) return undefined;
  if (standing.length < SHARED.length) throw notOurs(db, standing[0]!);
  const rows = await db.rows(`select * from ${tableIn(db, place, RUNS.name)} order by run`);
  if (rows.some(r => Number(r.layout) !== LAYOUT)) {
    throw new CatalogError(
      'BadTable',
      `The tables fishplate_… of ${db.name} were made by another version; take its runs back with that one first.`,
    );
  }
  return rows.map(r => ({
    run: String(r.run),
    table: String(r.table_name),
    from: String(r.edition_from),
    to: String(r.edition_to),
    columns: String(r.columns),
    finished: r.finished === true || r.finished === 1,
    doneTo: r.done_to === null ? undefined : String(r.done_to),
  }));
}

export async function makeSharedTables(db: Database, place: Place): Promise<void> {
  await makeCrosswalkTables(db, place);
  for (const shape of [RUNS, RUN_CROSSWALKS]) await makeTable(db, place, shape);
}

/** @throws CatalogError BadTable where a table or view of somebody else has a name that the run needs */
export async function refuseTaken(db: Database, place: Place, shapes: RunShapes): Promise<void> {
  const names = [...tablesOf(shapes, true).map(s => s.name), shapes.annotated, shapes.added];
  const [taken] = await db.standing(place.schema, names);
  if (taken !== undefined) throw notOurs(db, taken);
}

export async function writeRun(
  db: Database,
  place: Place,
  record: RunRecord,
  crosswalks: readonly string[],
): Promise<void> {
  const { run, table, from, to, columns, finished, doneTo } = record;
  await fillTable(db, place, RUNS, [[run, table, from, to, columns, LAYOUT, finished, undefined, doneTo]]);
  await fillTable(
    db,
    place,
    RUN_CROSSWALKS,
    crosswalks.map(name => [run, name]),
  );
}

export async function setRun(
  db: Database,
  place: Place,
  run: string,
  set: Readonly<Record<string, Value>>,
): Promise<void> {
  const columns = Object.keys(set);
  const sets = columns.map((c, at) => `${c} = $${at + 1}`).join(', ');
  const sql = `update ${tableIn(db, place, RUNS.name)} set ${sets} where run = $${columns.length + 1}`;
  await db.run(sql, [...columns.map(c => set[c]), run]);
}

/** Takes away what a run wrote; with the last run of a schema goes everything of ours. The names that went. */
export async function dropRun(db: Database, place: Place, record: RunRecord): Promise<readonly string[]> {
  const theirs: TheirTable = { schema: place.schema, name: record.table, columns: [], key: [] };
  const shapes = runShapes(theirs, () => '', true);
  const gone: string[] = [];
  const drop = async (kind: 'view' | 'table', name: string) => {
    await db.run(`drop ${kind} if exists ${tableIn(db, place, name)}`);
    gone.push(name);
  };
  for (const view of [shapes.annotated, shapes.added]) await drop('view', view);
  for (const shape of tablesOf(shapes, true).toReversed()) await drop('table', shape.name);
  const [runs, uses] = [tableIn(db, place, RUNS.name), tableIn(db, place, RUN_CROSSWALKS.name)];
  const used = await db.rows(`select crosswalk from ${uses} where run = $1`, [record.run]);
  await db.run(`delete from ${uses} where run = $1`, [record.run]);
  await db.run(`delete from ${runs} where run = $1`, [record.run]);
  if (Number((await db.rows(`select count(*) as n from ${runs}`))[0]!.n) === 0) {
    for (const shape of SHARED.toReversed()) await drop('table', shape.name);
    return gone;
  }
  for (const { crosswalk } of used) {
    const still = await db.rows(`select 1 as x from ${uses} where crosswalk = $1`, [String(crosswalk)]);
    if (still.length === 0) await clearCrosswalk(db, place, String(crosswalk), true);
  }
  await clearEditions(db, place);
  return gone;
}

function notOurs(db: Database, name: string): CatalogError {
  return new CatalogError(
    'BadTable',
    `${db.name} has a ${name} already that is not from us, and it is not touched; rename it and run again.`,
    { name },
  );
}
