import type { Command } from 'commander';
import { undoCarry } from '../commands/undo-carry.ts';
import { portsOf } from './context.ts';
import { printJson, printLines } from './print.ts';

export function addCarryUndo(carry: Command): void {
  carry
    .command('undo')
    .description('Take a run back by the record that stands beside its output, unless somebody has worked on it since')
    .argument('<record>', 'NAME.fishplate.json, or the output NAME')
    .option('--json', 'report as JSON')
    .addHelpText('after', '\nExample:\n  fishplate carry undo jobs-2024.xlsx.fishplate.json')
    .action(async (record: string, options: { readonly json?: boolean }, command: Command) => {
      const report = await undoCarry(portsOf(command), record);
      if (options.json) printJson(report);
      else
        printLines([
          ...report.restored.map(file => `${file} is again what it was before the run.`),
          `Taken away: ${report.removed.join(', ')}.`,
        ]);
    });
}
