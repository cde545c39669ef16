import type { EditionIndex, Entry } from '../model/edition.ts';
import { words } from '../text/words.ts';

/** Finds items of an edition by their titles. */
export interface Titles {
  /** The items that bear this title, letter for letter but for capitals and punctuation; several may. */
  named(title: string): readonly Entry[];
  /** Length of the longest title in words; no text has to be looked at further than that. */
  readonly longest: number;
}

const known = new WeakMap<EditionIndex, Titles>();

/** The titles of an edition, indexed once. */
export function titlesOf(edition: EditionIndex): Titles {
  const titles = known.get(edition) ?? indexTitles(edition.entries);
  known.set(edition, titles);
  return titles;
}

/**
 * Whether two titles name the same thing. One may be the other's beginning ("Overflow" for "Overflow capacity"), and
 * what stands in brackets does not count: a signature is often written out in one place and not in the other.
 */
export function sameTitle(a: string, b: string): boolean {
  const [x, y] = [fold(withoutBrackets(a)), fold(withoutBrackets(b))];
  return x === y || y.startsWith(`${x} `) || x.startsWith(`${y} `);
}

function indexTitles(entries: readonly Entry[]): Titles {
  const byTitle = new Map<string, Entry[]>();
  let longest = 0;
  for (const entry of entries) {
    for (const key of new Set([fold(entry.title), fold(withoutBrackets(entry.title))])) {
      if (key === '') continue;
      longest = Math.max(longest, key.split(' ').length);
      const bearers = byTitle.get(key);
      if (bearers) bearers.push(entry);
      else byTitle.set(key, [entry]);
    }
  }
  return { named: title => byTitle.get(fold(title)) ?? byTitle.get(fold(withoutBrackets(title))) ?? [], longest };
}

function fold(title: string): string {
  return words(title).join(' ');
}

function withoutBrackets(title: string): string {
  const at = title.indexOf('(');
  return at > 0 ? title.slice(0, at) : title;
}
