import type { LineageRecord } from '../../model/crosswalk.ts';
import { endingsOf, withEndings } from '../../model/endings.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId, TypeId } from '../../model/item.ts';
import type { OperationOf } from '../../model/operation.ts';
import { placesOf } from '../../model/places.ts';
import { typeName } from '../../model/settings.ts';
import { type Doer, type DraftState, itemOf, nameOf, sourcesOf, typesOf } from '../draft-state.ts';
import { oldTypesOf } from '../old-item.ts';
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
    return withRecord(now, { ...withReason(next, left, why), ...doer });
  }, next);
}

/** For what ended before, the reason stays that was given then: this one is for what ends now. */
function withReason(state: DraftState, record: LineageRecord, { note, ...why }: Why): LineageRecord {
  const said = withNote(record, note);
  const known = record.withdrawnFor === undefined ? [] : endingsOf(record);
  const types = oldTypesOf(state, record.from!);
  const carried = new Set(record.heirs.flatMap(h => typesOf(state, h.to)));
  const ended = new Set(known.flatMap(e => e.types ?? []));
  const ends = types.filter(t => !carried.has(t) && !ended.has(t));
  // What ends here goes on elsewhere: nothing is withdrawn, and the note alone says why.
  if (ends.length === 0 && (record.heirs.length > 0 || known.length > 0)) return said;
  const all = withEndings(said, [...known, { ...why, types: ends }]);
  if (record.heirs.length > 0 || all.alsoEnds) return all;
  const { withdrawnFor: _, ...whole } = all;
  return whole;
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
