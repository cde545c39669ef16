import type { ItemId } from '../../model/item.ts';

/** Two people's changes that cannot both stand. Told once, however many fields it takes to see it. */
export interface Conflict {
  /** An item's id, an old item's id, or a name such as `settings.levels`. */
  readonly about: ItemId;
  /** What both changed: a field, `place`, `order`, `gone` (one side ended it, the other changed it), `lineage`. */
  readonly what: string;
  readonly ours?: unknown;
  readonly theirs?: unknown;
}

export type Side = 'ours' | 'theirs';

/** How conflicts are settled: whose state holds for an item. */
export type Takes = ReadonlyMap<ItemId, Side>;

export interface Three<T> {
  readonly base: T;
  readonly ours: T;
  readonly theirs: T;
  /** What the base says nothing reliable about, by what conflicts are about: there any difference is a conflict. */
  readonly unsettled?: ReadonlySet<string>;
}

/**
 * The value after both changes: where one side left it alone, the other's holds. Where both changed it differently it
 * is a conflict; the side taken for it, else ours, stands until somebody decides.
 */
export function threeWay<T>(
  { base, ours, theirs, unsettled }: Three<T>,
  about: string,
  what: string,
  takes: Takes,
  conflicts: Conflict[],
): T {
  if (same(ours, theirs)) return ours;
  if (!unsettled?.has(about)) {
    if (same(base, theirs)) return ours;
    if (same(base, ours)) return theirs;
  }
  const side = takes.get(about);
  if (side === undefined) conflicts.push({ about, what, ours, theirs });
  return side === 'theirs' ? theirs : ours;
}

/** Equality of plain values; keys come in one order, as everything here is written by one program. */
export function same(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

export function spread<T, R>({ base, ours, theirs, unsettled }: Three<T>, pick: (side: T) => R): Three<R> {
  return { base: pick(base), ours: pick(ours), theirs: pick(theirs), ...(unsettled ? { unsettled } : {}) };
}

export function byKey<T>(list: readonly T[], key: (value: T) => string): Map<string, T> {
  return new Map(list.map(value => [key(value), value]));
}

/** Lists of things with a key, merged thing by thing: ours in their order, then what only theirs added. */
export function threeWayList<T>(
  lists: Three<readonly T[]>,
  key: (value: T) => string,
  about: (key: string) => string,
  takes: Takes,
  conflicts: Conflict[],
): T[] {
  const maps = spread(lists, list => byKey(list, key));
  const keys = new Set([...maps.ours.keys(), ...maps.theirs.keys()]);
  return [...keys].flatMap(k => {
    const value = threeWay(
      spread(maps, m => m.get(k)),
      about(k),
      'entry',
      takes,
      conflicts,
    );
    return value === undefined ? [] : [value];
  });
}
