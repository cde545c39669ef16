import type { ItemId } from '../model/item.ts';

/** Where a bundle's data place the catalog until its publisher gives an address; the ending can belong to nobody. */
export const NO_ADDRESS = 'https://catalog.invalid/';

/** How data for machines name things: below one address, an item apart in each edition, since its meaning may differ. */
export interface DataNames {
  readonly base: string;
  readonly edition: (name: string) => string;
  readonly item: (edition: string, id: ItemId) => string;
  /** What stands before an item's local name. */
  readonly items: (edition: string) => string;
  readonly crosswalk: (from: string, to: string) => string;
  /** Words of ours for which no standard has one. */
  readonly vocabulary: string;
}

export function dataNames(base: string): DataNames {
  const edition = (name: string) => `${base}edition/${encodeURIComponent(name)}`;
  const items = (name: string) => `${edition(name)}/item/`;
  return {
    base,
    edition,
    items,
    item: (name, id) => items(name) + localName(id),
    crosswalk: (from, to) => `${base}crosswalk/${encodeURIComponent(from)}/${encodeURIComponent(to)}`,
    vocabulary: `${base}vocabulary#`,
  };
}

/** An id as it may stand behind a prefix: `sec-%symbol.x%` and `type:code` keep neither their signs nor their colon. */
export function localName(id: ItemId): string {
  return encodeURIComponent(id).replace(/[!'()*]/g, c => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);
}
