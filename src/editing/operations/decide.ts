import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import type { DraftState } from '../draft-state.ts';

/** Records a decision that holds edition-wide; withdrawals and settled losses refer to it by its id. */
export function decide(state: DraftState, { decision }: OperationOf<'decide'>): DraftState {
  if (state.decisions.some(d => d.id === decision.id)) {
    throw new CatalogError(
      'BadArgument',
      `The draft has a decision ${decision.id} already; give this one another id, or undo the other first.`,
    );
  }
  return { ...state, decisions: [...state.decisions, decision] };
}
