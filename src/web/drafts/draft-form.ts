import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { WrittenOperation } from '../../commands/drafts/draft-operations.ts';
import { isDay } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item } from '../../model/item.ts';
import { valuesOf } from '../query-values.ts';

/** One question of a form, with what stands in it. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly kind: 'line' | 'text' | 'date' | 'choice' | 'ticks';
  /** Several only for ticks. */
  readonly value: readonly string[];
  /** Neighbours of one group stand together under its name. */
  readonly options?: readonly { readonly value: string; readonly word: string; readonly group?: string }[];
  readonly required?: boolean;
  readonly rows?: number;
}

/** What somebody typed, by the field's name. */
export type Typed = Readonly<Record<string, readonly string[]>>;

/** A form for one operation on an item: what it asks, and the operation that the answers make. */
export interface OperationForm {
  /** The operation in one word, as a link and a heading say it. */
  readonly word: string;
  /** What it does, in one sentence. */
  readonly says: string;
  /** Absent: it can be done to every item. */
  readonly fits?: (draft: DeskDraft, item: Item) => boolean;
  readonly fields: (draft: DeskDraft, item: Item) => readonly Field[];
  /** Throws BadArgument, in words for whoever fills the form in. */
  readonly operation: (draft: DeskDraft, item: Item, typed: Typed) => WrittenOperation;
}

/** A form for one operation on a draft as a whole. */
export interface DraftForm {
  readonly word: string;
  readonly says: string;
  readonly heading: (name: string) => string;
  /** Absent: it can be done to every draft. */
  readonly fits?: (draft: DeskDraft) => boolean;
  readonly fields: (draft: DeskDraft) => readonly Field[];
  /** Throws BadArgument, in words for whoever fills the form in. */
  readonly operation: (draft: DeskDraft, typed: Typed) => WrittenOperation;
}

const LONGEST = 20_000;

/** What was sent for the fields of a form; fields that it does not have are dropped. */
export function typedIn(fields: readonly Field[], body: Readonly<Record<string, unknown>>): Typed {
  return Object.fromEntries(
    // A browser ends lines in two characters; a text that changed only in that would count as reworded.
    fields.map(({ name }) => [name, valuesOf(body, name, LONGEST + 1).map(v => v.replace(/\r\n?/g, '\n'))]),
  );
}

/** The one value of a field; empty where nothing was typed. Throws BadArgument for more than anybody types. */
export function said(typed: Typed, name: string): string {
  const [value = ''] = typed[name] ?? [];
  if (value.length <= LONGEST) return value;
  throw new CatalogError('BadArgument', `More than ${LONGEST} characters were typed; split the item first.`);
}

/** The one value of a field that has to be filled in; throws BadArgument with the sentence that asks for it. */
export function needed(typed: Typed, name: string, ask: string): string {
  const value = said(typed, name);
  if (value === '') throw refuse(ask);
  return value;
}

/** The day of a field, or nothing. A day that no calendar has would make the draft unreadable. */
export function daySaid(typed: Typed, name: string, label: string): string {
  const day = said(typed, name);
  if (day === '' || isDay(day)) return day;
  throw refuse(`"${day}" is no day; write ${label} as year-month-day, for example 2030-05-01.`);
}

export const refuse = (sentence: string) => new CatalogError('BadArgument', sentence);

/** Why: every operation may say it. */
export const WHY: Field = {
  name: 'note',
  label: 'Why',
  hint: 'kept with the lineage; readers of the next edition see it',
  kind: 'text',
  value: [],
  rows: 2,
};

export function whySaid(typed: Typed): { readonly note?: string } {
  const note = said(typed, 'note');
  return note === '' ? {} : { note };
}
