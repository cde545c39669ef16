import type { Command } from 'commander';
import { comparePairs, pairsCsv } from '../commands/texts/compare-pairs.ts';
import { type ComparedTwo, compareTwo } from '../commands/texts/compare-two.ts';
import { DIRECTIONS, tellEvidence } from '../model/duty-evidence.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CompareOptions {
  readonly pairs?: string;
  readonly out?: string;
  readonly json?: boolean;
}

export function addCompare(program: Command): void {
  program
    .command('compare')
    .description('Compare two texts, or many pairs: is more or less asked, and what is lost; no catalog is needed')
    .argument('[old]', 'the old text, or a .txt file with it')
    .argument('[new]', 'the new text, or a .txt file with it')
    .option('--pairs <file>', 'many pairs: csv with the columns id, from_text and to_text, optionally type')
    .option('--out <file>', 'with --pairs: a csv with id, wording, duty, lost and evidence (default: print it)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate compare "Bark shall be 300 mm deep." "Bark shall be at least 400 mm deep."
  fishplate compare old.txt new.txt
  fishplate compare --pairs pairs.csv --out result.csv

wording  same, editorial (capitals, punctuation, spelling, order of a list) or substantive
duty     stricter, relaxed, same, mixed, or unclear where it has to be read from both texts
type     "in villas …", "(600 mm in shops)": with a column type only what both texts say for that type is
         compared; other types are known by standing in that column as well
lost     what the old text states and the new one does not, joined by " | "
evidence the words of both texts on which the duty rests, joined by " | "

English is read; of other languages only numbers with their units are.`,
    )
    .action(async (old: string | undefined, next: string | undefined, options: CompareOptions, command: Command) => {
      const { pairs: file, out } = options;
      if (file === undefined) {
        if (old === undefined || next === undefined) {
          throw new CatalogError(
            'BadArgument',
            'Give the old text and the new one (or two .txt files), or a table of pairs: fishplate compare OLD NEW · fishplate compare --pairs pairs.csv',
          );
        }
        if (out !== undefined) {
          throw new CatalogError('BadArgument', '--out goes with --pairs; two texts are printed, with --json as data.');
        }
        const compared = await compareTwo(portsOf(command), old, next);
        if (options.json) printJson(compared);
        else printLines(twoLines(compared));
        return;
      }
      if (old !== undefined) {
        throw new CatalogError('BadArgument', 'Give two texts or --pairs, not both.');
      }
      const report = await comparePairs(portsOf(command), { pairs: file, ...(out === undefined ? {} : { out }) });
      reportFindings(report.findings);
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

/** One thing a line, the words of both texts beside each other. */
function twoLines({ wording, duty, evidence, lost, foreign }: ComparedTwo): string[] {
  return [
    `wording   ${wording}`,
    `duty      ${duty}${duty === 'unclear' ? ' (read both texts)' : ''}`,
    ...evidence.map(
      e => `          ${tellEvidence(e)}${e.direction === 'unclear' ? '' : ` (${DIRECTIONS[e.direction]})`}`,
    ),
    ...(lost.length === 0
      ? [`lost      nothing ${evidence.some(e => e.from !== '' && e.to === '') ? 'else ' : ''}that was found`]
      : []),
    ...lost.map((l, at) => `${at === 0 ? 'lost' : '    '}      "${l.text}"`),
    ...(foreign ? ['Neither text looks like English: only numbers with their units were read.'] : []),
  ];
}
