import type { DraftState } from '../../editing/draft-state.ts';
import { endingsOf } from '../../model/endings.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId } from '../../model/item.ts';

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

/** The same of a draft; of an old item that ended in it, it is told how to put that right. */
export function namedInDraft({ items, older, lineage }: DraftState, name: string): ItemId {
  const gone = older?.items.find(i => i.id === name || i.number === name);
  const record = gone && lineage.find(r => r.from === gone.id && r.heirs.length === 0);
  if (record && !items.some(i => i.id === name || i.number === name)) {
    const reasons = endingsOf(record).flatMap(e => e.reason ?? []);
    throw new CatalogError(
      'UnknownItem',
      `${name} was withdrawn in this draft (${reasons.join('; ') || 'no reason is given'}); bring it back with: fishplate draft restore ${name}, or undo the step that fishplate draft log names`,
      { name },
    );
  }
  return named(items, name, 'the draft');
}
