import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId, TypeId } from '../model/item.ts';
import { placesOf } from '../model/places.ts';
import type { DraftState } from './draft-state.ts';

/** The item of the edition that the draft replaces; throws UnknownItem. */
export function oldItemOf({ older }: DraftState, id: ItemId): Item {
  const item = older?.items.find(i => i.id === id);
  if (item) return item;
  throw new CatalogError(
    'UnknownItem',
    older
      ? `${older.header.name} has no item ${id}; look its number up with: fishplate search --edition ${older.header.name}`
      : 'The draft replaces no edition, so it has no old items.',
    { id },
  );
}

/** The installation types that an old item applied to, its own or its parents'; empty in a catalog without types. */
export function oldTypesOf({ older, settings }: DraftState, id: ItemId): readonly TypeId[] {
  return placesOf(older?.settings ?? settings, older?.items ?? []).types(id);
}
