import type { Command } from 'commander';
import type { DateOrder } from '../carryover/jobs/calendar-date.ts';
import type { ToldColumns } from '../carryover/jobs/columns.ts';
import { agencyRules } from '../commands/carrying/agency-rules.ts';
import { readCrosswalkRows } from '../commands/databases/database-crosswalk.ts';
import { carryDatabaseJobs, type DatabaseJobsReport } from '../commands/databases/db-jobs.ts';
import { undoDatabaseRun } from '../commands/databases/undo-database.ts';
import { readCrosswalk } from '../commands/reading/read-crosswalk.ts';
import { waysTo } from '../commands/reading/ways-to.ts';
import { openDatabase } from '../databases/open-database.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog } from './context.ts';
import { toldOutcomes } from './jobs-told.ts';
import { keepAnswered } from './keep-answered.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

export interface CarryDatabaseOptions {
  readonly db: string;
  readonly table?: string;
  readonly from?: string;
  readonly to?: string;
  readonly batch?: number;
  readonly dryRun?: boolean;
  readonly undo?: string;
  readonly json?: boolean;
  readonly column?: ToldColumns;
  readonly policy?: string;
  readonly agency?: string;
  readonly dates?: DateOrder;
  readonly typeName?: Readonly<Record<string, string>>;
  readonly decisions?: string;
  readonly decisionsOut?: string;
  readonly keepDecisions?: boolean;
  readonly priceChanges?: string;
}

/** Carries the jobs of a table in a database, or takes such a run back. */
export async function carryDatabase(command: Command, options: CarryDatabaseOptions): Promise<void> {
  if (options.undo !== undefined) return undo(options.db, options.undo, options.json === true);
  const { table, from, to, dryRun = false, batch, dates, typeName, decisions, decisionsOut, priceChanges } = options;
  if (table === undefined || from === undefined || to === undefined) {
    throw new CatalogError('BadArgument', 'Name the table and both editions: --table jobs --from 2018 --to 2024.');
  }
  const catalog = await readingCatalog(command);
  const { joint, marks } = await readCrosswalk(catalog, from, to);
  const ports = portsOf(command);
  const way = { from: joint.from.header.name, to: joint.to.header.name };
  const { findings, ...rules } = await agencyRules(ports, catalog, options, way);
  const db = await openDatabase(options.db, { readOnly: dryRun });
  try {
    const report = await carryDatabaseJobs(
      ports,
      db,
      { joint, marks },
      {
        table,
        dryRun,
        columns: options.column ?? {},
        others: () => waysTo(catalog, joint.to.header.name, joint.from.header.name),
        crosswalk: one => readCrosswalkRows(catalog, one),
        ...(batch === undefined ? {} : { batch }),
        ...rules,
        ...(dates === undefined ? {} : { dates }),
        ...(typeName === undefined ? {} : { typeNames: typeName }),
        ...(decisions === undefined ? {} : { decisions }),
        ...(decisionsOut === undefined ? {} : { decisionsOut }),
        ...(priceChanges === undefined ? {} : { priceChanges }),
      },
    );
    if (options.json) printJson(report);
    else printLines(linesOf(report, options.db));
    await keepAnswered(command, options, report.answered);
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
