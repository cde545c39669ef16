/** Terms of one text with their weights (term frequency times rarity, of length 1), sorted by term. */
export interface Bag {
  readonly ids: Int32Array;
  readonly weights: Float32Array;
  /** Sum of the rarities of the distinct terms: how much there is to be found again. */
  readonly mass: number;
}

/** Turns lists of terms into bags. Rarity is taken over both editions together, as ln(1 + N / df). */
export interface Vocabulary {
  readonly size: number;
  readonly rarity: Float32Array;
  readonly texts: number;
  /** The number of a term; undefined where neither edition has it. */
  idOf(term: string): number | undefined;
  bag(terms: readonly string[]): Bag;
}

export function vocabularyOf(texts: Iterable<readonly string[]>): Vocabulary {
  const ids = new Map<string, number>();
  const counts: number[] = [];
  let total = 0;
  for (const terms of texts) {
    if (terms.length > 0) total++;
    for (const term of new Set(terms)) {
      const id = ids.get(term);
      if (id === undefined) {
        ids.set(term, counts.length);
        counts.push(1);
      } else counts[id]!++;
    }
  }
  const rarity = Float32Array.from(counts, count => Math.log(1 + total / count));
  return {
    size: counts.length,
    rarity,
    texts: total,
    idOf: term => ids.get(term),
    bag: terms => bagOf(terms, ids, rarity),
  };
}

const NONE: Bag = { ids: new Int32Array(0), weights: new Float32Array(0), mass: 0 };

function bagOf(terms: readonly string[], ids: ReadonlyMap<string, number>, rarity: Float32Array): Bag {
  if (terms.length === 0) return NONE;
  const times = new Map<number, number>();
  for (const term of terms) {
    const id = ids.get(term);
    if (id !== undefined) times.set(id, (times.get(id) ?? 0) + 1);
  }
  const sorted = Int32Array.from(times.keys()).sort();
  const weights = new Float32Array(sorted.length);
  let squares = 0;
  let mass = 0;
  sorted.forEach((id, at) => {
    const weight = (1 + Math.log(times.get(id)!)) * rarity[id]!;
    weights[at] = weight;
    squares += weight * weight;
    mass += rarity[id]!;
  });
  const length = Math.sqrt(squares);
  if (length > 0) for (let at = 0; at < weights.length; at++) weights[at]! /= length;
  return { ids: sorted, weights, mass };
}

/** What two bags share: cosine, the rarity mass of the shared terms, and the rarest of them. */
export interface Overlap {
  cosine: number;
  mass: number;
  rarest: number;
}

export function overlapOf(a: Bag, b: Bag, rarity: Float32Array): Overlap {
  let cosine = 0;
  let mass = 0;
  let rarest = 0;
  for (let i = 0, j = 0; i < a.ids.length && j < b.ids.length; ) {
    const left = a.ids[i]!;
    const right = b.ids[j]!;
    if (left === right) {
      cosine += a.weights[i]! * b.weights[j]!;
      const rare = rarity[left]!;
      mass += rare;
      if (rare > rarest) rarest = rare;
      i++;
      j++;
    } else if (left < right) i++;
    else j++;
  }
  return { cosine, mass, rarest };
}

/**
 * The share of what `a` says that `b` says and `c` does not: what a second heir adds to the first. Zero where `a` says
 * nothing.
 */
export function gainOf(a: Bag, b: Bag, c: Bag, rarity: Float32Array): number {
  let gain = 0;
  for (let i = 0, j = 0, k = 0; i < a.ids.length; i++) {
    const id = a.ids[i]!;
    while (j < b.ids.length && b.ids[j]! < id) j++;
    while (k < c.ids.length && c.ids[k]! < id) k++;
    if (b.ids[j] === id && c.ids[k] !== id) gain += rarity[id]!;
  }
  return a.mass > 0 ? gain / a.mass : 0;
}
