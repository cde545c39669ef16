import { base } from './meaning.ts';
import type { Quantity } from './quantities.ts';
import type { Reading } from './reading.ts';

/** A quantity of one text and the one that took its place in another; `to` absent: nothing did. */
export interface QuantityPair {
  readonly from: Quantity;
  readonly to?: Quantity;
  /** Whether both measure the same thing, as far as the words around them tell: 0 to 1. */
  readonly likeness: number;
}

/**
 * Pairs each quantity with the one of the other text that measures the same: equal dimension, then the words around it.
 * The value counts less than the subject: where two values were exchanged between two things, both have changed.
 */
export function matchQuantities(from: Reading, to: Reading): QuantityPair[] {
  const subjects = new Map(to.quantities.map(q => [q, subjectOf(to, q)]));
  const scored = from.quantities.flatMap(a => {
    const mine = subjectOf(from, a);
    return to.quantities
      .filter(b => comparable(a, b))
      .map(b => {
        const likeness = alike(mine, subjects.get(b)!);
        const score = 2 * likeness + (sameSet(a, b) ? 1 : 0) + (a.comparator === b.comparator ? 0.25 : 0);
        return { a, b, likeness, score };
      });
  });
  scored.sort((x, y) => y.score - x.score || x.a.start - y.a.start || x.b.start - y.b.start);
  const [used, pairs] = [new Set<Quantity>(), new Map<Quantity, QuantityPair>()];
  for (const { a, b, likeness } of scored) {
    if (pairs.has(a) || used.has(b)) continue;
    pairs.set(a, { from: a, to: b, likeness });
    used.add(b);
  }
  return from.quantities.map(q => pairs.get(q) ?? { from: q, likeness: 0 });
}

function comparable(a: Quantity, b: Quantity): boolean {
  return a.dimension === b.dimension && (a.kind === 'tolerance') === (b.kind === 'tolerance');
}

/** Words around a quantity up to the next one, nearer ones weighing more. */
export function subjectOf(reading: Reading, quantity: Quantity): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const sentence = reading.sentences.find(s => quantity.first >= s.first && quantity.first < s.next);
  const others = reading.quantities.filter(q => q !== quantity);
  const walk = (start: number, step: 1 | -1, most: number, weight: number) => {
    let seen = 0;
    for (let at = start; seen < most && sentence && at >= sentence.first && at < sentence.next; at += step) {
      if (others.some(q => at >= q.first && at < q.next)) break;
      const said = reading.meanings[at];
      if (!said) continue;
      found.set(said, Math.max(found.get(said) ?? 0, weight / (1 + seen * 0.35)));
      seen++;
    }
  };
  walk(quantity.spanFirst - 1, -1, 6, 1);
  walk(quantity.spanNext, 1, 4, 1);
  // What the modal or comparator swallowed ("minimum width": the far bound) is read as well.
  for (let at = quantity.spanFirst; at < quantity.first; at++) {
    const { low, kind } = reading.tokens[at]!;
    if (kind === 'word' && low.length > 4) found.set(base(low), 0.3);
  }
  return found;
}

function alike(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number {
  let [shared, all] = [0, 0];
  for (const [word, weight] of a) {
    const other = b.get(word) ?? 0;
    shared += Math.min(weight, other) * 2;
    all += weight;
  }
  for (const weight of b.values()) all += weight;
  return all === 0 ? 0.5 : shared / all;
}

/** Equal bounds: exactly in one unit, within 2 % where a value was carried from inches to millimetres. */
export function sameSet(a: Quantity, b: Quantity): boolean {
  return a.open === b.open && near(a, b, 'low') && near(a, b, 'high');
}

export function near(a: Quantity, b: Quantity, side: 'low' | 'high'): boolean {
  const [x, y] = [a[side], b[side]];
  if (x === y) return true;
  if (!Number.isFinite(x) || !Number.isFinite(y)) return false;
  const slack = metric(a.unit) !== metric(b.unit) ? 0.02 : 1e-6;
  return Math.abs(x - y) <= slack * Math.max(Math.abs(x), Math.abs(y));
}

const metric = (unit: string) =>
  !/inch|foot|yard|mile|pound|ounce|gallon|quart|pint|cup|fahrenheit|british|acre|^ton$|month|horse/.test(unit);
