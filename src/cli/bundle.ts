import type { Command } from 'commander';
import { piecesIn, publishBundle } from '../commands/bundles/publish-bundle.ts';
import { portsOf, readingCatalog } from './context.ts';
import { warnOfNoAddress } from './no-address.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface BundleOptions {
  readonly out: string;
  readonly only?: string;
  readonly base?: string;
  readonly json?: boolean;
}

export function addBundle(program: Command): void {
  program
    .command('bundle')
    .description(
      'What is published on the day: tables both ways, a site, one file for the phone, redirects, data, checksums; same edition, same bytes',
    )
    .argument('<from>', 'the older edition, e.g. 2018')
    .argument('<to>', 'the edition that is published')
    .requiredOption('--out <dir>', 'folder for the bundle')
    .option('--only <pieces>', 'some of its pieces, joined by commas, e.g. tables,site')
    .option('--base <address>', 'where the items can be named on the web, for data read by machines')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate bundle 2018 2024 --out publication
  fishplate bundle 2018 2024 --out publication --only site,lookup
  fishplate bundle 2018 2024 --out publication --base https://standards.example.org/works/

Open publication/site/index.html by double click; it needs no server and no signal.
Exit code 1: done, and some items have neither an heir nor a withdrawal (listed on the error stream).`,
    )
    .action(async (from: string, to: string, options: BundleOptions, command: Command) => {
      const only = options.only === undefined ? undefined : piecesIn(options.only);
      const catalog = await readingCatalog(command);
      const report = await publishBundle(portsOf(command), catalog, {
        from,
        to,
        out: options.out,
        ...(only ? { only } : {}),
        ...(options.base === undefined ? {} : { base: options.base }),
      });
      if (options.json) printJson(report);
      else {
        const bytes = report.files.reduce((sum, f) => sum + f.bytes, 0);
        printLines([
          `${count(report.files.length, 'file')}, ${thousands(Math.ceil(bytes / 1024))} KB, written to ${report.out}.`,
          ...report.files.filter(f => !/^site\/(?!index)/.test(f.path)).map(f => `  ${f.path}`),
        ]);
      }
      warnOfNoAddress(options.base, [from, to], only);
      reportFindings(report.findings);
    });
}
