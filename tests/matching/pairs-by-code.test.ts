import { describe, expect, it } from 'vitest';
import { findsRows } from '../../src/commands/matching/answer-rows.ts';
import { isPairCode, pairCode, pairsByCode } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import { deepFreeze } from '../freeze.ts';
import { countedRows } from './counted-rows.ts';

const rows = (...texts: string[]): readonly BareRow[] =>
  deepFreeze(texts.map((text, at) => ({ number: `${at + 1}`, level: '', parent: -1, title: '', text, table: 0 })));
const OLD = rows('Brackets', 'Clips “with” quotes\nand lines', 'Greeting');
const NEW = rows('Clips', 'Brackets', 'Labels 🏷', 'Tanks');
const code = (i: number, j: number) => pairCode(OLD[i], i, NEW[j], j);

describe('the pairs that codes mean', () => {
  it('are found among all pairs and all single rows', () => {
    const ends = [
      [0, 1],
      [2, 3],
      [1, 2],
      [2, -1],
      [-1, 0],
    ] as const;
    const found = pairsByCode([...ends.map(([i, j]) => code(i, j)), 'p000000000000', 'no code'], OLD, NEW);
    expect(ends.map(([i, j]) => found.get(code(i, j)))).toEqual(ends);
    expect(found.size).toBe(ends.length);
  });

  it('are looked for among some pairs only where all are too many', () => {
    const found = pairsByCode([code(0, 1), code(0, 2), code(1, -1)], OLD, NEW, [[0, 2]]);
    expect([...found.values()]).toEqual([
      [1, -1],
      [0, 2],
    ]);
  });

  it('have codes of one form, which last: files with answers are kept for years', () => {
    expect(isPairCode(code(0, 0))).toBe(true);
    expect([code(0, 1), code(1, 2), code(2, -1)]).toEqual(['p0db4da0ff6a8', 'p6ef8360edab6', 'pffffedbb4a0f']);
  });
});

describe('lines of answers', () => {
  const asked = (pair: string) => ({
    ...{ code: pair, fromNumber: '', fromTitle: '', toNumber: '', toTitle: '' },
    ...{ fromAt: -1, toAt: -1 },
  });
  const [LOST, OTHER] = ['p000000000001', 'p000000000002'].map(asked) as [
    ReturnType<typeof asked>,
    ReturnType<typeof asked>,
  ];

  it('are looked for among all pairs together: many that are gone cost as much as one', () => {
    const reads = (...lines: ReturnType<typeof asked>[]) => {
      const counted = countedRows(OLD);
      findsRows(counted.rows, NEW)(lines);
      return counted.reads();
    };
    expect(reads(LOST)).toBeGreaterThan(0);
    expect(reads(LOST, OTHER)).toBe(reads(LOST));
  });

  it('are looked for once, found or not', () => {
    const { rows: olds, reads } = countedRows(OLD);
    const find = findsRows(olds, NEW);
    const lines = [LOST, asked(code(1, 2))];
    expect(find(lines)).toEqual([undefined, [1, 2]]);
    const before = reads();
    expect(find(lines)).toEqual([undefined, [1, 2]]);
    expect(reads()).toBe(before);
  });
});
