import { endingsOf, withEndings, withoutTypes } from '../../model/endings.ts';
import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import { type Doer, type DraftState, itemOf, nameOf, typesOf } from '../draft-state.ts';
import { oldItemOf } from '../old-item.ts';
import { changeRecords, recordOf, withNote } from '../records.ts';

/** Says that an old item goes on in an item of the draft as well, or how much of it does. No text changes. */
export function link(state: DraftState, operation: OperationOf<'link'>, doer: Doer): DraftState {
  const { from, to, fromExtent, toExtent, note } = operation;
  oldItemOf(state, from);
  itemOf(state, to);
  return changeRecords(state, [from], doer, record => {
    const others = record.heirs.filter(h => h.to !== to);
    const linked = withNote({ ...record, heirs: [...others, { to, fromExtent, toExtent }] }, note);
    // An end as a whole is none any more; one for some types stands for those that the heir does not take over.
    if (record.heirs.length > 0) return linked;
    return withEndings(linked, record.withdrawnFor ? withoutTypes(endingsOf(record), typesOf(state, to)) : []);
  });
}

/** Takes a link back: the old item does not go on there. Where it was the last one, the item has to be withdrawn. */
export function unlink(state: DraftState, { from, to, note }: OperationOf<'unlink'>, doer: Doer): DraftState {
  const old = oldItemOf(state, from);
  const { heirs } = recordOf(state, from);
  if (!heirs.some(h => h.to === to)) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(old)} has no link to ${nameOf(itemOf(state, to))}; nothing is to be undone.`,
    );
  }
  return changeRecords(state, [from], doer, record =>
    withNote(
      {
        ...record,
        heirs: record.heirs.filter(h => h.to !== to),
        ...(to === from ? { notSame: true as const } : {}),
      },
      note,
    ),
  );
}
