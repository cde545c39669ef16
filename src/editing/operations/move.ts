import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import { type Doer, type DraftState, itemOf, nameOf } from '../draft-state.ts';
import { putIn, subtreeOf, without } from '../outline-edits.ts';
import { keepingTypes } from '../own-types.ts';
import { noteOn } from '../records.ts';

/** Puts an item, with everything below it, at another place. What each of them applies to stays as it was. */
export function move(state: DraftState, operation: OperationOf<'move'>, doer: Doer): DraftState {
  const { id, under, after, note } = operation;
  const item = itemOf(state, id);
  const block = subtreeOf(state.items, id);
  const inside = [under, after].find(place => block.some(i => i.id === place));
  if (inside != null) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(item)} cannot be moved below or beside itself; name a place outside of it.`,
    );
  }
  const ids = block.map(i => i.id);
  const moved = keepingTypes(state, ids, s => putIn({ ...s, items: without(s.items, block) }, block, operation));
  return noteOn(moved, id, doer, note);
}
