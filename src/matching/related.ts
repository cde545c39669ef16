import type { Bag, Vocabulary } from './bags.ts';
import { covered, type Translations } from './lexicon.ts';
import type { Pairs } from './pairs.ts';
import { RELATED_WORDS } from './related-words.ts';
import type { Sides } from './sides.ts';

const known = new WeakMap<Vocabulary, Translations>();

/** For each term of a vocabulary the terms of it that stand near it in general English, with their closeness. */
export function relatedTerms(words: Vocabulary): Translations {
  const before = known.get(words);
  if (before) return before;
  const related: (ReadonlyMap<number, number> | undefined)[] = new Array(words.size);
  for (const line of RELATED_WORDS.trim().split('\n')) {
    const [stem = '', ...near] = line.split(' ');
    const id = words.idOf(stem);
    if (id === undefined) continue;
    const list = new Map<number, number>();
    for (const entry of near) {
      const other = words.idOf(entry.slice(0, -1));
      if (other !== undefined) list.set(other, Number(entry.at(-1)) / 10);
    }
    if (list.size > 0) related[id] = list;
  }
  known.set(words, related);
  return related;
}

/** The terms near those of a bag, so that a row is looked up under words that it does not use itself. */
export function relatedBag(bag: Bag, related: Translations): Bag {
  const weights = new Map<number, number>();
  bag.ids.forEach((id, at) => {
    for (const [other, closeness] of related[id] ?? []) {
      weights.set(other, Math.max(weights.get(other) ?? 0, bag.weights[at]! * closeness));
    }
  });
  const ids = Int32Array.from(weights.keys()).sort();
  return { ids, weights: Float32Array.from(ids, id => weights.get(id)!), mass: 0 };
}

/** The share of each row's words that the other row has, or has a related word for. */
export function relatedShares({ from, to, words }: Sides, pairs: Pairs) {
  const related = relatedTerms(words);
  const old = new Float32Array(pairs.size);
  const next = new Float32Array(pairs.size);
  for (let p = 0; p < pairs.size; p++) {
    const [a, b] = [from.all[pairs.from[p]!]!, to.all[pairs.to[p]!]!];
    old[p] = covered(a.ids, b.ids, a.mass, related, words.rarity);
    next[p] = covered(b.ids, a.ids, b.mass, related, words.rarity);
  }
  return { old, new: next };
}
