import type { Entry } from '../../model/edition.ts';
import { pointedNumber } from '../../search/names.ts';
import { foldText } from '../../search/terms.ts';
import type { PublishedCatalog, PublishedEdition } from '../reading/published-catalog.ts';

/** An item that somebody may mean who has typed so far. */
export interface SuggestedItem {
  readonly edition: string;
  readonly entry: Entry;
}

/** Shorter beginnings of an id or of a word fit half the catalog. */
const LEAST_LETTERS = 2;

/**
 * Items whose number, id or title begins as typed, in any edition: the exact number first in each edition that prints
 * it, then longer numbers by turns from each edition, newest first, then ids, then titles. No text is read, since this
 * is asked with every letter.
 */
export async function suggestItems(published: PublishedCatalog, typed: string, most: number): Promise<SuggestedItem[]> {
  const plain = foldText(typed).trim().replace(/\s+/g, ' ');
  if (plain === '') return [];
  const editions = await Promise.all([...published.headers].reverse().map(h => published.edition(h.name)));
  const begun = (number: string) => editions.some(e => foldedOf(e).some(line => line.number.startsWith(number)));
  const pointed = pointedNumber(plain);
  const wanted = pointed !== undefined && !begun(plain) && begun(pointed) ? pointed : plain;
  const found = new Map<string, SuggestedItem>();
  const add = (edition: PublishedEdition, entry: Entry) =>
    found.size < most &&
    found.set(JSON.stringify([edition.header.name, entry.id]), { edition: edition.header.name, entry });
  for (const edition of editions) for (const entry of edition.names.named(wanted)) add(edition, entry);

  const longer = editions.map(e => first(foldedOf(e), most, line => line.number.startsWith(wanted)));
  for (let at = 0; at < most; at++) {
    editions.forEach((edition, i) => {
      const entry = longer[i]![at];
      if (entry) add(edition, entry);
    });
  }
  if (wanted.length < LEAST_LETTERS) return [...found.values()];

  const words = wanted.split(' ');
  const begins = [
    (line: Folded) => line.id.startsWith(wanted),
    (line: Folded) => line.title.startsWith(wanted),
    (line: Folded) => words.every(word => line.title.startsWith(word) || line.title.includes(` ${word}`)),
  ];
  for (const passes of begins) {
    for (const edition of editions) {
      // The newest edition speaks for an item that several have.
      const known = new Set([...found.values()].map(s => s.entry.id));
      for (const entry of first(foldedOf(edition), most, line => !known.has(line.entry.id) && passes(line))) {
        add(edition, entry);
      }
    }
  }
  return [...found.values()];
}

/** An item of an edition as people type it. */
interface Folded {
  readonly entry: Entry;
  readonly id: string;
  readonly number: string;
  readonly title: string;
}

const folded = new WeakMap<PublishedEdition, readonly Folded[]>();

/** Folding 100,000 titles anew with every letter would take longer than the letter. */
export function foldedOf(edition: PublishedEdition): readonly Folded[] {
  const known = folded.get(edition);
  if (known) return known;
  const lines = edition.entries.map(entry => ({
    entry,
    id: foldText(entry.id),
    number: foldText(entry.number),
    title: foldText(entry.title),
  }));
  folded.set(edition, lines);
  return lines;
}

function first(lines: readonly Folded[], most: number, fits: (line: Folded) => boolean): Entry[] {
  const found: Entry[] = [];
  for (const line of lines) {
    if (!fits(line)) continue;
    found.push(line.entry);
    if (found.length === most) break;
  }
  return found;
}
