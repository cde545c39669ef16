import type { Entry } from '../model/edition.ts';
import { isMintedId } from '../model/ids.ts';
import type { ItemId } from '../model/item.ts';
import { foldText, looksLikeNumber } from './terms.ts';

/** The numbers and ids of an edition. Exact names are looked up here and never guessed at by an index. */
export interface EditionNames {
  /** All items that a name means: by id, or by number, which several items may share. */
  named(name: string): readonly Entry[];
  readonly numbers: ReadonlySet<string>;
}

export function editionNames(entries: readonly Entry[]): EditionNames {
  const byId = new Map<ItemId, Entry>();
  const byNumber = new Map<string, Entry[]>();
  const numbers = new Set<string>();
  for (const entry of entries) {
    byId.set(entry.id, entry);
    if (entry.number === '') continue;
    numbers.add(entry.number);
    const key = foldText(entry.number);
    const group = byNumber.get(key);
    if (group) group.push(entry);
    else byNumber.set(key, [entry]);
  }
  return {
    numbers,
    named: name => {
      const byOwnId = byId.get(name) ?? byId.get(foldText(name));
      const sharing = byNumber.get(foldText(name)) ?? [];
      return byOwnId && !sharing.includes(byOwnId) ? [byOwnId, ...sharing] : sharing;
    },
  };
}

/** The names that a query may contain: the whole of it, and each word that could be a number. Signs around are dropped. */
export function namesInQuery(query: string): string[] {
  const words = query.trim().split(/\s+/).map(bare).filter(Boolean);
  const whole = bare(query.trim());
  return [...new Set([whole, ...words.filter(w => words.length > 1 && looksLikeNumber(foldText(w)))])].filter(Boolean);
}

/**
 * A number as a phone's keypad writes it, with commas, hyphens or blanks in place of its points (`4,1,3,3`, `4 1 3 3`);
 * undefined where the text is nothing of the kind. A catalog may print such signs: ask for what was typed first.
 */
export function pointedNumber(typed: string): string | undefined {
  const text = bare(typed.trim());
  const segment = String.raw`(?:\p{L}|\p{N}+)`;
  const signs = new RegExp(String.raw`^${segment}(?:[.,-]\p{N}+)+$`, 'u').test(foldText(text));
  const blanks = new RegExp(String.raw`^${segment}(?:\s+\p{N}+)+$`, 'u').test(text);
  const pointed = signs ? foldText(text).replace(/[,-]/g, '.') : text.replace(/\s+/g, '.');
  return (signs || blanks) && pointed !== text ? pointed : undefined;
}

const bare = (word: string) => word.replace(/^[\s"'([{§#]+|[\s"')\]},;:.!?]+$/g, '');

/** Whether a word has the shape of a minted id, but its check character does not agree: somebody mistyped it. */
export function isMistypedId(word: string): boolean {
  const folded = foldText(word);
  return /^[0-9a-z]{8}$/.test(folded) && /\d/.test(folded) && /[a-z]/.test(folded) && !isMintedId(folded);
}

/** The ids that one wrong character, or two neighbours in the wrong order, make of a mistyped one. */
export function idsOneSlipAway(word: string, ids: Iterable<ItemId>): ItemId[] {
  const typed = foldText(word);
  const found: ItemId[] = [];
  for (const id of ids) {
    if (id.length !== typed.length) continue;
    const wrong = [...id].flatMap((c, at) => (c === typed[at] ? [] : [at]));
    const [a, b] = wrong as [number, number];
    const swapped = wrong.length === 2 && b === a + 1 && id[a] === typed[b] && id[b] === typed[a];
    if (wrong.length === 1 || swapped) found.push(id);
  }
  return found;
}
