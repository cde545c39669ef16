import { join } from 'node:path';
import type { Command } from 'commander';
import { addErratum } from '../commands/importing/add-erratum.ts';
import { mintIds } from '../commands/importing/mint-ids.ts';
import { realFiles } from '../commands/ports/files.ts';
import { readJoint } from '../commands/reading/read-crosswalk.ts';
import { publishDraft } from '../commands/releasing/publish-draft.ts';
import { crosswalkStatistics } from '../crosswalk/statistics.ts';
import { CatalogError } from '../model/errors.ts';
import type { Catalog } from '../store/open.ts';
import { readIndex } from '../store/read.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { countLines } from './crosswalk.ts';
import { isoDate } from './dates.ts';
import { warnOfNoAddress } from './no-address.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

/** The commands that make a draft an edition, and correct one that is. */
export function addPublishing(program: Command): void {
  program
    .command('publish')
    .description('Make a draft an edition; refused while anything of the edition before it is lost')
    .argument('<draft>', 'name of the draft')
    .option('--effective <date>', 'date from which the edition holds')
    .option('--transition-ends <date>', 'date until which the edition replaced may be used')
    .option('--bundle <dir>', 'write what is published with it into this folder as well; see fishplate bundle')
    .option('--base <address>', 'where the items can be named on the web, for the data of the bundle')
    .option('--notes <text>', 'what is new, for those who will use it; stands in the commit and the tag')
    .option('--override <why>', 'publish although findings are open; the reason goes on record')
    .addHelpText(
      'after',
      `
Examples:
  fishplate check 2030 --release
  fishplate publish 2030 --effective 2030-07-01 --bundle publication --base https://standards.example.org/works/`,
    )
    .action(async (draft: string, options: PublishOptions, command: Command) => {
      // What is published stays published: an address that cannot be used is refused before that.
      const base =
        options.base === undefined
          ? undefined
          : (await import('../commands/bundles/publish-bundle.ts')).addressIn(options.base);
      if (base !== undefined && options.bundle === undefined) {
        throw new CatalogError(
          'BadArgument',
          '--base is for the data of a bundle; add --bundle FOLDER, or leave it out.',
        );
      }
      const catalog = await writingCatalog(command);
      if (options.bundle !== undefined) {
        await (await import('../commands/bundles/can-bundle.ts')).refuseUnbundled(catalog, draft);
        await realFiles.makeFolder(options.bundle);
      }
      const dates = {
        ...(options.effective ? { effective: isoDate(options.effective) } : {}),
        ...(options.transitionEnds ? { transitionEnds: isoDate(options.transitionEnds) } : {}),
      };
      const report = await publishDraft(portsOf(command), catalog, {
        draft,
        dates,
        ...(options.notes === undefined ? {} : { notes: options.notes }),
        ...(options.override === undefined ? {} : { override: options.override }),
      });
      printLines([
        `Edition ${draft} is published: ${count(report.items, 'item')}.`,
        ...(await whatChanged(catalog, draft)),
        ...(options.bundle === undefined ? ['Open it with: fishplate serve'] : []),
      ]);
      if (options.bundle !== undefined) await bundleOf(draft, options.bundle, base, command);
      // Notes are for whoever asks what stops a draft; what is published is published.
      reportFindings(report.findings.filter(f => f.severity !== 'note'));
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

/** How many became how many, and what was withdrawn for which reason; nothing of an edition that replaces none. */
async function whatChanged(catalog: Catalog, edition: string): Promise<string[]> {
  const { replaces } = (await readIndex(catalog, edition)).header;
  if (replaces === null) return [];
  const { joint } = await readJoint(catalog, replaces, edition);
  return countLines(crosswalkStatistics(joint));
}

async function bundleOf(edition: string, out: string, base: string | undefined, command: Command): Promise<void> {
  const { publishBundle } = await import('../commands/bundles/publish-bundle.ts');
  const catalog = await readingCatalog(command);
  const { replaces } = (await readIndex(catalog, edition)).header;
  const request = { from: replaces!, to: edition, out, ...(base === undefined ? {} : { base }) };
  const { files } = await publishBundle(portsOf(command), catalog, request);
  printLines([
    `${count(files.length, 'file')} written to ${out}.`,
    `Open ${join(out, 'site', 'index.html')}, or put the folder on a web server; README.txt in it says what each file is for.`,
  ]);
  warnOfNoAddress(base, [replaces!, edition]);
}

interface PublishOptions {
  readonly bundle?: string;
  readonly base?: string;
  readonly effective?: string;
  readonly transitionEnds?: string;
  readonly notes?: string;
  readonly override?: string;
}
