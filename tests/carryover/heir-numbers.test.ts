import { describe, expect, it } from 'vitest';
import { Decisions } from '../../src/carryover/decisions.ts';
import { askedOn } from '../../src/carryover/questions.ts';
import { resolveCitation } from '../../src/carryover/resolve.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { fixture } from './fixture.ts';

const { joint, marks } = fixture();

/** The fixture with other numbers printed on items of the newer edition, by id. */
function printing(numbers: Readonly<Record<string, string>>) {
  const entries = joint.to.entries.map(e => ({ ...e, number: numbers[e.id] ?? e.number }));
  return joinEditions(joint.from, { ...joint.to, entries }, joint.crosswalk);
}

describe('a number is carried only to a number that names its heir alone', () => {
  it('so a person says how an heir without a number is cited', () => {
    const outcome = resolveCitation(printing({ base: '' }), marks, { number: '3.1.1' });
    expect(outcome).toMatchObject({ kind: 'choose', cause: 'no-number', heirs: [{ id: 'base', number: '' }] });
    expect(outcome.toDo).toBe('Say how Base for the butt of 2024 is to be cited.');
  });

  it('and which is meant where others print it too, be the number new or the same', () => {
    const shared = resolveCitation(printing({ base: '3.1.4' }), marks, { number: '3.1.1' });
    expect(shared).toMatchObject({ kind: 'choose', cause: 'shared-number', heirs: [{ id: 'base' }] });
    expect(shared.why).toContain('Edition 2024 prints 3.1.4 on 2 items: Base for the butt and Strap.');
    const same = resolveCitation(printing({ lid: '3.2.2' }), marks, { number: '3.2.2', type: 'house' });
    expect(same).toMatchObject({ kind: 'choose', cause: 'shared-number' });
  });

  it('but the same number on an item of another type is no obstacle to a job of this type', () => {
    const both = printing({ base: '3.3.1' });
    expect(resolveCitation(both, marks, { number: '3.1.1', type: 'house' })).toMatchObject({ kind: 'carried' });
    expect(resolveCitation(both, marks, { number: '3.1.1' })).toMatchObject({ kind: 'choose' });
  });
});

describe('a person’s decision obeys the same rule', () => {
  const outcomeOf = (whole: typeof joint, type: string | undefined, heir: string) => {
    const cited = { number: '3.1.1', ...(type ? { type } : {}) };
    const asked = { ...resolveCitation(whole, marks, cited), kind: 'choose' as const };
    const on = { edition: '2018', state: 'open', ...cited };
    const cells = { ...on, heir, answer: 'carry', by: 'Rowan', asked_on: askedOn(whole, asked) };
    const columns = Object.keys(cells);
    const row = { file: 'answers.csv', line: 2, cells: new Map<string, string>(Object.entries(cells)) };
    const decisions = new Decisions({ file: 'answers.csv', columns, rows: [row] });
    const { kind, cause, heirs } = decisions.apply(whole, { title: undefined, type: undefined, ...on }, asked);
    return { kind, cause, heirs: heirs.map(h => h.id), told: decisions.findings().map(f => f.message) };
  };

  it('of items that share a number it means the one that applies to the type of the job', () => {
    const both = printing({ base: '3.3.1' });
    for (const heir of ['3.3.1', '']) {
      const decided = { kind: 'carried', cause: 'decided', heirs: ['base'], told: [] };
      expect(outcomeOf(both, 'house', heir)).toEqual(decided);
    }
    const untyped = outcomeOf(both, undefined, '3.3.1');
    expect(untyped).toMatchObject({
      kind: 'choose',
      told: [expect.stringContaining('3.3.1 names nothing, or not one')],
    });
  });

  it('and an heir without a number is not carried to nothing', () => {
    const bare = outcomeOf(printing({ base: '' }), 'house', '');
    expect(bare).toMatchObject({ kind: 'choose', told: [expect.stringContaining('An heir without a number names')] });
  });
});
