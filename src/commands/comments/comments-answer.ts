import { commentPath, writeComment } from '../../format/comment-files.ts';
import type { AnsweringChange, CommentRecord, Disposition } from '../../model/comment.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { openComments } from '../../release/comments.ts';
import { placeComment } from '../../release/comments-clause.ts';
import { stillAsCirculated } from '../../release/comments-now.ts';
import { findCommit } from '../../store/find-commit.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { nearestNames } from '../../text/nearest.ts';
import { type Ports, person } from '../ports/ports.ts';
import { citedEditions } from './comments-read.ts';
import { authorText, commentCoded, readComments } from './comments-store.ts';

export interface AnswerRequest {
  readonly edition: string;
  readonly code: string;
  /** May be left out where the comment is answered already and only the change is told. */
  readonly disposition?: Disposition;
  readonly because?: string;
  /** A commit of the draft, or the number or id of the item whose text answers the comment. */
  readonly change?: string;
  /** Places a comment whose clause was not found: a number of the draft, or `2018 2.1.3`. */
  readonly about?: string;
  /** Replace an answer that was given before; git keeps it. */
  readonly again?: boolean;
}

/** Keeps the committee's answer to a comment, and the change that it led to. */
export async function answerComment(
  ports: Ports,
  catalog: Catalog,
  request: AnswerRequest,
): Promise<{ readonly record: CommentRecord; readonly findings: readonly Finding[] }> {
  const read = await readComments(catalog, request.edition);
  const before = commentCoded(read, request.code);
  const { edition } = read;
  const placed = request.about === undefined ? before : await placedAt(catalog, before, request.about);
  const change = request.change === undefined ? undefined : await changeNamed(catalog, edition, request.change);
  const answer = answered(ports, before, request);
  if (!answer && change) {
    throw new CatalogError('BadArgument', `${before.code} is not answered yet; add --disposition and --because.`);
  }
  const record: CommentRecord = {
    ...placed,
    ...(answer ? { answer: change ? { ...answer, change } : answer } : {}),
  };
  const message = request.disposition ? `${record.code}: ${request.disposition}` : `${record.code}: completed`;
  const written = { path: commentPath(record), before: writeComment(before), after: writeComment(record) };
  await changeBeside(catalog, [written], person(ports), message);
  const hashes = new Map((await readIndex(catalog, edition)).entries.map(e => [e.id, e.hash]));
  return { record, findings: [...openComments([record]), ...stillAsCirculated(record, id => hashes.get(id))] };
}

function answered(
  ports: Ports,
  { code, answer: before }: CommentRecord,
  { disposition, because, change, about, again }: AnswerRequest,
): CommentRecord['answer'] {
  if (disposition === undefined) {
    if (because !== undefined) throw new CatalogError('BadArgument', `Say what became of ${code}: add --disposition.`);
    if (change === undefined && about === undefined) {
      throw new CatalogError(
        'BadArgument',
        `There is nothing to keep about ${code}; add --disposition and --because, --change or --about.`,
      );
    }
    return before;
  }
  if (before && !again) {
    throw new CatalogError(
      'BadArgument',
      `${code} was answered on ${before.date} by ${before.by}: ${before.disposition}; add --again to replace that.`,
      { code },
    );
  }
  if (disposition !== 'accepted' && (because ?? '').trim() === '') {
    throw new CatalogError('BadArgument', `Give the reason why ${code} is ${disposition}: add --because TEXT.`, {
      code,
    });
  }
  return {
    disposition,
    because: (because ?? '').trim(),
    by: authorText(ports),
    date: dayOf(ports.now()),
  };
}

/** An item of the draft by its number or id, else a commit that the draft rests on. */
async function changeNamed(catalog: Catalog, edition: string, said: string): Promise<AnsweringChange> {
  const { entries } = await readIndex(catalog, edition);
  const found = entries.filter(e => e.number === said || e.id === said);
  if (found.length > 1) {
    throw new CatalogError('UnknownNumber', `${edition} prints ${said} for ${found.length} items; name one by its id.`);
  }
  if (found[0]) return { item: found[0].id, number: found[0].number, hash: found[0].hash };
  if (/^[0-9a-f]{7,40}$/i.test(said)) return { commit: await findCommit(catalog, edition, said) };
  const near = nearestNames(
    said,
    entries.map(e => e.number),
  );
  throw new CatalogError(
    'UnknownNumber',
    `${edition} has no item ${said}, and it is no commit; ${near.length > 0 ? `the nearest numbers are ${near.join(', ')}.` : 'look for words with: fishplate search'}`,
    { change: said, near },
  );
}

async function placedAt(catalog: Catalog, record: CommentRecord, about: string): Promise<CommentRecord> {
  // What a person says now is said of the draft as it is now, not of the one that was circulated.
  const { draft, others } = await citedEditions(catalog, record.edition, undefined);
  const placed = placeComment({ clause: about, line: '' }, draft, others);
  if ('because' in placed) throw new CatalogError('UnknownNumber', `${placed.because}; name another after --about.`);
  const { unplaced: _, ...rest } = record;
  return { ...rest, items: placed.items };
}
