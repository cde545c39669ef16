import type { Command } from 'commander';
import { CatalogError } from '../model/errors.ts';
import { operation, type PlaceOptions, placed, placeOf, run, type Shared } from './draft-operation.ts';

/** What changes where items of a draft stand, what they apply to, and what things are called. */
export function addPlaceOperations(draft: Command): void {
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
}
