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
      ['c', '"300 mm" is here "500 mm"'],
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

  const socket = 'Sockets shall be a minimum of 450 mm above the floor and no less than 600 mm away from any sink.';
  const others = (...more: string[]) =>
    (clusterNearDuplicates([socket, ...more].map((text, at) => ({ id: `${at}`, text })))[0]?.others ?? []).map(o => [
      o.id,
      tellDifferences(o),
    ]);

  it('are found in other words by what they are about, where their values are the same and bound the same way', () => {
    const again = 'Each socket is to be no lower than 450 mm over floor level, and no nearer than 600 mm to a sink.';
    const opposite = 'Each socket is to be no higher than 450 mm over the floor, and at most 600 mm from a sink.';
    const thing = 'Each lamp is to be no lower than 450 mm over the bench, and no nearer than 600 mm to a door.';
    expect(others(opposite, thing)).toEqual([]);
    expect(others(again, thing)).toEqual([['1', 'the same values in other words; "level" is added']]);
  });

  it('with values that changed places are not told as the same', () => {
    const [cluster] = clusterNearDuplicates([
      { id: 'a', text: 'The inlet shall be at least 100 mm wide and the outlet at least 50 mm wide.' },
      { id: 'b', text: 'The inlet shall be at least 50 mm wide and the outlet at least 100 mm wide.' },
      { id: 'c', text: 'The outlet shall be at least 100 mm wide and the inlet at least 50 mm wide.' },
    ]);
    expect(cluster!.others.map(o => o.reworded)).toEqual([undefined, undefined]);
  });

  it('of which one forbids, or only advises, what the other asks are not told as the same', () => {
    const asked = 'The lamp shall be set at least 2 m above the floor and 3 m from the door.';
    for (const other of [asked.replace('shall be', 'shall not be'), asked.replace('shall', 'should')]) {
      const [cluster] = clusterNearDuplicates([asked, other].map((text, at) => ({ id: `${at}`, text })));
      expect(cluster!.others.map(tellDifferences)).toEqual([expect.stringMatching(/"(?:not|should)"/)]);
    }
    const turned = 'Lamps shall not be less than 3 m from doors, and are not to be set 2 m above floors at least.';
    expect(clusterNearDuplicates([asked, turned].map((text, at) => ({ id: `${at}`, text })))).toEqual([]);
  });

  it('that differ in order and voice only are told so, since a word-by-word difference of them shows everything', () => {
    const sand = ['The painter shall sand the door before the first coat.'];
    const turned = 'Before the first coat the door shall be sanded by the painter.';
    const [cluster] = clusterNearDuplicates([...sand, turned].map((text, at) => ({ id: `${at}`, text })));
    expect(cluster!.others.map(tellDifferences)).toEqual(['the same words in another order']);
  });

  it('tell no comma and nothing that moved as a difference', () => {
    const [cluster] = clusterNearDuplicates([
      { id: 'a', text: 'A silt trap with a sump of not less than 250 mm shall be provided ahead of the soakaway.' },
      { id: 'b', text: 'A silt trap shall be provided ahead of the soakaway, with a sump of not less than 300 mm.' },
    ]);
    expect(cluster!.others.map(tellDifferences)).toEqual(['"250 mm" is here "300 mm"']);
  });
});
