import { type Command, InvalidArgumentError } from 'commander';
import type { ToldColumns } from '../carryover/columns.ts';
import { carryJobs, type JobsReport } from '../commands/carry-jobs.ts';
import { readCrosswalk } from '../commands/read-crosswalk.ts';
import { OUTCOMES } from '../model/citation.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface CarryJobsOptions {
  readonly from: string;
  readonly to: string;
  readonly out: string;
  readonly json?: boolean;
  readonly column?: ToldColumns;
}

export function addCarryJobs(carry: Command): void {
  carry
    .command('jobs')
    .description('Annotate a table of jobs: what became of each line, and what a person has to decide')
    .argument('<file>', 'csv, one cited item a line')
    .requiredOption('--from <edition>', 'the edition that the lines cite')
    .requiredOption('--to <edition>', 'the edition to carry them to')
    .requiredOption('--out <file>', 'where the annotated table goes')
    .option(
      '--column <role=header>',
      'tell a column outright: number, type, state, job, date, title or edition',
      toldColumn,
      {},
    )
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Example:
  fishplate carry jobs jobs.csv --from 2018 --to 2024 --out jobs-2024.csv --column number=Item`,
    )
    .action(async (input: string, options: CarryJobsOptions, command: Command) => {
      const catalog = await readingCatalog(command);
      const { joint, marks } = await readCrosswalk(catalog, options.from, options.to);
      const columns = options.column ?? {};
      const report = await carryJobs(portsOf(command), joint, marks, { input, out: options.out, columns });
      if (options.json) printJson(report);
      else printLines(jobsLines(report));
      reportFindings(report.findings);
    });
}

const ROLES = ['number', 'type', 'state', 'job', 'date', 'title', 'edition'];

function toldColumn(pair: string, known: ToldColumns): ToldColumns {
  const at = pair.indexOf('=');
  const role = pair.slice(0, Math.max(at, 0));
  if (!ROLES.includes(role)) throw new InvalidArgumentError(`Write ROLE=HEADER with one of: ${ROLES.join(', ')}.`);
  return { ...known, [role]: pair.slice(at + 1) };
}

/** What happened to a table of jobs, in a few lines. */
export function jobsLines(report: JobsReport): string[] {
  if (report.leftAlone)
    return [`${report.input} was carried to ${report.to} already and is untouched since; it was left alone.`];
  const { totals, columns, cases } = report;
  const found = Object.entries(columns).map(([role, c]) => `${role} = ${c?.header}`);
  const open = cases.filter(c => c.outcome === 'choose');
  return [
    `${report.input} → ${report.out}: ${count(totals.lines, 'line')} of ${report.from}, carried to ${report.to}.`,
    `  ${OUTCOMES.map(o => `${o} ${thousands(totals.outcomes[o])}`).join(', ')}; together ${thousands(totals.lines)}${totals.agree ? '' : ' (THE TOTALS DO NOT AGREE)'}.`,
    `  ${count(totals.added, 'line')} added, ${thousands(totals.folded)} folded into another, ${thousands(totals.closed)} closed and left under ${report.from}.`,
    `  Columns: ${found.join(', ')}.`,
    ...(open.length > 0
      ? [
          `  To decide: ${count(open.length, 'case')}; the largest: ${open
            .slice(0, 3)
            .map(c => `${c.number}${c.type ? ` ${c.type}` : ''} (${count(c.lines, 'line')})`)
            .join(', ')}.`,
        ]
      : []),
  ];
}
