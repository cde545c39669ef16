import type { Joint } from '../../crosswalk/joint.ts';
import type { Finding } from '../../model/finding.ts';
import { placesOf } from '../../model/places.ts';
import { openComments } from '../../release/comments.ts';
import { codeName } from '../../release/comments-code.ts';
import { type CommentNow, commentNow, stillAsCirculated } from '../../release/comments-now.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { readJoint } from '../reading/read-crosswalk.ts';
import { type ReadComments, readComments } from './comments-store.ts';

export interface ListRequest {
  readonly edition: string;
  readonly by?: string;
  /** Only those that a release waits for. */
  readonly open?: boolean;
  /** A number of the present draft: comments on it and on what stands below. */
  readonly clause?: string;
}

export interface ListedComments extends ReadComments {
  readonly comments: readonly CommentNow[];
  /** What a release waits for, of all comments and not only of those that are listed. */
  readonly open: readonly Finding[];
}

/** The comments on a draft, each with the place where its clause stands today. */
export async function listComments(catalog: Catalog, request: ListRequest): Promise<ListedComments> {
  const read = await readComments(catalog, request.edition);
  const index = await readIndex(catalog, read.edition);
  const present = { name: read.edition, places: placesOf(index.settings, index.entries) };
  const { replaces } = index.header;
  const steps = new Map<string, Joint>();
  const cited = new Set(read.records.flatMap(r => r.items.map(i => i.edition)));
  if (replaces !== null) cited.add(replaces);
  cited.delete(read.edition);
  for (const edition of cited) steps.set(edition, (await readJoint(catalog, edition, read.edition)).joint);
  const open = [
    ...openComments(read.records),
    ...read.records.flatMap(r => stillAsCirculated(r, id => present.places.get(id)?.hash)),
  ];
  const waiting = new Set(open.map(f => f.subject));
  const below = (id: string) => [id, ...present.places.ancestors(id).map(a => a.id)];
  const comments = read.records
    .map(r => commentNow(r, present, edition => steps.get(edition), replaces))
    .filter(({ record, now }) => {
      if (request.open && !waiting.has(record.code)) return false;
      if (request.by !== undefined && codeName(record.by) !== codeName(request.by)) return false;
      const wanted = request.clause;
      return wanted === undefined || now.some(e => below(e.id).some(id => present.places.get(id)?.number === wanted));
    });
  return { ...read, comments, open };
}
