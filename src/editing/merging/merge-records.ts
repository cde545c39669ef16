import type { LineageRecord } from '../../model/crosswalk.ts';
import type { ItemId } from '../../model/item.ts';
import type { DraftState } from '../draft-state.ts';
import { recordOf, withRecord } from '../records.ts';
import { byKey, type Conflict, same, spread, type Takes, type Three, threeWay, threeWayList } from './three-way.ts';

/** The lineage of both sides: heirs one by one, notes of both, and one conflict where they say different things. */
export function mergeRecords(
  merged: DraftState,
  sides: Three<DraftState>,
  takes: Takes,
  conflicts: Conflict[],
): DraftState {
  const named = new Set([sides.base, sides.ours, sides.theirs].flatMap(s => s.lineage.flatMap(r => r.from ?? [])));
  const carried = [...named].map(from =>
    mergeRecord(
      from,
      spread(sides, s => recordOf(s, from)),
      takes,
      conflicts,
    ),
  );
  const here = new Set(merged.items.map(i => i.id));
  // Whoever decided that an item ends decided that nothing goes on in it, or points to it.
  const ended = (id: ItemId | undefined) => id !== undefined && !here.has(id) && takes.has(id);
  const settled = carried.map(({ pointsTo, ...record }): LineageRecord => {
    const heirs = record.heirs.filter(h => !ended(h.to));
    return { ...record, heirs, ...(pointsTo === undefined || ended(pointsTo) ? {} : { pointsTo }) };
  });
  const arrivals = threeWayList(
    spread(sides, s => s.lineage.filter(r => r.from === null)),
    r => r.heirs[0]!.to,
    id => id,
    takes,
    conflicts,
  );
  return [...settled, ...arrivals.filter(r => here.has(r.heirs[0]!.to))].reduce(withRecord, merged);
}

function mergeRecord(from: ItemId, sides: Three<LineageRecord>, takes: Takes, conflicts: Conflict[]): LineageRecord {
  const side = takes.get(from);
  const goesOn = spread(sides, s => s.heirs.some(h => h.to === from));
  // Whoever decides whether an item ends decides what is said about its end.
  if (side !== undefined && goesOn.ours !== goesOn.theirs) return sides[side];
  if (sides.unsettled?.has(from)) {
    const told = conflicts.some(c => c.about === from);
    return threeWay(sides, from, 'lineage', takes, told ? [] : conflicts);
  }
  if (same(sides.base, sides.theirs) || same(sides.ours, sides.theirs)) return sides.ours;
  if (same(sides.base, sides.ours)) return sides.theirs;
  const own: Conflict[] = [];
  const heirs = mergeHeirs(from, sides, takes);
  const field = <K extends keyof LineageRecord>(key: K) =>
    threeWay(
      spread(sides, s => s[key]),
      from,
      'lineage',
      takes,
      own,
    );
  const told = {
    from,
    heirs,
    notSame: field('notSame'),
    withdrawnFor: mergeTypes(sides),
    reason: field('reason'),
    note: mergeNotes(sides),
    governs: field('governs'),
    governsChecked: field('governsChecked'),
    pointsTo: field('pointsTo'),
    decision: field('decision'),
    ...later(sides.ours, sides.theirs),
    basis: field('basis'),
  };
  const endedAndCarried = told.reason !== undefined && heirs.length > 0 && told.withdrawnFor === undefined;
  const someEnded = [sides.ours, sides.theirs].filter(s => s.heirs.length === 0).length === 1;
  if (endedAndCarried && someEnded && side === undefined) {
    own.push({ about: from, what: 'lineage', ours: sides.ours, theirs: sides.theirs });
  }
  if (own.length > 0) conflicts.push({ about: from, what: 'lineage', ours: sides.ours, theirs: sides.theirs });
  if (endedAndCarried && someEnded && side !== undefined) return sides[side];
  return Object.fromEntries(Object.entries(told).filter(([, v]) => v !== undefined)) as unknown as LineageRecord;
}

type Heir = LineageRecord['heirs'][number];

/** An heir stays where nobody took it away. How much goes where is no conflict: what both changed is a part. */
function mergeHeirs(from: ItemId, sides: Three<LineageRecord>, takes: Takes): Heir[] {
  const maps = spread(sides, s => byKey(s.heirs, h => h.to));
  const all = new Set([...maps.ours.keys(), ...maps.theirs.keys()]);
  return [...all].flatMap(to => {
    const side = takes.get(to) ?? takes.get(from);
    const [base, ours, theirs] = [maps.base.get(to), maps.ours.get(to), maps.theirs.get(to)];
    const unsettled: Heir | undefined =
      ours && theirs && !same(base, ours) && !same(base, theirs) && !same(ours, theirs)
        ? { to, fromExtent: 'part', toExtent: 'part' }
        : threeWay({ base, ours, theirs }, to, 'lineage', new Map(), []);
    const heir = side === undefined ? unsettled : side === 'ours' ? ours : theirs;
    return heir ? [heir] : [];
  });
}

/** The types that a side added end, those that a side took away do not. */
function mergeTypes({ base, ours, theirs }: Three<LineageRecord>): readonly string[] | undefined {
  const [before, mine, other] = [base, ours, theirs].map(r => new Set(r.withdrawnFor ?? []));
  const all = [...new Set([...mine!, ...other!])].filter(t => (before!.has(t) ? mine!.has(t) && other!.has(t) : true));
  return all.length > 0 ? all : undefined;
}

function mergeNotes({ base, ours, theirs }: Three<LineageRecord>): string | undefined {
  if (same(base.note, theirs.note) || same(ours.note, theirs.note)) return ours.note;
  if (same(base.note, ours.note) || ours.note === undefined) return theirs.note;
  if (theirs.note === undefined) return ours.note;
  const added =
    base.note && theirs.note.startsWith(base.note) ? theirs.note.slice(base.note.length).trim() : theirs.note;
  return ours.note.includes(added) ? ours.note : `${ours.note} ${added}`;
}

function later(a: LineageRecord, b: LineageRecord): Pick<LineageRecord, 'by' | 'date'> {
  const { by, date } = (b.date ?? '') > (a.date ?? '') ? b : a;
  return { ...(by === undefined ? {} : { by }), ...(date === undefined ? {} : { date }) };
}
