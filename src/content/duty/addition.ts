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
  if (isExample(reading, at)) return { direction: 'same', what: 'example added' };
  if (words.every(w => w.key === 'onli')) return { direction: 'stricter', what: 'limit to "only" added' };
  if (leadsSentence(reading, atoms)) {
    return binding === 'permission'
      ? { direction: 'stricter', what: 'limit of a permission added' }
      : { direction: 'relaxed', what: 'limit of the scope added' };
  }
  const joint = jointBeside(reading, atoms);
  // "daily, or more often where it smells"
  if (joint === 'or' && atoms[0]!.kind === 'joint' && isComparative(lowAt(reading, atoms[0]!.first + 1))) {
    return { direction: 'stricter', what: 'demand added' };
  }
  if (joint === 'or') {
    const denied = lowAt(reading, atoms[0]!.first - 1) === 'nor' || lowAt(reading, atoms[0]!.first) === 'nor';
    // "until it is dry or covered", "after the first or second test": one of them will do.
    if (role === 'timing' && isEnd(reading, at)) return { direction: 'relaxed', what: 'alternative added' };
    const widens =
      denied ||
      role === 'scope' ||
      role === 'condition' ||
      role === 'timing' ||
      binding === 'ban' ||
      (isDeniedBefore(reading, at) && !words.some(w => w.quantity)) ||
      anyBefore(reading, at);
    if (binding === 'permission') return { direction: 'relaxed', what: 'permission for more added' };
    return widens
      ? { direction: role === 'exception' ? 'relaxed' : 'stricter', what: 'case added' }
      : { direction: 'relaxed', what: 'alternative added' };
  }
  if (joint === 'and') {
    // "during loading and unloading": two cases, not two conditions that both have to be met.
    if (role === 'condition' && isNamed(reading, at))
      return { direction: binding === 'permission' ? 'relaxed' : 'stricter', what: 'case added' };
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
    (role === 'timing' ? limitsTrigger(reading, atoms) : binding === 'ban') ||
    (role === 'duty' && narrowsObject(reading, atoms));
  if (binding === 'permission') return { direction: 'stricter', what: 'limit of a permission added' };
  if (role === 'exception') return { direction: 'stricter', what: 'limit of an exception added' };
  return narrows
    ? { direction: 'relaxed', what: 'limit of the scope added' }
    : { direction: 'stricter', what: 'demand added' };
}

/** "In exposed sites, …", "In lofts and cellars the cable …": in front of all else stands where or for what the rest holds. */
function leadsSentence(reading: Reading, atoms: readonly Atom[]): boolean {
  const [first, next] = [atoms[0]!.first, atoms.at(-1)!.next];
  const { tokens, tags, sentences } = reading;
  if (!sentences.some(s => s.first === first) || !PLACING.test(tokens[first]!.low)) return false;
  if (atoms.some(a => a.quantity || HOW.has(lowAt(reading, a.first)))) return false;
  // "In case it rains" is a segment; "on request" and "for safety" say how and why.
  const isPhrase = lowAt(reading, next) === ',' || tags[next] === 'DET';
  return isPhrase && roleAt(reading, first) !== 'condition' && tokens[next - 1]!.low.length > 2;
}

const PLACING = /^(?:in|on|at|for|under|near|inside|outside|within|along|above|below|between)$/;
const HOW = new Set(
  `order addition accordance writing general particular case least most once all any every each safety reason reasons purpose this
that these those it them turn advance principle request total detail fact short`.split(/\s+/),
);

const PUTTING = new Set(
  `keep kept store stored collect collected pack packed transport transported place placed put deliver delivered record recorded
enter entered note noted log logged write written file filed stack stacked wash washed wrap wrapped dry dried hold held`.split(
    /\s+/,
  ),
);

/** "kept in sealed bins", "record the result in the book": where a thing is put is asked for. */
function isPut(reading: Reading, at: number): boolean {
  const clause = clauseAt(reading, at);
  for (let i = at - 1; i >= (clause?.first ?? 0); i--) {
    if (PUTTING.has(lowAt(reading, i))) return true;
    if (reading.tags[i] === 'VERB') return false;
  }
  return false;
}

/** "washed in clean soft water", "kept in a locked box": in what a thing is done or kept is asked for, whatever it is. */
function inMedium(reading: Reading, at: number): boolean {
  const { tokens, tags } = reading;
  let first = at;
  while (/^(?:ADJ|ADV|NOUN|PROPN|VERB)$/.test(tags[first - 1] ?? '') && at - first < 4) first--;
  const determined = tags[first - 1] === 'DET';
  if (determined && !/^(?:a|an)$/.test(tokens[first - 1]!.low)) return false;
  if (!/^(?:in|into|to|onto|under|from)$/.test(tokens[determined ? first - 2 : first - 1]?.low ?? '')) return false;
  if (isPut(reading, at)) return true;
  let last = at;
  while (/^(?:ADJ|NOUN|PROPN)$/.test(tags[last + 1] ?? '')) last++;
  return determined || !tokens[last]!.low.endsWith('s');
}

/** "before reversing near people", "after every repair of the rim": fewer cases; "before use by a rigger" is a demand. */
function limitsTrigger(reading: Reading, atoms: readonly Atom[]): boolean {
  const at = atoms[0]!.first;
  const segment = reading.segments.find(s => at >= s.first && at < s.next);
  const how = [at, at - 1, at - 2].some(i => /^(?:by|with|using|for|in|at)$/.test(lowAt(reading, i)));
  if (!segment || how) return false;
  const opener = lowAt(reading, segment.first);
  return (
    opener === 'before' ||
    opener === 'prior' ||
    (opener === 'after' && /^(?:each|every|any)$/.test(lowAt(reading, segment.first + 1)))
  );
}

/** "dry plant material such as hessian or pine needles" */
function isEnd(reading: Reading, at: number): boolean {
  const segment = reading.segments.find(s => at >= s.first && at < s.next);
  if (!segment) return false;
  const start = segment.only ? segment.first + 1 : segment.first;
  const opener = lowAt(reading, start);
  return /^(?:until|till|once)$/.test(opener) || (opener === 'after' && lowAt(reading, start + 1) === 'the');
}

function isExample({ tokens }: Reading, at: number): boolean {
  for (let i = at; i > at - 8 && i > 0; i--) {
    const [before, low] = [tokens[i - 1]!.low, tokens[i]!.low];
    if ((before === 'such' && low === 'as') || (before === 'for' && /^(?:example|instance)$/.test(low))) return true;
    if (/^[.;]$/.test(low)) return false;
  }
  return false;
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

/** "shall not be spaced more than 5 mm apart or pulled tight": behind a "not", one more thing is banned. */
function isDeniedBefore(reading: Reading, at: number): boolean {
  const clause = clauseAt(reading, at);
  return clause?.force.negated === true && roleAt(reading, at) === 'duty';
}

function isNamed({ segments, tokens }: Reading, at: number): boolean {
  const segment = segments.find(s => at >= s.first && at < s.next);
  return segment !== undefined && /^(?:during|in|upon)$/.test(tokens[segment.first]!.low);
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
  if (!clause || modal === undefined || tokens[modal + 1]?.low !== 'be') return false;
  const first = tokens[clause.main[0]!]?.low ?? '';
  // "Fresh feed shall be given"
  if (!/^(?:a|an|one|two)$/.test(first))
    return /^(?:given|worn|used|available)$/.test(tokens[modal + 2]?.low ?? '') && tags[clause.main[0]!] !== 'DET';
  const low = tokens[modal + 2]?.low ?? '';
  const behind = tags[modal + 3] ?? '';
  return tags[modal + 2] !== 'VERB' || (BROUGHT.has(low) && !/^(?:NOUN|PROPN|DET)$/.test(behind));
}

const BROUGHT = new Set(
  `provided kept fitted installed used displayed available supplied worn fixed given posted mounted erected laid applied drawn
prepared attached affixed hung shown issued appointed established made`.split(/\s+/),
);

/** Whether words say which of the things there are, or how and with what: "all aluminium wiring" against "in writing". */
function narrowsObject(reading: Reading, atoms: readonly Atom[]): boolean {
  const [first, last] = [atoms[0]!.first, atoms.at(-1)!.next];
  // "excavation deeper than 1 m", "for loads above 2 t": a bound behind a noun that no verb sets.
  const bound = atoms.find(a => a.quantity?.open);
  if (bound && /^(NOUN|PROPN)$/.test(reading.tags[bound.first - 1] ?? '')) return !setsObject(reading, bound.first);
  if (atoms.some(a => PERIODS.has(lowAt(reading, a.first)))) return true;
  if (usesObject(reading, first) || /^(?:by|with|using|without)$/.test(lowAt(reading, first))) return false;
  // "on a randomly chosen set": how, wherever it stands.
  if (atoms.every(a => reading.tags[a.first] === 'ADV' && lowAt(reading, a.first).endsWith('ly'))) return false;
  // "of felt 6 mm thick"
  if (atoms.every(a => a.quantity !== undefined) && !bound) return false;
  if (inMedium(reading, first)) return false;
  const isNoun = (at: number) => /^(NOUN|PROPN|ADJ)$/.test(reading.tags[at] ?? '');
  if (isNoun(last) || (lowAt(reading, last) === '-' && isNoun(last + 1))) return true;
  // Behind a noun: "doors in the corridor" tells which doors, "notify in writing" tells how.
  const leadAt = [first, first - 1, first - 2].find(at => LOCATING.test(lowAt(reading, at)));
  if (leadAt === undefined) return false;
  const lead = lowAt(reading, leadAt);
  // "dried to a moisture content of 2 %": how, not which.
  if (reading.tags[leadAt - 1] === 'VERB' && lead !== 'that' && lead !== 'of') return false;
  if (/^(that|which|who|whose|of)$/.test(lead)) return true;
  if (isPut(reading, leadAt)) return false;
  const inner = reading.tokens.slice(first - 1, last).map(t => t.low);
  return inner.some(w => /^(the|a|an|all|any|every|each|its|their)$/.test(w)) && !inner.includes('writing');
}
