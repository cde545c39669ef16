import type { Command } from 'commander';
import { operateOnDraft, readOperations, type WrittenOperation } from '../commands/draft-operations.ts';
import type { Ports } from '../commands/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, writingCatalog } from './context.ts';
import { isoDate } from './dates.ts';
import { count, printJson, printLines } from './print.ts';

interface Shared {
  readonly in?: string;
  readonly note?: string;
  readonly json?: boolean;
}

interface WordingOptions extends Shared {
  readonly text?: string;
  readonly textFile?: string;
  readonly title?: string;
  readonly purpose?: string;
  readonly outcome?: string;
  readonly caution?: string;
  readonly references?: string[];
  readonly terms?: string[];
  readonly types?: string[];
}

/** One subcommand for each thing that can be done to a draft. */
export function addDraftOperations(draft: Command): void {
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

  placed(
    operation(
      draft,
      'move <item>',
      'Put an item, with what stands below it, at another place',
      'move 4.2.3 --under 5.1 --after 5.1.2',
    ),
  ).action((item: string, options: Shared & PlaceOptions, command: Command) =>
    run(command, options, async () => ({ op: 'move', id: item, ...placeOf(options) })),
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
    'withdraw <item>',
    'End an item with everything below it, and say why',
    'withdraw 4.2.3 --reason obsolete --note "Lead flashings are no longer used."',
  )
    .requiredOption('--reason <code>', "one of the catalog's reasons")
    .option('--types <type...>', 'only for these installation types')
    .option('--governs <text>', 'what governs instead: whose rule, for which place')
    .option('--checked <date>', 'the day on which that was read')
    .option('--points-to <item>', 'an item that the reader is sent to, although it is no heir')
    .option('--decision <id>', 'the edition-wide decision that it follows from')
    .action((item: string, options: Shared & WithdrawOptions, command: Command) =>
      run(command, options, async () => ({
        op: 'withdraw',
        id: item,
        reason: options.reason,
        ...(options.types ? { types: options.types } : {}),
        ...(options.governs ? { governs: options.governs } : {}),
        ...(options.checked ? { governsChecked: isoDate(options.checked) } : {}),
        ...(options.pointsTo ? { pointsTo: options.pointsTo } : {}),
        ...(options.decision ? { decision: options.decision } : {}),
      })),
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

  operation(
    draft,
    'applies-to <item> <types...>',
    'Change the installation types that an item applies to',
    'applies-to 4.2.3 house terrace --reason chooses-work',
  )
    .option('--reason <code>', 'why it ends for the types that it loses')
    .action((item: string, types: string[], options: Shared & { reason?: string }, command: Command) =>
      run(command, options, async () => ({
        op: 'applies-to',
        id: item,
        types,
        ...(options.reason ? { reason: options.reason } : {}),
      })),
    );

  operation(
    draft,
    'rename <what> <name> <new-name>',
    'Rename an installation type, a level or a glossary term',
    'rename type court "Courtyard block"',
  ).action((what: string, name: string, to: string, options: Shared, command: Command) =>
    run(command, options, async () => {
      if (what !== 'type' && what !== 'level' && what !== 'term') {
        throw new CatalogError('BadArgument', `${what} cannot be renamed; say type, level or term.`);
      }
      return { op: 'rename', what, name, to };
    }),
  );

  operation(
    draft,
    'renumber',
    'Number everything by its place, without gaps, instead of printed numbers',
    'renumber',
  ).action((options: Shared, command: Command) => run(command, options, async () => ({ op: 'renumber' })));

  operation(
    draft,
    'decide <id>',
    'Record a decision that holds edition-wide',
    'decide worker-safety --title "Worker safety is left to the law" --reason "…" --authority "Committee" --scope "Every clause …"',
  )
    .requiredOption('--title <title>', 'what was decided')
    .requiredOption('--reason <text>', 'why')
    .requiredOption('--authority <name>', 'who decided')
    .requiredOption('--scope <text>', 'what it covers')
    .option('--governs <text>', 'what governs instead')
    .option('--date <date>', 'when it was decided')
    .action((id: string, options: Shared & DecideOptions, command: Command) =>
      run(command, options, async () => {
        const { title, reason, authority, scope, governs, date } = options;
        const more = { ...(governs ? { governs } : {}), ...(date ? { date: isoDate(date) } : {}) };
        return { op: 'decide', decision: { id, title, reason, authority, scope, ...more } };
      }),
    );

  operation(
    draft,
    'link <old-item> <item>',
    'Say that an old item goes on in this one as well',
    'link 4.2.3 5.1.2 --extent part',
  )
    .option('--extent <extent>', 'how much of the old item: all, part or unknown', 'unknown')
    .option('--of <extent>', 'how much of this one it is: all, part or unknown', 'unknown')
    .action((from: string, to: string, options: Shared & { extent: string; of: string }, command: Command) =>
      run(command, options, async () => ({
        op: 'link',
        from,
        to,
        fromExtent: extent(options.extent),
        toExtent: extent(options.of),
      })),
    );

  operation(
    draft,
    'unlink <old-item> <item>',
    'Say that an old item does not go on in this one',
    'unlink 4.2.3 5.1.2',
  ).action((from: string, to: string, options: Shared, command: Command) =>
    run(command, options, async () => ({ op: 'unlink', from, to })),
  );

  placed(
    operation(
      draft,
      'restore <old-item>',
      'Take an old item that ended back into the draft, with its old words',
      'restore 4.2.3 --under 4.2',
    ),
  ).action((from: string, options: Shared & PlaceOptions, command: Command) =>
    run(command, options, async () => ({ op: 'restore', from, ...placeOf(options) })),
  );

  draft
    .command('apply <file>')
    .description('Do many operations from a file of JSON Lines: all of them, a commit each, or none')
    .option('--in <draft>', 'the draft, or a branch of it (default: the only draft)')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      '\nExample of a line:\n  {"op":"withdraw","id":"4.2.3","reason":"obsolete","note":"no longer used"}',
    )
    .action(async (file: string, options: Shared, command: Command) => {
      const ports = portsOf(command);
      await report(command, ports, options, await readOperations(ports, file));
    });
}

interface PlaceOptions {
  readonly under?: string;
  readonly after?: string;
  readonly first?: boolean;
}

interface WithdrawOptions {
  readonly reason: string;
  readonly types?: string[];
  readonly governs?: string;
  readonly checked?: string;
  readonly pointsTo?: string;
  readonly decision?: string;
}

interface DecideOptions {
  readonly title: string;
  readonly reason: string;
  readonly authority: string;
  readonly scope: string;
  readonly governs?: string;
  readonly date?: string;
}

function operation(draft: Command, usage: string, description: string, example: string): Command {
  return draft
    .command(usage)
    .description(description)
    .option('--in <draft>', 'the draft, or a branch of it (default: the only draft)')
    .option('--note <text>', 'why, for the record')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `\nExample:\n  fishplate draft ${example}\n\nItems are named by id or by number of the draft, old items by number of the edition that it replaces.`,
    );
}

function placed(command: Command): Command {
  return command
    .option('--under <item>', 'its parent (default: the top)')
    .option('--after <item>', 'the sibling that it follows (default: the last)')
    .option('--first', 'before all siblings');
}

function placeOf({ under, after, first }: PlaceOptions) {
  return { under: under ?? null, ...(first ? { after: null } : after === undefined ? {} : { after }) };
}

async function wordingOf(ports: Ports, options: WordingOptions) {
  const { text, textFile, purpose, outcome, caution, references, terms } = options;
  const read = textFile === undefined ? text : await textFrom(ports, textFile);
  const all = { text: read, purpose, outcome, caution, references, terms };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as { text?: string };
}

async function textFrom(ports: Ports, file: string): Promise<string> {
  const bytes = await ports.files.read(file === '-' ? '/dev/stdin' : file);
  return new TextDecoder().decode(bytes).trim();
}

function pairs(value: string, known: string[][] = []): string[][] {
  const open = known.at(-1);
  if (open?.length === 1) return [...known.slice(0, -1), [open[0]!, value]];
  return [...known, [value]];
}

function extent(told: string): 'all' | 'part' | 'unknown' {
  if (told === 'all' || told === 'part' || told === 'unknown') return told;
  throw new CatalogError('BadArgument', `${told} is not how much of an item; say all, part or unknown.`);
}

async function run(
  command: Command,
  options: Shared,
  make: (ports: Ports) => Promise<WrittenOperation>,
): Promise<void> {
  const ports = portsOf(command);
  const made = await make(ports);
  await report(command, ports, options, [options.note === undefined ? made : { ...made, note: options.note }]);
}

async function report(
  command: Command,
  ports: Ports,
  options: Shared,
  operations: readonly WrittenOperation[],
): Promise<void> {
  const done = await operateOnDraft(ports, await writingCatalog(command), {
    ...(options.in === undefined ? {} : { draft: options.in }),
    operations,
  });
  if (options.json) return printJson(done);
  const shown = done.done.slice(0, 20);
  printLines([
    ...shown.map(line => `${line}.`),
    ...(done.done.length > shown.length ? [`… and ${count(done.done.length - shown.length, 'more operation')}.`] : []),
    ...(done.made.length > 0 ? [`New: ${done.made.join(', ')}.`] : []),
  ]);
}
