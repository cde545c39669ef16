import type { Command } from 'commander';
import { type SearchAnswer, searchEditions } from '../commands/finding/search-editions.ts';
import { publishedCatalog } from '../commands/reading/published-catalog.ts';
import { readingCatalog } from './context.ts';
import { printJson, printLines } from './print.ts';

interface SearchOptions {
  readonly edition?: string;
  readonly json?: boolean;
}

const SHOWN = 10;

export function addSearch(program: Command): void {
  program
    .command('search')
    .description('Find items by words, by number or by the beginning of a number, in every edition')
    .argument('<words...>', 'words, a number, or an id')
    .option('--edition <edition>', 'only in this edition')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate search overflow terrace
  fishplate search 4.2 --edition 2018`,
    )
    .action(async (words: string[], options: SearchOptions, command: Command) => {
      const published = await publishedCatalog(await readingCatalog(command))();
      const { edition } = options;
      const request = { query: words.join(' '), most: SHOWN, ...(edition === undefined ? {} : { edition }) };
      const answer = await searchEditions(published, request);
      if (options.json) printJson(answer);
      else printLines(answerLines(answer));
    });
}

function answerLines(answer: SearchAnswer): string[] {
  const lines: string[] = [];
  if (answer.meanings.length > 1) {
    lines.push(
      `${answer.query} has ${answer.meanings.length} meanings; which one is meant depends on the edition cited.`,
    );
  }
  for (const { edition, entry, trace } of answer.meanings) {
    lines.push(`${edition}  ${nameOf(entry)}`, ...trace.told.map(sentence => `  ${sentence}`));
  }
  if (answer.mistyped) {
    const { id, meant } = answer.mistyped;
    lines.push(
      `${id} is no id: its check character does not agree, so a character is wrong${meant.length > 0 ? `. Perhaps ${meant.join(' or ')}` : ''}.`,
    );
  }
  for (const { edition, hits, total, matched } of answer.editions) {
    if (total === 0) continue;
    const how = { all: '', some: ', none has all the words', alike: ', by words spelt alike' }[matched];
    lines.push(`${edition}: ${total} found${how}${total > hits.length ? `; the first ${hits.length}` : ''}`);
    for (const { entry } of hits) lines.push(`  ${nameOf(entry)}`);
  }
  if (lines.length === 0) {
    const near = answer.nearest.length > 0 ? ` The nearest numbers are ${answer.nearest.join(', ')}.` : '';
    lines.push(`Nothing found for ${answer.query}.${near || ' Try fewer or other words.'}`);
  } else if (answer.nearest.length > 0) lines.push(`The nearest numbers are ${answer.nearest.join(', ')}.`);
  return lines;
}

const nameOf = (entry: { number: string; title: string; id: string }) =>
  [entry.number, entry.title].filter(Boolean).join('  ') || entry.id;
