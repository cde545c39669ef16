import { endingsOf, withEndings, withoutTypes } from '../../model/endings.ts';
import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import { placesOf } from '../../model/places.ts';
import { type Doer, type DraftState, itemOf, nameOf, sourcesOf, typesOf } from '../draft-state.ts';
import { subtreeOf } from '../outline-edits.ts';
import { withTypes } from '../own-types.ts';
import { changeRecords, noteOn } from '../records.ts';
import { withdraw } from './withdraw.ts';

/**
 * Changes the installation types that an item applies to, and with it everything below that says nothing of its own.
 * For a type that it loses it ends, so a reason is asked for; one that it gets back is withdrawn no longer.
 */
export function appliesTo(state: DraftState, operation: OperationOf<'applies-to'>, doer: Doer): DraftState {
  const { id, types, reason, note } = operation;
  const item = itemOf(state, id);
  if (types.length === 0) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(item)} has to apply to something; withdraw it instead, with a reason.`,
    );
  }
  const lost = typesOf(state, id).filter(t => !types.includes(t));
  if (lost.length > 0 && reason === undefined) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(item)} would no longer apply to ${lost.join(', ')}; say why it ends there, with one of the catalog's reasons.`,
    );
  }
  const narrowed =
    lost.length === 0
      ? state
      : withdraw(state, { op: 'withdraw', id, types: lost, reason: reason!, ...noted(note) }, doer);
  const widened = withTypes(narrowed, id, types);
  return noteOn(notWithdrawnAnyMore(widened, id, doer), id, doer, note);
}

/** Old items that ended for types to which they apply again do not end for them. */
function notWithdrawnAnyMore(state: DraftState, id: string, doer: Doer): DraftState {
  const places = placesOf(state.settings, state.items);
  return subtreeOf(state.items, id).reduce((now, { id: at }) => {
    const sources = sourcesOf(now, at).filter(old => now.lineage.some(r => r.from === old && r.withdrawnFor));
    return changeRecords(now, sources, doer, record =>
      withEndings(record, withoutTypes(endingsOf(record), places.types(at))),
    );
  }, state);
}

const noted = (note: string | undefined) => (note === undefined ? {} : { note });
