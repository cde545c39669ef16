import type { ItemId } from './item.ts';

/** General, technical, editorial: the types of the ISO/IEC comment template. */
export const COMMENT_TYPES = ['ge', 'te', 'ed'] as const;
export type CommentType = (typeof COMMENT_TYPES)[number];

export const DISPOSITIONS = ['accepted', 'accepted-in-part', 'not-accepted', 'noted'] as const;
export type Disposition = (typeof DISPOSITIONS)[number];

/** An item that a comment is about, as it stood where the comment was read against it. */
export interface CommentedItem {
  /** The circulated draft, or the older edition that the comment names. */
  readonly edition: string;
  readonly id: ItemId;
  readonly number: string;
  /** Content hash; it shows whether the text has changed since. */
  readonly hash: string;
}

/** What was done about an accepted comment: a commit, or an item of the draft whose text answers it. */
export type AnsweringChange =
  | { readonly commit: string }
  | { readonly item: ItemId; readonly number: string; readonly hash: string };

export interface CommentAnswer {
  readonly disposition: Disposition;
  readonly because: string;
  /** `Name <address>`. */
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  readonly change?: AnsweringChange;
}

/** One comment of a committee member on a draft. Kept under `comments/<edition>/<code>.json` on `main`. */
export interface CommentRecord {
  /** The commenter and a running number: `UVA-001`. */
  readonly code: string;
  readonly edition: string;
  /** Of which circulation of the draft it speaks, from 1; absent where none was recorded. */
  readonly round?: number;
  /** MB/NC: the member body, committee or person, as the form says it. */
  readonly by: string;
  readonly line?: string;
  /** As the form says it; absent for a comment on the whole. */
  readonly clause?: string;
  readonly paragraph?: string;
  /** Absent where the form gives none of the three. */
  readonly type?: CommentType;
  readonly comment: string;
  readonly proposed?: string;
  /** What the reviewer's form had under the observations already; no answer by itself. */
  readonly observation?: string;
  /** What the clause meant when the comment was read; empty for the whole, or where the clause was not found. */
  readonly items: readonly CommentedItem[];
  /** The clause, or the line, names nothing in the draft: a person has to place it. */
  readonly unplaced?: true;
  readonly answer?: CommentAnswer;
}

/** A draft as it was sent out for comment: which line and clause meant which item. */
export interface Circulation {
  readonly edition: string;
  readonly round: number;
  /** The commit that was sent out. */
  readonly commit: string;
  readonly date: string;
  readonly items: readonly CirculatedItem[];
}

export interface CirculatedItem {
  readonly id: ItemId;
  readonly number: string;
  readonly level: number;
  readonly hash: string;
  /** Its first and last line in the numbered draft. */
  readonly first: number;
  readonly last: number;
}
