import type { LineageRecord } from '../../model/crosswalk.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId, TypeId } from '../../model/item.ts';
import type { OperationOf } from '../../model/operation.ts';
import { placesOf } from '../../model/places.ts';
import { typeName } from '../../model/settings.ts';
import { type Doer, type DraftState, itemOf, nameOf, sourcesOf, typesOf, withoutAbsent } from '../draft-state.ts';
import { subtreeOf, without } from '../outline-edits.ts';
import { sameTypes, withTypes } from '../own-types.ts';
import { recordOf, withNote, withRecord } from '../records.ts';
import { repoint } from '../repoint.ts';

/** Why something ends: what stands in the record of every old item that it ends for. */
type Why = Pick<OperationOf<'withdraw'>, 'reason' | 'governs' | 'governsChecked' | 'pointsTo' | 'decision' | 'note'>;

/**
 * Ends an item with everything below it, for good or for some installation types, and says why. What an old item still
 * has elsewhere goes on: only the types that no other heir takes over are withdrawn.
 */
export function withdraw(state: DraftState, operation: OperationOf<'withdraw'>, doer: Doer): DraftState {
  const { op: _, id, types, ...why } = operation;
  const item = itemOf(state, id);
  refuseReason(state, item, why);
  const places = placesOf(state.settings, state.items);
  const ending = types ?? places.types(id);
  const unknown = ending.find(t => !places.types(id).includes(t));
  if (unknown !== undefined) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(item)} does not apply to ${typeName(state.settings, unknown)}, so it cannot end for it; it applies to ${places.types(id).join(', ')}.`,
    );
  }
  const whole = sameTypes(ending, places.types(id));
  const ends = (t: TypeId) => whole || ending.includes(t);
  const block = subtreeOf(state.items, id);
  const gone = block.filter(i => places.types(i.id).every(ends));
  const ids = new Set(gone.map(i => i.id));
  const orphan = block.find(i => !ids.has(i.id) && i.parent !== null && ids.has(i.parent));
  if (orphan) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(orphan)} goes on for ${places
        .types(orphan.id)
        .filter(t => !ends(t))
        .join(
          ', ',
        )}, but ${nameOf(itemOf(state, orphan.parent!))} above it ends for all that it applies to; move it first, or withdraw it.`,
    );
  }
  if (why.pointsTo !== undefined && ids.has(why.pointsTo)) {
    throw new CatalogError('BadArgument', `${why.pointsTo} ends as well, so it cannot be pointed to; name another.`);
  }
  let next: DraftState = {
    ...state,
    items: without(state.items, gone),
    // What arrived in this draft and ends before it is published leaves no record.
    lineage: state.lineage.filter(r => r.from !== null || r.heirs.every(h => !ids.has(h.to))),
  };
  for (const { id: left } of block) {
    const rest = places.types(left).filter(t => !ends(t));
    if (rest.length > 0 && rest.length < places.types(left).length) next = withTypes(next, left, rest);
  }
  const affected = block.filter(i => ids.has(i.id) || places.types(i.id).some(ends)).map(i => i.id);
  return repoint(endRecords(next, state, affected, why, doer), ids, why.pointsTo);
}

/** The old items behind these lose what ended; what no other heir takes over for them is withdrawn, with the reason. */
function endRecords(
  next: DraftState,
  before: DraftState,
  affected: readonly ItemId[],
  why: Why,
  doer: Doer,
): DraftState {
  const here = new Set(next.items.map(i => i.id));
  const sources = new Set(affected.flatMap(id => sourcesOf(before, id)));
  return [...sources].reduce((now, old) => {
    const record = recordOf(before, old);
    const left = { ...record, heirs: record.heirs.filter(h => here.has(h.to)) };
    const ends = uncovered(next, left);
    if (ends.length > 0) refuseOtherReason(before, record, why);
    return withRecord(now, { ...withReason(left, ends, why), ...doer });
  }, next);
}

/** The types that the old item had and that none of its heirs takes over. */
function uncovered(state: DraftState, record: LineageRecord): readonly TypeId[] {
  const had = placesOf(state.older?.settings ?? state.settings, state.older?.items ?? []).types(record.from!);
  const carried = new Set(record.heirs.flatMap(h => typesOf(state, h.to)));
  return had.filter(t => !carried.has(t));
}

/** A record has room for one ending: another reason would be put under what ended before it, which nobody decided. */
function refuseOtherReason({ older }: DraftState, record: LineageRecord, why: Why): void {
  if (record.withdrawnFor === undefined) return;
  const other = (['reason', 'governs', 'pointsTo', 'decision'] as const).find(key => record[key] !== why[key]);
  if (other === undefined) return;
  const said = `${WORDS[other]} ${record[other] === undefined ? 'nothing' : JSON.stringify(record[other])}`;
  const item = older?.items.find(i => i.id === record.from);
  throw new CatalogError(
    'BadArgument',
    `${item ? nameOf(item) : record.from} of the older edition ended already for ${record.withdrawnFor.join(', ')} with ${said}, and its lineage holds one ending only; end it with the same and tell the difference in the note, or give those types back first, with: fishplate draft applies-to`,
  );
}

const WORDS = { reason: 'the reason', governs: 'governs', pointsTo: 'points to', decision: 'the decision' } as const;

function withReason(record: LineageRecord, ends: readonly TypeId[], why: Why): LineageRecord {
  const { note, ...told } = why;
  const said = withNote(record, note);
  if (record.heirs.length === 0) {
    const { withdrawnFor: _, ...whole } = said;
    return withoutAbsent({ ...whole, ...told });
  }
  // What ends here goes on elsewhere: nothing is withdrawn, and the note alone says why.
  if (ends.length === 0) return said;
  return withoutAbsent({ ...said, ...told, withdrawnFor: [...new Set([...(record.withdrawnFor ?? []), ...ends])] });
}

function refuseReason(state: DraftState, item: Item, why: Why): void {
  const { withdrawalReasons } = state.settings;
  const reason = withdrawalReasons.find(r => r.code === why.reason);
  // A catalog that lists no reasons takes any.
  if (!reason && withdrawalReasons.length > 0) {
    throw new CatalogError(
      'BadArgument',
      `${JSON.stringify(why.reason)} is not one of the catalog's reasons for a withdrawal; use one of: ${withdrawalReasons.map(r => r.code).join(', ')}.`,
    );
  }
  if (reason?.governedElsewhere && (why.governs === undefined || why.governsChecked === undefined)) {
    throw new CatalogError(
      'BadArgument',
      `${nameOf(item)} ends because something else governs (${reason.code}), so the record has to say what, and when somebody read it; add what governs and the day on which it was checked.`,
    );
  }
  if (why.decision !== undefined && !state.decisions.some(d => d.id === why.decision)) {
    throw new CatalogError(
      'BadArgument',
      `The draft has no decision ${JSON.stringify(why.decision)}; record it first, with: fishplate draft decide`,
    );
  }
  if (why.pointsTo !== undefined) itemOf(state, why.pointsTo);
}
