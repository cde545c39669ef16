import type { Evidence } from '../../model/duty-evidence.ts';
import { isEmptyWord } from '../reading/empty-words.ts';
import { isForceWord } from '../reading/force.ts';
import { idleEnd } from '../reading/phrases.ts';
import { isParticle, PLAIN } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import { spelled, writtenOut } from '../reading/spelling.ts';
import { clauseAt, isBound } from './role.ts';
import { isAnaphor } from './segment-evidence.ts';

/** What grammar may do without: "The hatch must be locked", "Lock the hatch". */
const SPARED = new Set(
  `a an the of to is are be been being was were do does and it its they them their there he she who by so shall must please need needs required`.split(
    /\s+/,
  ),
);
/** Small words that say how the others hang together, and nothing else: which, with, has. */
const JOINING = new Set(
  'with on in at for from as which that this these those such has have had own one then thereafter say'.split(' '),
);

interface Word {
  readonly low: string;
  readonly at: number;
}

/**
 * The last look at two texts in which nothing was found that asks more or less: words that one of them only leaves out.
 * "Keep out where it is wet" without "where", "unless" or "same" is no other wording of the same.
 */
export function leftOut(from: Reading, to: Reading): Evidence[] {
  const [oneOr, otherOr] = [orsIn(from), orsIn(to)];
  if ((oneOr === '') !== (otherOr === '')) {
    return [{ direction: 'unclear', what: 'an "or" in one text only', from: oneOr, to: otherOr }];
  }
  const [leave, otherLeave] = [leaveIn(from), leaveIn(to)];
  if ((leave === '') !== (otherLeave === '')) {
    return [{ direction: 'unclear', what: 'leave in one text only', from: leave, to: otherLeave }];
  }
  const [gone, come] = [only(from, to), only(to, from)];
  if ((gone.length === 0) === (come.length === 0)) return [];
  const isTold = gone.length > 0 ? gone.some(w => tells(from, to, w)) : come.some(w => tells(to, from, w));
  if (!isTold) return [];
  const what = gone.length > 0 ? 'words left out' : 'words put in';
  const words = (list: readonly Word[]) => list.map(w => w.low).join(', ');
  return [{ direction: 'unclear', what, from: words(gone), to: words(come) }];
}

/** The first "or" of a text with what it joins, but for "10 mm or more"; what is denied with "or" is denied with "and" too. */
function orsIn(reading: Reading): string {
  const { tokens, quantities, text } = reading;
  const at = tokens.findIndex(
    (t, i) => t.low === 'or' && !isDenied(reading, i) && !quantities.some(q => i >= q.spanFirst && i < q.spanNext),
  );
  return at < 0 ? '' : text.slice(tokens[Math.max(0, at - 1)]!.start, tokens[Math.min(tokens.length - 1, at + 1)]!.end);
}

/** "a marshaller may guide them" where the other text says "guided by a marshaller". */
function leaveIn(reading: Reading): string {
  const clause = reading.clauses.find(
    ({ force, main }) =>
      force.kind === 'may' &&
      force.at !== undefined &&
      reading.tokens[force.at]!.low === 'may' &&
      !main.some(at => reading.tokens[at]!.low === 'only'),
  );
  return clause ? said(reading, clause) : '';
}

function isDenied(reading: Reading, at: number): boolean {
  const clause = clauseAt(reading, at);
  return clause?.force.negated === true && !isBound(reading, clause);
}

/** Not a thing said again ("the brakes of all castors"), a joining word, or a verb that a shorter text does without. */
function tells(reading: Reading, other: Reading, { low, at }: Word): boolean {
  if (JOINING.has(low) || isParticle(reading, at)) return false;
  const isBan = (r: Reading) => r.clauses.some(c => c.force.negated);
  if (low === 'not' && isBan(reading) && isBan(other)) return false;
  const meant = reading.meanings[at] ?? '';
  if (meant === '' || isEmptyWord(low))
    return !reading.segments.some(s => isAnaphor(reading, s) && at >= s.first && at < s.next);
  if (reading.tags[at] === 'VERB' && PLAIN.has(meant)) return false;
  return !/^(?:NOUN|PROPN|VERB)$/.test(reading.tags[at] ?? '') || !other.meanings.includes(meant);
}

function only(reading: Reading, other: Reading): Word[] {
  const left = new Map<string, number>();
  for (const { low } of written(other)) left.set(low, (left.get(low) ?? 0) + 1);
  return written(reading).filter(({ low }) => {
    const n = left.get(low) ?? 0;
    if (n > 0) left.set(low, n - 1);
    return n === 0;
  });
}

function written(reading: Reading): Word[] {
  const { tokens, quantities } = reading;
  // "at 1.5 m above" = "1.5 m above", "at 900 mm centres" = "every 900 mm", "no higher than" = "not … higher than"
  const measured = (at: number) =>
    quantities.some(
      q =>
        (at >= q.spanFirst && at < q.spanNext) ||
        (at === q.spanFirst - 1 && tokens[at]!.low === 'at') ||
        (at >= q.spanFirst - 3 && at < q.spanFirst && /^(?:at|intervals?)$/.test(tokens[at]!.low)) ||
        (at < q.spanFirst && tokens[at]!.low === 'not' && isBound(reading, clauseAt(reading, at)!)) ||
        (at === q.spanNext && /^(?:cent(?:re|er)s?|apart|spacing|intervals?)$/.test(tokens[at]!.low)),
    );
  const idle = new Set<number>();
  for (let at = 0; at < tokens.length; at++) {
    for (let end = idleEnd(tokens, at) ?? at; end > at; end--) idle.add(end - 1);
  }
  return tokens.flatMap(({ kind, low }, at) =>
    kind === 'word' && !idle.has(at) && !SPARED.has(low) && !isForceWord(low) && !measured(at)
      ? writtenOut(low).map(word => ({ low: spelled(word), at }))
      : [],
  );
}
