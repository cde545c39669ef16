import { textHash } from '../../drafting/answers.ts';
import { commentsFolder } from '../../format/comment-files.ts';
import { type CommentRecord, DISPOSITIONS, type Disposition } from '../../model/comment.ts';
import type { EditionHeader } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId } from '../../model/item.ts';
import { counted } from '../../model/said-words.ts';
import { writeZip } from '../../office/write-zip.ts';
import { TOLD } from '../../release/comments.ts';
import { listEditions, locate, mainCommit } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readEdition } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { inTurn } from '../in-turn.ts';
import type { Person } from '../people.ts';
import { heldFiles } from '../ports/held-files.ts';
import type { Ports } from '../ports/ports.ts';
import { boundUpload, type Upload } from '../ports/upload-bounds.ts';
import { remember } from '../remember.ts';
import { answerComment } from './comments-answer.ts';
import { openForm } from './comments-files.ts';
import { type ListedComments, listComments } from './comments-list.ts';
import { type PackReport, packDraft } from './comments-pack.ts';
import { type ReadFormsReport, readForms } from './comments-read.ts';
import { replyToComments } from './comments-reply.ts';
import { commentCoded, readComments } from './comments-store.ts';
import { type WriteFormReport, writeForm } from './comments-write.ts';

/** An answer as somebody types it; an empty field says nothing. */
export interface TypedAnswer {
  readonly disposition: string;
  readonly because: string;
  /** Number or id of the item whose text answers the comment, or a commit. */
  readonly change: string;
  /** What an unplaced comment is about: a number. */
  readonly about: string;
  /** The key of the answer that stood on the page, so that nobody replaces one that they have not seen. */
  readonly seen: string;
}

/** The comments on one draft or edition, with the texts that their clauses have there now. */
export interface DeskComments extends ListedComments {
  readonly header: EditionHeader;
  readonly items: ReadonlyMap<ItemId, Item>;
  /** The commit of the draft or edition as it stands. */
  readonly commit: string;
}

/** The committee's comments, for the people who work them off while a viewer runs. */
export interface CommentsDesk {
  /** Published editions with comments. */
  commented(): Promise<readonly string[]>;
  list(edition: string): Promise<DeskComments>;
  /** Throws BadArgument, in words for a page, where the answer cannot be kept. */
  answer(edition: string, code: string, typed: TypedAnswer, by: Person): Promise<void>;
  /** Throws BadFile, BadTable. */
  read(edition: string, form: Upload, how: ReadHow, by: Person): Promise<ReadFormsReport>;
  /** The same form with codes and answers under its observations. */
  fill(edition: string, form: Upload, commenter: string): Promise<WriteFormReport & { readonly bytes: Uint8Array }>;
  /** The draft for its reviewers, documents and workbooks in one zip; the round is put on record unless it was before. */
  pack(edition: string, each: boolean, by: Person): Promise<PackReport & { readonly bytes: Uint8Array }>;
  /** One commenter's comments with their answers, as a document or a table. */
  reply(edition: string, commenter: string, format: 'docx' | 'csv'): Promise<Uint8Array>;
}

export interface ReadHow {
  /** Who comments, where the form does not say so. */
  readonly commenter: string;
  readonly withObservations: boolean;
}

const MOST = 4;

export function commentsDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): CommentsDesk {
  const quiet = { ...ports, progress: () => {} };
  const signed = (by: Person) => ({ ...quiet, author: { name: by.name, email: by.address } });
  const lists = remember(MOST, async (key: string): Promise<DeskComments> => {
    const [edition, commit] = JSON.parse(key) as [string, string];
    const [listed, { header, items }] = [await listComments(reading, { edition }), await readEdition(reading, edition)];
    return { ...listed, header, items: new Map(items.map(i => [i.id, i])), commit };
  });
  const commented = remember(1, async () => {
    const names: string[] = [];
    for (const { name } of await listEditions(reading)) {
      if ((await readBeside(reading, commentsFolder(name))).size > 0) names.push(name);
    }
    return names;
  });
  const turn = inTurn();
  return {
    commented: async () => commented((await mainCommit(reading)) ?? ''),
    list: async edition =>
      lists(JSON.stringify([edition, (await locate(reading, edition)).commit, await mainCommit(reading)])),
    answer: (edition, code, typed, by) =>
      turn(async () => {
        const catalog = await writing();
        const before = commentCoded(await readComments(catalog, edition), code);
        await inWordsOfAPage(typed, answerComment(signed(by), catalog, requestOf(edition, before, typed)));
      }),
    read: (edition, form, { commenter, withObservations }, by) =>
      turn(async () => {
        const { name, bytes } = boundForm(form);
        const held = heldFiles([[name, bytes]]);
        const how = { ...(commenter ? { by: commenter } : {}), withObservations };
        const request = { files: [name], edition, ...how };
        return readForms({ ...signed(by), files: held.files }, await writing(), request);
      }),
    fill: async (edition, form, commenter) => {
      const { name, bytes } = boundForm(form);
      const { files, held } = heldFiles([[name, bytes]]);
      const out = `answered ${name}`;
      const request = { form: name, out, edition, ...(commenter ? { by: commenter } : {}) };
      const report = await writeForm({ ...quiet, files }, reading, request);
      return { ...report, bytes: held.get(out)! };
    },
    pack: (edition, each, by) =>
      turn(async () => {
        const { files, held } = heldFiles([]);
        const request = { draft: edition, out: '.', each };
        const report = await packDraft({ ...signed(by), files }, await writing(), request);
        return { ...report, bytes: writeZip(new Map(report.files.map(name => [name, held.get(name)!]))) };
      }),
    reply: async (edition, by, format) => {
      const { files, held } = heldFiles([]);
      const { files: made } = await replyToComments({ ...quiet, files }, reading, { edition, by, format, out: '.' });
      if (made[0] !== undefined) return held.get(made[0])!;
      throw new CatalogError('UnknownItem', `${by} has not commented on ${edition}; choose one of the list.`);
    },
  };
}

const MOST_ROWS = 5000;

/** A form that is read while others wait: bounded as a file, and in its rows, each of which becomes a record. */
function boundForm(form: Upload): Upload {
  const bounded = boundUpload(form);
  const rows = openForm(bounded.name, bounded.bytes).grids.reduce((sum, grid) => sum + grid.rows.length, 0);
  if (rows <= MOST_ROWS) return bounded;
  throw new CatalogError(
    'BadFile',
    `${bounded.name} has ${counted(rows, 'row')}, and a page reads ${counted(MOST_ROWS, 'row')} at most; split it, or read it with: fishplate comments read`,
    { path: bounded.name },
  );
}

/** Changes with the answer: what is sent back with a form says which one its page has shown. */
export function answerKey({ answer }: Pick<CommentRecord, 'answer'>): string {
  return answer ? textHash(JSON.stringify(answer)).slice(0, 8) : '';
}

function requestOf(edition: string, before: CommentRecord, typed: TypedAnswer) {
  const { code, answer } = before;
  const { because, change, about, seen } = typed;
  const disposition = DISPOSITIONS.find(d => d === typed.disposition);
  if (answer && answerKey(before) !== seen) {
    throw new CatalogError(
      'BadArgument',
      `${code} was answered meanwhile by ${nameIn(answer.by)}: ${TOLD[answer.disposition]}. ${answer.because} Read that first; nothing was replaced.`,
    );
  }
  if (disposition === undefined && !answer && (because || change || !about)) {
    throw new CatalogError('BadArgument', `Say what becomes of ${code}: choose one of the four answers.`);
  }
  if (disposition !== undefined && disposition !== 'accepted' && !because) {
    throw new CatalogError('BadArgument', `Give the reason why ${code} is ${TOLD[disposition].toLowerCase()}.`);
  }
  if (disposition === undefined && !change && !about) {
    throw new CatalogError('BadArgument', `Nothing new is said about ${code}; choose an answer, or name an item.`);
  }
  return {
    edition,
    code,
    ...(disposition === undefined ? {} : { disposition: disposition as Disposition, because }),
    ...(change ? { change } : {}),
    ...(about ? { about } : {}),
    again: true,
  };
}

/** A number that is not found is told with the nearest ones, and without the options of the command line. */
async function inWordsOfAPage(typed: TypedAnswer, work: Promise<unknown>): Promise<void> {
  try {
    await work;
  } catch (error) {
    if (!(error instanceof CatalogError && (error.code === 'UnknownNumber' || error.code === 'BadArgument')))
      throw error;
    const near = Array.isArray(error.data.near) ? (error.data.near as string[]) : undefined;
    const told = !near
      ? error.message.replace(/; name another after --about\.$/, '; name another.')
      : `There is no item ${typed.change} and no such commit${near.length > 0 ? `; the nearest numbers are ${near.join(', ')}.` : '; look its number up first.'}`;
    throw new CatalogError('BadArgument', told, error.data);
  }
}

/** Who, without the address. */
export const nameIn = (by: string) => by.replace(/ *<[^<>]*>$/, '');
