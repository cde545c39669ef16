import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import type { Reading } from '../reading/reading.ts';

/**
 * Evidence in which one time stands for another of another kind: "after each guest" that became "once a week". Apart, the
 * one would seem to be dropped and the other to be asked for in addition. What each use or shift asks for is asked more
 * often than once a week; beside shorter times nobody can tell.
 */
export function timesReplaced(from: Reading, to: Reading, evidence: readonly Evidence[]): readonly Evidence[] {
  const gone = evidence.find(e => e.to === '' && isTime(from, e.from));
  const come = evidence.find(e => e.from === '' && isTime(to, e.to));
  if (!gone || !come) return evidence;
  const direction: Duty =
    EACH.test(gone.from) && isSeldom(to, come.to)
      ? 'relaxed'
      : EACH.test(come.to) && isSeldom(from, gone.from)
        ? 'stricter'
        : 'unclear';
  const one: Evidence = { direction, what: 'time replaced', from: gone.from, to: come.to };
  return [one, ...evidence.filter(e => e !== gone && e !== come)];
}

const EACH = /^(?:before|after|during|at the (?:start|end|beginning) of) (?:each|every)\b/i;
const WEEK = 7 * 24 * 3600;

const intervalOf = ({ quantities }: Reading, words: string) =>
  quantities.find(q => q.kind === 'interval' && q.text === words && q.dimension === 'second1');

/** Nothing but how often: an interval, or before or after each of something. */
const isTime = (reading: Reading, words: string) => EACH.test(words) || intervalOf(reading, words) !== undefined;

const isSeldom = (reading: Reading, words: string) => (intervalOf(reading, words)?.high ?? 0) >= WEEK;
