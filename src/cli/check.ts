import type { Command } from 'commander';
import { checkCatalog } from '../commands/check-catalog.ts';
import { readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

export function addCheck(program: Command): void {
  program
    .command('check')
    .description('Read everything and say what is wrong: files, frozen tables, lineage, losses')
    .argument('[edition]', 'an edition or draft (default: all)')
    .option('--json', 'as JSON')
    .action(async (edition: string | undefined, options: { json?: boolean }, command: Command) => {
      const { checked, findings } = await checkCatalog(await readingCatalog(command), edition);
      if (options.json) printJson({ checked, findings });
      else printLines([`Checked ${checked.join(', ') || 'an empty catalog'}: ${count(findings.length, 'finding')}.`]);
      reportFindings(findings);
    });
}
