import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLineage } from '../../src/crosswalk/check-lineage.ts';
import { applyOperation, lossesOf } from '../../src/editing/apply-operation.ts';
import { type DraftState, linksOf, typesOf } from '../../src/editing/draft-state.ts';
import { parseEditionFiles, writeEditionFiles } from '../../src/format/edition-files.ts';
import type { Operation, OperationOf } from '../../src/model/operation.ts';
import { choice, DOER, smallDraft, TYPES, work } from './small-draft.ts';

const run = (...operations: Operation[]) => operations.reduce((s, o) => applyOperation(s, o, DOER), smallDraft());
const heirs = (state: DraftState, from: string) =>
  linksOf(state).flatMap(l =>
    l.from === from ? [l.to ?? `ends (${l.reason})${l.types ? ` for ${l.types}` : ''}`] : [],
  );
/** What ends for some types only, type by type, and all that is said about it. */
const endings = (state: DraftState) =>
  linksOf(state).flatMap(({ from, to, types = [], reason, governs, pointsTo, decision }) =>
    to === null ? types.map(type => ({ from, type, said: { reason, governs, pointsTo, decision } })) : [],
  );
const item = (state: DraftState, id: string) => state.items.find(i => i.id === id)!;

describe('laws of work on a draft, after any operations', () => {
  it('nothing of the older edition is lost, and no lineage leads nowhere', () => {
    fc.assert(
      fc.property(fc.array(choice, { maxLength: 12 }), choices => {
        for (const state of work(smallDraft(), choices, 'n').states) {
          expect(lossesOf(state)).toEqual([]);
          const ids = (list: readonly { id: string }[]) => new Set(list.map(i => i.id));
          expect(checkLineage(state.lineage, ids(state.older!.items), ids(state.items), state.decisions)).toEqual([]);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('what is kept on disk comes back equal, so parents stand before their children and numbers have no gaps', () => {
    fc.assert(
      fc.property(fc.array(choice, { maxLength: 12 }), choices => {
        const state = work(smallDraft(), choices, 'n').states.at(-1)!;
        const { items, findings } = parseEditionFiles(writeEditionFiles(state.settings, state.items));
        expect(findings).toEqual([]);
        expect(items).toEqual(state.items);
      }),
    );
  });

  it('what a withdrawal said stands under what it ended until that goes on again', () => {
    const act = { governs: 'the act', governsChecked: '2029-12-01' };
    const ends = fc
      .tuple(fc.nat(), fc.subarray([...TYPES], { minLength: 1, maxLength: 1 }), fc.boolean())
      .map(([n, types, law]) => (s: DraftState): Operation => {
        const id = s.items.filter(i => i.level === 3)[n % 2]?.id ?? 'nothing';
        return { op: 'withdraw', id, types, ...(law ? { reason: 'law-governs', ...act } : { reason: 'obsolete' }) };
      });
    let several = 0;
    fc.assert(
      fc.property(fc.array(choice, { maxLength: 3 }), fc.array(ends, { maxLength: 5 }), (choices, more) => {
        const { states } = work(smallDraft(), [...choices, ...more], 'n');
        for (const [at, state] of states.slice(1).entries()) {
          for (const before of endings(states[at]!)) {
            const after = endings(state).filter(e => e.from === before.from && e.type === before.type);
            if (after.length > 0) expect(after).toEqual([before]);
          }
          if (state.lineage.some(r => r.alsoEnds)) several++;
        }
      }),
      { numRuns: 200 },
    );
    expect(several).toBeGreaterThan(20);
  });

  it('reach most kinds of operation, or the laws above would hold for want of work', () => {
    const done = fc
      .sample(fc.array(choice, { minLength: 8, maxLength: 12 }), { numRuns: 200, seed: 1 })
      .flatMap(choices => work(smallDraft(), choices, 'n').done.map(o => o.op));
    const kinds = ['reword', 'retitle', 'move', 'combine', 'split', 'withdraw', 'add', 'applies-to', 'link', 'restore'];
    for (const kind of kinds) expect(done.filter(d => d === kind).length, kind).toBeGreaterThan(5);
  });
});

describe('an operation on a draft', () => {
  it('that takes a new item into an old one says of the old one why the new one was written', () => {
    const state = run(
      { op: 'add', item: { id: 'n1', title: 'New', text: 'It holds.' }, under: 'b', after: null },
      { op: 'reword', id: 'n1', to: { text: 'It holds well.' }, note: 'asked for at sites' },
      { op: 'combine', ids: ['n1'], into: 'b1' },
    );
    expect(state.lineage.map(r => [r.from, r.heirs.map(h => h.to), r.note])).toEqual([
      ['b1', ['b1'], 'asked for at sites'],
    ]);
  });

  it('combines items over installation types: one applies to all of them and says what each said', () => {
    const state = run({ op: 'combine', ids: ['a1x', 'a2x'], into: 'a1x', note: 'said twice' });
    expect(item(state, 'a1x').text).toBe('a1x is at least 10 mm.\n\na2x is at least 10 mm.');
    expect(typesOf(state, 'a1x')).toEqual(['house', 'terrace', 'street']);
    expect([heirs(state, 'a1x'), heirs(state, 'a2x')]).toEqual([['a1x'], ['a1x']]);
    expect(state.lineage.map(r => [r.from, r.note, r.by])).toEqual([
      ['a1x', 'said twice', 'Rowan'],
      ['a2x', 'said twice', 'Rowan'],
    ]);
  });

  it('combines work items, and what stood below them keeps applying to what it applied to', () => {
    const state = run({ op: 'combine', ids: ['a1', 'a2'], into: 'a1' });
    expect(state.items.filter(i => i.parent === 'a1').map(i => [i.id, i.number, ...typesOf(state, i.id)])).toEqual([
      ['a1x', '1.1.1', 'house', 'terrace'],
      ['a1y', '1.1.2', 'house', 'terrace'],
      ['a2x', '1.1.3', 'house', 'terrace', 'street'],
      ['a2y', '1.1.4', 'house', 'terrace', 'street'],
    ]);
  });

  it('splits an item that others were combined into: each of them goes on in every part', () => {
    const state = run(
      { op: 'combine', ids: ['a1x', 'a1y'], into: 'a1x' },
      { op: 'split', id: 'a1x', keeps: { text: 'one' }, gives: [{ id: 'new', title: 'Two', text: 'two' }] },
    );
    expect([heirs(state, 'a1x'), heirs(state, 'a1y')]).toEqual([
      ['a1x', 'new'],
      ['a1x', 'new'],
    ]);
    expect(item(state, 'new').number).toBe('1.1.2');
  });

  it('withdraws a work item with everything below it, and each record has the reason', () => {
    const state = run({ op: 'withdraw', id: 'b1', reason: 'obsolete' });
    expect(['b1', 'b1x', 'b1y'].map(id => heirs(state, id))).toEqual(Array(3).fill(['ends (obsolete)']));
    expect(item(state, 'b2').number).toBe('2.1');
  });

  it('withdraws for some installation types and goes on for the others', () => {
    const state = run({ op: 'withdraw', id: 'a2x', reason: 'obsolete', types: ['street'] });
    expect(typesOf(state, 'a2x')).toEqual(['house', 'terrace']);
    expect(heirs(state, 'a2x')).toEqual(['a2x', 'ends (obsolete) for street']);
  });

  const partly = (more: Partial<OperationOf<'withdraw'>>) =>
    ({ op: 'withdraw', id: 'a2x', reason: 'obsolete', types: ['street'], ...more }) as const;
  const act = { reason: 'law-governs', governs: 'the act', governsChecked: '2029-12-01' };

  it('ends an item for further types with the reason that it ended with before', () => {
    const state = run(partly({}), partly({ types: ['house'], note: 'a house has none' }));
    expect(heirs(state, 'a2x')).toEqual(['a2x', 'ends (obsolete) for street,house']);
  });

  it('ends an item for further types with another reason, and each keeps its own', () => {
    const second = partly({ types: ['house'] });
    expect(heirs(run(partly(act), second), 'a2x')).toEqual([
      'a2x',
      'ends (law-governs) for street',
      'ends (obsolete) for house',
    ]);
    const { lineage } = run(partly(act), second);
    expect(lineage).toMatchObject([{ ...act, alsoEnds: [{ types: ['house'], reason: 'obsolete' }] }]);
    expect(lineage[0]!.alsoEnds![0]).not.toHaveProperty('governs');
  });

  it('ends the rest of an item with another reason, and tells what ended before as it was told then', () => {
    const rest = run(partly(act), { op: 'withdraw', id: 'a2x', reason: 'obsolete' });
    expect(heirs(rest, 'a2x')).toEqual(['ends (law-governs) for street', 'ends (obsolete) for house,terrace']);
    const same = run(partly({}), { op: 'withdraw', id: 'a2x', reason: 'obsolete' });
    expect(heirs(same, 'a2x')).toEqual(['ends (obsolete)']);
  });

  it('gives one type back and goes on saying why the others end', () => {
    const two = [partly(act), partly({ types: ['house'] })] as const;
    const back = (types: readonly string[]) => run(...two, { op: 'applies-to', id: 'a2x', types: [...types] });
    expect(heirs(back(['terrace', 'street']), 'a2x')).toEqual(['a2x', 'ends (obsolete) for house']);
    expect(back(['terrace', 'street']).lineage[0]).not.toHaveProperty('governs');
    expect(heirs(back(['terrace', 'house']), 'a2x')).toEqual(['a2x', 'ends (law-governs) for street']);
    expect(back(TYPES).lineage).toEqual([]);
  });

  it('links an item that ended for several reasons: it ends for what the heir does not take over', () => {
    const all = [partly(act), { op: 'withdraw', id: 'a2x', reason: 'obsolete' }] as const;
    const narrow = { op: 'applies-to', id: 'a2y', types: ['house', 'street'], reason: 'obsolete' } as const;
    const led = { op: 'link', from: 'a2x', to: 'a2y', fromExtent: 'part', toExtent: 'part' } as const;
    expect(heirs(run(...all, narrow, led), 'a2x')).toEqual(['a2y', 'ends (obsolete) for terrace']);
  });

  it('leads what an end points to elsewhere, whichever end of the item it is', () => {
    const state = run(partly(act), partly({ types: ['house'], pointsTo: 'a2y' }), {
      op: 'combine',
      ids: ['a1x', 'a2y'],
      into: 'a1x',
    });
    expect(linksOf(state).find(l => l.from === 'a2x' && l.reason === 'obsolete')?.pointsTo).toBe('a1x');
  });

  it('leaves nothing behind below an item that ends: what goes on for more types is to be moved first', () => {
    const wider: Operation = { op: 'combine', ids: ['a1x', 'a2x'], into: 'a1x' };
    expect(() => run(wider, { op: 'applies-to', id: 'a', types: ['street'], reason: 'obsolete' })).toThrow(
      /^1\.1\.1 goes on for street, but 1\.1 above it ends for all that it applies to; move it first, or withdraw it\.$/,
    );
  });

  it('forgets all about an ending that is taken back, and can end for another reason then', () => {
    const back = { op: 'applies-to', id: 'a2x', types: [...TYPES] } as const;
    const first = partly({ ...act, pointsTo: 'a2y' });
    expect(run(first, back).lineage).toEqual([]);
    expect(run(first, back, partly({ types: ['house'] })).lineage).toEqual(run(partly({ types: ['house'] })).lineage);
  });

  it('withdraws nothing of an old item that another heir carries on whole', () => {
    const state = run(
      { op: 'split', id: 'a1x', keeps: {}, gives: [{ id: 'new', title: 'Two' }] },
      { op: 'withdraw', id: 'new', reason: 'obsolete', note: 'said twice' },
    );
    expect(heirs(state, 'a1x')).toEqual(['a1x']);
    expect(state.lineage[0]).toMatchObject({ note: 'said twice' });
    expect(state.lineage[0]).not.toHaveProperty('reason');
  });

  it('moves an item without changing what it applies to, although its new parent applies to more', () => {
    const state = run({ op: 'move', id: 'a1x', under: 'a2', after: null });
    expect([item(state, 'a1x').number, typesOf(state, 'a1x')]).toEqual(['1.2.1', ['house', 'terrace']]);
    expect(state.lineage).toEqual([]);
  });

  it('asks what governs, and when it was read, where the reason is that something else does', () => {
    const ask = { op: 'withdraw', id: 'a1x', reason: 'law-governs' } as const;
    expect(() => run(ask)).toThrow(/add what governs and the day on which it was checked\.$/);
    const state = run({ ...ask, governs: 'the county code', governsChecked: '2029-12-01' });
    expect(state.lineage).toMatchObject([{ governs: 'the county code', governsChecked: '2029-12-01' }]);
  });

  it('keeps a reader who was sent to an item that is combined with another on the way', () => {
    const state = run(
      { op: 'withdraw', id: 'b1x', reason: 'obsolete', pointsTo: 'b1y' },
      { op: 'combine', ids: ['b1y', 'b2x'], into: 'b2x' },
    );
    expect(state.lineage.find(r => r.from === 'b1x')?.pointsTo).toBe('b2x');
  });

  it('gives an item that was withdrawn back, under its own id', () => {
    const state = run(
      { op: 'withdraw', id: 'b1', reason: 'obsolete' },
      { op: 'restore', from: 'b1', under: 'b', after: null },
      { op: 'restore', from: 'b1x', under: 'b1' },
    );
    expect(state.items.filter(i => i.id.startsWith('b1')).map(i => [i.id, i.number])).toEqual([
      ['b1', '2.1'],
      ['b1x', '2.1.1'],
    ]);
    expect([heirs(state, 'b1x'), heirs(state, 'b1y')]).toEqual([['b1x'], ['ends (obsolete)']]);
  });

  const refused: [string, Operation, RegExp][] = [
    ['an item below itself', { op: 'move', id: 'a', under: 'a1' }, /name a place outside of it\.$/],
    ['too deep a place', { op: 'move', id: 'a1', under: 'b1' }, /the catalog has 3; name a parent further up\.$/],
    [
      'a reason that the catalog does not know',
      { op: 'withdraw', id: 'a1', reason: 'why not' },
      /use one of: obsolete/,
    ],
    [
      'a type that it does not apply to',
      { op: 'withdraw', id: 'a1', reason: 'obsolete', types: ['street'] },
      /house, terrace\.$/,
    ],
    ['a combination over levels', { op: 'combine', ids: ['a1', 'a1x'], into: 'a1' }, /before they are combined\.$/],
    [
      'fewer types without a reason',
      { op: 'applies-to', id: 'a2', types: ['house'] },
      /with one of the catalog's reasons\.$/,
    ],
    [
      'parts that drop a type',
      {
        op: 'split',
        id: 'a2x',
        keeps: { appliesTo: ['house'] },
        gives: [{ id: 'n', title: 'N', appliesTo: ['street'] }],
      },
      /Withdraw it with a reason/,
    ],
    ['the last link of an item', { op: 'unlink', from: 'a1x', to: 'a1x' }, /Withdraw it with a reason/],
    ['an item that it does not have', { op: 'reword', id: 'zz', to: { text: 'x' } }, /has no item zz/],
  ];
  it.each(refused)('is refused for %s', (_, operation, sentence) => {
    expect(() => run(operation)).toThrow(sentence);
  });
});
