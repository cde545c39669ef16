import { BASES, type Basis, type Extent } from '../model/crosswalk.ts';

/** How sure a link is. (basis, confidence) has one total order: declared before confirmed before inferred, then confidence. */
export interface Certainty {
  readonly basis: Basis;
  readonly confidence: number;
}

function rank(c: Certainty): number {
  return BASES.length - BASES.indexOf(c.basis);
}

/** Positive if a is surer than b. */
export function compareCertainty(a: Certainty, b: Certainty): number {
  return rank(a) - rank(b) || a.confidence - b.confidence;
}

/** A chain takes its weaker link's certainty whole; mixing the basis of one with the confidence of the other invents a third. */
export function weaker(a: Certainty, b: Certainty): Certainty {
  const { basis, confidence } = compareCertainty(a, b) <= 0 ? a : b;
  return { basis, confidence };
}

/** Parallel paths keep the stronger. */
export function stronger(a: Certainty, b: Certainty): Certainty {
  const { basis, confidence } = compareCertainty(a, b) >= 0 ? a : b;
  return { basis, confidence };
}

// Extents are ordered all > unknown > part: going on through a part can only be a part, whatever the other is.
const WIDTH: Record<Extent, number> = { all: 2, unknown: 1, part: 0 };

/** The extent of a chain. */
export function narrower(a: Extent, b: Extent): Extent {
  return WIDTH[a] <= WIDTH[b] ? a : b;
}

/** The extent of parallel paths. Two parts stay a part: that together they may be all cannot be known from here. */
export function wider(a: Extent, b: Extent): Extent {
  return WIDTH[a] >= WIDTH[b] ? a : b;
}
