import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import { type Doer, type DraftState, itemOf, nameOf, replaceItem, typesOf, withoutAbsent } from '../draft-state.ts';
import { putIn } from '../outline-edits.ts';
import { withTypes } from '../own-types.ts';
import { changeSources, withNote } from '../records.ts';

/**
 * Makes one item several. It goes on with what it keeps, and the others stand right after it; each applies to what the
 * whole applied to unless it says otherwise. Children stay with the first.
 */
export function split(state: DraftState, operation: OperationOf<'split'>, doer: Doer): DraftState {
  const { id, keeps, gives, note } = operation;
  const item = itemOf(state, id);
  if (gives.length === 0) {
    throw new CatalogError(
      'BadArgument',
      `Nothing is given away by ${nameOf(item)}; say what the new parts are, each with its title.`,
    );
  }
  const types = typesOf(state, id);
  const { appliesTo: kept = types, ...words } = keeps;
  let next = changeSources(state, id, doer, record => {
    const heir = record.heirs.find(h => h.to === id);
    const toExtent = heir?.toExtent ?? 'all';
    const parts = [id, ...gives.map(p => p.id)].map(to => ({ to, fromExtent: 'part' as const, toExtent }));
    return withNote({ ...record, heirs: record.heirs.flatMap(h => (h.to === id ? parts : [h])) }, note);
  });
  next = withTypes(
    replaceItem(next, id, i => withoutAbsent({ ...i, ...words })),
    id,
    kept,
  );
  let after = id;
  for (const { appliesTo = types, ...part } of gives) {
    const { level, parent } = item;
    next = putIn(next, [{ ...part, number: '', level, parent }], { under: parent, after });
    next = withTypes(next, part.id, appliesTo);
    after = part.id;
  }
  return next;
}
