import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyOperation, lossesOf } from '../../src/editing/apply-operation.ts';
import { type DraftState, linksOf } from '../../src/editing/draft-state.ts';
import { mergeDrafts } from '../../src/editing/merging/merge-drafts.ts';
import type { Side } from '../../src/editing/merging/three-way.ts';
import { recordOf } from '../../src/editing/records.ts';
import type { LineageRecord } from '../../src/model/crosswalk.ts';
import { endingsOf } from '../../src/model/endings.ts';
import { CONTENT_FIELDS } from '../../src/model/item.ts';
import type { Operation } from '../../src/model/operation.ts';
import { placesOf } from '../../src/model/places.ts';
import { choice, DOER, smallDraft, work } from './small-draft.ts';

const base = smallDraft();
const GOVERNED = { governs: 'the act', governsChecked: '2029-12-01' };
const from = (start: DraftState, ...operations: Operation[]) =>
  operations.reduce((s, o) => applyOperation(s, o, DOER), start);
const made = (...operations: Operation[]) => from(base, ...operations);
const merge = (ours: DraftState, theirs: DraftState, takes: Record<string, Side> = {}, start = base) =>
  mergeDrafts({ base: start, ours, theirs }, new Map(Object.entries(takes)));
const sorted = (state: DraftState) => ({
  ...state,
  lineage: [...state.lineage].sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)),
});

/** Why an old item ends, by type; of one that ends as a whole for every type that it had. */
function endsByType(record: LineageRecord): Map<string, string> {
  const had = (id: string) => placesOf(base.older!.settings, base.older!.items).types(id);
  return new Map(
    endingsOf(record).flatMap(({ types = had(record.from!), ...said }) =>
      types.map(t => [t, JSON.stringify(said)] as const),
    ),
  );
}

/** Everything that a side did to the base, as ids of which the merged draft no longer says what the side says. */
function deeds(start: DraftState, side: DraftState, merged: DraftState): string[] {
  const before = new Map(start.items.map(i => [i.id, i]));
  const now = new Map(side.items.map(i => [i.id, i]));
  const result = new Map(merged.items.map(i => [i.id, i]));
  const lost = start.items.filter(i => !now.has(i.id) && result.has(i.id)).map(i => i.id);
  for (const mine of side.items) {
    const [was, is] = [before.get(mine.id), result.get(mine.id)];
    const says = (item: typeof is, field: (typeof CONTENT_FIELDS)[number] | 'parent') => JSON.stringify(item?.[field]);
    // Of what the base does not have, all that the side says is its own.
    const own = [...CONTENT_FIELDS, 'parent' as const].filter(f => !was || says(mine, f) !== says(was, f));
    if (own.some(f => !is || says(is, f) !== says(mine, f))) lost.push(mine.id);
  }
  const older = new Set([start, side].flatMap(s => s.lineage.flatMap(r => r.from ?? [])));
  for (const id of older) {
    const [was, mine, both] = [start, side, merged].map(s => recordOf(s, id));
    for (const heir of mine!.heirs) {
      if (was!.heirs.some(h => h.to === heir.to)) continue;
      if (!both!.heirs.some(h => h.to === heir.to)) lost.push(id, heir.to);
    }
    // What a side said of why a type ends: another reason in its place, or none, is a deed undone.
    const [wasEnds, myEnds, bothEnds] = [was, mine, both].map(r => endsByType(r!));
    for (const [type, said] of myEnds!) {
      if (said !== wasEnds!.get(type) && said !== bothEnds!.get(type)) lost.push(id);
    }
    if (mine!.note && mine!.note !== was!.note && !both!.note?.includes(mine!.note)) lost.push(id);
  }
  return lost;
}

describe('merging two people’s work on a draft', () => {
  it('loses no operation of either side: it stands in the result, or a conflict names the item', () => {
    const several = fc.array(choice, { maxLength: 4 });
    // Both bring the same item back and perhaps reword it: by lot alone two people hardly ever meet there.
    const saying = fc.option(fc.nat({ max: 2 }));
    const restored = fc.option(fc.tuple(fc.constantFrom('a1x', 'a2y', 'b1x'), saying, saying));
    const again = (id: string, n: number | null): Operation[] => [
      { op: 'restore', from: id, under: id.slice(0, -1) },
      ...(n === null ? [] : [{ op: 'reword', id, to: { text: `Again ${n}.` } } as const]),
    ];
    const choices = (operations: readonly Operation[]) => operations.map(o => () => o);
    let conflicted = 0;
    let clean = 0;
    fc.assert(
      fc.property(several, several, several, restored, (first, mine, other, both) => {
        const [id, a, b] = both ?? [];
        const ends = id ? choices([{ op: 'withdraw', id, reason: 'obsolete' }]) : [];
        const start = work(base, [...first, ...ends], 'n').states.at(-1)!;
        const ours = work(start, [...(id ? choices(again(id, a!)) : []), ...mine], 'm').states.at(-1)!;
        const theirs = work(start, [...(id ? choices(again(id, b!)) : []), ...other], 't').states.at(-1)!;
        const { draft, conflicts } = merge(ours, theirs, {}, start);
        const told = new Set(conflicts.map(c => c.about));
        // Where one side ends an item and the other builds on it, the conflict names it for the links to it as well.
        const untold = [...deeds(start, ours, draft), ...deeds(start, theirs, draft)].filter(id => !told.has(id));
        if (conflicts.length === 0) {
          clean++;
          expect(untold).toEqual([]);
          expect(lossesOf(draft)).toEqual([]);
        } else {
          conflicted++;
          const touched = (id: string) =>
            linksOf(draft).some(
              l => (l.from === id || l.to === id) && (told.has(l.from ?? '') || told.has(l.to ?? '')),
            );
          const belowTold = (id: string) =>
            [start, ours, theirs].some(s => s.items.some(i => i.id === id && told.has(i.parent ?? '')));
          expect(untold.filter(id => !touched(id) && !belowTold(id))).toEqual([]);
        }
      }),
      { numRuns: 120 },
    );
    // Neither kind of outcome may be missing, or the law was not tried.
    expect(Math.min(clean, conflicted)).toBeGreaterThan(3);
  });

  it('with an untouched side is the other side, and with itself is itself', () => {
    fc.assert(
      fc.property(fc.array(choice, { maxLength: 8 }), choices => {
        const side = work(base, choices, 'n').states.at(-1)!;
        for (const [ours, theirs] of [
          [base, side],
          [side, base],
          [side, side],
        ] as const) {
          const { draft, conflicts } = merge(ours, theirs);
          expect(conflicts).toEqual([]);
          expect(sorted(draft)).toEqual(sorted(side));
        }
      }),
    );
  });

  it('takes both: moved here and reworded there', () => {
    const { draft, conflicts } = merge(
      made({ op: 'move', id: 'a1x', under: 'b1' }),
      made({ op: 'reword', id: 'a1x', to: { text: 'Reworded.' } }),
    );
    expect(conflicts).toEqual([]);
    expect(draft.items.find(i => i.id === 'a1x')).toMatchObject({ parent: 'b1', text: 'Reworded.', number: '2.1.3' });
  });

  it('tells one conflict where both reworded, and the side taken for it holds', () => {
    const ours = made({ op: 'reword', id: 'a1x', to: { text: 'Ours.' } });
    const theirs = made({ op: 'reword', id: 'a1x', to: { text: 'Theirs.' } });
    expect(merge(ours, theirs).conflicts).toEqual([{ about: 'a1x', what: 'text', ours: 'Ours.', theirs: 'Theirs.' }]);
    const { draft, conflicts } = merge(ours, theirs, { a1x: 'theirs' });
    expect([draft.items.find(i => i.id === 'a1x')?.text, conflicts]).toEqual(['Theirs.', []]);
  });

  it('tells a conflict where one item is moved to two places, and makes no duplicate', () => {
    const { draft, conflicts } = merge(
      made({ op: 'move', id: 'a1x', under: 'b1' }),
      made({ op: 'move', id: 'a1x', under: 'b2' }),
    );
    expect(conflicts).toMatchObject([{ about: 'a1x', what: 'place' }]);
    expect(draft.items.filter(i => i.id === 'a1x')).toHaveLength(1);
  });

  it('tells a conflict where one side ends what the other rewords, and the side taken settles its lineage too', () => {
    const ours = made({ op: 'withdraw', id: 'a1x', reason: 'obsolete' });
    const theirs = made({ op: 'reword', id: 'a1x', to: { text: 'Still needed.' } });
    expect(merge(ours, theirs).conflicts).toMatchObject([{ about: 'a1x', what: 'gone' }]);
    const gone = merge(ours, theirs, { a1x: 'ours' });
    expect([gone.conflicts, gone.draft.items.some(i => i.id === 'a1x')]).toEqual([[], false]);
    const kept = merge(ours, theirs, { a1x: 'theirs' });
    expect([kept.conflicts, linksOf(kept.draft).find(l => l.from === 'a1x')?.to]).toEqual([[], 'a1x']);
    expect(kept.draft.lineage).toEqual([]);
  });

  it('takes both ends where two people end an item for different types, each with its own reason', () => {
    const law = { reason: 'law-governs', governs: 'the act', governsChecked: '2029-12-01' };
    const street = { op: 'withdraw', id: 'a2x', types: ['street'], ...law } as const;
    const house = { op: 'withdraw', id: 'a2x', types: ['house'], reason: 'obsolete' } as const;
    const ends = (state: DraftState) =>
      linksOf(state).flatMap(l => (l.to === null ? [`${l.types}: ${l.reason} ${l.governs ?? ''}`.trim()] : []));
    // What the item applies to is one field, and both changed it: that is told, of the ends nothing has to be.
    const { draft, conflicts } = merge(made(street), made(house), { a2x: 'ours' });
    expect(conflicts).toEqual([]);
    expect(ends(draft)).toEqual(['street: law-governs the act']);
    const first = made(street);
    const other = merge(from(first, house), from(first, { ...house, types: ['terrace'] }), {}, first);
    expect(other.conflicts.map(c => c.what)).toEqual(['appliesTo']);
    expect(ends(other.draft)).toEqual(['street: law-governs the act', 'house,terrace: obsolete']);
  });

  it('tells a conflict where two people end an item for one type with different reasons', () => {
    const ends = (reason: string) => made({ op: 'withdraw', id: 'a2x', types: ['street'], reason, ...GOVERNED });
    expect(merge(ends('obsolete'), ends('law-governs')).conflicts).toMatchObject([{ about: 'a2x', what: 'lineage' }]);
  });

  it('keeps both combinations where two people combine different items into one', () => {
    const { draft, conflicts } = merge(
      made({ op: 'combine', ids: ['a1y'], into: 'a1x', to: { text: 'x' } }),
      made({ op: 'combine', ids: ['a2x'], into: 'a1x', to: { text: 'x' } }),
    );
    expect(conflicts).toEqual([]);
    expect(
      linksOf(draft)
        .filter(l => l.to === 'a1x')
        .map(l => l.from),
    ).toEqual(['a1x', 'a1y', 'a2x']);
  });

  it('loses nothing where both restored one item: what only one says is a conflict', () => {
    const start = made({ op: 'withdraw', id: 'a1x', reason: 'obsolete' });
    const restore: Operation = { op: 'restore', from: 'a1x', under: 'a1' };
    const untouched = from(start, restore);
    const reworded = from(start, restore, { op: 'reword', id: 'a1x', to: { text: 'Restored and reworded.' } });
    expect(merge(untouched, untouched, {}, start).conflicts).toEqual([]);
    for (const [ours, theirs] of [
      [reworded, untouched],
      [untouched, reworded],
    ] as const) {
      expect(merge(ours, theirs, {}, start).conflicts).toMatchObject([{ about: 'a1x', what: 'text' }]);
      const { draft, conflicts } = merge(ours, theirs, { a1x: ours === reworded ? 'ours' : 'theirs' }, start);
      expect([conflicts, draft.items.find(i => i.id === 'a1x')?.text]).toEqual([[], 'Restored and reworded.']);
    }
  });
});
