import { findColumns, namesEditions } from '../../carryover/jobs/columns.ts';
import { type CutNumbers, cutFindings } from '../../carryover/jobs/cut-numbers.ts';
import type { JobCase } from '../../carryover/jobs/job-case.ts';
import { jobCases, tightens } from '../../carryover/jobs/job-cases.ts';
import { JobNotes } from '../../carryover/jobs/job-notes.ts';
import type { Way } from '../../carryover/jobs/job-reader.ts';
import type { JobTotals } from '../../carryover/jobs/jobs.ts';
import type { Database, TheirTable } from '../../databases/database.ts';
import { addKeys, makeTable, type Place, tableIn } from '../../databases/shape.ts';
import { CatalogError } from '../../model/errors.ts';
import { readDecisions } from '../carrying/read-decisions.ts';
import { type BesideOptions, tablesBeside } from '../carrying/tables-beside.ts';
import { type CarriedJobs, caseOptions, type JobOptions, severalEditions } from '../jobs/job-options.ts';
import { priceChanges } from '../jobs/price-changes.ts';
import { writeTogether } from '../ports/commit-all.ts';
import type { Files, Ports } from '../ports/ports.ts';
import { writeInBatches } from './database-batches.ts';
import { answerCases, cutCases, type DatabaseRun, findCases } from './database-cases.ts';
import { jobCells } from './database-cells.ts';
import { type CrosswalkRows, crosswalkName, makeCrosswalkTables, writeCrosswalk } from './database-crosswalk.ts';
import { databaseDays } from './database-days.ts';
import { countLines, makeViews, writeFolds, writeJobWork, writeLines } from './database-lines.ts';
import { addDearerLines } from './database-prices.ts';
import {
  dropRun,
  makeSharedTables,
  type RunRecord,
  readRuns,
  refuseTaken,
  runId,
  setRun,
  writeRun,
} from './database-runs.ts';
import { sampleOf } from './database-sample.ts';
import { LAYOUT, runShapes, tablesOf } from './database-shapes.ts';

export interface DatabaseJobsOptions extends JobOptions {
  /** The table of jobs, with its schema where it needs one. */
  readonly table: string;
  /** Lines in one transaction; absent: all in one, together with everything else. */
  readonly batch?: number;
  /** Works everything out in temporary tables, and leaves nothing. */
  readonly dryRun?: boolean;
  /** A crosswalk as the tables of the data package. */
  readonly crosswalk: (way: Way) => Promise<CrosswalkRows>;
}

export interface DatabaseJobsReport extends CarriedJobs {
  readonly database: string;
  readonly table: string;
  /** By which the run is taken back. */
  readonly run: string;
  readonly from: string;
  readonly to: string;
  readonly dryRun: boolean;
  /** Tables and views that stand beside theirs now, those for reading first. */
  readonly made: readonly string[];
}

/**
 * Carries the jobs of a table where they live. An outcome is a function of a line's cells, so the database says which
 * different cells there are, each case is answered once, and one statement joins the answers back to the lines:
 *
 *   select … group by  ─▶  cases  ─▶  outcomes (the function that answers files)  ─▶  insert … select … join
 *
 * Their table is read and never changed. Everything is one transaction or, with `batch`, one for the cases, one for each
 * batch of lines and one for what takes all lines; killed in between, the same call goes on where it stopped.
 *
 * @throws CatalogError BadTable, BadArgument, Busy, Changed, WriteFailed, and what the database says.
 */
export async function carryDatabaseJobs(
  { files, progress }: Pick<Ports, 'files' | 'progress'>,
  db: Database,
  main: Way,
  options: DatabaseJobsOptions,
): Promise<DatabaseJobsReport> {
  const { joint, marks } = main;
  const { policy, batch, dryRun = false } = options;
  await refuseDatabaseAsOutput(files, db, options);
  const theirs = await db.table(options.table);
  await db.claim(theirs);
  const place: Place = { schema: theirs.schema, temporary: dryRun };
  const header = theirs.columns.map(c => c.name);
  const sample = await sampleOf(db, theirs);
  if (sample.length === 0) {
    throw new CatalogError('BadTable', `${theirs.name} in ${db.name} is empty; name a table with jobs in it.`);
  }
  const columns = findColumns(joint, header, sample, options.columns ?? {});
  const dated = policy ? await databaseDays(db, theirs, columns, policy, options.dates) : undefined;
  const { decisions, bytes: decisionBytes } = await readDecisions(files, options);
  const others = namesEditions(sample, columns) && options.others ? await options.others() : new Map<string, Way>();
  let cut: CutNumbers = new Map();
  const cases = jobCases(joint, marks, columns, new JobNotes(columns), {
    others,
    ...caseOptions(options),
    perhapsCut: number => cut.has(number),
    ...(decisions ? { decisions } : {}),
  });
  const governed = policy !== undefined;
  const shapes = runShapes(theirs, db.dialect.sameType, governed);
  const prices = priceChanges(joint, columns);
  const dearer = new Map<number, JobCase>();
  const run: DatabaseRun = {
    db,
    place,
    shapes,
    cells: jobCells(db, theirs, columns, policy, dated?.columns ?? []),
    cases,
    joint,
    ...(policy && dated ? { policy: { rules: policy, days: dated.days, newest: joint.to.header.name } } : {}),
    ...(options.priceChanges === undefined
      ? {}
      : {
          met: (outcome, known) => {
            if (tightens(known)) dearer.set(outcome, known.case);
          },
        }),
  };
  const { typeNames, stateNames, dates, kept } = options;
  const record: RunRecord = {
    run: runId(
      [LAYOUT, theirs, joint.from, joint.to, joint.crosswalk, columns, policy, typeNames, stateNames, dates, kept],
      decisionBytes,
    ),
    table: theirs.name,
    from: joint.from.header.name,
    to: joint.to.header.name,
    columns: JSON.stringify(Object.fromEntries(Object.entries(columns).map(([role, c]) => [role, c.header]))),
    finished: false,
    doneTo: undefined,
  };

  const start = async () => {
    progress('reading which cases there are');
    if (dryRun) await makeCrosswalkTables(db, place);
    else {
      const runs = await readRuns(db, place);
      const before = runs?.find(r => r.table === theirs.name);
      if (before) await dropRun(db, place, before);
      if ((await readRuns(db, place)) === undefined) await makeSharedTables(db, place);
      await refuseTaken(db, place, shapes);
    }
    const ways = [main, ...others.values()];
    for (const way of ways) await writeCrosswalk(db, place, way, await options.crosswalk(way));
    const late = db.dialect.keysAfterRows ? [shapes.fold, shapes.job, ...(batch ? [] : [shapes.lines])] : [];
    for (const shape of tablesOf(shapes, governed)) await makeTable(db, place, shape, late.includes(shape));
    if (!dryRun) await writeRun(db, place, record, ways.map(crosswalkName));
    await findCases(run);
    cut = await cutCases(run);
    await answerCases(run, true);
  };

  const finish = async (): Promise<Pick<JobTotals, 'folded' | 'added'>> => {
    const counted = await countLines(run, theirs);
    if (counted.ours !== counted.theirs || counted.right !== counted.theirs) throw changedMeanwhile(db, theirs, batch);
    progress('folding lines that do the same work');
    const { lines, fold, job } = shapes;
    if (db.dialect.keysAfterRows && !batch) await addKeys(db, place, lines);
    await db.measured(tableIn(db, place, lines.name));
    const folded = await writeFolds(run, theirs);
    const added = await writeJobWork(run, theirs);
    if (db.dialect.keysAfterRows) for (const shape of [fold, job]) await addKeys(db, place, shape);
    for (const shape of [fold, job]) await db.measured(tableIn(db, place, shape.name));
    if (!dryRun) {
      await makeViews(run, theirs);
      await setRun(db, place, record.run, { finished: true, lines: counted.theirs });
    }
    if (dearer.size > 0) await addDearerLines(run, theirs, dearer, prices);
    await writeTogether(files, tablesBeside(options, { questions: cases.questions(), decisions, prices }));
    return { folded, added };
  };

  let rest: Pick<JobTotals, 'folded' | 'added'>;
  if (batch === undefined || dryRun) {
    rest = await db.together(async () => {
      await start();
      progress('joining the outcomes to the lines');
      await writeLines(run, theirs);
      return finish();
    });
  } else {
    const before = (await readRuns(db, place))?.find(r => r.run === record.run && !r.finished);
    if (before) {
      cut = await cutCases(run);
      await answerCases(run, false);
    } else await db.together(start);
    await writeInBatches(run, theirs, { batch, progress, ...record, doneTo: before?.doneTo });
    try {
      rest = await db.together(finish);
    } catch (error) {
      if (error instanceof CatalogError && error.code === 'Changed')
        await db.together(() => dropRun(db, place, record));
      throw error;
    }
  }
  const { lines, outcomes, closed, ungoverned } = cases.totals();
  return {
    database: db.name,
    table: options.table,
    run: record.run,
    from: record.from,
    to: record.to,
    dryRun,
    made: dryRun ? [] : [shapes.annotated, shapes.added, shapes.lines.name],
    columns,
    totals: { lines, outcomes, closed, ungoverned, ...rest, agree: true },
    cases: cases.counts(),
    questions: options.decisionsOut === undefined ? [] : cases.questions(),
    editions: severalEditions(cases.editions()),
    findings: [...(dated?.days.findings ?? []), ...cutFindings(joint, options.table, cut), ...cases.findings()],
    answered: decisions?.toKeep(record) ?? [],
  };
}

function changedMeanwhile(db: Database, theirs: TheirTable, batch: number | undefined): CatalogError {
  const how = batch === undefined ? 'run again' : 'run again when nobody writes, or without --batch';
  return new CatalogError(
    'Changed',
    `Lines of ${theirs.name} in ${db.name} were changed while they were carried, so all of it was taken back; ${how}.`,
  );
}

async function refuseDatabaseAsOutput(files: Files, db: Database, options: BesideOptions): Promise<void> {
  if (db.kind !== 'sqlite') return;
  for (const path of [options.decisionsOut, options.priceChanges]) {
    if (path === undefined || !(await files.same(path, db.name))) continue;
    throw new CatalogError('OutputIsInput', `${path} is the database itself; choose another name for the output.`, {
      out: path,
    });
  }
}
