import type { Pairs } from './pairs.ts';
import type { Side, Sides } from './sides.ts';

/** What the rest of the outline says about one pair, by what is believed of all other pairs. NaN: nothing can be said. */
export interface Surroundings {
  /** The parents belong together. */
  readonly parents: Float32Array;
  /** Share of the old row's siblings that go below the new row's parent; and of the new row's that come from there. */
  readonly siblingsGo: Float32Array;
  readonly siblingsCome: Float32Array;
  /** Share of the old row's part that goes to the new row's part. */
  readonly parts: Float32Array;
  /** Share of the children that go from one to the other. */
  readonly children: Float32Array;
  /** The old row's parent, or its siblings, go to the new row itself; the same for the new row's parent and siblings. */
  readonly foldsUp: Float32Array;
  readonly foldsDown: Float32Array;
  readonly joined: Float32Array;
  readonly shared: Float32Array;
  /** The neighbours before and after in document order belong together: the mean of both. */
  readonly neighbours: Float32Array;
}

export function surroundingsOf({ from, to }: Sides, pairs: Pairs, beliefs: Float32Array): Surroundings {
  const belief = (i: number, j: number): number => {
    if (i < 0 || j < 0) return Number.NaN;
    const p = pairs.find(i, j);
    return p < 0 ? 0 : beliefs[p]!;
  };
  const flows = flowBetween(
    pairs,
    beliefs,
    i => from.rows[i]!.parent,
    j => to.rows[j]!.parent,
  );
  const partFlows = flowBetween(
    pairs,
    beliefs,
    i => from.part[i]!,
    j => to.part[j]!,
  );
  const partSizes = sizesOf(from);
  // Flow from the children of an old row to one new row, and from one old row to the children of a new one.
  const gathered = flowBetween(
    pairs,
    beliefs,
    i => from.rows[i]!.parent,
    j => j,
  );
  const scattered = flowBetween(
    pairs,
    beliefs,
    i => i,
    j => to.rows[j]!.parent,
  );
  const field = () => new Float32Array(pairs.size).fill(Number.NaN);
  const s = {
    parents: field(),
    siblingsGo: field(),
    siblingsCome: field(),
    parts: field(),
    children: field(),
    foldsUp: field(),
    foldsDown: field(),
    joined: field(),
    shared: field(),
    neighbours: field(),
  };
  for (let p = 0; p < pairs.size; p++) {
    const i = pairs.from[p]!;
    const j = pairs.to[p]!;
    const a = from.rows[i]!.parent;
    const b = to.rows[j]!.parent;
    s.parents[p] = belief(a, b);
    s.foldsUp[p] = belief(a, j);
    s.foldsDown[p] = belief(i, b);
    if (a >= 0 && b >= 0) {
      const flow = flows(a, b);
      const siblings = from.children[a]!.length - 1;
      if (siblings > 0) s.siblingsGo[p] = Math.max(0, flow - scattered(i, b)) / siblings;
      const theirs = to.children[b]!.length - 1;
      if (theirs > 0) s.siblingsCome[p] = Math.max(0, flow - gathered(a, j)) / theirs;
    }
    if (a >= 0) {
      const siblings = from.children[a]!.length - 1;
      if (siblings > 0) s.joined[p] = Math.max(0, gathered(a, j) - beliefs[p]!) / siblings;
    }
    if (b >= 0) {
      const siblings = to.children[b]!.length - 1;
      if (siblings > 0) s.shared[p] = Math.max(0, scattered(i, b) - beliefs[p]!) / siblings;
    }
    s.parts[p] = partFlows(from.part[i]!, to.part[j]!) / partSizes[from.part[i]!]!;
    const [mine, other] = [from.children[i]!.length, to.children[j]!.length];
    if (mine > 0 && other > 0) s.children[p] = flows(i, j) / Math.max(mine, Math.min(other, 2 * mine));
    s.neighbours[p] = meanOf(belief(from.before[i]!, to.before[j]!), belief(from.after[i]!, to.after[j]!));
  }
  return s;
}

/** Sum of the beliefs of all pairs by a key of the old row and a key of the new row; negative keys have none. */
function flowBetween(
  pairs: Pairs,
  beliefs: Float32Array,
  keyOfOld: (i: number) => number,
  keyOfNew: (j: number) => number,
): (a: number, b: number) => number {
  const sums = new Map<number, number>();
  const news = pairs.ofNew.length + 1;
  for (let p = 0; p < pairs.size; p++) {
    const belief = beliefs[p]!;
    if (belief < 0.02) continue;
    const a = keyOfOld(pairs.from[p]!);
    const b = keyOfNew(pairs.to[p]!);
    if (a < 0 || b < 0) continue;
    const key = a * news + b;
    sums.set(key, (sums.get(key) ?? 0) + belief);
  }
  return (a, b) => sums.get(a * news + b) ?? 0;
}

function sizesOf(side: Side): Int32Array {
  const sizes = new Int32Array(side.rows.length);
  for (const part of side.part) sizes[part]!++;
  return sizes;
}

function meanOf(a: number, b: number): number {
  if (Number.isNaN(a)) return b;
  return Number.isNaN(b) ? a : (a + b) / 2;
}
