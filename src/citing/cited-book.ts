import type { EditionIndex, Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import { type Places, placesOf } from '../model/places.ts';
import { type Titles, titlesOf } from './titles.ts';

/** An edition as what texts cite: its numbers, its titles and what its items say. */
export interface CitedBook {
  readonly edition: EditionIndex;
  readonly places: Places<Entry>;
  readonly titles: Titles;
  /** Undefined where an item has no text, or the texts are not at hand. */
  readonly textOf: (id: ItemId) => string | undefined;
}

interface BookOptions {
  /** Those of the edition, where they are at hand already. */
  readonly places?: Places<Entry>;
  readonly textOf?: (id: ItemId) => string | undefined;
}

export function citedBook(edition: EditionIndex, { places, textOf = () => undefined }: BookOptions = {}): CitedBook {
  const known = places ?? placesOf(edition.settings, edition.entries);
  return { edition, places: known, titles: titlesOf(edition), textOf };
}

/** Whether an edition prints a number. */
export function prints(book: CitedBook, number: string): boolean {
  return book.places.withNumber(number).length > 0;
}

/** The number of the child that "item 5 of 4.1" means: the parent's number, its separator and the counter. */
export function childNumber(book: CitedBook, parent: string, counter: string): string | undefined {
  for (const bearer of book.places.withNumber(parent)) {
    for (const child of book.places.children(bearer.id)) {
      const own = child.number.startsWith(parent) ? child.number.slice(parent.length) : child.number;
      if (own.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '') === counter) return child.number;
    }
  }
  return undefined;
}

/** The siblings from one number to another, both included; undefined where they do not stand under one heading. */
export function numbersBetween(book: CitedBook, first: string, last: string): readonly string[] | undefined {
  const [from, to] = [book.places.withNumber(first)[0], book.places.withNumber(last)[0]];
  if (!from || !to || from.parent !== to.parent) return undefined;
  const row = book.places.children(from.parent).map(e => e.number);
  const [start, end] = [row.indexOf(first), row.indexOf(last)];
  return end >= start ? row.slice(start, end + 1) : undefined;
}
