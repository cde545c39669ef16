import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveCitation } from '../../src/carryover/resolve.ts';
import { OUTCOMES } from '../../src/model/citation.ts';
import { fixture } from './fixture.ts';

const { joint, marks } = fixture();
const ask = (number: string, more: { type?: string; title?: string; edition?: string } = {}) =>
  resolveCitation(joint, marks, { number, ...more });

describe('what happens to a citation', () => {
  it.each([
    ['3', {}, 'kept', 'same-number', '3'],
    ['3.4.9', {}, 'kept', 'same-number', '3.4.9'],
    ['3.2.2', { type: 'house' }, 'kept', 'same-number', '3.2.2'],
    ['3.1.1', {}, 'carried', 'sole-heir', '3.1.2'],
    ['3.1.2', { type: 'terrace' }, 'carried', 'sole-heir', '3.1.1'],
    ['3.4.10', {}, 'carried', 'sole-heir', '3.3.2'],
    ['3.1.3', {}, 'choose', 'duty', '3.1.3'],
    ['3.2.1', {}, 'choose', 'duty', '3.2.1'],
    ['3.2', {}, 'choose', 'duty', '3.2'],
    ['3.4.5', {}, 'choose', 'several-heirs', '3.3.3|3.3.4'],
    ['3.4.6', {}, 'choose', 'inferred', '3.3.5'],
    ['3.4.7', {}, 'choose', 'doubtful', '3.3.6'],
    ['3.4.8', {}, 'choose', 'shared-number', '3.3.7|3.3.8'],
    ['3.4.8', { title: 'Filter' }, 'carried', 'sole-heir', '3.3.8'],
    ['3.5.1', {}, 'choose', 'part-withdrawn', '3.5.1'],
    ['3.5.1', { type: 'house' }, 'kept', 'same-number', '3.5.1'],
    ['3.5.1', { type: 'court' }, 'withdrawn', 'withdrawn', ''],
    ['3.2.2', { type: 'court' }, 'choose', 'other-type', '3.2.2'],
    ['3.1.4', {}, 'withdrawn', 'withdrawn', ''],
    ['3.1.5', {}, 'withdrawn', 'withdrawn', ''],
    ['3.4.2', {}, 'unknown', 'unaccounted', ''],
    ['3.4.1', { title: 'Lid' }, 'choose', 'title', '3.3.1|3.1.1'],
    ['3.1.1', { title: 'BASE FOR THE BUTT (house)' }, 'carried', 'sole-heir', '3.1.2'],
    ['3.1.1', { title: 'as agreed on site' }, 'carried', 'sole-heir', '3.1.2'],
    ['3.1.1', { edition: '2014' }, 'unknown', 'other-edition', ''],
    ['3.3.5', {}, 'unknown', 'no-such-number', ''],
    ['9.9.9', {}, 'unknown', 'no-such-number', ''],
    ['', {}, 'unknown', 'no-such-number', ''],
    ['4-5-1', {}, 'unknown', 'spreadsheet', ''],
    ['May-01', {}, 'unknown', 'spreadsheet', ''],
    ['2001-05-04', {}, 'unknown', 'spreadsheet', ''],
  ])('%s %o is %s by %s: %s', (number, more, kind, cause, heirs) => {
    const outcome = ask(number, more);
    expect([outcome.kind, outcome.cause, outcome.heirs.map(h => h.number).join('|')]).toEqual([kind, cause, heirs]);
  });

  it('never falls back to an equal number of the newer edition', () => {
    // 3.3.5 is a ladder in 2024 and nothing at all in 2018.
    expect(ask('3.3.5')).toMatchObject({ kind: 'unknown', heirs: [] });
  });

  it('says in a withdrawal who governs now, why, and where to look', () => {
    expect(ask('3.1.5')).toMatchObject({
      why: '3.1.5 is withdrawn in 2024: the law regulates it. Now the law on work at height governs.',
      toDo: 'Take 3.1.5 out, and follow the law on work at height.',
    });
    expect(ask('3.1.4')).toMatchObject({
      why: '3.1.4 is withdrawn in 2024: the product is no longer used. Lead paint is not sold any more.',
      toDo: 'Read 3.1.4 Strap of 2024 and decide whether it takes the place of 3.1.4.',
    });
  });

  it('offers the numbers near one that does not exist', () => {
    expect(ask('3.1.7').toDo).toBe('Check the number; near it are 3.1.5 and 3.1.4.');
    expect(ask('3.01.2').toDo).toContain('3.1.2');
  });

  it('offers the item whose title stands beside a number that does not exist', () => {
    expect(ask('7.7.7', { title: 'Lid' }).toDo).toBe('The title beside it is that of 3.1.2 Lid; check which is meant.');
  });

  it('offers the number that a spreadsheet has cut, only where the cut one is no item', () => {
    const edition = {
      ...joint,
      old: { ...joint.old, withNumber: (n: string) => (n === '3.4.1' ? [] : joint.old.withNumber(n)) },
    };
    const cut = resolveCitation(edition, marks, { number: '3.4.1' });
    expect(cut).toMatchObject({ kind: 'unknown', cause: 'spreadsheet' });
    expect(cut.why).toContain('3.4.10');
    expect(ask('3.4.1').cause).toBe('sole-heir');
  });

  it('offers the numbers behind a date', () => {
    expect(ask('3-1-2').why).toContain('3.1.2');
    expect(ask('2002-01-03').why).toContain('3.1.2');
  });

  it('gives every question exactly one outcome of the known kinds, with sentences', () => {
    const numbers = fc.oneof(fc.constantFrom(...joint.from.entries.map(e => e.number)), fc.string());
    const types = fc.option(fc.constantFrom('house', 'terrace', 'court', 'barn'), { nil: undefined });
    const titles = fc.option(fc.constantFrom(...joint.from.entries.map(e => e.title), 'x'), { nil: undefined });
    fc.assert(
      fc.property(numbers, types, titles, (number, type, title) => {
        const outcome = ask(number, { ...(type ? { type } : {}), ...(title ? { title } : {}) });
        expect(OUTCOMES).toContain(outcome.kind);
        expect(outcome.why).toMatch(/[.!?]$/);
        if (outcome.kind === 'kept' || outcome.kind === 'carried') {
          expect(outcome.heirs).toHaveLength(1);
          expect(outcome.heirs[0]?.number === number).toBe(outcome.kind === 'kept');
          const link = joint.leaving(outcome.from!).find(l => l.to === outcome.heirs[0]!.id)!;
          expect(link.basis).not.toBe('inferred');
          expect(link.doubtful).toBeUndefined();
        } else {
          expect(outcome.toDo).toMatch(/[.!?]$/);
        }
      }),
    );
  });
});
