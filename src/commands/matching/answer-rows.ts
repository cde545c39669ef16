import { isPairCode, type PairAt, pairCode, pairsByCode } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { candidatePairs } from '../../matching/candidates.ts';
import { sidesOf } from '../../matching/sides.ts';

/** What a line of answers says of its rows besides their code. */
export interface AskedPair {
  readonly code: string;
  readonly fromNumber: string;
  readonly fromTitle: string;
  readonly toNumber: string;
  readonly toTitle: string;
  /** Positions, where a review wrote them; -1 where it wrote none. */
  readonly fromAt: number;
  readonly toAt: number;
}

/** Pairs tried for one line by its numbers and titles, before all codes are gone through. */
const MOST_TRIED = 400;
/** So many letters are gone through for all pairs: some seconds. In larger tables only likely pairs are looked at. */
const MOST_LETTERS = 1e9;

/** Which rows lines mean; undefined for a line whose code no rows have. */
export type FindRows = (asked: readonly AskedPair[]) => readonly (PairAt | undefined)[];

/**
 * Finds the rows that lines of answers mean. The code alone decides; numbers and titles only tell where to look first,
 * for a spreadsheet may have made dates of the numbers and people may have taken the titles away.
 *
 * All pairs are gone through once for all the codes that are left, and a code that no rows have is remembered: a
 * review asks again at each of its answers, and the rows stay what they are.
 */
export function findsRows(from: readonly BareRow[], to: readonly BareRow[]): FindRows {
  const [olds, news] = [rowsByName(from), rowsByName(to)];
  const known = new Map<string, PairAt | undefined>();
  const named = (a: AskedPair): PairAt | undefined => {
    const is = (i: number, j: number) => pairCode(from[i], i, to[j], j) === a.code;
    if (is(a.fromAt, a.toAt)) return [a.fromAt, a.toAt];
    // The side without a row is among them: the end of an old row, a new one.
    const [is0, js] = [
      [...olds(a.fromNumber, a.fromTitle), -1],
      [...news(a.toNumber, a.toTitle), -1],
    ];
    if (is0.length * js.length > MOST_TRIED) return undefined;
    for (const i of is0) for (const j of js) if (is(i, j)) return [i, j];
    return undefined;
  };
  return asked => {
    const left = new Set<string>();
    for (const a of asked) {
      if (known.has(a.code)) continue;
      const ends = named(a);
      if (ends) known.set(a.code, ends);
      else left.add(a.code);
    }
    // Of two lines with one code the second may name its rows better.
    for (const code of left) if (known.has(code) || !isPairCode(code)) left.delete(code);
    if (left.size > 0) {
      const among = lettersOf(from, to) > MOST_LETTERS ? likelyPairs(from, to) : undefined;
      const found = pairsByCode(left, from, to, among);
      for (const code of left) known.set(code, found.get(code));
    }
    return asked.map(a => known.get(a.code));
  };
}

function lettersOf(from: readonly BareRow[], to: readonly BareRow[]): number {
  return from.length * to.reduce((sum, row) => sum + row.title.length + row.text.length + 20, 0);
}

function* likelyPairs(from: readonly BareRow[], to: readonly BareRow[]): Iterable<PairAt> {
  const pairs = candidatePairs(sidesOf(from, to), []);
  for (let p = 0; p < pairs.size; p++) yield [pairs.from[p]!, pairs.to[p]!];
}

/** Rows that print a number or have a title. */
function rowsByName(rows: readonly BareRow[]): (number: string, title: string) => Iterable<number> {
  const [numbers, titles] = [new Map<string, number[]>(), new Map<string, number[]>()];
  rows.forEach((row, at) => {
    for (const [map, key] of [
      [numbers, row.number],
      [titles, row.title],
    ] as const) {
      const known = map.get(key);
      if (known) known.push(at);
      else map.set(key, [at]);
    }
  });
  return (number, title) => new Set([...(numbers.get(number) ?? []), ...((title !== '' && titles.get(title)) || [])]);
}
