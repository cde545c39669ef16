import type { Candidate } from './candidates.ts';
import type { Evidence } from './evidence.ts';
import { type Neighbourhood, neighbourhoods } from './neighbours.ts';
import { FIRST, SECOND } from './weights.ts';

/** A sum of evidence that gives log-odds (logistic regression). */
export interface Weights {
  readonly base: number;
  readonly weights: Readonly<Record<string, number>>;
}

/** Log-odds that each candidate of a document is a citation: first by what stands around it, then by its neighbours too. */
export function beliefsOf(candidates: readonly Candidate[], evidence: readonly Evidence[]): readonly number[] {
  const first = evidence.map(e => oddsOf(FIRST, e));
  return neighbourhoods(candidates, first).map((near, at) => oddsOf(SECOND, { ...evidence[at], ...neighbourly(near) }));
}

export function oddsOf({ base, weights }: Weights, evidence: Readonly<Record<string, number>>): number {
  let sum = base;
  for (const [reason, value] of Object.entries(evidence)) sum += (weights[reason] ?? 0) * value;
  return sum;
}

/** A neighbourhood as evidence: each mean split by its sign, so that good company and bad may weigh differently. */
export function neighbourly(near: Neighbourhood): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(near).flatMap(([where, odds]) => [
      [`${where}For`, Math.max(0, odds)],
      [`${where}Against`, Math.max(0, -odds)],
    ]),
  );
}
