import type { LineageRecord } from '../model/crosswalk.ts';
import { withPointers } from '../model/endings.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { DraftState } from './draft-state.ts';

/**
 * What pointed to items that are gone points to another one instead, or to nothing: withdrawn items that send the
 * reader there, and items that are printed there as well. What was said of a new item that is gone goes with it.
 */
export function repoint(state: DraftState, gone: ReadonlySet<ItemId>, to: ItemId | undefined): DraftState {
  const isArrivalOfGone = ({ from, heirs }: LineageRecord) => from === null && heirs.every(h => gone.has(h.to));
  const kept = state.lineage.filter(record => !isArrivalOfGone(record));
  const lineage = kept.map(record => withPointers(record, id => (gone.has(id) ? to : id)));
  const items = state.items.map(item => {
    if (!item.alsoAt?.some(id => gone.has(id))) return item;
    const places = item.alsoAt.flatMap(id => (gone.has(id) ? (to === undefined ? [] : [to]) : [id]));
    const { alsoAt: _, ...rest } = item;
    const others = [...new Set(places)].filter(id => id !== item.parent);
    return (others.length > 0 ? { ...rest, alsoAt: others } : rest) as Item;
  });
  return { ...state, lineage, items };
}
