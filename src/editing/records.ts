import type { LineageRecord } from '../model/crosswalk.ts';
import type { ItemId } from '../model/item.ts';
import { type Doer, type DraftState, sourcesOf, withoutAbsent } from './draft-state.ts';

/**
 * What the lineage says about an old item, written out: an item that goes on under its own id is among its heirs,
 * whether a record says so or the equal id does.
 */
export function recordOf(state: DraftState, from: ItemId): LineageRecord {
  const record = state.lineage.find(r => r.from === from);
  const continues = !record?.notSame && state.items.some(i => i.id === from);
  const heirs = record?.heirs ?? [];
  if (!continues || heirs.some(h => h.to === from)) return record ?? { from, heirs, basis: 'declared' };
  const extent = heirs.length === 0 ? 'all' : 'unknown';
  const itself = { to: from, fromExtent: extent, toExtent: extent } as const;
  return { ...(record ?? { from, basis: 'declared' as const }), heirs: [...heirs, itself] };
}

/** Puts a record in the place of what was said about its old item; one that says no more than equal ids do is left out. */
export function withRecord(state: DraftState, record: LineageRecord): DraftState {
  const others = state.lineage.filter(r => r !== record && !sameSubject(r, record));
  const said = withoutAbsent(record);
  return { ...state, lineage: saysNothing(said) ? others : [...others, said] };
}

function sameSubject(a: LineageRecord, b: LineageRecord): boolean {
  return a.from === b.from && (a.from !== null || a.heirs[0]?.to === b.heirs[0]?.to);
}

function saysNothing({ from, heirs, basis, by: _by, date: _date, ...rest }: LineageRecord): boolean {
  const [only] = heirs;
  const itself = heirs.length === 1 && only!.to === from && only!.fromExtent === 'all' && only!.toExtent === 'all';
  return from !== null && itself && basis === 'declared' && Object.keys(rest).length === 0;
}

/** Changes what is said about each old item that an item of the draft stands for, and signs it. */
export function changeSources(
  state: DraftState,
  id: ItemId,
  doer: Doer,
  change: (record: LineageRecord) => LineageRecord,
): DraftState {
  return changeRecords(state, sourcesOf(state, id), doer, change);
}

export function changeRecords(
  state: DraftState,
  from: readonly ItemId[],
  doer: Doer,
  change: (record: LineageRecord) => LineageRecord,
): DraftState {
  // Read before anything is changed: an item that is about to go still counts as its old item's heir.
  const before = from.map(old => recordOf(state, old));
  return before.reduce((now, record) => withRecord(now, { ...change(record), ...doer }), state);
}

/** Adds why to what is said about the old items behind an item of the draft, or about the new item itself. */
export function noteOn(state: DraftState, id: ItemId, doer: Doer, note: string | undefined): DraftState {
  if (note === undefined) return state;
  if (sourcesOf(state, id).length > 0) return changeSources(state, id, doer, r => withNote(r, note));
  const arrival: LineageRecord = state.lineage.find(r => r.from === null && r.heirs[0]?.to === id) ?? {
    from: null,
    heirs: [{ to: id, fromExtent: 'all', toExtent: 'all' }],
    basis: 'declared',
  };
  return withRecord(state, { ...withNote(arrival, note), ...doer });
}

export function withNote(record: LineageRecord, note: string | undefined): LineageRecord {
  if (note === undefined || record.note?.includes(note)) return record;
  return { ...record, note: record.note ? `${record.note} ${note}` : note };
}
