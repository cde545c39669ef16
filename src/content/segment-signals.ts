import { opposite, type Signal } from './duty-signals.ts';
import { type Clause, type Reading, said } from './reading.ts';
import type { Segment } from './segments.ts';

/** A condition or exception added or dropped, widened or narrowed, and what that does to the duty it belongs to. */
export function segmentSignals(from: Reading, to: Reading): Signal[] {
  const left = new Set(to.segments.filter(s => s.kind !== 'purpose'));
  const signals: Signal[] = [];
  const [inFrom, inTo] = [new Set(from.meanings), new Set(to.meanings)];
  for (const segment of from.segments.filter(s => s.kind !== 'purpose')) {
    const match = bestMatch(from, segment, to, left);
    if (match) {
      left.delete(match);
      signals.push(...changeSignals(from, segment, to, match));
    } else if (!isSaidIn(from, segment, inTo)) {
      signals.push(lone(from, segment, 'dropped'));
    }
  }
  for (const segment of left) if (!isSaidIn(to, segment, inFrom)) signals.push(lone(to, segment, 'added'));
  return signals;
}

const bodyOf = (reading: Reading, s: Segment) => [
  ...new Set(reading.meanings.slice(s.first + s.opener, s.next).filter(Boolean)),
];

/** Set out elsewhere in the other text without an opener: "if exposed, cables …" as "exposed cables …". */
function isSaidIn(reading: Reading, segment: Segment, others: ReadonlySet<string>): boolean {
  const body = bodyOf(reading, segment);
  return segment.kind !== 'exception' && segment.kind !== 'soft' && body.length > 0 && body.every(m => others.has(m));
}

/** Exceptions pair with exceptions only; a condition and a timing may be two ways to say one thing. */
function bestMatch(from: Reading, segment: Segment, to: Reading, left: ReadonlySet<Segment>): Segment | undefined {
  const mine = bodyOf(from, segment);
  let best: { segment: Segment; score: number } | undefined;
  for (const other of left) {
    if ((segment.kind === 'exception') !== (other.kind === 'exception')) continue;
    if (segment.kind === 'soft' || other.kind === 'soft') {
      if (segment.kind === other.kind) return other;
      continue;
    }
    const theirs = bodyOf(to, other);
    const shared = mine.filter(m => theirs.includes(m)).length;
    const most = Math.min(mine.length, theirs.length);
    const score = most === 0 ? (mine.length === theirs.length ? 1 : 0) : shared / most;
    if (score >= 0.5 && score > (best?.score ?? 0)) best = { segment: other, score };
  }
  return best?.segment;
}

function changeSignals(from: Reading, a: Segment, to: Reading, b: Segment): Signal[] {
  const [mine, theirs] = [bodyOf(from, a), bodyOf(to, b)];
  const gone = mine.filter(m => !theirs.includes(m));
  const come = theirs.filter(m => !mine.includes(m));
  const told = { about: a.kind, from: said(from, a), to: said(to, b) };
  const [x, y] = [from.tokens[a.first + (a.only ? 1 : 0)]!.low, to.tokens[b.first + (b.only ? 1 : 0)]!.low];
  const turned =
    new Set([x, y]).size === 2 &&
    [x, y].some(w => w === 'before' || w === 'prior') &&
    [x, y].some(w => /^(after|once|until|during|while)$/.test(w));
  if (turned) return [{ direction: 'unclear', ...told }];
  const joints = (r: Reading, s: Segment) =>
    r.tokens
      .slice(s.first, s.next)
      .filter(t => t.low === 'and' || t.low === 'or')
      .map(t => t.low);
  const [before, after] = [joints(from, a).join(), joints(to, b).join()];
  if (gone.length === 0 && come.length === 0) {
    if (before === after) return [];
    if (before === 'and' && after === 'or') return [directed(to, b, 'wider', told)];
    if (before === 'or' && after === 'and') return [directed(to, b, 'narrower', told)];
    return [{ direction: 'unclear', weak: true, ...told }];
  }
  if (gone.length > 0 && come.length > 0) return [{ direction: 'unclear', weak: true, ...told }];
  const [longer, reading] = come.length > 0 ? [b, to] : [a, from];
  const wider = joints(reading, longer).includes('or') && before !== after;
  const change = come.length > 0 === wider ? 'wider' : 'narrower';
  return [directed(to, b, change, told)];
}

function directed(
  reading: Reading,
  segment: Segment,
  change: 'wider' | 'narrower',
  told: Omit<Signal, 'direction'>,
): Signal {
  if (segment.kind === 'timing') return { direction: 'unclear', weak: true, ...told };
  // A wider condition is more of a duty; a wider exception less. A permission turns both round.
  const dutyGrows = (segment.kind === 'condition') === (change === 'wider');
  const frees = freesBy(reading, segment);
  return { direction: dutyGrows !== frees ? 'stricter' : 'relaxed', ...told };
}

function lone(reading: Reading, segment: Segment, side: 'added' | 'dropped'): Signal {
  const phrase = said(reading, segment);
  const told = {
    about: `${segment.kind} ${side}`,
    ...(side === 'added' ? { from: '', to: phrase } : { from: phrase, to: '' }),
  };
  const clause = clauseOf(reading, segment);
  const frees = freesBy(reading, segment);
  const turn = (added: 'stricter' | 'relaxed') => ({ direction: side === 'added' ? added : opposite(added), ...told });
  if (segment.kind === 'timing') {
    if (frees) return turn('stricter');
    if (clause?.force.negated) return turn('relaxed');
    const first = reading.tokens[segment.first]!.low;
    if (clause?.first === segment.first && /^(after|once|upon|as)$/.test(first))
      return { direction: 'unclear', ...told };
    return turn('stricter');
  }
  if (segment.kind === 'soft') return turn('relaxed');
  return turn(frees ? 'stricter' : 'relaxed');
}

/** Whether the clause frees rather than binds, so that a limit to it is a limit to freedom. */
function freesBy(reading: Reading, segment: Segment): boolean {
  const force = clauseOf(reading, segment)?.force;
  const permits = force?.kind === 'may' || force?.kind === 'exempt';
  return segment.kind === 'exception' ? permits : permits || segment.only;
}

const clauseOf = (reading: Reading, segment: Segment): Clause | undefined =>
  reading.clauses.find(c => segment.first >= c.first && segment.first < c.next);
