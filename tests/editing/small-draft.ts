import fc from 'fast-check';
import { applyOperation } from '../../src/editing/apply-operation.ts';
import type { Doer, DraftState } from '../../src/editing/draft-state.ts';
import { renumbered } from '../../src/editing/outline-edits.ts';
import { CatalogError } from '../../src/model/errors.ts';
import type { Item } from '../../src/model/item.ts';
import type { Operation } from '../../src/model/operation.ts';
import type { Settings } from '../../src/model/settings.ts';
import { deepFreeze } from '../freeze.ts';

export const DOER: Doer = { by: 'Rowan', date: '2030-01-02' };
export const TYPES = ['house', 'terrace', 'street'] as const;
const REASONS = ['obsolete', 'law-governs'] as const;

export const SETTINGS: Settings = {
  title: 'Small works',
  language: 'en',
  levels: [{ name: 'Part' }, { name: 'Work item' }, { name: 'Requirement', obliges: true }],
  fileLevel: 2,
  numbering: { levels: [{ style: 'decimal' }, { style: 'decimal' }, { style: 'decimal' }], numbersUnique: true },
  installationTypes: TYPES.map(id => ({ id, name: id })),
  withdrawalReasons: [
    { code: 'obsolete', meaning: 'no longer used' },
    { code: 'law-governs', meaning: 'regulated elsewhere', governedElsewhere: true },
  ],
};

/** Two parts, two work items in each, two requirements in each: a, a1, a1x … */
export function smallDraft(): DraftState {
  const items: Item[] = [];
  const add = (id: string, parent: string | null, level: number, more: Partial<Item> = {}) =>
    items.push({ id, number: '', level, parent, title: `Title of ${id}`, ...more });
  for (const part of ['a', 'b']) {
    add(part, null, 1);
    for (const work of ['1', '2']) {
      const id = part + work;
      add(id, part, 2, work === '1' ? { appliesTo: ['house', 'terrace'] } : {});
      for (const line of ['x', 'y']) add(id + line, id, 3, { text: `${id + line} is at least 10 mm.` });
    }
  }
  const numbered = renumbered(SETTINGS, items);
  const header = { name: '2024', erratum: 0, replaces: null, dates: {}, state: 'published' as const };
  const older = { header, settings: SETTINGS, items: numbered };
  return deepFreeze({ older, settings: SETTINGS, dates: {}, items: numbered, lineage: [], decisions: [] });
}

/** An operation as a choice among what a draft has: indexes become ids when it is applied. */
type Choice = (state: DraftState, fresh: () => string) => Operation;

const index = fc.nat({ max: 30 });
const types = fc.uniqueArray(fc.constantFrom(...TYPES), { minLength: 1 });
const at = (state: DraftState, n: number) => state.items[n % state.items.length]?.id ?? 'nothing';
const old = (state: DraftState, n: number) => state.older!.items[n % state.older!.items.length]!.id;
/** A place for something at a level: a parent one level up, and perhaps one of its children to come after. */
function place(state: DraftState, level: number, n: number, m: number) {
  const parents = state.items.filter(i => i.level === level - 1);
  const under = level === 1 || parents.length === 0 ? null : parents[n % parents.length]!.id;
  const siblings = [undefined, null, ...state.items.filter(i => i.parent === under).map(i => i.id)];
  const after = siblings[m % siblings.length];
  return after === undefined ? { under } : { under, after };
}
const levelOf = (state: DraftState, id: string) => state.items.find(i => i.id === id)?.level ?? 3;
const why = (n: number) => ({
  reason: REASONS[n % 2]!,
  ...(n % 2 === 1 ? { governs: 'the county code', governsChecked: '2029-12-01' } : {}),
});

export const choice: fc.Arbitrary<Choice> = fc.oneof(
  fc.tuple(index, index).map(
    ([n, m]): Choice =>
      s => ({ op: 'reword', id: at(s, n), to: { text: `Now it is at most ${m} mm.` }, note: `note ${m}` }),
  ),
  fc.tuple(index, index).map(
    ([n, m]): Choice =>
      s => ({ op: 'retitle', id: at(s, n), title: `Called ${m}` }),
  ),
  fc.tuple(index, index, index).map(
    ([n, m, k]): Choice =>
      s => ({ op: 'move', id: at(s, n), ...place(s, levelOf(s, at(s, n)), m, k) }),
  ),
  fc.tuple(index, index, index).map(
    ([n, m, k]): Choice =>
      s => {
        const level = levelOf(s, at(s, n));
        const peers = s.items.filter(i => i.level === level).map(i => i.id);
        return { op: 'combine', ids: [m, k].map(p => peers[p % peers.length] ?? 'nothing'), into: at(s, n) };
      },
  ),
  fc.tuple(index, index, types).map(
    ([n, m, t]): Choice =>
      (s, fresh) => ({
        op: 'split',
        id: at(s, n),
        keeps: { text: `kept ${m}` },
        gives: [
          { id: fresh(), title: `given ${m}`, ...(m % 3 === 0 ? { appliesTo: t } : {}) },
          ...(m % 2 ? [{ id: fresh(), title: `given too ${m}` }] : []),
        ],
      }),
  ),
  fc.tuple(index, index, types).map(
    ([n, m, t]): Choice =>
      s => ({ op: 'withdraw', id: at(s, n), ...why(m), ...(m % 3 === 0 ? { types: t } : {}) }),
  ),
  fc.tuple(index, index, index).map(
    ([n, m, k]): Choice =>
      (s, fresh) => ({
        op: 'add',
        item: { id: fresh(), title: `New ${k}`, text: 'It holds.' },
        ...place(s, (n % 3) + 1, m, k),
      }),
  ),
  fc.tuple(index, types).map(
    ([n, t]): Choice =>
      s => ({ op: 'applies-to', id: at(s, n), types: t, reason: 'obsolete' }),
  ),
  fc.tuple(index, index).map(
    ([n, m]): Choice =>
      s => ({ op: 'link', from: old(s, n), to: at(s, m), fromExtent: 'part', toExtent: 'part' }),
  ),
  fc.tuple(index, index).map(
    ([n, m]): Choice =>
      s => ({ op: 'unlink', from: old(s, n), to: at(s, m) }),
  ),
  fc.tuple(index, index, index).map(
    ([n, m, k]): Choice =>
      s => ({
        op: 'restore',
        from: old(s, n),
        ...place(s, s.older!.items[n % s.older!.items.length]!.level, m, k),
      }),
  ),
  index.map(
    (n): Choice =>
      () => ({ op: 'set-days', days: n % 3 === 0 ? { effective: '' } : { effective: `2030-01-${10 + (n % 20)}` } }),
  ),
  index.map(
    (n): Choice =>
      () => ({ op: 'rename', what: 'type', name: TYPES[n % 3]!, to: `renamed ${n}` }),
  ),
);

/** Does what can be done of the choices; what the draft refuses leaves it as it was. */
export function work(
  start: DraftState,
  choices: readonly Choice[],
  name: string,
): { states: DraftState[]; done: Operation[] } {
  const states = [start];
  const done: Operation[] = [];
  let made = 0;
  for (const choose of choices) {
    const state = states.at(-1)!;
    const operation = choose(state, () => `${name}${++made}`);
    try {
      states.push(deepFreeze(applyOperation(state, operation, DOER)));
      done.push(operation);
    } catch (error) {
      if (!(error instanceof CatalogError)) throw error;
    }
  }
  return { states, done };
}
