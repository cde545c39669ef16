import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import type { DraftState } from '../draft-state.ts';

/** Records a decision that holds edition-wide; withdrawals and settled losses refer to it by its id. */
export function decide(state: DraftState, { decision }: OperationOf<'decide'>): DraftState {
  // It names a file, and refusing it when the draft is read again would be too late.
  if (!/^[A-Za-z0-9][A-Za-z0-9_-]{0,59}$/.test(decision.id)) {
    throw new CatalogError(
      'BadArgument',
      `${JSON.stringify(decision.id)} cannot be the short name of a decision; use up to 60 letters, digits, hyphens and underscores, for example worker-safety.`,
    );
  }
  if (state.decisions.some(d => d.id === decision.id)) {
    throw new CatalogError(
      'BadArgument',
      `The draft has a decision ${decision.id} already; give this one another id, or undo the other first.`,
    );
  }
  return { ...state, decisions: [...state.decisions, decision] };
}
