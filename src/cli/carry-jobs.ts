import { type Command, InvalidArgumentError, Option } from 'commander';
import { stateOf } from '../carryover/jobs/states.ts';
import { carryJobs, type JobsReport, WORKBOOK_LIMITS } from '../commands/jobs/carry-jobs.ts';
import { CatalogError } from '../model/errors.ts';
import { readJobOptions, type TypedJobOptions } from './job-options.ts';
import { toldOutcomes } from './jobs-told.ts';
import { keepAnswered } from './keep-answered.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';
import { toldColumn } from './told-column.ts';

interface CarryJobsOptions extends TypedJobOptions {
  readonly db?: string;
  readonly table?: string;
  readonly batch?: number;
  readonly dryRun?: boolean;
  readonly undo?: string;
  readonly out?: string;
  readonly sheet?: string;
}

export function addCarryJobs(carry: Command): void {
  carry
    .command('jobs')
    .description('Annotate a table of jobs: what became of each line, and what a person has to decide')
    .argument('[file]', 'csv, xlsx or JSON Lines, one cited item a line')
    .option('--from <edition>', 'the edition that the lines cite')
    .option('--to <edition>', 'the edition to carry them to')
    .option('--out <file>', 'where the annotated table goes')
    .option('--db <address>', 'in place of a file: postgres://user@host/name, or sqlite:FILE')
    .option('--table <name>', 'with --db: the table of jobs; ours are put beside it, and it is never changed')
    .option(
      '--batch <lines>',
      'with --db: as many lines in one transaction; killed, the same call goes on',
      wholeNumber,
    )
    .option('--dry-run', 'with --db: work it all out and write nothing')
    .option('--undo <run>', 'with --db: take a run back by its id')
    .option(
      '--column <role=header>',
      'tell a column outright: number, type, state, job, date, title or edition; repeat it for each',
      toldColumn,
      {},
    )
    .option('--sheet <name>', 'the sheet of a workbook (default: the first visible one that is filled)')
    .option('--policy <file>', 'JSON: which edition governs a job of an agency, and what is settled without asking')
    .option(
      '--agency <name>',
      'the same, as kept in the catalog under policies/; decisions kept for the agency hold too',
    )
    .addOption(
      new Option('--dates <order>', 'day and month in dates, where the table does not prove it').choices([
        'dmy',
        'mdy',
        'ymd',
      ]),
    )
    .option('--type-name <old=now>', 'an installation type by a name of earlier days', typeName, {})
    .option(
      '--state-name <word=known>',
      'a word of the table for a state, to open, inspected, signed, paid or done; repeat it for more',
      stateName,
      {},
    )
    .option('--decisions-out <file>', 'write the questions, each once, the largest first: csv or xlsx')
    .option('--decisions <file>', 'apply such a file with answers: carry, stay or drop')
    .option('--keep-decisions', 'keep these answers in the catalog, for later runs with the same --agency')
    .option('--price-changes <file>', 'list open lines that ask more than they were ordered for: csv or xlsx')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
csv and JSON Lines have no bound. Of a workbook a sheet may be ${WORKBOOK_LIMITS.sheetBytes / 2 ** 20} MB unpacked and have ${WORKBOOK_LIMITS.cells / 1e6} million filled cells, some
400,000 lines of eight columns; a larger one is refused: save it as csv.

A policy decides by the first of its dates that is filled. Where that is no day (31.02.2025, n/a), a person decides, whatever
the policy says of lines without a date; open lines that wait for that are told apart in the totals.
A number whose last zero a spreadsheet may have cut (3.1 of 3.10) is for a person on each of its lines, unless the title
beside it names one of them.

Example:
  fishplate carry jobs jobs.csv --from 2018 --to 2024 --out jobs-2024.csv --column number=Item
  fishplate carry jobs jobs.xlsx --from 2018 --to 2024 --out jobs-2024.xlsx --decisions-out ask.xlsx
  fishplate carry jobs jobs.xlsx --from 2018 --to 2024 --out jobs-2024.xlsx --decisions ask.xlsx --policy vale.json
  fishplate carry jobs --db postgres://clerk@localhost/works --table jobs --from 2018 --to 2024 --agency lower-vale
  fishplate carry jobs --db sqlite:works.db --table jobs --from 2018 --to 2024 --agency lower-vale \\
    --decisions ask.csv --keep-decisions --price-changes dearer.csv
  fishplate carry jobs --db sqlite:works.db --table jobs --from 2018 --to 2024 --batch 100000
  fishplate carry jobs --db sqlite:works.db --undo 1f0c2d3e4a5b6c7d`,
    )
    .allowExcessArguments()
    .action(async (input: string | undefined, typed: CarryJobsOptions, command: Command) => {
      const { db, from, to, out } = typed;
      refuseMixed(typed);
      refuseMore(command.args);
      if (db !== undefined) {
        if (input !== undefined || out !== undefined) {
          throw new CatalogError('BadArgument', 'With --db the jobs are in a table: name it with --table, no file.');
        }
        return (await import('./carry-database.ts')).carryDatabase(command, { ...typed, db });
      }
      if (input === undefined || from === undefined || to === undefined || out === undefined) {
        throw new CatalogError(
          'BadArgument',
          'Name the file of jobs, both editions and the output: carry jobs jobs.csv --from 2018 --to 2024 --out new.csv.',
        );
      }
      const { ports, joint, marks, findings, options } = await readJobOptions(command, typed, from, to);
      const sheet = typed.sheet === undefined ? {} : { sheet: typed.sheet };
      const report = await carryJobs(ports, joint, marks, { ...options, ...sheet, input, out });
      if (typed.json) printJson(report);
      else printLines(jobsLines(report));
      await keepAnswered(command, typed, report.answered);
      reportFindings([...findings, ...report.findings]);
    });
}

/** An option that would be passed over in silence is refused. */
function refuseMixed(options: CarryJobsOptions): void {
  const inside = options.db !== undefined;
  const words: readonly (keyof CarryJobsOptions)[] = inside ? ['sheet'] : ['table', 'batch', 'dryRun', 'undo'];
  const wrong = words.find(word => !isEmpty(options[word]));
  if (wrong === undefined) return;
  const said = `--${wrong.replace(/[A-Z]/g, c => `-${c.toLowerCase()}`)}`;
  const sentence = inside
    ? `${said} goes with a file of jobs only; leave it out with --db.`
    : `${said} goes with a database only; name it with --db.`;
  throw new CatalogError('BadArgument', sentence);
}

function isEmpty(option: unknown): boolean {
  return option === undefined || (typeof option === 'object' && Object.keys(option ?? {}).length === 0);
}

/** `--column state=Stand job=Auftrag` looks right, since other options take several. */
function refuseMore(args: readonly string[]): void {
  const pair = args.find(arg => /^\w+=/.test(arg));
  if (args.length < 2) return;
  throw new CatalogError(
    'BadArgument',
    pair === undefined
      ? `One file of jobs at a time; run again for ${args[1]}.`
      : `Repeat the option for each: --column ${pair}, not ${pair} alone.`,
  );
}

function stateName(pair: string, known: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const at = pair.lastIndexOf('=');
  if (at < 1 || stateOf(pair.slice(at + 1)) === undefined) {
    throw new InvalidArgumentError(
      'Write WORD=KNOWN with open, inspected, signed, paid or done, such as erledigt=done.',
    );
  }
  return { ...known, [pair.slice(0, at)]: pair.slice(at + 1) };
}

function wholeNumber(text: string): number {
  if (/^[1-9]\d{0,8}$/.test(text)) return Number(text);
  throw new InvalidArgumentError('Write a whole number of lines, for example 100000.');
}

function typeName(pair: string, known: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const at = pair.indexOf('=');
  if (at < 1) throw new InvalidArgumentError('Write OLD=NOW, the name that lines use and the one of today.');
  return { ...known, [pair.slice(0, at)]: pair.slice(at + 1) };
}

/** What happened to a table of jobs, in a few lines. */
export function jobsLines(report: JobsReport): string[] {
  if (report.leftAlone)
    return [`${report.input} was carried to ${report.to} already and is untouched since; it was left alone.`];
  return [
    `${report.input} → ${report.out}: ${count(report.totals.lines, 'line')} of ${report.from}, carried to ${report.to}.`,
    ...toldOutcomes(report),
  ];
}
