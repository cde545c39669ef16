import type { Quantity } from '../quantities/quantities.ts';
import { meaning } from '../reading/meaning.ts';
import type { Reading } from '../reading/reading.ts';

/** A value of an heir that the old text does not state. */
export interface FreshValue {
  readonly heir: Reading;
  readonly q: Quantity;
}

/**
 * For each value that no heir states, the new value that stands in its place, if any: of the same dimension and of the
 * same thing. Each new value takes the place of one; those with the most words in common around them go first.
 */
export function changedValues(
  from: Reading,
  missing: readonly Quantity[],
  fresh: readonly FreshValue[],
): { readonly q: Quantity; readonly to?: Quantity }[] {
  // Tables of a thousand values each: which stands for which is not to be told from the words around.
  if (missing.length * fresh.length > MOST) return missing.map(q => ({ q }));
  const pairs = missing.flatMap((q, at) =>
    fresh
      .map((f, index) => ({ at, index, likeness: likeness(from, q, f) }))
      .filter(p => p.likeness >= LEAST || (p.likeness > 0 && missing.length === 1 && fresh.length === 1)),
  );
  pairs.sort((a, b) => b.likeness - a.likeness || a.at - b.at || a.index - b.index);
  const [taken, used] = [new Map<number, Quantity>(), new Set<number>()];
  for (const { at, index } of pairs) {
    if (taken.has(at) || used.has(index)) continue;
    taken.set(at, fresh[index]!.q);
    used.add(index);
  }
  return missing.map((q, at) => ({ q, ...(taken.has(at) ? { to: taken.get(at)! } : {}) }));
}

const MOST = 250_000;

/** Less than this, and two values of one dimension are of different things. */
const LEAST = 0.2;
const REACH = 10;

/**
 * Share of the words around the old value that stand around the new one, or of its sentence in the new one's sentence;
 * 0 where they cannot measure the same.
 */
function likeness(from: Reading, old: Quantity, { heir, q }: FreshValue): number {
  if (old.dimension !== q.dimension || (old.kind === 'interval') !== (q.kind === 'interval')) return 0;
  if (old.dimension === 'count' && counted(from, old) !== counted(heir, q)) return 0;
  // "sold within three hours", "thrown away after three hours": one limit, told from its other side.
  const limit = (v: Quantity) => (Number.isFinite(v.high) ? v.high : v.low);
  if (old.dimension !== 'count' && Math.abs(limit(old) - limit(q)) <= 1e-9 * Math.abs(limit(q))) return LEAST;
  const near = common(around(from, old, REACH), around(heir, q, REACH));
  const sentence = common(around(from, old, Number.POSITIVE_INFINITY), around(heir, q, Number.POSITIVE_INFINITY));
  return Math.max(near, sentence / 2);
}

/** What is counted: the word behind the number. */
function counted({ tokens }: Reading, { next }: Quantity): string {
  return meaning(tokens[next]?.low ?? '');
}

function common(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0;
  return [...a].filter(w => b.has(w)).length / Math.min(a.size, b.size);
}

/** The words that say something, near a value and in its sentence. */
function around({ meanings, sentences }: Reading, { spanFirst, spanNext }: Quantity, reach: number): Set<string> {
  const sentence = sentences.find(s => s.next > spanFirst);
  const first = Math.max(sentence?.first ?? 0, spanFirst - reach);
  const next = Math.min(sentence?.next ?? meanings.length, spanNext + reach);
  return new Set(meanings.slice(first, next).filter(Boolean));
}
