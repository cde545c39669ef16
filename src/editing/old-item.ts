import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId } from '../model/item.ts';
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
