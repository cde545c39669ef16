import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId } from '../model/item.ts';
import { numberItems } from '../model/numbering.ts';
import type { Place } from '../model/operation.ts';
import type { Settings } from '../model/settings.ts';
import { type DraftState, itemOf, nameOf } from './draft-state.ts';

/** An item with everything below it, in document order. */
export function subtreeOf(items: readonly Item[], id: ItemId): readonly Item[] {
  const start = items.findIndex(i => i.id === id);
  if (start < 0) return [];
  let end = start + 1;
  while (end < items.length && items[end]!.level > items[start]!.level) end++;
  return items.slice(start, end);
}

/** The items without these; what stands below them has to be among them or elsewhere already. */
export function without(items: readonly Item[], gone: readonly Item[]): readonly Item[] {
  const ids = new Set(gone.map(i => i.id));
  return items.filter(i => !ids.has(i.id));
}

/** Puts an item and everything below it at a place; levels follow the new parent. */
export function putIn(state: DraftState, block: readonly Item[], { under, after }: Place): DraftState {
  const [root] = block;
  if (!root) return state;
  const parent = under === null ? undefined : itemOf(state, under);
  const shift = (parent?.level ?? 0) + 1 - root.level;
  const deepest = Math.max(...block.map(i => i.level)) + shift;
  if (deepest > state.settings.levels.length) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(root)} cannot stand under ${parent ? nameOf(parent) : 'the top'}: that would be level ${deepest}, and the catalog has ${state.settings.levels.length}; name a parent further up.`,
    );
  }
  const { items } = state;
  const at = insertionPoint(state, under, after);
  const placed = block.map((item, n) => ({
    ...item,
    level: item.level + shift,
    parent: n === 0 ? under : item.parent,
  }));
  return { ...state, items: [...items.slice(0, at), ...placed, ...items.slice(at)] };
}

function insertionPoint(state: DraftState, under: ItemId | null, after: ItemId | null | undefined): number {
  const { items } = state;
  const end = (id: ItemId) => items.findIndex(i => i.id === id) + subtreeOf(items, id).length;
  if (after === undefined) return under === null ? items.length : end(under);
  if (after === null) return under === null ? 0 : items.findIndex(i => i.id === under) + 1;
  const sibling = itemOf(state, after);
  if (sibling.parent !== under) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(sibling)} does not stand ${under === null ? 'at the top' : `directly under ${nameOf(itemOf(state, under))}`}, so nothing can come right after it there; name a sibling.`,
    );
  }
  return end(after);
}

/** Numbers by the scheme, without gaps. Printed numbers stay as they are. */
export function renumbered(settings: Settings, items: readonly Item[]): readonly Item[] {
  const numbers = numberItems(settings, items);
  return items.map(item => {
    const number = numbers.get(item.id) ?? '';
    return number === item.number ? item : { ...item, number };
  });
}
