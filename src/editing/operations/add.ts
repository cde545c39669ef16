import type { OperationOf } from '../../model/operation.ts';
import type { Doer, DraftState } from '../draft-state.ts';
import { putIn } from '../outline-edits.ts';
import { noteOn } from '../records.ts';

/** Adds an item that has no source in the older edition. */
export function add(state: DraftState, operation: OperationOf<'add'>, doer: Doer): DraftState {
  const { item, note } = operation;
  const next = putIn(state, [{ ...item, number: '', level: 1, parent: null }], operation);
  return noteOn(next, item.id, doer, note);
}
