import { type Evidence, FEATURES, type Feature } from './features.ts';

/**
 * A sum of small decision trees that gives the log-odds of a link (gradient boosting, Friedman 2001). A node asks whether
 * one feature is below a threshold; where the feature says nothing (NaN) it goes the way that was best in fitting. Every
 * node has a value, the mean of what hangs below it, so that a sum can be told apart by features.
 */
export interface Trees {
  readonly base: number;
  readonly trees: readonly Tree[];
}

export interface Tree {
  /** Position in FEATURES; -1 at a leaf. */
  readonly feature: readonly number[];
  readonly threshold: readonly number[];
  /** 1: NaN goes left. */
  readonly missing: readonly number[];
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly value: readonly number[];
}

/** The probability of each pair. Tree by tree, since one asks for a few columns only. */
export function scorePairs({ base, trees }: Trees, evidence: Evidence, size: number): Float32Array {
  const columns = FEATURES.map(([name]) => evidence[name]);
  const sums = new Float64Array(size).fill(base);
  for (const tree of trees) {
    // As typed arrays, which take half the time of lists here.
    const feature = Int32Array.from(tree.feature);
    const threshold = Float64Array.from(tree.threshold);
    const [left, right] = [Int32Array.from(tree.left), Int32Array.from(tree.right)];
    const asked = Array.from(feature, f => columns[f]!);
    for (let p = 0; p < size; p++) {
      let at = 0;
      while (feature[at]! >= 0) {
        const value = asked[at]![p]!;
        const goesLeft = value < threshold[at]! || (Number.isNaN(value) && tree.missing[at] === 1);
        at = goesLeft ? left[at]! : right[at]!;
      }
      sums[p]! += tree.value[at]!;
    }
  }
  return Float32Array.from(sums, sum => 1 / (1 + Math.exp(-sum)));
}

/**
 * The log-odds of one pair as a sum of parts, one for each feature: what every question on the way changed in the mean
 * (Saabas 2014). They add up to the log-odds exactly, less `base`.
 */
export function partsOf(
  { base, trees }: Trees,
  evidence: Evidence,
  pair: number,
): { base: number; parts: Map<Feature, number> } {
  const parts = new Map<Feature, number>();
  let start = base;
  for (const tree of trees) {
    start += tree.value[0]!;
    for (let at = 0; tree.feature[at]! >= 0; ) {
      const [name] = FEATURES[tree.feature[at]!]!;
      const to = next(tree, at, evidence[name][pair]!);
      parts.set(name, (parts.get(name) ?? 0) + tree.value[to]! - tree.value[at]!);
      at = to;
    }
  }
  return { base: start, parts };
}

function next(tree: Tree, at: number, value: number): number {
  const left = Number.isNaN(value) ? tree.missing[at] === 1 : value < tree.threshold[at]!;
  return left ? tree.left[at]! : tree.right[at]!;
}
