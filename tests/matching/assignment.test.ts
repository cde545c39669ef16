import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignPairs } from '../../src/matching/assignment.ts';

/** Sparse tables of up to 6 × 6 with values from −3 to 9; 0 stands for "no pair". */
const tables = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })).chain(([olds, news]) =>
  fc.array(fc.array(fc.integer({ min: -3, max: 9 }), { minLength: news, maxLength: news }), {
    minLength: olds,
    maxLength: olds,
  }),
);

function sparse(table: readonly (readonly number[])[]) {
  const starts = [0];
  const to: number[] = [];
  const values: number[] = [];
  for (const row of table) {
    row.forEach((value, j) => {
      if (value === 0) return;
      to.push(j);
      values.push(value);
    });
    starts.push(to.length);
  }
  return { starts: Int32Array.from(starts), to: Int32Array.from(to), values: Float64Array.from(values) };
}

/** The best sum by trying everything: what the quick way is judged by. */
function bestSum(table: readonly (readonly number[])[], row = 0, taken: ReadonlySet<number> = new Set()): number {
  if (row === table.length) return 0;
  let best = bestSum(table, row + 1, taken);
  table[row]!.forEach((value, j) => {
    if (value > 0 && !taken.has(j)) best = Math.max(best, value + bestSum(table, row + 1, new Set([...taken, j])));
  });
  return best;
}

describe('the one-to-one choice of pairs', () => {
  it('uses every new row once at most, and sums up to the optimum that trying everything finds', () => {
    fc.assert(
      fc.property(tables, table => {
        const { starts, to, values } = sparse(table);
        const chosen = [...assignPairs(starts, to, values, table[0]!.length)];
        const used = chosen.filter(p => p >= 0).map(p => to[p]!);
        expect(new Set(used).size).toBe(used.length);
        chosen.forEach((p, i) => {
          if (p >= 0) expect(p >= starts[i]! && p < starts[i + 1]!).toBe(true);
        });
        expect(chosen.reduce((sum, p) => sum + (p < 0 ? 0 : values[p]!), 0)).toBe(bestSum(table));
      }),
      { numRuns: 400 },
    );
  });

  it('leaves a row alone rather than taking a pair of negative value', () => {
    const { starts, to, values } = sparse([[-1, -2]]);
    expect([...assignPairs(starts, to, values, 2)]).toEqual([-1]);
  });
});
