import type { OperationOf } from '../../model/operation.ts';
import { type Doer, type DraftState, itemOf, replaceItem, withoutAbsent } from '../draft-state.ts';
import { noteOn } from '../records.ts';

/** Says the same item in other words, or says more or less of it: what is lost is the retention audit's to find. */
export function reword(state: DraftState, { id, to, note }: OperationOf<'reword'>, doer: Doer): DraftState {
  itemOf(state, id);
  return noteOn(
    replaceItem(state, id, item => withoutAbsent({ ...item, ...to })),
    id,
    doer,
    note,
  );
}

export function retitle(state: DraftState, { id, title, note }: OperationOf<'retitle'>, doer: Doer): DraftState {
  itemOf(state, id);
  return noteOn(
    replaceItem(state, id, item => ({ ...item, title })),
    id,
    doer,
    note,
  );
}
