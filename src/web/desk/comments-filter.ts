import { nameIn } from '../../commands/comments/comments-desk.ts';
import type { ListedComments } from '../../commands/comments/comments-list.ts';
import type { CommentNow } from '../../release/comments-now.ts';
import type { Query } from '../links.ts';

/** Which comments are shown. An empty value lets everything through, but for the state: that is what is to do. */
export interface CommentsFilter {
  readonly state: string;
  /** `ge`, `te`, `ed`, or `none` for those without a type. */
  readonly type: string;
  /** The commenter, as their form says it. */
  readonly by: string;
  /** Id of an item: comments whose clause stands there now. */
  readonly item: string;
}

interface Option {
  readonly value: string;
  readonly word: string;
  readonly chosen: boolean;
}

const STATES: readonly (readonly [string, string])[] = [
  ['todo', 'what is to do'],
  ['open', 'not answered'],
  ['answered', 'answered'],
  ['all', 'all of them'],
];

export const TYPE_WORDS: Readonly<Record<string, string>> = {
  ge: 'general',
  te: 'technical',
  ed: 'editorial',
  none: 'without a type',
};

export function filterComments(listed: ListedComments, filter: CommentsFilter): CommentNow[] {
  const waiting = new Set(listed.open.map(f => f.subject));
  const state = stateOf(filter);
  return listed.comments.filter(({ record, now }) => {
    if (filter.type !== '' && (record.type ?? 'none') !== filter.type) return false;
    if (filter.by !== '' && record.by !== filter.by) return false;
    if (filter.item !== '' && !now.some(e => e.id === filter.item)) return false;
    if (state === 'all') return true;
    return state === 'todo' ? waiting.has(record.code) : (state === 'answered') === (record.answer !== undefined);
  });
}

export const stateOf = ({ state }: CommentsFilter) => (STATES.some(([value]) => value === state) ? state : 'todo');

export function commentsQuery(filter: CommentsFilter): Query {
  return (['state', 'type', 'by', 'item'] as const).flatMap(key =>
    filter[key] === '' ? [] : [[key, filter[key]] as const],
  );
}

/** An item is chosen on its own page. */
export type CommentsOptions = { readonly [K in Exclude<keyof CommentsFilter, 'item'>]: readonly Option[] };

/** What can be chosen, with how many comments each would show beside the other choices. */
export function commentsOptions(listed: ListedComments, filter: CommentsFilter): CommentsOptions {
  const options = (key: keyof CommentsFilter, choices: readonly (readonly [string, string])[], chosen: string) =>
    choices.map(([value, word]) => ({
      value,
      word: `${word} (${filterComments(listed, { ...filter, [key]: value }).length.toLocaleString('en')})`,
      chosen: value === chosen,
    }));
  const types = [...new Set(listed.records.map(r => r.type ?? 'none'))];
  const people = [...new Set(listed.records.map(r => r.by))].sort();
  return {
    state: options('state', STATES, stateOf(filter)),
    type: options(
      'type',
      Object.entries(TYPE_WORDS).filter(([value]) => types.includes(value as 'ge')),
      filter.type,
    ),
    by: options(
      'by',
      people.map(by => [by, nameIn(by)] as const),
      filter.by,
    ),
  };
}
