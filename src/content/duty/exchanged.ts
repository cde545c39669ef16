import type { Evidence } from '../../model/duty-evidence.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';
import { type ValueIndex, valueIndex } from '../quantities/value-index.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Atom, Hunk } from './atoms.ts';
import { aboutValue, apart, common, wordsIn } from './subjects.ts';

/**
 * Two words that changed places, each now said of what the other was said of. All words are still there, so nothing else
 * shows it.
 *
 *   old: Coving is scribed at inner corners and mitred at outer ones.
 *   new: Coving is mitred at inner corners and scribed at outer ones.
 */
export function exchangedWords(from: Reading, to: Reading, hunks: readonly Hunk[]): Evidence[] {
  const worded = hunks
    .map(h => ({ out: h.out.filter(isWord), in: h.in.filter(isWord) }))
    .filter(h => h.out.length > 0 && h.in.length > 0);
  for (const [i, a] of worded.entries()) {
    const b = worded.slice(i + 1).find(h => keys(h.out) === keys(a.in) && keys(h.in) === keys(a.out));
    if (!b || isTurned(from, a.out[0]!, b.out[0]!) !== isTurned(to, a.in[0]!, b.in[0]!)) continue;
    if (!partedByWords(from, a.out.at(-1)!, b.out[0]!)) continue;
    const words = { from: phrase(from, a.out, b.out), to: phrase(to, a.in, b.in) };
    return [{ direction: 'unclear', what: 'words changed places', ...words }];
  }
  return [];
}

const isWord = (atom: Atom) => atom.kind === 'word';
const keys = (atoms: readonly Atom[]) => atoms.map(a => a.key).join(' ');
const phrase = (reading: Reading, a: readonly Atom[], b: readonly Atom[]) =>
  `${saidOf(reading, a)}, ${saidOf(reading, b)}`;
const saidOf = (reading: Reading, atoms: readonly Atom[]) =>
  said(reading, { first: atoms[0]!.first, next: atoms.at(-1)!.next });

/** "tested by the plumber": the passive exchanges the two on purpose. */
const isTurned = ({ tokens }: Reading, a: Atom, b: Atom) => tokens.slice(a.next, b.first).some(t => t.low === 'by');

/** Members of one list ("fish, meat and eggs") have only joints between them and may stand in any order. */
const partedByWords = ({ meanings }: Reading, a: Atom, b: Atom) => meanings.slice(a.next, b.first).some(Boolean);

/**
 * Values that were exchanged between two things: both are still stated, each of the other thing.
 *
 *   old: lap 150 mm, fixings at 75 mm        new: fixings at 150 mm, lap 75 mm
 */
export function exchangedValues(from: Reading, to: Reading): Evidence[] {
  const [before, after] = [from, to].map(r => valueIndex(r.quantities, q => q)) as [Values, Values];
  const pairs = exchangedPairs(from, to, after);
  if (pairs.length === 0) return from.quantities.flatMap(q => movedValue(from, to, q, before, after) ?? []);
  return pairs.map(({ a, b, x, y }) => ({
    direction: 'mixed',
    what: 'values changed places',
    from: `${a.text}, ${b.text}`,
    to: `${x.text}, ${y.text}`,
  }));
}

type Values = ValueIndex<Quantity>;

/** A value whose phrase shares no word with the old one, while both texts speak of both phrases elsewhere. */
function movedValue(from: Reading, to: Reading, q: Quantity, before: Values, after: Values): Evidence | undefined {
  const x = after.only(q);
  if (!x || !before.only(q)) return undefined;
  const [old, now] = [aboutValue(from, q), aboutValue(to, x)];
  if (old.size === 0 || now.size === 0 || common(old, now) > 0) return undefined;
  const isElsewhere = (words: ReadonlySet<string>, reading: Reading) => [...words].every(w => wordsIn(reading).has(w));
  if (!isElsewhere(old, to) || !isElsewhere(now, from)) return undefined;
  return { direction: 'unclear', what: 'value moved to another thing', from: q.text, to: x.text };
}

/** Old values `a` and `b`, which stand at `x` and `y` now: `x` says of the subject of `b` what `a` said of its own. */
function exchangedPairs(from: Reading, to: Reading, after: Values) {
  const found: { a: Quantity; b: Quantity; x: Quantity; y: Quantity }[] = [];
  const now = after.only;
  for (const [i, a] of from.quantities.entries()) {
    for (const b of from.quantities.slice(i + 1, i + 1 + NEAR)) {
      if (a.dimension !== b.dimension || sameValue(a, b)) continue;
      const [x, y] = [now(a), now(b)];
      if (!x || !y) continue;
      const [ofA, ofB] = apart(aboutValue(from, a), aboutValue(from, b));
      const [ofX, ofY] = apart(aboutValue(to, x), aboutValue(to, y));
      const straight = common(ofA, ofX) + common(ofB, ofY);
      const crossed = common(ofA, ofY) + common(ofB, ofX);
      if (crossed > straight && common(ofA, ofY) > 0 && common(ofB, ofX) > 0) found.push({ a, b, x, y });
    }
  }
  return found;
}

/** A value is compared with so many behind it; a table written as one sentence would be read once for each pair. */
const NEAR = 6;
