import { describe, expect, it } from 'vitest';
import { clusterNearDuplicates, tellDifferences } from '../../src/drafting/near-duplicates.ts';
import { deepFreeze } from '../freeze.ts';

const texts = deepFreeze([
  { id: 'a', text: 'Stand the cabinet at least 300 mm from the gas meter.' },
  { id: 'b', text: 'Wipe the lens with a lint-free cloth and isopropanol.' },
  { id: 'c', text: 'Stand the cabinet at least 500 mm from the gas meter.' },
  { id: 'd', text: 'Stand the steel cabinet at least 300 mm from the gas meter.' },
]);

describe('near-duplicates', () => {
  it('stand in one cluster under the first text, with what differs in each', () => {
    const [cluster, ...more] = clusterNearDuplicates(texts);
    expect(more).toEqual([]);
    expect(cluster!.first.id).toBe('a');
    expect(cluster!.others.map(o => [o.id, tellDifferences(o)])).toEqual([
      ['c', '"300" is here "500"'],
      ['d', '"steel" is added'],
    ]);
  });

  it('are no near-duplicates when they share only a manner of speaking', () => {
    const manner = ['The hatch shall be fixed with two screws.', 'The gutter shall be laid with two brackets.'];
    expect(clusterNearDuplicates(manner.map((text, at) => ({ id: `${at}`, text })))).toEqual([]);
  });

  it('do not chain: each member is near the first one', () => {
    const chain = [
      'alpha bravo charlie delta echo foxtrot golf hotel',
      'alpha bravo charlie delta echo foxtrot golf india',
      'alpha bravo charlie delta echo foxtrot juliet india',
      'alpha bravo charlie delta echo kilo juliet india',
      'alpha bravo charlie delta lima kilo juliet india',
    ];
    const clusters = clusterNearDuplicates(chain.map((text, at) => ({ id: `${at}`, text })));
    for (const { others } of clusters) for (const o of others) expect(o.likeness).toBeGreaterThanOrEqual(0.7);
    expect(clusters[0]?.others.map(o => o.id) ?? []).not.toContain('4');
  });
});
