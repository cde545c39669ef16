import { groupBy } from './group-by.ts';
import type { ItemId, TypeId } from './item.ts';
import type { Settings } from './settings.ts';

/** What is needed of an item or an entry to know where it stands. */
export interface Placed {
  readonly id: ItemId;
  readonly number: string;
  readonly parent: ItemId | null;
  readonly level: number;
  readonly appliesTo?: readonly TypeId[];
}

/** Answers questions about where the items of one edition stand. */
export interface Places<T extends Placed> {
  readonly all: readonly T[];
  get(id: ItemId): T | undefined;
  /** All items that print this number; several may. */
  withNumber(number: string): readonly T[];
  children(id: ItemId | null): readonly T[];
  /** The item's ancestors, nearest first. */
  ancestors(id: ItemId): readonly T[];
  /** The ancestor (or the item itself) at level 1. */
  part(id: ItemId): T | undefined;
  /** The installation types the item applies to: its own, else its nearest ancestor's, else all of the catalog. */
  types(id: ItemId): readonly TypeId[];
}

/**
 * Indexes items by id, number and parent. Built lazily per question: a crosswalk of 100,000 items asks for the
 * children of a few only.
 */
export function placesOf<T extends Placed>(settings: Settings, all: readonly T[]): Places<T> {
  const byId = new Map<ItemId, T>();
  for (const item of all) byId.set(item.id, item);
  let byNumber: Map<string, T[]> | undefined;
  let byParent: Map<ItemId | null, T[]> | undefined;
  const everyType = settings.installationTypes.map(t => t.id);
  const types = new Map<ItemId, readonly TypeId[]>();

  const places: Places<T> = {
    all,
    get: id => byId.get(id),
    withNumber: number => {
      byNumber ??= groupBy(all, i => i.number);
      return byNumber.get(number) ?? [];
    },
    children: id => {
      byParent ??= groupBy(all, i => i.parent);
      return byParent.get(id) ?? [];
    },
    ancestors: id => {
      const up: T[] = [];
      for (let at = byId.get(id); at?.parent != null; ) {
        at = byId.get(at.parent);
        if (at) up.push(at);
      }
      return up;
    },
    part: id => places.ancestors(id).at(-1) ?? byId.get(id),
    types: id => {
      const known = types.get(id);
      if (known) return known;
      const item = byId.get(id);
      const found = item?.appliesTo ?? (item?.parent != null ? places.types(item.parent) : everyType);
      types.set(id, found);
      return found;
    },
  };
  return places;
}
