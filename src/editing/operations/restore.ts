import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import { placesOf } from '../../model/places.ts';
import { type Doer, type DraftState, nameOf } from '../draft-state.ts';
import { oldItemOf } from '../old-item.ts';
import { putIn } from '../outline-edits.ts';
import { withTypes } from '../own-types.ts';
import { withRecord } from '../records.ts';

/**
 * Takes an old item that ended or went on elsewhere back into the draft, under its own id and with its old words. What
 * stood below it is restored one by one: some of it may have gone to other places for good.
 */
export function restore(state: DraftState, operation: OperationOf<'restore'>, doer: Doer): DraftState {
  const { from, note } = operation;
  const old = oldItemOf(state, from);
  if (state.items.some(i => i.id === from)) {
    throw new CatalogError('BadArgument', `${nameOf(old)} stands in the draft already; nothing is to be restored.`);
  }
  const known = state.settings.installationTypes.map(t => t.id);
  const types = placesOf(state.older!.settings, state.older!.items)
    .types(from)
    .filter(t => known.includes(t));
  const { alsoAt: _, ...item } = old;
  const placed = putIn(state, [item], operation);
  const { heirs = [] } = state.lineage.find(r => r.from === from) ?? {};
  const extent = heirs.length === 0 ? 'all' : 'part';
  return withRecord(withTypes(placed, from, types), {
    from,
    heirs: [{ to: from, fromExtent: extent, toExtent: 'all' }, ...heirs],
    ...(note === undefined ? {} : { note }),
    ...doer,
    basis: 'declared',
  });
}
