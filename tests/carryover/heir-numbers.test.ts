import { describe, expect, it } from 'vitest';
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
