import type { Command } from 'commander';
import { carryLocal, type LocalReport, recordRePointed } from '../commands/local/carry-local.ts';
import { dayOf } from '../model/day.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { dateOption } from './dates.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CarryLocalCliOptions {
  readonly from: string;
  readonly to: string;
  readonly out: string;
  readonly date?: string;
  readonly template?: string;
  readonly record?: boolean;
  readonly json?: boolean;
}

export function addCarryLocal(carry: Command): void {
  carry
    .command('local')
    .description('Re-point local rules and variances, or say what a person decides, with a letter to each holder')
    .requiredOption('--from <edition>', 'the edition that the records cite')
    .requiredOption('--to <edition>', 'the edition to carry them to')
    .requiredOption('--out <dir>', 'folder for local.csv, variances-by-cause.csv and the letters')
    .option('--date <date>', 'date of the letters, on which it is asked what is in force (default: today)', dateOption)
    .option('--template <file>', 'a letter of your own (docx); begin with the letter-template.docx that a run leaves')
    .option('--record', 'write the re-pointed records to the catalog as well, under the name of --author')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Nothing in the catalog changes without --record, and no state of a variance ever does.

Examples:
  fishplate carry local --from 2018 --to 2024 --out local-2024 --date 2024-07-01
  fishplate carry local --from 2018 --to 2024 --out local-2024 --template our-letter.docx --record --author "A. Desk"`,
    )
    .action(async ({ from, to, out, date, template, record, json }: CarryLocalCliOptions, command: Command) => {
      const ports = portsOf(command);
      const catalog = record ? await writingCatalog(command) : await readingCatalog(command);
      const report = await carryLocal(ports, catalog, {
        from,
        to,
        outDir: out,
        date: date ?? dayOf(ports.now()),
        ...(template === undefined ? {} : { template }),
      });
      const recorded = record ? await recordRePointed(ports, catalog, report) : undefined;
      if (json) printJson({ ...report, ...(recorded === undefined ? {} : { recorded }) });
      else printLines(localLines(report, out, recorded));
      reportFindings(report.findings);
    });
}

function localLines(report: LocalReport, out: string, recorded: number | undefined): string[] {
  const { counts, carried, causes, from, to } = report;
  const letters = carried.filter(c => c.letter).length;
  const asked = causes.reduce((sum, c) => sum + c.requests, 0);
  const stated = causes.filter(c => c.cause !== '');
  return [
    `${count(carried.length, 'local rule or variance', 'local rules and variances')}, ${from} → ${to}: ${counts['re-pointed']} re-pointed, ${counts.choose + counts.withdrawn + counts.unknown} for a person, ${counts.closed} closed and left under ${from}, ${counts['other-edition']} of another edition.`,
    `${count(letters, 'letter')} in ${out}/letters; the table is ${out}/local.csv.`,
    `${count(asked, 'variance was', 'variances were')} asked for: ${stated.map(c => `${c.cause} ${c.requests}`).join(', ') || 'no request states its cause'}; ${out}/variances-by-cause.csv.`,
    ...(recorded === undefined ? [] : [`${count(recorded, 'record')} in the catalog now cite ${to}.`]),
  ];
}
