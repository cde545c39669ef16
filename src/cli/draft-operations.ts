import type { Command } from 'commander';
import { readOperations } from '../commands/drafts/draft-operations.ts';
import { portsOf } from './context.ts';
import { addLineageOperations } from './draft-lineage.ts';
import { report, type Shared } from './draft-operation.ts';
import { addPlaceOperations } from './draft-places.ts';
import { addWordOperations } from './draft-words.ts';

/** One subcommand for each thing that can be done to a draft, and one for many at once. */
export function addDraftOperations(draft: Command): void {
  addWordOperations(draft);
  addPlaceOperations(draft);
  addLineageOperations(draft);
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
