import { stemmer } from 'stemmer';
import { diffWords } from '../text/word-diff.ts';
import { words } from '../text/words.ts';

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
  /** Share of the words' weight that both texts have, 0 to 1. */
  readonly likeness: number;
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
 * their weight cannot differ in all words of the rarest 0.3 of it.
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
      const other = { ...texts[at]!, likeness: best.likeness, differs: differences(first.text, texts[at]!.text) };
      firsts[best.first]!.others.push(other);
      return;
    }
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
  for (const { kind, text } of diffWords(from, to)) {
    if (kind === 'same') open = undefined;
    else {
      if (!open) {
        open = { first: '', here: '' };
        found.push(open);
      }
      if (kind === 'removed') open.first += text.trim();
      else open.here += text.trim();
    }
  }
  return found;
}

/** `"3 m" is here "5 m"; "of any building" is left out`, at most four of them. */
export function tellDifferences({ differs }: NearDuplicate): string {
  if (differs.length === 0) return 'nothing differs';
  const told = differs.slice(0, 4).map(({ first, here }) => {
    if (first === '' && here === '') return 'both are long';
    if (here === '') return `"${first}" is left out`;
    return first === '' ? `"${here}" is added` : `"${first}" is here "${here}"`;
  });
  return [...told, ...(differs.length > 4 ? [`and ${differs.length - 4} more`] : [])].join('; ');
}
