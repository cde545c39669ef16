import type { Command } from 'commander';
import { addErratum } from '../commands/add-erratum.ts';
import { mintIds } from '../commands/mint-ids.ts';
import { publishDraft } from '../commands/publish-draft.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { isoDate } from './dates.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

/** The commands that make a draft an edition, and correct one that is. */
export function addPublishing(program: Command): void {
  program
    .command('publish')
    .description('Make a draft an edition; refused while anything of the edition before it is lost')
    .argument('<draft>', 'name of the draft')
    .option('--effective <date>', 'date from which the edition holds')
    .option('--transition-ends <date>', 'date until which the edition replaced may be used')
    .option('--override <why>', 'publish although findings are open; the reason goes on record')
    .action(async (draft: string, options: PublishOptions, command: Command) => {
      const dates = {
        ...(options.effective ? { effective: isoDate(options.effective) } : {}),
        ...(options.transitionEnds ? { transitionEnds: isoDate(options.transitionEnds) } : {}),
      };
      const report = await publishDraft(portsOf(command), await writingCatalog(command), {
        draft,
        dates,
        ...(options.override === undefined ? {} : { override: options.override }),
      });
      printLines([`Edition ${draft} is published: ${count(report.items, 'item')}.`]);
      reportFindings(report.findings);
    });

  program
    .command('erratum')
    .description('Correct or add lineage of a published edition; nothing else of it changes')
    .argument('<edition>', 'the newer edition of the step')
    .requiredOption('--lineage <table...>', 'from, to, reason, note …; the old items named get these records instead')
    .option('--note <text>', 'what is corrected, for the record')
    .option('--json', 'report as JSON')
    .action(
      async (edition: string, options: { lineage: string[]; note?: string; json?: boolean }, command: Command) => {
        const { json, ...request } = options;
        const report = await addErratum(portsOf(command), await writingCatalog(command), { edition, ...request });
        if (json) printJson(report);
        else
          printLines([`Erratum ${report.name}: ${count(report.replaced, 'record')} replaced, ${report.added} added.`]);
        reportFindings(report.findings);
      },
    );

  program
    .command('mint')
    .description('Print new ids that no edition uses, for items added by hand')
    .argument('[count]', 'how many', '1')
    .action(async (many: string, _options: unknown, command: Command) => {
      printLines(await mintIds(portsOf(command), await readingCatalog(command), many));
    });
}

interface PublishOptions {
  readonly effective?: string;
  readonly transitionEnds?: string;
  readonly override?: string;
}
