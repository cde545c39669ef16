import type { Command } from 'commander';
import { undoCarry } from '../commands/carrying/undo-carry.ts';
import { portsOf } from './context.ts';
import { printJson, printLines } from './print.ts';

export function addCarryUndo(carry: Command): void {
  carry
    .command('undo')
    .description(
      'Take runs back by the records that stand beside their outputs, unless somebody has worked on one since',
    )
    .argument('<record...>', 'NAME.fishplate.json, or the output NAME')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `

Of documents each has its record; the review list stays.

Examples:
  fishplate carry undo jobs-2024.xlsx.fishplate.json
  fishplate carry undo carried/*.fishplate.json`,
    )
    .action(async (records: string[], options: { readonly json?: boolean }, command: Command) => {
      const report = await undoCarry(portsOf(command), ...records);
      if (options.json) printJson(report);
      else
        printLines([
          ...report.restored.map(file => `${file} is again what it was before the run.`),
          `Taken away: ${report.removed.join(', ')}.`,
        ]);
    });
}
