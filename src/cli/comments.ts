import { type Command, InvalidArgumentError } from 'commander';
import { CatalogError } from '../model/errors.ts';
import { listDrafts, locate } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

const DISPOSITIONS = ['accepted', 'accepted-in-part', 'not-accepted', 'noted'] as const;

/** The committee round of a draft: sent out, commented on, answered. */
export function addComments(program: Command): void {
  const comments = program.command('comments').description('Committee comments on a draft: read, answer, give back');

  comments
    .command('read')
    .description('Read comment forms as reviewers return them (xlsx, docx, csv), and give each comment its code')
    .argument('<form...>', 'forms by the ISO/IEC comment template; the head is found by what it says')
    .requiredOption('--edition <draft>', 'the draft or edition that they comment on')
    .option('--by <name>', 'who comments (MB/NC), where a form does not say so')
    .option('--round <n>', 'which circulation the forms speak of (default: the newest)', whole)
    .option('--with-observations', "the forms are the secretariat's own: take its observations as answers")
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate comments read UVA.docx LVA.xlsx --edition 2030
  fishplate comments read owners.csv --edition 2030 --by OWN

Reading a form again adds nothing. A clause that is not in the draft is told and never guessed: the comment is kept
unplaced until comments answer CODE --about NUMBER. Exit code 1: done, and something has to be looked at.`,
    )
    .action(async (files: string[], options: ReadOptions, command: Command) => {
      const { readForms } = await import('../commands/comments/comments-read.ts');
      const { json, ...request } = options;
      const report = await readForms(portsOf(command), await writingCatalog(command), { files, ...request });
      if (json) printJson(report);
      else {
        const { added, mended, known, answered, edition } = report;
        const codes = added.map(r => r.code);
        printLines([
          `${count(added.length, 'comment')} on ${edition} read${codes.length > 0 ? `: ${codes.slice(0, 12).join(', ')}${codes.length > 12 ? ' …' : ''}` : ''}.`,
          ...(known > 0
            ? [
                `${count(known, 'was', 'were')} on record already${mended.length > 0 ? `, ${mended.length} of them completed` : ''}.`,
              ]
            : []),
          ...(answered > 0 ? [`${answered} are answered by their observations.`] : []),
        ]);
      }
      reportFindings(report.findings);
    });

  comments
    .command('list')
    .description('The comments on a draft, each with the number that its clause has today')
    .option('--edition <draft>', 'default: the only one with comments')
    .option('--open', 'only those that a release waits for')
    .option('--by <name>', 'of one commenter')
    .option('--clause <number>', 'on this number of the draft as it is today, and below')
    .option('--json', 'as JSON')
    .addHelpText('after', '\nExample:\n  fishplate comments list --edition 2030 --open')
    .action(async (options: ListOptions, command: Command) => {
      const { listComments } = await import('../commands/comments/comments-list.ts');
      const { commentedEdition } = await import('../commands/comments/comments-store.ts');
      const { tellComments } = await import('../commands/comments/comments-tell.ts');
      const catalog = await readingCatalog(command);
      const { json, edition: asked, ...filter } = options;
      const edition = await commentedEdition(catalog, asked);
      const listed = await listComments(catalog, { edition, ...filter });
      if (json) {
        const { comments: all, open, findings } = listed;
        printJson({ edition, comments: all.map(({ record, ...now }) => ({ ...record, ...now })), open, findings });
      } else printLines(tellComments(listed));
      reportFindings(listed.findings);
    });

  comments
    .command('answer')
    .description("Keep the committee's answer to a comment, and the change that it led to")
    .argument('<code>', 'e.g. UVA-002')
    .option('--edition <draft>', 'default: the only one with comments')
    .option('--disposition <word>', DISPOSITIONS.join(', '))
    .option('--because <text>', 'the reason, as the commenter will read it')
    .option('--change <commit|number>', 'the commit of the draft, or the item, that answers it')
    .option('--about <number>', 'what it is about, where its clause was not found')
    .option('--again', 'replace the answer given before')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate comments answer UVA-002 --disposition not-accepted --because "Compaction was found below 150 mm."
  fishplate comments answer LVA-003 --disposition accepted --change 2.1.1.1`,
    )
    .action(async (code: string, options: AnswerOptions, command: Command) => {
      const { answerComment } = await import('../commands/comments/comments-answer.ts');
      const { commentedEdition } = await import('../commands/comments/comments-store.ts');
      const { observationOf } = await import('../release/comments.ts');
      const { json, edition: asked, disposition, ...rest } = options;
      const word = DISPOSITIONS.find(d => d === disposition);
      if (disposition !== undefined && word === undefined) {
        throw new CatalogError(
          'BadArgument',
          `${disposition} is no disposition; use one of: ${DISPOSITIONS.join(', ')}.`,
        );
      }
      const catalog = await writingCatalog(command);
      const edition = await commentedEdition(catalog, asked);
      const { record, findings } = await answerComment(portsOf(command), catalog, {
        edition,
        code,
        ...rest,
        ...(word ? { disposition: word } : {}),
      });
      if (json) printJson(record);
      else printLines([observationOf(record)]);
      reportFindings(findings.filter(f => f.rule !== 'comment-open'));
    });

  comments
    .command('write')
    .description("Put codes and answers into the reviewer's own form; nothing else in it changes")
    .argument('<form>', 'as the reviewer returned it')
    .requiredOption('--out <file>', 'the filled-in form, of the same kind')
    .option('--edition <draft>', 'default: the only one with comments')
    .option('--by <name>', 'as it was read with')
    .addHelpText('after', '\nExample:\n  fishplate comments write UVA.docx --edition 2030 --out UVA-answered.docx')
    .action(async (form: string, options: { out: string; edition?: string; by?: string }, command: Command) => {
      const { writeForm } = await import('../commands/comments/comments-write.ts');
      const { commentedEdition } = await import('../commands/comments/comments-store.ts');
      const catalog = await readingCatalog(command);
      const edition = await commentedEdition(catalog, options.edition);
      const report = await writeForm(portsOf(command), catalog, { form, ...options, edition });
      printLines([`${count(report.comments, 'comment')} in ${options.out}, ${report.answered} of them answered.`]);
      reportFindings(report.findings);
    });

  comments
    .command('reply')
    .description('One reply for each commenter: each comment, its answer, and where its clause stands today')
    .requiredOption('--out <dir>', 'folder for the replies')
    .option('--edition <draft>', 'default: the only one with comments')
    .option('--by <name>', 'only to this commenter')
    .option('--csv', 'as csv instead of Word documents')
    .addHelpText('after', '\nExample:\n  fishplate comments reply --edition 2030 --out replies')
    .action(async ({ csv, edition: asked, ...options }: ReplyOptions, command: Command) => {
      const { replyToComments } = await import('../commands/comments/comments-reply.ts');
      const { commentedEdition } = await import('../commands/comments/comments-store.ts');
      const catalog = await readingCatalog(command);
      const edition = await commentedEdition(catalog, asked);
      const report = await replyToComments(portsOf(command), catalog, {
        ...options,
        edition,
        format: csv ? 'csv' : 'docx',
      });
      printLines([
        `${count(report.files.length, 'reply', 'replies')} in ${options.out}.`,
        ...(report.open > 0 ? [`${count(report.open, 'comment')} in them not answered yet.`] : []),
        ...(report.unplaced.length > 0
          ? [
              `${report.unplaced.join(', ')} ${report.unplaced.length === 1 ? 'names' : 'name'} a clause that was not found; say what is meant with: comments answer CODE --about NUMBER`,
            ]
          : []),
      ]);
    });

  comments
    .command('pack')
    .description(
      'Write a draft for its reviewers (docx and xlsx), lines numbered, old texts beside the new, and keep it',
    )
    .argument('<draft>', 'the draft, or an edition')
    .requiredOption('--out <dir>', 'folder for the files')
    .option('--part <number>', 'only what concerns this part')
    .option('--published', 'comments on an edition that is published already, for the one after it')
    .option('--each', 'the whole, and a pair of files for each part')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Example:
  fishplate comments pack 2030 --out round-1 --each

Reviewers cite lines or clauses; what each meant is kept in the catalog, so that comments are found again when numbers
move. Every sheet of the workbook, and two tables of the document, can be filled in and read with comments read.`,
    )
    .action(async (draft: string, { json, ...options }: PackOptions, command: Command) => {
      const { packDraft } = await import('../commands/comments/comments-pack.ts');
      const catalog = await writingCatalog(command);
      const { published, ...request } = options;
      if (!published) await refusePublished(catalog, draft);
      const report = await packDraft(portsOf(command), catalog, { draft, ...request });
      if (json) return printJson(report);
      printLines([
        `${count(report.files.length, 'file')} in ${options.out}: ${count(report.lines, 'line')}, ${count(report.withdrawn, 'withdrawal')}.`,
        report.again
          ? `${draft} was sent out like this before, in round ${report.round}.`
          : `Round ${report.round} is on record.`,
      ]);
    });
}

/** A draft and the edition before it differ by a digit; a round of the wrong one would stay on record. */
async function refusePublished(catalog: Catalog, name: string): Promise<void> {
  if ((await locate(catalog, name)).state !== 'published') return;
  const drafts = await listDrafts(catalog);
  throw new CatalogError(
    'BadArgument',
    `${name} is published, so comments change it no more; ${drafts.length > 0 ? `name a draft (${drafts.join(', ')})` : 'open a draft with: fishplate draft open NAME'}, or add --published to collect comments for the edition after it.`,
  );
}

function whole(text: string): number {
  const n = Number(text);
  if (!Number.isInteger(n) || n < 1) throw new InvalidArgumentError('Give a whole number from 1.');
  return n;
}

interface ReadOptions {
  readonly edition: string;
  readonly by?: string;
  readonly round?: number;
  readonly withObservations?: boolean;
  readonly json?: boolean;
}

interface ListOptions {
  readonly edition?: string;
  readonly open?: boolean;
  readonly by?: string;
  readonly clause?: string;
  readonly json?: boolean;
}

interface AnswerOptions {
  readonly edition?: string;
  readonly disposition?: string;
  readonly because?: string;
  readonly change?: string;
  readonly about?: string;
  readonly again?: boolean;
  readonly json?: boolean;
}

interface ReplyOptions {
  readonly out: string;
  readonly edition?: string;
  readonly by?: string;
  readonly csv?: boolean;
}

interface PackOptions {
  readonly out: string;
  readonly part?: string;
  readonly each?: boolean;
  readonly published?: boolean;
  readonly json?: boolean;
}
