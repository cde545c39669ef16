import type { Bag } from './bags.ts';
import { isKnownMeaning, likenessOfMeanings } from './meaning.ts';
import { numberKey } from './number-evidence.ts';
import { type Pairs, pairsOf } from './pairs.ts';
import { relatedBag, relatedTerms } from './related.ts';
import type { Side, Sides } from './sides.ts';

/** Rows looked up by their words for each row, in each direction. */
const BY_WORDS = 15;
/** And by what they are about, where the tables are no larger than this many pairs. */
const BY_MEANING = 8;
const LEAST_LIKENESS = 0.3;
const MOST_COMPARED = 8_000_000;
/** Terms are followed from the rarest on until so many entries were seen: what makes the work sub-quadratic. */
const MOST_ENTRIES = 6000;
/** Below two rows that may belong together, so many children are compared crosswise. */
const MOST_CHILDREN = 40;

/**
 * The pairs worth looking at: rows that share rare words (looked up from both sides, for a small old row inside a large
 * new one is only seen from its own side), rows with the same number, and rows whose parents look alike, since a text
 * that was rewritten in other words keeps its place.
 */
export function candidatePairs(sides: Sides, also: readonly (readonly [number, number])[]): Pairs {
  const { from, to } = sides;
  const found: Set<number>[] = from.rows.map(() => new Set());
  const fromOld = nearest(from, to, sides, BY_WORDS);
  const fromNew = nearest(to, from, sides, BY_WORDS);
  fromOld.forEach((list, i) => {
    for (const j of list) found[i]!.add(j);
  });
  fromNew.forEach((list, j) => {
    for (const i of list) found[i]!.add(j);
  });
  addNearMeanings(from, to, found);
  addSameNumbers(from, to, found);
  addSameTitles(from, to, found);
  addBelowParents(from, to, fromOld, fromNew, found);
  for (const [i, j] of also) found[i]!.add(j);
  return pairsOf(found, to.rows.length);
}

/** For each row of one side the rows of the other that share most with it, best first. */
function nearest(own: Side, other: Side, sides: Sides, most: number): number[][] {
  const words = entriesOf(other.all, sides.words.size);
  const related = relatedTerms(sides.words);
  const letters = entriesOf(other.letters, sides.letters.size);
  const scores = new Float32Array(other.rows.length);
  const touched: number[] = [];
  const follow = (bag: Bag, entries: Entries, weight: number) => {
    const order = Array.from(bag.ids.keys()).sort((a, b) => entries.count(bag.ids[a]!) - entries.count(bag.ids[b]!));
    let seen = 0;
    for (const at of order) {
      const id = bag.ids[at]!;
      seen += entries.count(id);
      if (seen > MOST_ENTRIES) break;
      const mine = bag.weights[at]! * weight;
      for (let e = entries.starts[id]!; e < entries.starts[id + 1]!; e++) {
        const row = entries.rows[e]!;
        if (scores[row] === 0) touched.push(row);
        scores[row]! += mine * entries.weights[e]!;
      }
    }
  };
  return own.rows.map((_, at) => {
    touched.length = 0;
    follow(own.all[at]!, words, 1);
    follow(relatedBag(own.all[at]!, related), words, 0.4);
    follow(own.letters[at]!, letters, 0.3);
    const best = greatest(touched, scores, most);
    for (const row of touched) scores[row] = 0;
    return best;
  });
}

/** The rows with the greatest scores, best first. Sorting all that were touched took most of the time of a large table. */
function greatest(rows: readonly number[], scores: Float32Array, most: number): number[] {
  const best: number[] = [];
  const before = (a: number, b: number) => scores[a]! > scores[b]! || (scores[a] === scores[b] && a < b);
  for (const row of rows) {
    if (best.length === most && !before(row, best[most - 1]!)) continue;
    let at = best.length;
    while (at > 0 && before(row, best[at - 1]!)) at--;
    best.splice(at, 0, row);
    if (best.length > most) best.pop();
  }
  return best;
}

interface Entries {
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly weights: Float32Array;
  count(term: number): number;
}

/** For each term the rows that hold it. */
function entriesOf(bags: readonly Bag[], terms: number): Entries {
  const starts = new Int32Array(terms + 1);
  for (const bag of bags) for (const id of bag.ids) starts[id + 1]!++;
  for (let t = 0; t < terms; t++) starts[t + 1]! += starts[t]!;
  const next = starts.slice(0, terms);
  const rows = new Int32Array(starts[terms]!);
  const weights = new Float32Array(starts[terms]!);
  bags.forEach((bag, row) => {
    bag.ids.forEach((id, at) => {
      const e = next[id]!++;
      rows[e] = row;
      weights[e] = bag.weights[at]!;
    });
  });
  return { starts, rows, weights, count: term => starts[term + 1]! - starts[term]! };
}

/**
 * Rows that are about the same thing in other words. Every old row is compared with every new one, which only tables of
 * a few thousand rows allow; larger ones go by related words alone.
 */
function addNearMeanings(from: Side, to: Side, found: Set<number>[]): void {
  if (from.rows.length * to.rows.length > MOST_COMPARED) return;
  const [olds, news] = [nearestMeanings(from), nearestMeanings(to)];
  const known = to.meaning.flatMap((meaning, j) => (isKnownMeaning(meaning) ? [j] : []));
  from.meaning.forEach((meaning, i) => {
    if (!isKnownMeaning(meaning)) return;
    for (const j of known) {
      const likeness = likenessOfMeanings(meaning, to.meaning[j]!);
      if (likeness <= LEAST_LIKENESS) continue;
      olds.offer(i, j, likeness);
      news.offer(j, i, likeness);
    }
  });
  from.rows.forEach((_, i) => {
    for (const j of olds.of(i)) found[i]!.add(j);
  });
  to.rows.forEach((_, j) => {
    for (const i of news.of(j)) found[i]!.add(j);
  });
}

/** The nearest few so far of each row of a side, nearest first; of equally near ones the one that was offered first. */
function nearestMeanings({ rows }: Side) {
  const kept = new Int32Array(rows.length * BY_MEANING);
  const likenesses = new Float64Array(rows.length * BY_MEANING);
  const counts = new Uint8Array(rows.length);
  return {
    offer(row: number, other: number, likeness: number): void {
      const start = row * BY_MEANING;
      let at = start + counts[row]!;
      if (counts[row] === BY_MEANING) {
        if (likeness <= likenesses[at - 1]!) return;
        at--;
      } else counts[row]!++;
      for (; at > start && likenesses[at - 1]! < likeness; at--) {
        kept[at] = kept[at - 1]!;
        likenesses[at] = likenesses[at - 1]!;
      }
      kept[at] = other;
      likenesses[at] = likeness;
    },
    of: (row: number) => kept.subarray(row * BY_MEANING, row * BY_MEANING + counts[row]!),
  };
}

function addSameNumbers(from: Side, to: Side, found: Set<number>[]): void {
  addEqual(from, to, found, (side, at) => numberKey(side.rows[at]!.number));
}

function addSameTitles(from: Side, to: Side, found: Set<number>[]): void {
  addEqual(from, to, found, (side, at) => side.foldedTitle[at]!);
}

/** Rows with an equal key; a key that many rows share (the title "Scope") says too little. */
function addEqual(from: Side, to: Side, found: Set<number>[], keyOf: (side: Side, at: number) => string): void {
  const byKey = new Map<string, number[]>();
  to.rows.forEach((_, j) => {
    const key = keyOf(to, j);
    if (key === '') return;
    const list = byKey.get(key);
    if (list) list.push(j);
    else byKey.set(key, [j]);
  });
  from.rows.forEach((_, i) => {
    const list = byKey.get(keyOf(from, i)) ?? [];
    if (list.length <= 20) for (const j of list) found[i]!.add(j);
  });
}

function addBelowParents(
  from: Side,
  to: Side,
  fromOld: readonly (readonly number[])[],
  fromNew: readonly (readonly number[])[],
  found: Set<number>[],
): void {
  const parents = new Map<number, Set<number>>();
  const pair = (a: number, b: number) => {
    const set = parents.get(a);
    if (set) set.add(b);
    else parents.set(a, new Set([b]));
  };
  fromOld.forEach((list, i) => {
    if (from.children[i]!.length > 0) for (const j of list.slice(0, 2)) pair(i, j);
    // Children vote as well: the parents' own titles may have changed.
    const [best] = list;
    const up = from.rows[i]!.parent;
    if (best !== undefined && up >= 0 && to.rows[best]!.parent >= 0) pair(up, to.rows[best]!.parent);
  });
  fromNew.forEach((list, j) => {
    if (to.children[j]!.length > 0) for (const i of list.slice(0, 2)) pair(i, j);
  });
  for (const [a, set] of parents) {
    for (const b of set) {
      found[a]!.add(b);
      const [olds, news] = [from.children[a]!, to.children[b]!];
      if (olds.length * news.length > MOST_CHILDREN * MOST_CHILDREN) continue;
      for (const i of olds) {
        found[i]!.add(b);
        for (const j of news) found[i]!.add(j);
      }
    }
  }
}
