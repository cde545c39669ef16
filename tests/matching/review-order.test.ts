import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Answer } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import type { MatchedLink } from '../../src/matching/match-rows.ts';
import { reviewOrder, settledBy } from '../../src/matching/review-order.ts';
import { deepFreeze } from '../freeze.ts';

const row = (parent: number): BareRow => ({ number: '', level: '', parent, title: '', text: '', table: 0 });
const look = (from: number | null, to: number | null, confidence: number): MatchedLink => ({
  from,
  to,
  confidence,
  band: 'look',
});
const asked = (links: readonly MatchedLink[], from: readonly BareRow[], to: readonly BareRow[]) =>
  reviewOrder(deepFreeze(links), deepFreeze(from), deepFreeze(to)).map(
    q => `${q.link.from ?? '-'}>${q.link.to ?? '-'}`,
  );

describe('the order of a review', () => {
  const tree = [row(-1), row(0), row(0), row(0), row(-1)];

  it('asks for a parent before its children, though they are as much in doubt', () => {
    const links = [look(1, 1, 0.6), look(2, 2, 0.6), look(3, 3, 0.6), look(0, 0, 0.6)];
    expect(asked(links, tree, tree)[0]).toBe('0>0');
  });

  it('asks for a child that is in doubt before a parent that hardly is', () => {
    const links = [look(0, 0, 0.97), look(1, 1, 0.5), look(2, 2, 0.9)];
    expect(asked(links, tree, tree)).toEqual(['1>1', '2>2', '0>0']);
  });

  it('asks for what is likelier wrong first, where nothing hangs on either', () => {
    expect(asked([look(4, 4, 0.9), look(3, 1, 0.55)], tree, tree)).toEqual(['3>1', '4>4']);
  });

  it('asks for one of two rivals before one that has no rival', () => {
    expect(asked([look(4, 4, 0.6), look(1, 1, 0.6), look(1, 2, 0.6)], tree, tree)).toEqual(['1>1', '1>2', '4>4']);
  });

  it('counts a child only where both of its ends stand below both ends', () => {
    const apart = [row(-1), row(-1), row(1)];
    const [parent] = reviewOrder([look(0, 0, 0.6), look(1, 2, 0.6)], tree, apart);
    expect(parent!.hanging).toBe(0);
  });

  it('asks for what ended and what is new as well, the parent first', () => {
    expect(asked([look(1, null, 0.6), look(0, null, 0.6), look(null, 4, 0.5)], tree, tree)).toEqual([
      '0>-',
      '1>-',
      '->4',
    ]);
  });

  it('asks nothing that can be accepted', () => {
    expect(asked([{ ...look(0, 0, 0.99), band: 'accept' }], tree, tree)).toEqual([]);
  });

  it('ends although rows of a damaged table are their own ancestors', () => {
    const ring = [row(1), row(0), row(2)];
    expect(asked([look(0, 0, 0.6), look(2, 2, 0.6)], ring, ring)).toHaveLength(2);
  });
});

test('every link in doubt is asked exactly once, in the same order whatever order they come in', () => {
  const rows = fc.array(fc.integer({ min: -1, max: 8 }), { minLength: 9, maxLength: 9 }).map(list => list.map(row));
  const links = fc.uniqueArray(
    fc
      .tuple(fc.option(fc.nat(8)), fc.option(fc.nat(8)), fc.integer({ min: 42, max: 97 }))
      .filter(([i, j]) => i !== null || j !== null),
    { selector: ([i, j]) => `${i}>${j}` },
  );
  fc.assert(
    fc.property(rows, rows, links, (from, to, list) => {
      const made = list.map(([i, j, percent]) => look(i, j, percent / 100));
      const order = asked(made, from, to);
      expect([...order].sort()).toEqual(made.map(l => `${l.from ?? '-'}>${l.to ?? '-'}`).sort());
      expect(asked([...made].reverse(), from, to)).toEqual(order);
    }),
  );
});

describe('what needs no asking any more', () => {
  const because = '';
  const settled = (answers: readonly Answer[], from: number | null, to: number | null) =>
    settledBy(deepFreeze(answers))({ from, to });

  it('is a pair that was answered, yes or no', () => {
    expect(settled([{ kind: 'yes', from: 1, to: 2, because }], 1, 2)).toBe(true);
    expect(settled([{ kind: 'no', from: 1, to: 2, because }], 1, 2)).toBe(true);
  });

  it('is not another pair of the same row: a row may have two heirs, or two sources', () => {
    expect(settled([{ kind: 'yes', from: 1, to: 2, because }], 1, 3)).toBe(false);
    expect(settled([{ kind: 'yes', from: 1, to: 2, because }], 4, 2)).toBe(false);
  });

  it('is every pair of an old row that ended, and of a new row that is new', () => {
    expect(settled([{ kind: 'withdrawn', from: 1, because }], 1, 7)).toBe(true);
    expect(settled([{ kind: 'new', to: 7, because }], 1, 7)).toBe(true);
    expect(settled([{ kind: 'withdrawn', from: 1, because }], 2, 7)).toBe(false);
  });

  it('is the end of a row that has an heir, and the newness of one that has a source', () => {
    const yes: Answer[] = [{ kind: 'yes', from: 1, to: 2, because }];
    expect([settled(yes, 1, null), settled(yes, null, 2), settled(yes, 2, null)]).toEqual([true, true, false]);
  });

  it('is not the end of a row of which one heir was denied', () => {
    expect(settled([{ kind: 'no', from: 1, to: 2, because }], 1, null)).toBe(false);
  });
});
