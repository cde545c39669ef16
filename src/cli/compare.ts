import type { Command } from 'commander';
import { comparePairs, pairsCsv } from '../commands/texts/compare-pairs.ts';
import { portsOf } from './context.ts';
import { count, printJson, printLines } from './print.ts';

interface CompareOptions {
  readonly pairs: string;
  readonly out?: string;
  readonly json?: boolean;
}

export function addCompare(program: Command): void {
  program
    .command('compare')
    .description('Compare pairs of texts: is more or less asked, and what is lost; no catalog is needed')
    .requiredOption('--pairs <file>', 'csv with the columns id, from_text and to_text, optionally type')
    .option('--out <file>', 'a csv with id, wording, duty, lost and evidence (default: print it)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate compare --pairs pairs.csv --out result.csv

wording  same, editorial (capitals, punctuation, spelling, order of a list) or substantive
duty     stricter, relaxed, same, mixed, or unclear where it has to be read from both texts
lost     what the old text states and the new one does not, joined by " | "
evidence the words of both texts on which the duty rests, joined by " | "`,
    )
    .action(async (options: CompareOptions, command: Command) => {
      const { pairs: file, out } = options;
      const report = await comparePairs(portsOf(command), { pairs: file, ...(out === undefined ? {} : { out }) });
      if (options.json) return printJson(report);
      if (out === undefined) {
        process.stdout.write(pairsCsv(report.pairs));
        return;
      }
      const told = (counts: Readonly<Record<string, number>>) =>
        Object.entries(counts)
          .filter(([, n]) => n > 0)
          .map(([name, n]) => `${name} ${n}`)
          .join(', ');
      printLines([
        `${count(report.pairs.length, 'pair')} compared. Wording: ${told(report.wording) || 'none'}. Duty: ${told(report.duty) || 'none'}.`,
        `Written to ${out}.`,
      ]);
    });
}
