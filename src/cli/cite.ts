import { type Command, Option } from 'commander';
import { citeFiles } from '../commands/documents/cite-files.ts';
import { writeCitedCsv } from '../exports/cited-csv.ts';
import { CatalogError } from '../model/errors.ts';
import { listEditions } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines } from './print.ts';

interface CiteOptions {
  readonly edition?: string;
  readonly format: 'csv' | 'json';
  readonly out?: string;
  readonly json?: boolean;
}

export function addCite(program: Command): void {
  program
    .command('cite')
    .description('List what documents cite, with the edition that each citation means; nothing is changed')
    .argument('<file...>', 'Markdown, plain text, html, docx, pptx or pdf')
    .option(
      '--edition <edition>',
      'the edition that a text means where it does not say; needed where there are several',
    )
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
      const { out } = options;
      const catalog = await readingCatalog(command);
      const edition = options.edition ?? (await onlyEdition(catalog));
      const format = options.json ? 'json' : options.format;
      const lines = await citeFiles(portsOf(command), catalog, {
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

/** @throws CatalogError BadArgument with the editions to choose from, where there are none or several */
async function onlyEdition(catalog: Catalog): Promise<string> {
  const names = (await listEditions(catalog)).map(e => e.name);
  if (names.length === 1) return names[0]!;
  throw new CatalogError(
    'BadArgument',
    names.length === 0
      ? 'The catalog has no edition yet; make one with: fishplate import TABLE --edition NAME'
      : `Say which edition a text means where it does not say so itself: --edition ${names.at(-1)} (the catalog has ${names.join(', ')}).`,
  );
}
