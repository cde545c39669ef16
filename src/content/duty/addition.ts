import type { Duty } from '../../model/crosswalk.ts';
import type { Reading } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';
import { jointBeside, lowAt } from './joints.ts';
import { bindingOf, clauseAt, roleAt, setsObject, usesObject } from './role.ts';
import { isComparative } from './segment-evidence.ts';

/** What words put into a text do; words left out do the opposite. */
export function addition(
  reading: Reading,
  atoms: readonly Atom[],
  words: readonly Atom[],
): { direction: Duty; what: string } {
  const at = words[0]!.first;
  const binding = bindingOf(reading, clauseAt(reading, at));
  const role = roleAt(reading, at);
  // "at all times" is no place and no kind of thing.
  if (role === 'duty' && binding === 'duty' && words.every(w => /^times?$/.test(lowAt(reading, w.first)))) {
    return { direction: 'stricter', what: 'demand added' };
  }
  // Why something is asked asks for nothing; "so that it holds" may.
  if (role === 'purpose') return { direction: isWhy(reading, at) ? 'same' : 'unclear', what: 'purpose added' };
  if (words.every(w => w.key === 'onli')) return { direction: 'stricter', what: 'limit to "only" added' };
  const joint = jointBeside(reading, atoms);
  // "daily, or more often where it smells"
  if (joint === 'or' && atoms[0]!.kind === 'joint' && isComparative(lowAt(reading, atoms[0]!.first + 1))) {
    return { direction: 'stricter', what: 'demand added' };
  }
  if (joint === 'or') {
    const denied = lowAt(reading, atoms[0]!.first - 1) === 'nor' || lowAt(reading, atoms[0]!.first) === 'nor';
    const widens =
      denied ||
      role === 'scope' ||
      role === 'condition' ||
      role === 'timing' ||
      binding === 'ban' ||
      anyBefore(reading, at);
    if (binding === 'permission') return { direction: 'relaxed', what: 'permission for more added' };
    return widens
      ? { direction: role === 'exception' ? 'relaxed' : 'stricter', what: 'case added' }
      : { direction: 'relaxed', what: 'alternative added' };
  }
  if (joint === 'and') {
    if (role === 'condition')
      return { direction: binding === 'permission' ? 'stricter' : 'relaxed', what: 'condition added' };
    if (role === 'exception') {
      return isClausal(reading, at)
        ? { direction: 'stricter', what: 'limit of an exception added' }
        : { direction: 'relaxed', what: 'exception added' };
    }
    return binding === 'permission'
      ? { direction: 'relaxed', what: 'permission for more added' }
      : { direction: 'stricter', what: 'demand added' };
  }
  const narrows =
    (role === 'scope' && !isProvided(reading, at)) ||
    role === 'condition' ||
    binding === 'ban' ||
    (role === 'duty' && narrowsObject(reading, atoms));
  if (binding === 'permission') return { direction: 'stricter', what: 'limit of a permission added' };
  if (role === 'exception') return { direction: 'stricter', what: 'limit of an exception added' };
  return narrows
    ? { direction: 'relaxed', what: 'limit of the scope added' }
    : { direction: 'stricter', what: 'demand added' };
}

function isWhy({ segments, tokens }: Reading, at: number): boolean {
  const segment = segments.find(s => at >= s.first && at < s.next);
  return segment !== undefined && tokens[segment.first + 1]?.low !== 'that';
}

/** "unless they have been dried and released": both have to be met; "except doors and windows": both are let off. */
function isClausal({ segments, tags, tokens }: Reading, at: number): boolean {
  const segment = segments.find(s => at >= s.first && at < s.next);
  return (
    segment !== undefined && tokens[segment.first]!.low === 'unless' && tags.slice(segment.first, at).includes('AUX')
  );
}

function anyBefore(reading: Reading, at: number): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 8); i--) {
    const low = lowAt(reading, i);
    if (low === 'any' || low === 'every' || low === 'all') return true;
    if (low === ',' || low === '.') return false;
  }
  return false;
}

const LOCATING =
  /^(of|in|on|at|near|inside|outside|under|above|below|between|behind|within|from|to|that|which|who|whose)$/;

/** "at night", "in winter": when a duty holds, and then only. */
const PERIODS = new Set(
  'night nights daytime darkness winter summer spring autumn weekdays weekends holidays sundays saturdays'.split(' '),
);

/**
 * "A spare fuse shall be kept", "a trained person shall be present": what stands in front of the verb is to be brought
 * about, and a word more about it asks for more. "A damaged ladder shall be removed" is there already.
 */
function isProvided(reading: Reading, at: number): boolean {
  const { tokens, tags } = reading;
  const clause = clauseAt(reading, at);
  const modal = clause?.force.at;
  if (!clause || modal === undefined || !/^(?:a|an|one|two)$/.test(tokens[clause.main[0]!]?.low ?? '')) return false;
  if (tokens[modal + 1]?.low !== 'be') return false;
  const low = tokens[modal + 2]?.low ?? '';
  return (
    tags[modal + 2] !== 'VERB' ||
    /^(?:provided|kept|fitted|installed|used|displayed|available|supplied|worn)$/.test(low)
  );
}

/** Whether words say which of the things there are, or how and with what: "all aluminium wiring" against "in writing". */
function narrowsObject(reading: Reading, atoms: readonly Atom[]): boolean {
  const [first, last] = [atoms[0]!.first, atoms.at(-1)!.next];
  // "excavation deeper than 1 m", "for loads above 2 t": a bound behind a noun that no verb sets.
  const bound = atoms.find(a => a.quantity?.open);
  if (bound && /^(NOUN|PROPN)$/.test(reading.tags[bound.first - 1] ?? '')) return !setsObject(reading, bound.first);
  if (atoms.some(a => PERIODS.has(lowAt(reading, a.first)))) return true;
  if (usesObject(reading, first)) return false;
  const isNoun = (at: number) => /^(NOUN|PROPN|ADJ)$/.test(reading.tags[at] ?? '');
  if (isNoun(last) || (lowAt(reading, last) === '-' && isNoun(last + 1))) return true;
  // Behind a noun: "doors in the corridor" tells which doors, "notify in writing" tells how.
  const lead = [lowAt(reading, first), lowAt(reading, first - 1), lowAt(reading, first - 2)].find(w =>
    LOCATING.test(w),
  );
  if (lead === undefined) return false;
  if (/^(that|which|who|whose|of)$/.test(lead)) return true;
  const inner = reading.tokens.slice(first - 1, last).map(t => t.low);
  return inner.some(w => /^(the|a|an|all|any|every|each|its|their)$/.test(w)) && !inner.includes('writing');
}
