import type { ItemId } from '../model/item.ts';

/** The addresses of the viewer. Numbers and ids may hold anything, so each part is encoded by itself. */
const path = (...parts: readonly string[]) => `/${parts.map(encodeURIComponent).join('/')}`;

export type Query = readonly (readonly [key: string, value: string])[];

const withQuery = (address: string, query: Query) =>
  query.length === 0
    ? address
    : `${address}?${query.map(([k, v]) => `${encodeURIComponent(k)}=${encodeURIComponent(v)}`).join('&')}`;

export const searchLink = (query: string) => withQuery('/search', [['q', query]]);
export const editionLink = (edition: string, query: Query = []) => withQuery(path('edition', edition), query);
export const partLink = (edition: string, id: ItemId, query: Query = []) =>
  withQuery(path('edition', edition, 'part', id), query);
/** The stable address of a number in an edition. */
export const numberLink = (edition: string, number: string) => path('at', edition, number);
export const itemLink = (id: ItemId, edition?: string) =>
  withQuery(path('item', id), edition === undefined ? [] : [['in', edition]]);
/** Where the form for a note about an item leads. */
export const noteLink = (id: ItemId, edition: string) => withQuery(path('item', id, 'notes'), [['in', edition]]);
export const crosswalkLink = (from: string, to: string, query: Query = []) =>
  withQuery(path('crosswalk', from, to), query);
export const crosswalkCsvLink = (from: string, to: string, query: Query = []) =>
  withQuery(path('crosswalk', from, to, 'lines.csv'), query);

export const briefingLink = (from: string, to: string) => path('briefing', from, to);
/** Lines of the crosswalk on whose page it stands: a table of counts has hundreds of them, each with one path. */
export const linesLink = (query: Query) => `${withQuery('', query)}#lines`;
export const lossesLink = (from: string, to: string, query: Query = []) => withQuery(path('losses', from, to), query);
export const lossesCsvLink = (from: string, to: string, query: Query = []) =>
  withQuery(path('losses', from, to, 'lines.csv'), query);
/** Where the forms of one loss lead. */
export const lossLink = (from: string, to: string, rest: string, query: Query = []) =>
  withQuery(`${path('losses', from, to)}/${rest}`, query);

export const deskLink = (...draft: readonly string[]) => path('desk', ...draft);
export const reviewLink = (draft: string, query: Query = []) => withQuery(path('desk', draft, 'review'), query);
/** Where the form of one question about an item leads. */
export const answerLink = (draft: string, item: ItemId, question: string, query: Query = []) =>
  withQuery(path('desk', draft, 'review', item, question), query);

export const commentsLink = (edition: string, query: Query = []) => withQuery(path('desk', edition, 'comments'), query);
/** Where the form of one comment leads. */
export const commentLink = (edition: string, code: string, query: Query = []) =>
  withQuery(path('desk', edition, 'comments', 'answer', code), query);
export const commentFormsLink = (edition: string) => path('desk', edition, 'comments', 'forms');
/** Where the draft is packed for its reviewers. */
export const packLink = (edition: string) => path('desk', edition, 'comments', 'pack');
export const replyLink = (edition: string, by: string, format: string) =>
  withQuery(path('desk', edition, 'comments', 'reply', format), [['by', by]]);

export const intakeLink = (edition: string, query: Query = []) => withQuery(path('desk', edition, 'intake'), query);
export const intakeCsvLink = (edition: string, query: Query = []) =>
  withQuery(path('desk', edition, 'intake', 'lines.csv'), query);

/** What publishing a draft would do; and, once it is done, where the edition is. */
export const publishLink = (draft: string) => path('desk', draft, 'publish');
export const publishedLink = (edition: string) => path('desk', edition, 'published');

/** What was done to a draft, and the way to its items. */
export const workLink = (draft: string, query: Query = []) => withQuery(path('desk', draft, 'work'), query);
export const findLink = (draft: string) => path('desk', draft, 'find');
export const undoLink = (draft: string, commit: string) => path('desk', draft, 'undo', commit);
/** An item of a draft, where it is worked on. */
export const workItemLink = (draft: string, id: ItemId, query: Query = []) =>
  withQuery(path('desk', draft, 'item', id), query);
export const operationLink = (draft: string, id: ItemId, operation: string) =>
  path('desk', draft, 'item', id, operation);
/** The form of something that is done to a draft as a whole. */
export const wholeLink = (draft: string, operation: string) => path('desk', draft, operation);
export const daysLink = (draft: string) => wholeLink(draft, 'days');
/** Somebody's own branches of a draft, and what merging one would do. */
export const branchesLink = (draft: string, query: Query = []) => withQuery(path('desk', draft, 'branches'), query);
export const mergeLink = (into: string, branch: string) => path('desk', into, 'branches', branch);
/** Old items that do not stand in a draft, and the forms of what can be done to one. */
export const leftLink = (draft: string, query: Query = []) => withQuery(path('desk', draft, 'left'), query);
export const leftOperationLink = (draft: string, id: ItemId, operation: string) =>
  path('desk', draft, 'left', id, operation);

/** The address of an item as it stands in an edition: by its number where it has one, since people read addresses out. */
export const placeLink = (edition: string, entry: { readonly number: string; readonly id: ItemId }, shared = false) =>
  entry.number === '' || shared || /^\.{1,2}$/.test(entry.number)
    ? itemLink(entry.id, edition)
    : numberLink(edition, entry.number);

/** An address of ours with more of a query. */
export const extendLink = (address: string, query: Query) => {
  const [path = '', known = ''] = address.split('?');
  return known === '' ? withQuery(path, query) : `${path}?${known}&${withQuery('', query).slice(1)}`;
};

/** An id that is safe and unique as the anchor of an element. */
export const anchorOf = (id: ItemId) => `i-${encodeURIComponent(id).replace(/%/g, '~')}`;
