import type { Quantity } from './quantities.ts';
import { sameValue } from './same-value.ts';

/** Quantities of one value, written anywhere. */
export interface SameValues<T> {
  readonly q: Quantity;
  readonly all: readonly T[];
}

/**
 * Values that are found again by their bounds. Asking every value of one text about every value of another takes a minute
 * where a table has ten thousand of them.
 */
export interface ValueIndex<T> {
  /** Those that have a bound in common with a value, or nearly; whatever their dimension. */
  near(q: Quantity): readonly SameValues<T>[];
  /** Whether one allows the same values. */
  has(q: Quantity): boolean;
  /** The only one that allows the same values. */
  only(q: Quantity): T | undefined;
}

export function valueIndex<T>(items: readonly T[], quantityOf: (item: T) => Quantity): ValueIndex<T> {
  const known = new Map<string, { q: Quantity; all: T[] }>();
  const buckets = new Map<string, SameValues<T>[]>();
  for (const item of items) {
    const q = quantityOf(item);
    const key = [q.dimension, q.kind, q.comparator, q.low, q.high, q.open].join('|');
    const group = known.get(key);
    if (group) {
      group.all.push(item);
      continue;
    }
    const fresh = { q, all: [item] };
    known.set(key, fresh);
    for (const bucket of new Set(boundsOf(q).map(b => bucketOf(b)))) {
      const list = buckets.get(bucket);
      if (list) list.push(fresh);
      else buckets.set(bucket, [fresh]);
    }
  }
  const near = (q: Quantity) => {
    const places = new Set(boundsOf(q).flatMap(b => [bucketOf(b), bucketOf(b, -1), bucketOf(b, 1)]));
    return [...new Set([...places].flatMap(place => buckets.get(place) ?? []))];
  };
  const same = (q: Quantity) => near(q).filter(group => sameValue(group.q, q));
  return {
    near,
    has: q => same(q).length > 0,
    only: q => {
      const groups = same(q);
      return groups.length === 1 && groups[0]!.all.length === 1 ? groups[0]!.all[0] : undefined;
    },
  };
}

const boundsOf = ({ low, high }: Quantity) => [low, high].filter(Number.isFinite);

/** Values that differ by less than `sameValue` lets pass lie in one bucket or in neighbours. */
function bucketOf(bound: number, beside = 0): string {
  if (bound === 0) return '0';
  return `${Math.sign(bound)} ${Math.floor(Math.log(Math.abs(bound)) / WIDTH) + beside}`;
}

const WIDTH = 2e-4;
