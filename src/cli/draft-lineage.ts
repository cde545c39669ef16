import type { Command } from 'commander';
import { CatalogError } from '../model/errors.ts';
import { isoDate } from './dates.ts';
import { operation, type PlaceOptions, placed, placeOf, run, type Shared } from './draft-operation.ts';

/** What changes what became of old items: withdrawals, decisions, links, and what is taken back. */
export function addLineageOperations(draft: Command): void {
  operation(
    draft,
    'withdraw <item>',
    'End an item with everything below it, and say why',
    'withdraw 4.2.3 --reason obsolete --note "Lead flashings are no longer used."',
  )
    .requiredOption(
      '--reason <code>',
      "one of the catalog's reasons; any other is refused with the list; a catalog that lists none takes any",
    )
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

function extent(told: string): 'all' | 'part' | 'unknown' {
  if (told === 'all' || told === 'part' || told === 'unknown') return told;
  throw new CatalogError('BadArgument', `${told} is not how much of an item; say all, part or unknown.`);
}
