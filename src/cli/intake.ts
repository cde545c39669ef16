import { type Command, InvalidArgumentError } from 'commander';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { isoDate } from './dates.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

/** What people tell about an edition while it is in force, so that the next one works where it is needed. */
export function addIntake(program: Command): void {
  const intake = program
    .command('intake')
    .description('Feedback, site comments and variance requests between editions, counted by item and cause');

  intake
    .command('add')
    .description('Keep a report about a number, or those of a table')
    .argument('[number]', 'the number as it is printed, or an id')
    .requiredOption('--edition <edition>', 'the edition that prints it')
    .option('--cause <words>', 'e.g. "damage seen", unclear, "too strict"')
    .option('--from <who>', 'who told it, e.g. "crew lead"')
    .option('--text <text>', 'what was told')
    .option('--date <date>', 'year-month-day (default: today)')
    .option('--kind <kind>', 'feedback, site comment or variance request', 'feedback')
    .option('--file <table>', 'csv, xlsx or JSON with number, cause, from, text; date and kind may be there')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate intake add 3.2.2.2 --edition 2018 --cause "damage seen" --from "crew lead" --text "Ran over at the rim."
  fishplate intake add --edition 2018 --file feedback.csv

The same report told twice is kept once. Exit code 1: done, and something was not kept.`,
    )
    .action(async (number: string | undefined, options: AddOptions, command: Command) => {
      const { addIntake: add, toldInTable } = await import('../commands/intake/intake-add.ts');
      const ports = portsOf(command);
      const { edition, file, json } = options;
      const { told, findings } =
        file === undefined ? { told: [reportIn(number, options)], findings: [] } : await toldInTable(ports, file);
      const report = await add(ports, await writingCatalog(command), edition, told);
      if (json) printJson(report);
      else {
        const known = report.known > 0 ? `; ${count(report.known, 'was', 'were')} on record already` : '';
        printLines([`${count(report.added.length, 'report')} on ${edition} kept${known}.`]);
      }
      reportFindings([...findings, ...report.findings]);
    });

  intake
    .command('list')
    .description('The reports, oldest first')
    .option('--edition <edition>', 'told under this edition')
    .option('--number <number>', 'about this number and what stands below it')
    .option('--cause <words>', 'for this cause')
    .option('--json', 'as JSON')
    .addHelpText('after', '\nExample:\n  fishplate intake list --edition 2018 --cause "damage seen"')
    .action(async ({ json, ...filter }: ListOptions, command: Command) => {
      const { listReports } = await import('../commands/intake/intake-count.ts');
      const { records, findings } = await listReports(await readingCatalog(command), filter);
      if (json) printJson(records);
      else {
        printLines([
          ...records.flatMap(r => [`${r.date}  ${r.edition} ${r.number}  ${r.cause} (${r.from})`, `  ${r.text}`]),
          `${count(records.length, 'report')}.`,
        ]);
      }
      reportFindings(findings);
    });

  intake
    .command('count')
    .description('Where the next edition has to work: reports by item and cause, items followed over editions')
    .requiredOption('--edition <edition>', 'count under the items of this edition or draft')
    .option('--level <n>', 'under items of this level, e.g. 3 for work items', whole)
    .option('--out <file>', 'as a table (csv, or xlsx by its ending)')
    .option('--json', 'as JSON')
    .addHelpText('after', '\nExample:\n  fishplate intake count --edition 2024 --level 3 --out work.xlsx')
    .action(async ({ json, out, ...request }: CountOptions, command: Command) => {
      const { countReports } = await import('../commands/intake/intake-count.ts');
      const { countTable, tellCounts } = await import('../commands/intake/intake-table.ts');
      const report = await countReports(await readingCatalog(command), request);
      if (out !== undefined) await portsOf(command).files.write(out, countTable(report, out));
      if (json) printJson(report);
      else printLines([...tellCounts(report), ...(out === undefined ? [] : [`Written to ${out}.`])]);
      reportFindings(report.findings);
    });
}

function reportIn(number: string | undefined, { cause, from, text, date, kind }: AddOptions) {
  if (number === undefined || cause === undefined || from === undefined || text === undefined) {
    throw new CatalogError('BadArgument', 'Name a number with --cause, --from and --text, or a table with --file.');
  }
  return { number, cause, from, text, kind, ...(date === undefined ? {} : { date: isoDate(date) }) };
}

function whole(text: string): number {
  const n = Number(text);
  if (!Number.isInteger(n) || n < 1) throw new InvalidArgumentError('Give a whole number from 1.');
  return n;
}

interface AddOptions {
  readonly edition: string;
  readonly cause?: string;
  readonly from?: string;
  readonly text?: string;
  readonly date?: string;
  readonly kind: string;
  readonly file?: string;
  readonly json?: boolean;
}

interface ListOptions {
  readonly edition?: string;
  readonly number?: string;
  readonly cause?: string;
  readonly json?: boolean;
}

interface CountOptions {
  readonly edition: string;
  readonly level?: number;
  readonly out?: string;
  readonly json?: boolean;
}
