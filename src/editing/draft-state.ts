import { linkByLineage } from '../crosswalk/lineage.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { Edition, EditionDates } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId, TypeId } from '../model/item.ts';
import { placesOf } from '../model/places.ts';
import { levelName, type Settings } from '../model/settings.ts';

/** A draft as operations see it: its items, and the lineage that says where each old item went. */
export interface DraftState {
  /** The edition that the draft replaces; null for a catalog's first. */
  readonly older: Edition | null;
  readonly settings: Settings;
  readonly dates: EditionDates;
  /** In document order, a parent before its children. */
  readonly items: readonly Item[];
  readonly lineage: readonly LineageRecord[];
  readonly decisions: readonly Decision[];
}

/** Who does an operation, and on which day; both stand in the lineage records that it touches. */
export interface Doer {
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
}

/** The item of a draft with this id; throws UnknownItem. */
export function itemOf(state: DraftState, id: ItemId): Item {
  const item = state.items.find(i => i.id === id);
  if (item) return item;
  throw new CatalogError('UnknownItem', `The draft has no item ${id}; look it up with: fishplate draft show`, { id });
}

/** How a reader knows an item: its number, else its title. */
export function nameOf(item: Pick<Item, 'id' | 'number' | 'title'>): string {
  return item.number || (item.title ? `"${item.title}"` : item.id);
}

/** `the requirement 4.2.3` */
export function called(state: DraftState, item: Item): string {
  return `the ${(item.kind ?? levelName(state.settings, item.level)).toLowerCase()} ${nameOf(item)}`;
}

/** The old items that an item of the draft stands for: by equal id or by lineage. */
export function sourcesOf(state: DraftState, id: ItemId): readonly ItemId[] {
  return linksOf(state).flatMap(l => (l.to === id && l.from !== null ? [l.from] : []));
}

export function linksOf({ older, items, lineage }: DraftState) {
  return linkByLineage(older?.items ?? [], items, lineage);
}

/** The installation types that an item of the draft applies to, its own or its parents'. */
export function typesOf(state: DraftState, id: ItemId): readonly TypeId[] {
  return placesOf(state.settings, state.items).types(id);
}

export function replaceItem(state: DraftState, id: ItemId, change: (item: Item) => Item): DraftState {
  return { ...state, items: state.items.map(i => (i.id === id ? change(i) : i)) };
}

/** An item without the fields that are undefined: absent and undefined are not the same in a file. */
export function withoutAbsent<T extends object>(value: { [K in keyof T]: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}
