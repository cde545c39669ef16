import type { Command } from 'commander';
import { CatalogError } from '../model/errors.ts';
import {
  operation,
  type PlaceOptions,
  placed,
  placeOf,
  run,
  type Shared,
  type WordingOptions,
  wordingOf,
} from './draft-operation.ts';

/** What changes the words of a draft: one item said otherwise, several made one, one made several, a new one. */
export function addWordOperations(draft: Command): void {
  operation(draft, 'reword <item>', 'Say an item in other words', 'reword 4.2.3 --text "Falls are at least 1:80."')
    .option('--text <text>', 'its text')
    .option('--text-file <file>', 'its text, from a file; - reads what is typed or piped in')
    .option('--purpose <text>', 'what it is for')
    .option('--outcome <text>', 'what it brings about')
    .option('--caution <text>', 'the caution that stands beside it')
    .option('--references <reference...>', 'what it refers to')
    .option('--terms <term...>', 'glossary terms that it uses')
    .action((item: string, options: WordingOptions, command: Command) =>
      run(command, options, async ports => {
        const to = await wordingOf(ports, options);
        if (Object.keys(to).length > 0) return { op: 'reword', id: item, to };
        throw new CatalogError(
          'BadArgument',
          `Nothing is said about ${item}; give its new words, with --text or another option.`,
        );
      }),
    );

  operation(draft, 'retitle <item> <title>', 'Give an item another title', 'retitle 4.2.3 "Falls of gutters"').action(
    (item: string, title: string, options: Shared, command: Command) =>
      run(command, options, async () => ({ op: 'retitle', id: item, title })),
  );

  operation(
    draft,
    'combine <items...>',
    'Make several items one, which says what each of them said',
    'combine 4.2.3 4.3.3 4.4.3 --into 4.2.3 --note "combined over installation types"',
  )
    .requiredOption('--into <item>', 'the one that goes on')
    .option('--title <title>', 'its title from now on')
    .option('--text <text>', 'its text instead of all their texts')
    .option('--text-file <file>', 'the same from a file')
    .action((items: string[], options: WordingOptions & { into: string }, command: Command) =>
      run(command, options, async ports => {
        const to = {
          ...(await wordingOf(ports, options)),
          ...(options.title === undefined ? {} : { title: options.title }),
        };
        return { op: 'combine', ids: items, into: options.into, ...(Object.keys(to).length > 0 ? { to } : {}) };
      }),
    );

  operation(
    draft,
    'split <item>',
    'Make one item several; it keeps the first',
    'split 4.2.3 --keep "Falls" "Falls are at least 1:80." --give "Brackets" "Brackets stand at most 900 mm apart."',
  )
    .option('--keep <title text...>', 'its title and text from now on')
    .requiredOption('--give <title text...>', 'title and text of a new item; once for each', pairs)
    .action((item: string, options: Shared & { keep?: string[]; give: string[][] }, command: Command) =>
      run(command, options, async () => {
        const [title, text] = options.keep ?? [];
        return {
          op: 'split',
          id: item,
          keeps: { ...(title ? { title } : {}), ...(text ? { text } : {}) },
          gives: options.give.map(([t, words]) => ({ title: t!, ...(words ? { text: words } : {}) })),
        };
      }),
    );

  operation(
    draft,
    'incorporate <item>',
    "Take an outside standard's wording in, with its source",
    'incorporate 4.2.3 --text-file clause.txt --source "Gutter code" --edition 2023 --permission "letter of 12 May"',
  )
    .option('--text <text>', 'the wording')
    .option('--text-file <file>', 'the same from a file')
    .requiredOption('--source <name>', 'the outside standard and its clause')
    .requiredOption('--edition <edition>', 'its edition')
    .requiredOption('--permission <text>', 'who allowed it, and when')
    .action(
      (
        item: string,
        options: WordingOptions & { source: string; edition: string; permission: string },
        command: Command,
      ) =>
        run(command, options, async ports => {
          const { text } = await wordingOf(ports, options);
          if (!text)
            throw new CatalogError('BadArgument', 'The wording is missing; give it with --text or --text-file.');
          const { source, edition, permission } = options;
          return { op: 'incorporate', id: item, text, source, edition, permission };
        }),
    );

  placed(
    operation(
      draft,
      'add <title>',
      'Add an item that no older one stands behind',
      'add "Overflow of swales" --under 5.2 --text "…"',
    ),
  )
    .option('--text <text>', 'its text')
    .option('--text-file <file>', 'the same from a file')
    .option('--purpose <text>', 'what it is for')
    .option('--caution <text>', 'the caution that stands beside it')
    .option('--types <type...>', 'the installation types that it applies to (default: those of its parent)')
    .action((title: string, options: WordingOptions & PlaceOptions, command: Command) =>
      run(command, options, async ports => ({
        op: 'add',
        item: { title, ...(await wordingOf(ports, options)), ...(options.types ? { appliesTo: options.types } : {}) },
        ...placeOf(options),
      })),
    );
}

function pairs(value: string, known: string[][] = []): string[][] {
  const open = known.at(-1);
  if (open?.length === 1) return [...known.slice(0, -1), [open[0]!, value]];
  return [...known, [value]];
}
