import type { Command } from 'commander';
import { operateOnDraft, type WrittenOperation } from '../commands/drafts/draft-operations.ts';
import type { Ports } from '../commands/ports/ports.ts';
import { portsOf, writingCatalog } from './context.ts';
import { count, printJson, printLines } from './print.ts';

/** What every operation on a draft may be told. */
export interface Shared {
  readonly in?: string;
  readonly note?: string;
  readonly json?: boolean;
}

export interface WordingOptions extends Shared {
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

export interface PlaceOptions {
  readonly under?: string;
  readonly after?: string;
  readonly first?: boolean;
}

/** A subcommand that does one thing to a draft. */
export function operation(draft: Command, usage: string, description: string, example: string): Command {
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

export function placed(command: Command): Command {
  return command
    .option('--under <item>', 'its parent (default: the top)')
    .option('--after <item>', 'the sibling that it follows (default: the last)')
    .option('--first', 'before all siblings');
}

export function placeOf({ under, after, first }: PlaceOptions) {
  return { under: under ?? null, ...(first ? { after: null } : after === undefined ? {} : { after }) };
}

export async function wordingOf(ports: Ports, options: WordingOptions) {
  const { text, textFile, purpose, outcome, caution, references, terms } = options;
  const read = textFile === undefined ? text : await textFrom(ports, textFile);
  const all = { text: read, purpose, outcome, caution, references, terms };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as { text?: string };
}

async function textFrom(ports: Ports, file: string): Promise<string> {
  const bytes = await ports.files.read(file === '-' ? '/dev/stdin' : file);
  return new TextDecoder().decode(bytes).trim();
}

/** Makes an operation of what was told, does it, and says what was done. */
export async function run(
  command: Command,
  options: Shared,
  make: (ports: Ports) => Promise<WrittenOperation>,
): Promise<void> {
  const ports = portsOf(command);
  const made = await make(ports);
  await report(command, ports, options, [options.note === undefined ? made : { ...made, note: options.note }]);
}

export async function report(
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
