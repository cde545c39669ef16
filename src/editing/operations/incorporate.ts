import type { OperationOf } from '../../model/operation.ts';
import { type Doer, type DraftState, itemOf, replaceItem } from '../draft-state.ts';
import { noteOn } from '../records.ts';

/** Takes the wording of an outside standard in, and says where it comes from and who allowed it. */
export function incorporate(state: DraftState, operation: OperationOf<'incorporate'>, doer: Doer): DraftState {
  const { id, text, source, edition, permission, note } = operation;
  itemOf(state, id);
  const reference = `${source}, ${edition}`;
  const next = replaceItem(state, id, item => ({
    ...item,
    text,
    references: [...new Set([...(item.references ?? []), reference])],
  }));
  const why = `Wording taken from ${reference}. Permission: ${permission}.`;
  return noteOn(next, id, doer, note === undefined ? why : `${note} ${why}`);
}
