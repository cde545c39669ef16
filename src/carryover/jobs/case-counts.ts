import type { OutcomeKind } from '../../model/citation.ts';
import type { TypeId } from '../../model/item.ts';
import type { JobCase } from './job-case.ts';

/** Lines of one old number, type and outcome. */
export interface CaseCount {
  readonly number: string;
  readonly type: TypeId | undefined;
  readonly outcome: OutcomeKind;
  readonly heirs: readonly { readonly number: string; readonly title: string }[];
  readonly why: string;
  readonly lines: number;
  /** How many of the lines are closed and stay under the older edition. */
  readonly closed: number;
  /** How many of the lines wait until somebody says which edition governs them, whatever their outcome would be. */
  readonly ungoverned: number;
}

/** A case and how many lines have it. Cases beyond the limit are not `counted` here but by their kind. */
export interface Tally {
  readonly case: JobCase;
  lines: number;
  readonly counted: boolean;
}

export type OtherCounts = ReadonlyMap<
  OutcomeKind,
  { readonly lines: number; readonly closed: number; readonly ungoverned: number }
>;

const OTHERS = '(other numbers)';

/** Lines by case, largest first; cases in several states count as one. */
export function countCases(counted: readonly Tally[], others: OtherCounts): readonly CaseCount[] {
  const groups = new Map<string, CaseCount>();
  for (const { case: found, lines: n } of counted) {
    const { number, type, state, outcome, ungoverned } = found;
    if (n === 0) continue;
    const key = JSON.stringify([number, type ?? null, outcome.kind, outcome.why]);
    const before = groups.get(key);
    groups.set(key, {
      number,
      type,
      outcome: outcome.kind,
      heirs: outcome.heirs.map(h => ({ number: h.number, title: h.title })),
      why: outcome.why,
      lines: (before?.lines ?? 0) + n,
      closed: (before?.closed ?? 0) + (state === 'open' ? 0 : n),
      ungoverned: (before?.ungoverned ?? 0) + (ungoverned ? n : 0),
    });
  }
  for (const [outcome, { lines, closed, ungoverned }] of others) {
    const why = 'Too many different numbers that the edition does not have; each line says its own.';
    groups.set(`${OTHERS}${outcome}`, {
      number: OTHERS,
      type: undefined,
      outcome,
      heirs: [],
      why,
      lines,
      closed,
      ungoverned,
    });
  }
  return [...groups.values()].sort(
    (a, b) => b.lines - a.lines || (a.number < b.number ? -1 : a.number > b.number ? 1 : 0),
  );
}

export function sumOfLines(cases: readonly CaseCount[]): number {
  return cases.reduce((n, c) => n + c.lines, 0);
}
