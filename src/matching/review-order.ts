import type { Answer } from './answers.ts';
import type { BareRow } from './bare-row.ts';
import type { MatchedLink } from './match-rows.ts';

/** A link for a person to look at, and what looking at it is expected to be worth. */
export interface Question {
  readonly link: MatchedLink;
  /** Links in doubt that stand below both ends of this one, or share an end with it: an answer moves them too. */
  readonly hanging: number;
  readonly value: number;
}

/** How much of the doubt in links that hang on this one an answer takes away. */
const SPREAD = 0.25;
/** What a link that shares an end is told by an answer, beside one that stands below both ends. */
const SHARED_END = 0.5;
/** Whether a row is new is often settled by the time its old row is answered. */
const NEW_ROW = 0.5;

/**
 * The links of the band `look`, most valuable answer first.
 *
 *   value = chance that it is wrong × (1 + ¼ × (doubt below both ends + ½ × doubt of links that share an end))
 *
 * Least sure first (nearest to even chances), as one would think first, was hardly better than asking by lot: where the
 * matcher is right at even chances, a yes changes nothing. Figures, and the pairs that the constants were chosen on,
 * are in README.md beside this file (`scripts/matching/review-order.mjs`). Equal values stand in the order of the old rows.
 */
export function reviewOrder(
  links: readonly MatchedLink[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): readonly Question[] {
  const doubtful = links.filter(link => link.band === 'look');
  const at = new Map(doubtful.map((link, index) => [keyOf(link.from, link.to), index]));
  const doubt = doubtful.map(({ confidence: p }) => 4 * p * (1 - p));
  const below = new Float64Array(doubtful.length);
  const hanging = new Uint32Array(doubtful.length);
  doubtful.forEach((link, index) => {
    const olds = link.from === null ? [null] : above(from, link.from);
    const news = link.to === null ? [null] : above(to, link.to);
    for (const i of olds) {
      for (const j of news) {
        const over = at.get(keyOf(i, j));
        if (over === undefined) continue;
        below[over]! += doubt[index]!;
        hanging[over]!++;
      }
    }
  });
  const [ofOld, ofNew] = [sumsBy(doubtful, doubt, 'from'), sumsBy(doubtful, doubt, 'to')];
  const questions = doubtful.map((link, index): Question => {
    const own = doubt[index]!;
    const ends = [ofOld.get(link.from ?? -1), ofNew.get(link.to ?? -1)];
    let shared = 0;
    let sharing = 0;
    for (const end of ends) {
      if (end === undefined) continue;
      shared += end.doubt - own;
      sharing += end.links - 1;
    }
    const spread = 1 + SPREAD * (below[index]! + SHARED_END * Math.max(0, shared));
    const value = (1 - link.confidence) * spread * (link.from === null ? NEW_ROW : 1);
    return { link, hanging: hanging[index]! + sharing, value };
  });
  const rank = (row: number | null) => row ?? Number.MAX_SAFE_INTEGER;
  return questions.sort(
    (a, b) => b.value - a.value || rank(a.link.from) - rank(b.link.from) || rank(a.link.to) - rank(b.link.to),
  );
}

/** Tells which links need no asking any more: answered themselves, or settled by what was said of one of their ends. */
export function settledBy(answers: readonly Answer[]): (link: Pick<MatchedLink, 'from' | 'to'>) => boolean {
  const pairs = new Set<string>();
  const [gone, fresh] = [new Set<number>(), new Set<number>()];
  const [hasHeir, hasSource] = [new Set<number>(), new Set<number>()];
  for (const a of answers) {
    if (a.kind === 'withdrawn') gone.add(a.from);
    else if (a.kind === 'new') fresh.add(a.to);
    else {
      pairs.add(keyOf(a.from, a.to));
      if (a.kind === 'yes') {
        hasHeir.add(a.from);
        hasSource.add(a.to);
      }
    }
  }
  return ({ from, to }) => {
    if (to === null) return gone.has(from!) || hasHeir.has(from!);
    if (from === null) return fresh.has(to) || hasSource.has(to);
    return pairs.has(keyOf(from, to)) || gone.has(from) || fresh.has(to);
  };
}

const keyOf = (from: number | null, to: number | null) => `${from ?? ''}>${to ?? ''}`;

/** The rows above one, nearest first. A row that is its own ancestor, as a damaged table may have it, ends the way. */
function above(rows: readonly BareRow[], row: number): number[] {
  const way: number[] = [];
  for (let up = rows[row]!.parent; up >= 0 && up !== row && !way.includes(up); up = rows[up]!.parent) way.push(up);
  return way;
}

function sumsBy(links: readonly MatchedLink[], doubt: readonly number[], end: 'from' | 'to') {
  const sums = new Map<number, { doubt: number; links: number }>();
  links.forEach((link, index) => {
    const row = link[end];
    if (row === null) return;
    const sum = sums.get(row) ?? { doubt: 0, links: 0 };
    sum.doubt += doubt[index]!;
    sum.links++;
    sums.set(row, sum);
  });
  return sums;
}
