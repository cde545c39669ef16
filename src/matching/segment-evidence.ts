import { type Bag, overlapOf } from './bags.ts';
import type { Pairs } from './pairs.ts';
import type { Sides } from './sides.ts';

export interface SegmentEvidence {
  /** How much of the old row is found again as pieces of the new one, and the reverse; NaN where a row says nothing. */
  readonly oldAsPieces: Float32Array;
  readonly newAsPieces: Float32Array;
  /** How much more the best piece of the new row is like this old row than like any other one; and the reverse. */
  readonly pieceLeadOfOld: Float32Array;
  readonly pieceLeadOfNew: Float32Array;
}

/** Compares rows sentence by sentence: whole texts hide a short row inside a long one. */
export function segmentEvidence({ from, to, words }: Sides, pairs: Pairs): SegmentEvidence {
  const field = () => new Float32Array(pairs.size).fill(Number.NaN);
  const evidence = { oldAsPieces: field(), newAsPieces: field(), pieceLeadOfOld: field(), pieceLeadOfNew: field() };
  // For each piece of a row, how like it the nearest piece of each candidate is.
  const likest: Float32Array[] = new Array(pairs.size);
  const reverse: Float32Array[] = new Array(pairs.size);
  for (let p = 0; p < pairs.size; p++) {
    const [a, b] = [from.segments[pairs.from[p]!]!, to.segments[pairs.to[p]!]!];
    const ofNew = new Float32Array(b.length);
    const ofOld = new Float32Array(a.length);
    a.forEach((piece, x) => {
      b.forEach((other, y) => {
        const { cosine } = overlapOf(piece, other, words.rarity);
        if (cosine > ofOld[x]!) ofOld[x] = cosine;
        if (cosine > ofNew[y]!) ofNew[y] = cosine;
      });
    });
    likest[p] = ofNew;
    reverse[p] = ofOld;
    evidence.oldAsPieces[p] = weighted(a, ofOld);
    evidence.newAsPieces[p] = weighted(b, ofNew);
  }
  for (const list of pairs.ofNew) leads(list, likest, evidence.pieceLeadOfOld);
  for (let i = 0; i + 1 < pairs.starts.length; i++) {
    const [start, end] = [pairs.starts[i]!, pairs.starts[i + 1]!];
    leads(
      Array.from({ length: end - start }, (_, at) => start + at),
      reverse,
      evidence.pieceLeadOfNew,
    );
  }
  return evidence;
}

function weighted(pieces: readonly Bag[], likeness: Float32Array): number {
  let sum = 0;
  let mass = 0;
  pieces.forEach((piece, at) => {
    sum += piece.mass * likeness[at]!;
    mass += piece.mass;
  });
  return mass > 0 ? sum / mass : Number.NaN;
}

/** Of rows that share one row as a candidate: the lead of each over all others at the piece that is most its own. */
function leads(list: ArrayLike<number>, likeness: readonly Float32Array[], into: Float32Array): void {
  const pieces = likeness[list[0] ?? 0]?.length ?? 0;
  const first = new Float32Array(pieces);
  const second = new Float32Array(pieces);
  for (let at = 0; at < list.length; at++) {
    likeness[list[at]!]!.forEach((value, piece) => {
      if (value > first[piece]!) {
        second[piece] = first[piece]!;
        first[piece] = value;
      } else if (value > second[piece]!) second[piece] = value;
    });
  }
  for (let at = 0; at < list.length; at++) {
    const p = list[at]!;
    let best = Number.NaN;
    likeness[p]!.forEach((value, piece) => {
      const other = value === first[piece] ? second[piece]! : first[piece]!;
      if (Number.isNaN(best) || value - other > best) best = value - other;
    });
    into[p] = best;
  }
}
