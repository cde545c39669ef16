import { stemmer } from 'stemmer';
import { diffWords } from '../text/word-diff.ts';
import { words } from '../text/words.ts';
import { type Asked, askedOf, isReworded, isSameAsked, LEAST_VALUES, onlyIn, shareOf } from './things-and-values.ts';

/** A text of a catalog, or a row of a table of texts. */
export interface NamedText {
  readonly id: string;
  readonly text: string;
}

/** Texts that say nearly the same. Every member is near the first one, so that weak likenesses cannot chain. */
export interface Cluster {
  readonly first: NamedText;
  readonly others: readonly NearDuplicate[];
}

export interface NearDuplicate extends NamedText {
  /** Share of the words' weight that both texts have, 0 to 1; of a text in other words the share of its things and values. */
  readonly likeness: number;
  /** Found by its things and values: the sentences are built otherwise, and to compare them word by word shows nothing. */
  readonly reworded?: true;
  /** What stands in the first text and what in this one instead; either may be empty. */
  readonly differs: readonly { readonly first: string; readonly here: string }[];
}

/** Below this the texts share a manner of speaking, not a requirement. */
const LEAST_LIKENESS = 0.7;
/** Texts with fewer different words than this are alike by accident. */
const LEAST_WORDS = 4;

/**
 * Near-duplicates in clusters, in the order of the texts. This is where the volume of a catalog sits: one requirement
 * written once for each installation type. Numbers do not count for the likeness, since they are what differs.
 *
 * Each text is held against the first texts of clusters only, found by their rarest words: two texts that share 0.7 of
 * their weight cannot differ in all words of the rarest 0.3 of it. What is said in other words shares less, and is
 * found by its values: "a minimum of 450 mm above the floor and 600 mm from any sink" and "no lower than 450 mm ...".
 */
export function clusterNearDuplicates(texts: readonly NamedText[]): Cluster[] {
  const bags = texts.map(
    t =>
      new Set(
        words(t.text)
          .filter(w => /\p{L}/u.test(w))
          .map(stemmer),
      ),
  );
  const weight = weights(bags);
  const firsts: { at: number; total: number; others: NearDuplicate[] }[] = [];
  const byRareWord = new Map<string, number[]>();
  const byValues = new Map<string, { readonly first: number; readonly asked: Asked }[]>();
  bags.forEach((bag, at) => {
    if (bag.size < LEAST_WORDS) return;
    const total = sum(bag, weight);
    const rare = rarest(bag, weight, total);
    let best: { first: number; likeness: number } | undefined;
    for (const first of new Set(rare.flatMap(w => byRareWord.get(w) ?? []))) {
      const shared = sum(
        [...bags[firsts[first]!.at]!].filter(w => bag.has(w)),
        weight,
      );
      const likeness = shared / (total + firsts[first]!.total - shared);
      if (likeness >= LEAST_LIKENESS && likeness > (best?.likeness ?? 0)) best = { first, likeness };
    }
    if (best) {
      const first = texts[firsts[best.first]!.at]!;
      const same = isSameAsked(first.text, texts[at]!.text);
      const told = same
        ? { differs: [], reworded: true as const }
        : { differs: differences(first.text, texts[at]!.text) };
      firsts[best.first]!.others.push({ ...texts[at]!, likeness: best.likeness, ...told });
      return;
    }
    const asked = askedOf(texts[at]!.text);
    const values = [...asked.values].sort().join('|');
    const sameValues = asked.values.size < LEAST_VALUES ? undefined : (byValues.get(values) ?? []);
    const again = sameValues?.find(known => isReworded(known.asked, asked));
    if (again) {
      const likeness = shareOf(again.asked, asked);
      const differs = onlyIn(again.asked, asked);
      firsts[again.first]!.others.push({ ...texts[at]!, likeness, differs, reworded: true });
      return;
    }
    if (sameValues) byValues.set(values, [...sameValues, { first: firsts.length, asked }]);
    for (const word of rare) {
      const known = byRareWord.get(word);
      if (known) known.push(firsts.length);
      else byRareWord.set(word, [firsts.length]);
    }
    firsts.push({ at, total, others: [] });
  });
  return firsts.filter(f => f.others.length > 0).map(({ at, others }) => ({ first: texts[at]!, others }));
}

/** Rare words weigh more: "shall" is in every text, "downpipe" is not. */
function weights(bags: readonly ReadonlySet<string>[]): (word: string) => number {
  const count = new Map<string, number>();
  for (const bag of bags) for (const word of bag) count.set(word, (count.get(word) ?? 0) + 1);
  return word => Math.log(1 + bags.length / (count.get(word) ?? 1));
}

function sum(bag: Iterable<string>, weight: (word: string) => number): number {
  let total = 0;
  for (const word of bag) total += weight(word);
  return total;
}

function rarest(bag: ReadonlySet<string>, weight: (word: string) => number, total: number): string[] {
  const sorted = [...bag].sort((a, b) => weight(b) - weight(a) || (a < b ? -1 : 1));
  const taken: string[] = [];
  let reached = 0;
  for (const word of sorted) {
    if (reached > (1 - LEAST_LIKENESS) * total) break;
    taken.push(word);
    reached += weight(word);
  }
  return taken;
}

/** Longer texts are not compared word by word: the plain table grows with the square. UTF-16 units. */
const LONGEST = 4000;

function differences(from: string, to: string): { first: string; here: string }[] {
  if (from.length > LONGEST || to.length > LONGEST) return from === to ? [] : [{ first: '', here: '' }];
  const found: { first: string; here: string }[] = [];
  let open: { first: string; here: string } | undefined;
  for (const { kind, text, moved } of diffWords(from, to)) {
    // What stands elsewhere in the other text is no difference.
    if (moved) continue;
    if (kind === 'same') {
      const unit = open && isNumber(open.first) && isNumber(open.here) ? (UNIT.exec(text)?.[0] ?? '') : '';
      if (open && unit !== '') {
        open.first += unit;
        open.here += unit;
      }
      open = undefined;
      continue;
    }
    if (!open) {
      open = { first: '', here: '' };
      found.push(open);
    }
    if (kind === 'removed') open.first = joined(open.first, text);
    else open.here = joined(open.here, text);
  }
  return found
    .map(d => ({ first: bare(d.first), here: bare(d.here) }))
    .filter(({ first, here }) => first !== here && (first !== '' || here !== ''));
}

const isNumber = (text: string) => /^-?\d[\d.,:/-]*$/.test(text);
const UNIT =
  /^\s?(?:L\/s|m\/s|mm\/h|m[²³]\/h|mm|cm|m|km|ml|l|L|kg|g|t|h|min|s|Pa|kPa|bar|kN|N|W|kW|V|A|mA|%|°C?|m[²³]|(?:year|day|hour|week|month|minute|second)s?)(?![\p{L}\p{N}])/u;
const joined = (before: string, more: string) => [before, more.trim()].filter(Boolean).join(' ');
/** Signs at the edges are no words: a comma that came is not worth telling. */
const bare = (text: string) => text.replace(/^[\s.,;:]+|[\s.,;:]+$/g, '');

/** `"3 m" is here "5 m"; "of any building" is left out`, at most four of them. */
export function tellDifferences({ differs, reworded }: NearDuplicate): string {
  if (differs.length === 0) return reworded ? 'the same words in another order' : 'nothing differs';
  const told = differs.slice(0, 4).map(({ first, here }) => {
    if (first === '' && here === '') return 'both are long';
    if (here === '') return `"${first}" is left out`;
    return first === '' ? `"${here}" is added` : `"${first}" is here "${here}"`;
  });
  return [
    ...(reworded ? ['the same values in other words'] : []),
    ...told,
    ...(differs.length > 4 ? [`and ${differs.length - 4} more`] : []),
  ].join('; ');
}
