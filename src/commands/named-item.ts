import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId } from '../model/item.ts';

/** The id of the item that somebody names by its id or by its printed number. A number that several print is refused. */
export function named(items: readonly Item[], name: string, where: string): ItemId {
  const numbered: Item[] = [];
  for (const item of items) {
    if (item.id === name) return item.id;
    if (item.number === name) numbered.push(item);
  }
  if (numbered.length === 1) return numbered[0]!.id;
  throw new CatalogError(
    'UnknownItem',
    numbered.length === 0
      ? `${name} is neither an id nor a number of ${where}; look it up with: fishplate draft show`
      : `${numbered.length} items of ${where} print the number ${name}; give the id: ${numbered.map(i => i.id).join(' or ')}.`,
    { name, where },
  );
}
