import type { Item, ItemId, TypeId } from '../model/item.ts';
import { placesOf } from '../model/places.ts';
import { type DraftState, replaceItem, typesOf } from './draft-state.ts';

/** Says what an item applies to: on the item itself, or not at all where its parent says the same already. */
export function withTypes(state: DraftState, id: ItemId, types: readonly TypeId[]): DraftState {
  const inOrder = state.settings.installationTypes.map(t => t.id).filter(t => types.includes(t));
  const bare = replaceItem(state, id, ({ appliesTo: _, ...item }) => item as Item);
  if (sameTypes(typesOf(bare, id), inOrder)) return bare;
  return replaceItem(state, id, item => ({ ...item, appliesTo: inOrder }));
}

/**
 * Does something to the outline and has every item that was there before apply to what it applied to: moved under
 * another parent, an item that says nothing of its own would take over the parent's types unsaid.
 */
export function keepingTypes(
  state: DraftState,
  ids: readonly ItemId[],
  change: (state: DraftState) => DraftState,
): DraftState {
  const before = placesOf(state.settings, state.items);
  let next = change(state);
  for (const id of ids) {
    const types = before.types(id);
    if (next.items.some(i => i.id === id) && !sameTypes(typesOf(next, id), types)) next = withTypes(next, id, types);
  }
  return next;
}

export function sameTypes(a: readonly TypeId[], b: readonly TypeId[]): boolean {
  return a.length === b.length && a.every(t => b.includes(t));
}
