import type { Ending, LineageRecord } from '../../model/crosswalk.ts';
import { ENDING_WORDS, endingsOf, withEndings, withPointers, wordsOf } from '../../model/endings.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { placesOf } from '../../model/places.ts';
import { type DraftState, withoutAbsent } from '../draft-state.ts';
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
  const { older, settings } = sides.ours;
  const old = placesOf(older?.settings ?? settings, older?.items ?? []);
  const now = placesOf(merged.settings, merged.items);
  const carried = [...named].map(from =>
    mergeRecord(
      from,
      spread(sides, s => recordOf(s, from)),
      { had: old.types(from), now: id => now.types(id) },
      takes,
      conflicts,
    ),
  );
  const here = new Set(merged.items.map(i => i.id));
  // Whoever decided that an item ends decided that nothing goes on in it, or points to it.
  const ended = (id: ItemId) => !here.has(id) && takes.has(id);
  const settled = carried.map(record => {
    const heirs = record.heirs.filter(h => !ended(h.to));
    return withPointers({ ...record, heirs }, id => (ended(id) ? undefined : id));
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

/** The installation types that an old item had, and those that an item of the merged draft has. */
interface Types {
  readonly had: readonly TypeId[];
  readonly now: (id: ItemId) => readonly TypeId[];
}

function mergeRecord(
  from: ItemId,
  sides: Three<LineageRecord>,
  types: Types,
  takes: Takes,
  conflicts: Conflict[],
): LineageRecord {
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
  // How the heirs go on; what a record with ends says is about these.
  const joining = spread(sides, s => (endingsOf(s).length > 0 ? {} : wordsOf(s)));
  const word = (key: (typeof ENDING_WORDS)[number]) =>
    threeWay(
      spread(joining, s => s[key]),
      from,
      'lineage',
      takes,
      own,
    );
  const joined = wordsOf(Object.fromEntries(ENDING_WORDS.map(key => [key, word(key)])));
  const merged = mergeEndings(from, sides, types.had, takes, own);
  // Whose state of the item was taken decided for which types it goes on.
  const ofOther = (e: Ending) => !e.types?.some(t => side && endsFor(sides[side], t));
  const goesOnFor = new Set(side === undefined ? [] : heirs.flatMap(h => types.now(h.to)));
  const endings = merged.filter(e => !(ofOther(e) && e.types?.some(t => goesOnFor.has(t))));
  const told = withoutAbsent<LineageRecord>({
    from,
    heirs,
    notSame: field('notSame'),
    ...joined,
    note: mergeNotes(sides),
    ...later(sides.ours, sides.theirs),
    basis: field('basis'),
  });
  const someEnded = [sides.ours, sides.theirs].filter(s => s.heirs.length === 0).length === 1;
  const endedAndCarried = endings.length > 0 && heirs.length > 0 && someEnded;
  // One end is about the types, the other about how the rest goes on, and a record has room for one.
  const both = endings.length > 0 && Object.keys(joined).length > 0;
  if (own.length > 0 || (side === undefined && (endedAndCarried || both))) {
    conflicts.push({ about: from, what: 'lineage', ours: sides.ours, theirs: sides.theirs });
  }
  if ((endedAndCarried || both) && side !== undefined) return sides[side];
  return endings.length > 0 ? withEndings(told, heirs.length > 0 ? endings : asWhole(endings, types.had)) : told;
}

/** Ends are merged type by type: two people may end an item for different types with different reasons. */
function mergeEndings(
  from: ItemId,
  sides: Three<LineageRecord>,
  had: readonly TypeId[],
  takes: Takes,
  conflicts: Conflict[],
): readonly Ending[] {
  // A catalog without types has one end for all: it stands under no name.
  const all = had.length > 0 ? had : [''];
  const byType = spread(
    sides,
    s => new Map(endingsOf(s).flatMap(e => (e.types ?? all).map(type => [type, wordsOf(e)] as const))),
  );
  const types = new Set([byType.ours, byType.theirs].flatMap(ends => [...ends.keys()]));
  return [...types].flatMap(type => {
    const words = threeWay(
      spread(byType, ends => ends.get(type)),
      from,
      'lineage',
      takes,
      conflicts,
    );
    return words ? [{ types: [type], ...words }] : [];
  });
}

const endsFor = (record: LineageRecord, type: TypeId) => endingsOf(record).some(e => e.types?.includes(type) ?? true);

/** Of an item that goes on nowhere, one end for all that it had is one as a whole. */
function asWhole(endings: readonly Ending[], had: readonly TypeId[]): readonly Ending[] {
  const [first, ...more] = endings;
  const one = more.every(e => same(wordsOf(e), wordsOf(first!)));
  const named = endings.flatMap(e => e.types ?? []);
  return one && had.every(t => named.includes(t)) ? [wordsOf(first!)] : endings;
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
