import type { Command } from 'commander';
import { realFiles } from '../commands/ports/files.ts';
import { readCrosswalk, readJoint } from '../commands/reading/read-crosswalk.ts';
import { crosswalkStatistics, type PartStatistics, type Statistics } from '../crosswalk/statistics.ts';
import { writeCrosswalkCsv } from '../exports/crosswalk-csv.ts';
import { writeCrosswalkJson } from '../exports/crosswalk-json.ts';
import { crosswalkLines } from '../exports/crosswalk-lines.ts';
import { CatalogError } from '../model/errors.ts';
import { readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface CrosswalkOptions {
  readonly format?: string;
  readonly out?: string;
  readonly statistics?: boolean;
  readonly json?: boolean;
}

export function addCrosswalk(program: Command): void {
  program
    .command('crosswalk')
    .description('What became of each item between two editions; from newer to older: where each comes from')
    .argument('<from>', 'edition, e.g. 2018; 2018.0 is the edition before its errata')
    .argument('<to>', 'edition')
    .option('--format <format>', 'csv or json (default: by the ending of --out, else csv)')
    .option('--out <file>', 'write here instead of to the screen')
    .option('--statistics', 'print what became of each part instead of every link')
    .option('--json', 'the same as --format json')
    .addHelpText(
      'after',
      `
Examples:
  fishplate crosswalk 2018 2024 --out crosswalk.csv
  fishplate crosswalk 2018 2024 --statistics
  fishplate crosswalk 2024 2014 --format json     derivation table, over all editions between

Exit code 1: done, and some items have neither an heir nor a withdrawal (listed on the error stream).`,
    )
    .action(async (from: string, to: string, options: CrosswalkOptions, command: Command) => {
      const format = formatOf(options);
      const catalog = await readingCatalog(command);
      if (options.statistics) {
        const { joint, findings } = await readJoint(catalog, from, to);
        const statistics = crosswalkStatistics(joint);
        if (format === 'json') printJson(statistics);
        else printLines(statisticsLines(statistics));
        reportFindings(findings);
      } else {
        const { joint, marks, findings } = await readCrosswalk(catalog, from, to);
        const statistics = crosswalkStatistics(joint);
        const lines = crosswalkLines(joint, marks);
        const text =
          format === 'json'
            ? writeCrosswalkJson(joint.crosswalk.from, joint.crosswalk.to, lines, statistics, findings)
            : writeCrosswalkCsv(lines);
        if (options.out === undefined) process.stdout.write(text);
        else {
          await realFiles.write(options.out, text);
          printLines([`${count(lines.length, 'line')} written to ${options.out}.`, ...countLines(statistics)]);
        }
        reportFindings(findings);
      }
    });
}

function formatOf(options: CrosswalkOptions): 'csv' | 'json' {
  const told = options.format ?? (options.json || options.out?.endsWith('.json') ? 'json' : 'csv');
  if (told === 'csv' || told === 'json') return told;
  throw new CatalogError('BadArgument', `${told} is not a format of the crosswalk; use --format csv or --format json.`);
}

/** How many became how many, and how many were withdrawn for which reason. */
export function countLines(s: Statistics): string[] {
  const percent = `${Math.abs(Math.round(s.reduction * 100))} % ${s.reduction >= 0 ? 'fewer' : 'more'}`;
  const withdrawn = Object.entries(s.whole.withdrawnBy).map(([reason, n]) => `${reason} ${n}`);
  return [
    `${s.from} → ${s.to}: ${count(s.whole.old, s.counted.slice(0, -1))} became ${thousands(s.whole.total)} (${percent}); ${s.whole.new} new.`,
    ...(withdrawn.length > 0 ? [`Withdrawn: ${withdrawn.join(', ')}.`] : []),
  ];
}

/** Statistics as a table that fits a terminal. */
export function statisticsLines(s: Statistics): string[] {
  const row = (name: string, p: PartStatistics) => [
    name.length > 40 ? `${name.slice(0, 39)}…` : name,
    ...[
      p.old,
      p.fates.kept,
      p.fates.merged,
      p.fates.split,
      p.fates.recombined,
      p.fates.withdrawn,
      p.fates.unaccounted,
    ].map(String),
  ];
  return [
    ...countLines(s),
    ...align([
      [`Part of ${s.from}`, s.counted, 'kept', 'merged', 'split', 'recombined', 'withdrawn', 'unaccounted'],
      ...s.parts.map(p => row(`${p.number} ${p.title}`.trim(), p)),
      row('All', s.whole),
    ]),
    ...(s.newByPart.length > 0
      ? [`New in ${s.to}: ${s.newByPart.map(p => `${`${p.number} ${p.title}`.trim()} ${p.new}`).join(', ')}.`]
      : []),
  ];
}

function align(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, at) => Math.max(...rows.map(r => r[at]!.length)));
  return rows.map(r =>
    r.map((cell, at) => (at === 0 ? cell.padEnd(widths[at]!) : cell.padStart(widths[at]!))).join('  '),
  );
}
