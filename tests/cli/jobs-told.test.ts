import { expect, it } from 'vitest';
import { toldOutcomes } from '../../src/cli/jobs-told.ts';

const one = (
  number: string,
  outcome: 'choose' | 'withdrawn' | 'carried',
  lines: number,
  closed = 0,
  ungoverned = 0,
) => ({
  number,
  type: undefined,
  outcome,
  heirs: [],
  why: '',
  lines,
  closed,
  ungoverned,
});

it('cases to look at are counted as they are asked: withdrawn ones with them, finished ones not', () => {
  const cases = [
    one('1.1', 'choose', 5),
    one('3.3', 'withdrawn', 2),
    one('1.4', 'carried', 9),
    one('2.1', 'choose', 3, 3),
  ];
  const outcomes = { kept: 0, carried: 9, choose: 8, withdrawn: 2, unknown: 0 };
  const totals = { lines: 19, outcomes, added: 0, folded: 0, closed: 3, ungoverned: 0, agree: true };
  const told = toldOutcomes({ totals, columns: {}, cases, editions: {}, from: '2016' });
  expect(told.at(-1)).toBe(
    '  To look at: 2 cases (1 to compare or choose, 1 withdrawn); the largest: 1.1 (5 lines), 3.3 (2 lines).',
  );
});

it('lines of which nobody has said which edition governs are counted and to be looked at, whatever their outcome', () => {
  const cases = [one('1.4', 'carried', 9, 0, 4), one('1.1', 'choose', 5, 0, 1), one('2.1', 'carried', 3)];
  const outcomes = { kept: 0, carried: 12, choose: 5, withdrawn: 0, unknown: 0 };
  const totals = { lines: 17, outcomes, added: 0, folded: 0, closed: 0, ungoverned: 5, agree: true };
  const told = toldOutcomes({ totals, columns: {}, cases, editions: {}, from: '2016' });
  expect(told).toContain(
    '  Of 5 open lines nobody has said which edition governs (governed_by is ask); they stay as they stand until somebody does.',
  );
  expect(told.at(-1)).toBe(
    '  To look at: 2 cases (1 to compare or choose, 1 to say which edition governs); the largest: 1.4 (4 lines), 1.1 (5 lines).',
  );
});
