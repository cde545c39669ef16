import { type Command, Option } from 'commander';
import { citeFiles } from '../commands/documents/cite-files.ts';
import { writeCitedCsv } from '../exports/cited-csv.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines } from './print.ts';

interface CiteOptions {
  readonly edition: string;
  readonly format: 'csv' | 'json';
  readonly out?: string;
  readonly json?: boolean;
}

export function addCite(program: Command): void {
  program
    .command('cite')
    .description('List what documents cite, with the edition that each citation means; nothing is changed')
    .argument('<file...>', 'Markdown, plain text, html, docx, pptx or pdf')
    .requiredOption('--edition <edition>', 'the edition that a text means where it does not say')
    .addOption(new Option('--format <format>', 'csv or json').choices(['csv', 'json']).default('csv'))
    .option('--json', 'the same as --format json')
    .option('--out <file>', 'where the list goes (default: print it)')
    .addHelpText(
      'after',
      `
Examples:
  fishplate cite lesson.md checklist.docx --edition 2018
  fishplate cite course/*.md --edition 2018 --out cited.csv

place    the line, or the table, footnote, slide or page
start    and end: where the text stands, in UTF-16 units of a text file
numbers  what is meant, written out: 3.2.1 to 3.2.3 is 3.2.1 3.2.2 3.2.3
certain  no where a person should look; why says what leaves a doubt, or what speaks for the citation`,
    )
    .action(async (inputs: string[], options: CiteOptions, command: Command) => {
      const { edition, out } = options;
      const format = options.json ? 'json' : options.format;
      const lines = await citeFiles(portsOf(command), await readingCatalog(command), {
        inputs,
        edition,
        format,
        ...(out === undefined ? {} : { out }),
      });
      if (out !== undefined) {
        const doubtful = lines.filter(l => !l.certain).length;
        printLines([`${count(lines.length, 'citation')}, ${doubtful} in doubt. Written to ${out}.`]);
      } else if (format === 'json') printJson(lines);
      else process.stdout.write(writeCitedCsv(lines));
    });
}
