import type { Command } from 'commander';
import { traceNumber } from '../commands/reading/trace-number.ts';
import { nameOf, tellTrace } from '../content/links/tell.ts';
import type { Trace } from '../content/links/trace.ts';
import { readingCatalog } from './context.ts';
import { printJson, printLines } from './print.ts';

interface TraceOptions {
  readonly edition?: string;
  readonly type?: string;
  readonly json?: boolean;
}

export function addTrace(program: Command): void {
  program
    .command('trace')
    .description('What became of a number, step by step, why, and what governs now')
    .argument('<number>', 'a printed number or an id')
    .option('--edition <edition>', 'the edition whose number it is (default: every edition that prints it is shown)')
    .option('--type <type>', 'follow only what applies to this installation type')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate trace 4.2.3
  fishplate trace 3.2.1.3 --edition 2018 --type terrace`,
    )
    .action(async (number: string, options: TraceOptions, command: Command) => {
      const { edition, type } = options;
      const traces = await traceNumber(await readingCatalog(command), {
        number,
        ...(edition === undefined ? {} : { edition }),
        ...(type === undefined ? {} : { type }),
      });
      if (options.json) return printJson(traces.map(t => ({ ...t, told: tellTrace(t) })));
      if (traces.length > 1) {
        printLines([`${number} has ${traces.length} meanings; which one is meant depends on the edition cited.`, '']);
      }
      printLines(traces.flatMap((t, at) => [...(at > 0 ? [''] : []), ...tracedLines(t)]));
    });
}

function tracedLines(trace: Trace): string[] {
  return [
    `${trace.edition}  ${nameOf(trace.entry)}`,
    ...tellTrace(trace).map(sentence => `  ${sentence}`),
    ...(trace.hops.length > 1
      ? [
          trace.now.length > 0
            ? `  Now (${trace.lastEdition}): ${trace.now.map(nameOf).join(', ')}`
            : `  Now (${trace.lastEdition}): nothing stands in its place.`,
        ]
      : []),
  ];
}
