import { parse } from 'csv-parse/sync';
import type { Way } from '../../src/carryover/jobs/job-reader.ts';
import { carryDatabaseJobs, type DatabaseJobsOptions } from '../../src/commands/databases/db-jobs.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import type { Database, Row } from '../../src/databases/database.ts';
import { dataRows } from '../../src/exports/data-package.ts';
import { fixture } from '../carryover/fixture.ts';
import { memoryFiles } from '../carryover/memory-files.ts';
import type { TestDatabase } from './engines.ts';

export const way: Way = fixture();

/** The crosswalk of an edition without its texts, which no test here reads. */
export const withoutTexts = async (w: Way) =>
  dataRows({ ...w, oldItems: new Map(), newItems: new Map(), decisions: [] });

export function carryIn(
  db: Database,
  options: Partial<DatabaseJobsOptions> = {},
  main: Way = way,
  { files } = memoryFiles({}),
) {
  const ports = { files, progress: () => {} };
  return carryDatabaseJobs(ports, db, main, { table: 'jobs', crosswalk: withoutTexts, ...options });
}

type MemoryFiles = ReturnType<typeof memoryFiles>;

/** What both ways say of a line, and of what jobs gain. */
export interface Said {
  /** One for each line in order: its outcome, and the record that it folds into. */
  readonly lines: readonly string[];
  readonly added: readonly string[];
}

const OURS = ['new_number', 'new_title', 'outcome', 'why', 'to_do', 'origin', 'folds_into', 'read_in', 'carried_to'];
const RULES = ['governed_by', 'rule'];
const ADDED = ['new_number', 'new_title', 'outcome', 'why', 'to_do', 'read_in', 'carried_to'];

/** The rows that stand in a database, as the file would have them. */
export async function saidIn(test: TestDatabase, table: string, governed = false): Promise<Said> {
  const [lines, added] = await test.with(async db => [
    await db.rows(`select * from "${table}_annotated" order by id`),
    await db.rows(`select * from "${table}_added"`),
  ]);
  const cells = (row: Row, names: readonly string[]) => JSON.stringify(names.map(n => row[n] ?? ''));
  return {
    lines: lines!.map(row => cells(row, governed ? [...OURS, ...RULES] : OURS)),
    added: added!
      .map(row => `${row.job} ${row.type_cell} ${cells(row, governed ? [...ADDED, ...RULES] : ADDED)}`)
      .sort(),
  };
}

/** Every cell in quotes and otherwise as it is: our own writer would take the edge off =1+1. */
const csvLine = (cells: readonly string[]) => cells.map(c => `"${c.replaceAll('"', '""')}"`).join(',');

/** The same lines carried as a csv file. */
export async function saidOfFile(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  options: object = {},
  main: Way = way,
  given: Readonly<Record<string, string>> = {},
): Promise<Said & Pick<MemoryFiles, 'text'> & { readonly report: Awaited<ReturnType<typeof carryJobs>> }> {
  const { files, text } = memoryFiles({ ...given, 'jobs.csv': [header, ...rows].map(csvLine).join('\n') });
  const ports = { files, progress: () => {} };
  const report = await carryJobs(ports, main.joint, main.marks, { input: 'jobs.csv', out: 'out.csv', ...options });
  const out = parse(text('out.csv')!, { columns: true, bom: true }) as Record<string, string>[];
  const { job, type } = report.columns;
  const cells = (row: Record<string, string>, names: readonly string[]) => JSON.stringify(names.map(n => row[n] ?? ''));
  const governed = out[0] !== undefined && 'governed_by' in out[0];
  return {
    report,
    text,
    lines: out.filter(r => r.origin === 'input').map(r => cells(r, governed ? [...OURS, ...RULES] : OURS)),
    added: out
      .filter(r => r.origin === 'added')
      .map(
        r =>
          `${job ? r[job.header]?.trim() : ''} ${type ? r[type.header] : ''} ${cells(r, governed ? [...ADDED, ...RULES] : ADDED)}`,
      )
      .sort(),
  };
}
