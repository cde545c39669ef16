import { groupBy } from '../../model/group-by.ts';
import { LOCAL_STATES, type LocalRecord, type LocalState } from '../../model/local.ts';

/** Variances asked for by one cause. */
export interface CauseCount {
  /** Empty: the requests do not say. */
  readonly cause: string;
  readonly requests: number;
  readonly byState: Readonly<Record<LocalState, number>>;
  /** What they ask to depart from, "2018 3.1.2.2", in order. */
  readonly cites: readonly string[];
  readonly places: readonly string[];
}

/** All variances ever asked for, by cause, the commonest first: what many places ask to depart from may need a revision. */
export function variancesByCause(records: readonly LocalRecord[]): readonly CauseCount[] {
  const variances = records.filter(r => r.kind === 'variance');
  const byCause = groupBy(variances, r => r.cause?.trim().toLowerCase() ?? '');
  const inOrder = (words: readonly string[]) => [...new Set(words)].sort();
  return [...byCause]
    .map(([cause, own]) => ({
      cause,
      requests: own.length,
      byState: Object.fromEntries(
        LOCAL_STATES.map(state => [state, own.filter(r => r.state === state).length]),
      ) as Record<LocalState, number>,
      cites: inOrder(own.map(r => `${r.cites.edition} ${r.cites.number}`)),
      places: inOrder(own.map(r => r.place)),
    }))
    .sort((a, b) => b.requests - a.requests || (a.cause < b.cause ? -1 : 1));
}
