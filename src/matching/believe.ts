import { counted } from '../model/counted.ts';
import type { BareRow } from './bare-row.ts';
import { candidatePairs } from './candidates.ts';
import { type Evidence, evidenceOf, type WordEvidence, wordEvidence } from './features.ts';
import type { Pairs } from './pairs.ts';
import { type Sides, sidesOf } from './sides.ts';
import { scorePairs, type Trees } from './trees.ts';

/** Two editions with the pairs worth looking at and what their words say of them. */
export interface Prepared {
  readonly sides: Sides;
  readonly pairs: Pairs;
  readonly words: WordEvidence;
}

/**
 * @param also pairs that must be among them although no word speaks for them
 * @param tell called before each step with what it does
 */
export function prepare(
  from: readonly BareRow[],
  to: readonly BareRow[],
  also: readonly (readonly [number, number])[] = [],
  tell: (step: string) => void = () => {},
): Prepared {
  tell('reading the words of both tables');
  const sides = sidesOf(from, to);
  tell('finding pairs of rows that are worth comparing');
  const pairs = candidatePairs(sides, also);
  tell(`comparing ${counted(pairs.size, 'pair')} of rows`);
  return { sides, pairs, words: wordEvidence(sides, pairs) };
}

/**
 * What was learned: a sum of trees for the beliefs that the words alone give rise to, one for the round after it, and one
 * for the rounds that see what such a sum believed, which is surer of itself.
 */
export interface Learned {
  readonly early: Trees;
  readonly late: Trees;
  readonly last: Trees;
  /**
   * Straightens the log-odds of the last round (Platt 1999): `slope × log-odds + shift`. Fitted on catalogs that the
   * trees had not seen, on all of them together; trees are surer of themselves than strange catalogs allow.
   */
  readonly calibration: { readonly slope: number; readonly shift: number };
}

/** Which sum judges in each round. Each looks at the outline through the beliefs of the one before; they settle quickly. */
export const ROUNDS = ['early', 'late', 'last', 'last'] as const;

export interface Believed {
  readonly beliefs: Float32Array;
  /** The evidence that the last round judged by. */
  readonly evidence: Evidence;
}

/** A belief of the last round as a probability that may be shown. */
export function calibrated(belief: number, { slope, shift }: Learned['calibration']): number {
  if (belief === 0 || belief === 1) return belief;
  return 1 / (1 + Math.exp(-(slope * Math.log(belief / (1 - belief)) + shift)));
}

/**
 * How likely each pair is a link. Words come first; then parents, siblings, neighbours, numbers and rivals speak, each
 * through what is believed of the pairs around, until little changes.
 *
 * @param settle puts a person's answers back after every round, so that they spread
 */
export function believe(
  { sides, pairs, words }: Prepared,
  learned: Learned,
  settle: (beliefs: Float32Array) => Float32Array = beliefs => beliefs,
): Believed {
  let believed: Believed = { beliefs: settle(words.first), evidence: words.fields as Evidence };
  for (const sum of ROUNDS) {
    const evidence = evidenceOf(sides, pairs, words, believed.beliefs);
    believed = { beliefs: settle(scorePairs(learned[sum], evidence, pairs.size)), evidence };
  }
  return believed;
}
