import type { Command } from 'commander';
import { branchOf } from '../commands/drafts/branch-draft.ts';
import { logDraft } from '../commands/drafts/draft-log.ts';
import { finishMerge } from '../commands/drafts/finish-merge.ts';
import { mergeDraft, tellInto } from '../commands/drafts/merge-draft.ts';
import { mergeOneFile } from '../commands/drafts/merge-driver.ts';
import { openDraft } from '../commands/drafts/open-draft.ts';
import { nameOfBranch, readDraft } from '../commands/drafts/read-draft.ts';
import { showDraftItem } from '../commands/drafts/show-draft-item.ts';
import { undoOperation } from '../commands/drafts/undo-operation.ts';
import { realFiles } from '../commands/ports/files.ts';
import { readCrosswalk } from '../commands/reading/read-crosswalk.ts';
import { crosswalkStatistics } from '../crosswalk/statistics.ts';
import { writeCrosswalkCsv } from '../exports/crosswalk-csv.ts';
import { crosswalkLines } from '../exports/crosswalk-lines.ts';
import { CatalogError } from '../model/errors.ts';
import type { Item } from '../model/item.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { statisticsLines } from './crosswalk.ts';
import { addDraftOperations } from './draft-operations.ts';
import { EXIT } from './exit-codes.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

/** Work on the next edition, from opening it to the day before it is published. */
export function addDraft(program: Command): void {
  const draft = program
    .command('draft')
    .description('Work on the next edition: every operation keeps the lineage, is a commit, and can be undone')
    .addHelpText(
      'after',
      `
A draft from beginning to end:
  fishplate draft open 2030
  fishplate draft combine 4.2.3 4.3.3 --into 4.2.3 --note "combined over installation types"
  fishplate draft withdraw 4.2.9 --reason obsolete --note "no longer used"
  fishplate draft diff
  fishplate check 2030 --release
  fishplate publish 2030`,
    );
  draft
    .command('open <name>')
    .description('Open a draft of the next edition on a branch of its own')
    .option('--from <edition>', 'the edition that it begins as (default: the newest)')
    .option('--renumber', 'number everything in decimals without gaps from now on')
    .addHelpText(
      'after',
      '\nExample:\n  fishplate draft open 2030 --renumber && git clone -b draft/2030 works.git work',
    )
    .action(async (name: string, options: { from?: string; renumber?: boolean }, command: Command) => {
      const { replaces } = await openDraft(portsOf(command), await writingCatalog(command), { name, ...options });
      printLines([`Draft ${name} begins as ${replaces}, on the branch draft/${name}.`]);
    });
  addDraftOperations(draft);
  addHistory(draft);
  addMerging(draft);
  addDriver(draft);
}

interface In {
  readonly in?: string;
  readonly json?: boolean;
}

function addHistory(draft: Command): void {
  inDraft(draft.command('show [item]'))
    .description('An item of the draft with the old texts that it was made of; without a name the outline')
    .addHelpText('after', '\nExample:\n  fishplate draft show 4.2.3')
    .action(async (item: string | undefined, options: In, command: Command) => {
      const shown = await showDraftItem(await readingCatalog(command), options.in, item);
      if (options.json) return printJson(shown);
      const line = (i: Item) => `${i.number}  ${i.title}  (${i.id})`;
      if (!('item' in shown)) return printLines(shown.children.map(line));
      printLines([
        line(shown.item),
        ...(shown.item.text ? [`  ${shown.item.text}`] : []),
        `  Applies to: ${shown.types.join(', ')}`,
        ...shown.notes.map(note => `  ${note}`),
        ...(shown.sources.length > 0 ? ['Made of:'] : ['It is new.']),
        ...shown.sources.flatMap(s => [`  ${line(s)}`, ...(s.text ? [`    ${s.text}`] : [])]),
        ...(shown.children.length > 0 ? ['Below it:', ...shown.children.map(c => `  ${line(c)}`)] : []),
      ]);
    });

  inDraft(draft.command('log'))
    .description('What was done to the draft, by whom and why, newest first')
    .addHelpText('after', '\nExample:\n  fishplate draft log')
    .action(async (options: In, command: Command) => {
      const steps = await logDraft(await readingCatalog(command), options.in);
      if (options.json) return printJson(steps);
      printLines(
        steps.map(
          s =>
            `${s.commit.slice(0, 8)}  ${s.at.slice(0, 16).replace('T', ' ')}  ${s.by}  ${s.did}${s.undone ? '  (undone)' : ''}${s.why ? `\n          ${s.why.replaceAll('\n', ' ')}` : ''}`,
        ),
      );
    });

  inDraft(draft.command('undo [commit]'))
    .description('Take the last step back, or any other by its commit; later work stays')
    .addHelpText('after', '\nExamples:\n  fishplate draft undo\n  fishplate draft undo 3f9a21c0')
    .action(async (commit: string | undefined, options: In, command: Command) => {
      const report = await undoOperation(portsOf(command), await writingCatalog(command), {
        ...(options.in === undefined ? {} : { draft: options.in }),
        ...(commit === undefined ? {} : { commit }),
      });
      if (options.json) printJson(report);
      else printLines([`Undone: ${report.undone}.`]);
    });

  inDraft(draft.command('diff'))
    .description('The crosswalk in progress: from the edition that the draft replaces to the draft as it stands')
    .option('--out <file.csv>', 'write every link here')
    .addHelpText('after', '\nExample:\n  fishplate draft diff --out progress.csv')
    .action(async (options: In & { out?: string }, command: Command) => {
      const catalog = await readingCatalog(command);
      const { header, branch } = await readDraft(catalog, options.in);
      if (header.replaces === null) {
        throw new CatalogError(
          'NoPath',
          `The draft ${header.name} replaces no edition, so nothing has become of anything.`,
        );
      }
      const name = nameOfBranch(branch.ref);
      const { joint, marks, findings } = await readCrosswalk(catalog, header.replaces, name);
      const statistics = crosswalkStatistics(joint);
      if (options.out !== undefined) {
        const lines = crosswalkLines(joint, marks);
        await realFiles.write(options.out, writeCrosswalkCsv(lines));
        printLines([`${count(lines.length, 'line')} written to ${options.out}.`]);
      }
      if (options.json) printJson(statistics);
      else printLines(statisticsLines(statistics));
      reportFindings(findings);
    });
}

function addMerging(draft: Command): void {
  inDraft(draft.command('branch <name>'))
    .description("Begin somebody's own branch of the draft; work on it with --in NAME")
    .addHelpText(
      'after',
      '\nExample:\n  fishplate draft branch roofs && fishplate draft reword 2.1.1 --text "…" --in roofs',
    )
    .action(async (name: string, options: In, command: Command) => {
      await branchOf(await writingCatalog(command), name, options.in);
      printLines([`The branch ${name} begins where the draft stands; work on it with --in ${name}.`]);
    });

  inDraft(draft.command('merge [branch]'))
    .description("Merge somebody's branch into the draft, item by item")
    .option('--finish', 'in a clone: finish the git merge that is going on there, then git add -A and git commit')
    .option('--ours <item...>', 'in these conflicts, what the draft says holds')
    .option('--theirs <item...>', 'in these conflicts, what the branch says holds')
    .addHelpText(
      'after',
      `
Examples:
  fishplate draft merge roofs
  fishplate draft merge roofs --theirs 2.1.1 --ours 2.1.4
  git merge --no-commit origin/roofs; fishplate draft merge --finish && git add -A && git commit     in a clone

Exit code 1: there are conflicts, and nothing was written.`,
    )
    .action(async (branch: string | undefined, options: MergeOptions, command: Command) => {
      const takes = {
        ...(options.ours ? { ours: options.ours } : {}),
        ...(options.theirs ? { theirs: options.theirs } : {}),
      };
      if (!options.finish && branch === undefined) {
        throw new CatalogError(
          'BadArgument',
          'Name the branch to merge, or say --finish in a clone that is being merged.',
        );
      }
      const into = options.in === undefined ? {} : { into: options.in };
      const report = options.finish
        ? await finishMerge(process.cwd(), takes)
        : await mergeDraft(portsOf(command), await writingCatalog(command), { branch: branch!, ...into, ...takes });
      if (!report.merged) process.exitCode = EXIT.findings;
      if (options.json) return printJson(report);
      if (report.merged) {
        return printLines([
          options.finish
            ? 'Merged by items in the work tree; now: git add -A && git commit'
            : `${branch} is merged into ${tellInto(report)}.`,
        ]);
      }
      printLines([
        `${count(report.conflicts.length, 'conflict')}; nothing was written:`,
        ...report.conflicts.map(c => `  ${c.message}`),
        'Say whose state holds, by the id in brackets, with --ours ID or --theirs ID, and run again.',
      ]);
    });
}

interface MergeOptions extends In {
  readonly ours?: string[];
  readonly theirs?: string[];
  readonly finish?: boolean;
}

function addDriver(draft: Command): void {
  draft
    .command('driver <base> <ours> <theirs>')
    .description('What native git calls to merge one file of a clone; set up once, see the example')
    .addHelpText(
      'after',
      `
Example, in a clone:
  git config merge.fishplate.driver "fishplate draft driver %O %A %B"
  printf '*.json merge=fishplate\n' >> .git/info/attributes

Exit code 1: the file waits for fishplate draft merge --finish.`,
    )
    .action(async (base: string, ours: string, theirs: string, _options: unknown, command: Command) => {
      if (!(await mergeOneFile(portsOf(command), base, ours, theirs))) process.exitCode = EXIT.findings;
    });
}

function inDraft(command: Command): Command {
  return command
    .option('--in <draft>', 'the draft, or a branch of it (default: the only draft)')
    .option('--json', 'as JSON');
}
