import { describe, expect, it } from 'vitest';
import { isPairCode, pairCode, pairsByCode } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import { deepFreeze } from '../freeze.ts';

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
