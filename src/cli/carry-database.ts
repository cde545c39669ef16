import type { Command } from 'commander';
import { readCrosswalkRows } from '../commands/databases/database-crosswalk.ts';
import { carryDatabaseJobs, type DatabaseJobsReport } from '../commands/databases/db-jobs.ts';
import { undoDatabaseRun } from '../commands/databases/undo-database.ts';
import { openDatabase } from '../databases/open-database.ts';
import { CatalogError } from '../model/errors.ts';
import { readJobOptions, type TypedJobOptions } from './job-options.ts';
import { toldOutcomes } from './jobs-told.ts';
import { keepAnswered } from './keep-answered.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

export interface CarryDatabaseOptions extends TypedJobOptions {
  readonly db: string;
  readonly table?: string;
  readonly batch?: number;
  readonly dryRun?: boolean;
  readonly undo?: string;
}

/** Carries the jobs of a table in a database, or takes such a run back. */
export async function carryDatabase(command: Command, typed: CarryDatabaseOptions): Promise<void> {
  if (typed.undo !== undefined) return undo(typed.db, typed.undo, typed.json === true);
  const { table, from, to, dryRun = false, batch } = typed;
  if (table === undefined || from === undefined || to === undefined) {
    throw new CatalogError('BadArgument', 'Name the table and both editions: --table jobs --from 2018 --to 2024.');
  }
  const { catalog, ports, joint, marks, findings, options } = await readJobOptions(command, typed, from, to);
  const db = await openDatabase(typed.db, { readOnly: dryRun });
  try {
    const report = await carryDatabaseJobs(
      ports,
      db,
      { joint, marks },
      {
        ...options,
        table,
        dryRun,
        crosswalk: one => readCrosswalkRows(catalog, one),
        ...(batch === undefined ? {} : { batch }),
      },
    );
    if (typed.json) printJson(report);
    else printLines(linesOf(report, typed.db));
    await keepAnswered(command, typed, report.answered);
    reportFindings([...findings, ...report.findings]);
  } finally {
    await db.close();
  }
}

async function undo(address: string, id: string, json: boolean): Promise<void> {
  const db = await openDatabase(address, { readOnly: false });
  try {
    const report = await undoDatabaseRun(db, id);
    if (json) printJson(report);
    else
      printLines([
        `Run ${id} over ${report.table} is taken back; the table itself was never changed.`,
        `Taken away: ${report.removed.join(', ')}.`,
      ]);
  } finally {
    await db.close();
  }
}

function linesOf(report: DatabaseJobsReport, address: string): string[] {
  const [annotated, added, lines] = report.made;
  return [
    `${report.table} in ${report.database}: ${count(report.totals.lines, 'line')} of ${report.from}, carried to ${report.to}${report.dryRun ? '; nothing was written' : ''}.`,
    ...toldOutcomes(report),
    ...(report.dryRun
      ? []
      : [
          `  Read ${annotated}: their lines with ours at the right; ${added}: what their jobs gain; ${lines} and ${lines}_…: the tables behind them; fishplate_…: the crosswalk.`,
          `  Take it back: fishplate carry jobs --db ${/:\/\//.test(address) ? report.database : address} --undo ${report.run}`,
        ]),
  ];
}
