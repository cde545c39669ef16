import type { Command } from 'commander';
import { changesSince } from '../commands/bundles/changes-since.ts';
import { portsOf, readingCatalog } from './context.ts';
import { EXIT } from './exit-codes.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface ChangesOptions {
  readonly since: string;
  readonly to?: string;
  readonly part?: string;
  readonly items?: string;
  readonly out: string;
  readonly base?: string;
  readonly json?: boolean;
}

export function addChanges(program: Command): void {
  program
    .command('changes')
    .description(
      'What changed since an edition or a day, for all items or for those you follow: page, Atom feed or csv',
    )
    .requiredOption('--since <edition|day>', 'an edition, e.g. 2018, or a day, e.g. 2023-10-01')
    .option('--to <edition>', 'up to this edition (default: the newest one)')
    .option('--part <number>', 'only what stands, or stood, under this number')
    .option('--items <file>', 'only these numbers of the older edition, one a line')
    .requiredOption('--out <file>', 'ends in .html, .xml (an Atom feed) or .csv')
    .option('--base <address>', 'where the items can be named on the web, for the feed')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate changes --since 2018 --part 3 --out storage.html
  fishplate changes --since 2023-10-01 --items ours.txt --out ours.xml

Exit code 1: done, and some items have neither an heir nor a withdrawal, or a number of the file is unknown.`,
    )
    .action(async (options: ChangesOptions, command: Command) => {
      const { json, ...request } = options;
      const report = await changesSince(portsOf(command), await readingCatalog(command), request);
      if (json) printJson(report);
      else
        printLines([
          `${count(report.changes.length, 'change')} from ${report.from} to ${report.to}, written to ${report.out}.`,
        ]);
      reportFindings(report.findings);
      if (report.unknown.length === 0) return;
      process.stderr.write(`Neither edition prints ${report.unknown.join(', ')}; look for a misprint in the file.\n`);
      process.exitCode = EXIT.findings;
    });
}
