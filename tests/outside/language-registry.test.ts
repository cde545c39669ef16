import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { traceNumber } from '../../src/commands/reading/trace-number.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import type { Catalog } from '../../src/store/open.ts';
import { readRegistries, type Subtag } from './language-registry.ts';
import { newCatalog } from './new-catalog.ts';

// Source: IANA's language subtag registry in language-subtag-registry 0.3.2 (2014), 0.3.9 (2015) and 0.4.2 (2025),
// data/json/registry.json. Figures of CHECKS.md, languages only: 228 deprecated, 108 with one successor, 65 splits, 55
// without; 9 merge targets; the deprecations of dzd and xsj in 2015 were taken back later.

const registries = readRegistries('splits, withdrawals and reversals (the language subtag registry)');

describe.skipIf(!registries)("the language registry's deprecated subtags", () => {
  const { 2014: of2014, 2015: of2015, 2025: of2025 } = registries ?? { 2014: [], 2015: [], 2025: [] };
  const kept = newCatalog();
  let catalog: Catalog;

  beforeAll(async () => {
    const settings = { levels: [{ name: 'Letter' }, { name: 'Language', obliges: true }], fileLevel: 1 };
    // What the registry lists without taking it out of use. It says nothing of the way back: that xsj stands again
    // beside suj is the one line of lineage given here by hand, B→A after the registry's own A→B.
    await kept.add('2014', underLetters(of2014), { settings });
    await kept.add('2015', underLetters(of2015), { lineage: lineageOf(of2014, of2015) });
    const back = [
      { from: 'suj', to: 'suj', note: 'suj and xsj are two languages after all.' },
      { from: 'suj', to: 'xsj' },
    ];
    await kept.add('2025', underLetters(of2025), { lineage: [...lineageOf(of2015, of2025), ...back] });
    catalog = await kept.open();
  });
  afterAll(() => kept.remove());

  it('of 2025 are 228: 108 with one successor, 65 split, 55 without, and 9 successors from several', () => {
    const gone = of2025.filter(s => s.deprecated);
    const all = of2025.map(s => ({ id: s.subtag }));
    const records = gone.map(s => ({
      from: s.subtag,
      heirs: s.successors.map(to => ({ to, fromExtent: 'unknown' as const, toExtent: 'unknown' as const })),
      notSame: true as const,
      reason: 'deprecated',
      basis: 'declared' as const,
    }));
    const links = linkByLineage(all, all, records).filter(l => gone.some(s => s.subtag === l.from));
    const heirs = gone.map(s => links.filter(l => l.from === s.subtag && l.to !== null).length);
    const count = (test: (n: number) => boolean) => heirs.filter(test).length;
    const one = links.filter(l => l.to !== null && heirs[gone.findIndex(s => s.subtag === l.from)] === 1);
    const sources = new Map<string | null, number>();
    for (const { to } of one) sources.set(to, (sources.get(to) ?? 0) + 1);
    expect({
      deprecated: gone.length,
      oneSuccessor: count(n => n === 1),
      split: count(n => n > 1),
      withoutHeir: count(n => n === 0),
      mergeTargets: [...sources.values()].filter(n => n > 1).length,
    }).toEqual({ deprecated: 228, oneSuccessor: 108, split: 65, withoutHeir: 55, mergeTargets: 9 });
    expect(links.filter(l => l.to === null)).toHaveLength(55);
  });

  it('of 2015 are followed or withdrawn, and none is lost between 2014 and 2025', async () => {
    const { findings, joint } = await readCrosswalk(catalog, '2014', '2025');
    expect(findings).toEqual([]);
    for (const { id } of joint.from.entries) expect(joint.leaving(id).length).toBeGreaterThan(0);
  });

  it('lead from xsj to suj and back, and end there: a reversal is two steps and no circle', async () => {
    const [trace] = await traceNumber(catalog, { number: 'xsj', edition: '2014' });
    const hops = trace!.hops.map(h => `${h.from} ${h.entry.id} → ${h.heirs.map(x => x.entry.id).join(', ')}`);
    expect(hops).toEqual(['2014 xsj → suj', '2015 suj → suj, xsj']);
    expect(trace!.now.map(e => e.id)).toEqual(['suj', 'xsj']);
    // Which of the two a text of 2014 meant is not known any more, and the composed links say so.
    const { joint } = await readCrosswalk(catalog, '2014', '2025');
    for (const id of ['xsj', 'suj']) {
      expect(joint.leaving(id).map(l => [l.to, l.doubtful])).toEqual([
        ['suj', true],
        ['xsj', true],
      ]);
    }
  });

  it('let dzd end in 2015 and begin anew in 2025: equal ids across a gap are not joined', async () => {
    const { joint } = await readCrosswalk(catalog, '2014', '2025');
    expect([joint.fateOfOld('dzd'), joint.fateOfNew('dzd')]).toEqual(['withdrawn', 'new']);
    const [direct] = linkByLineage([{ id: 'dzd' }], [{ id: 'dzd' }], []);
    expect([direct!.from, direct!.to]).toEqual(['dzd', 'dzd']);
    const [trace] = await traceNumber(catalog, { number: 'dzd', edition: '2014' });
    expect([trace!.hops.length, trace!.now]).toEqual([1, []]);
  });
});

/** The subtags in use, below one item for each first letter so that the catalog has 26 files instead of 8,000. */
function underLetters(list: readonly Subtag[]) {
  const used = list.filter(s => !s.deprecated);
  const letters = [...new Set(used.map(s => s.subtag[0]!))];
  return [
    ...letters.map(l => ({ id: `letter:${l}`, parent: null, number: '', title: l.toUpperCase() })),
    ...used.map(s => ({ id: s.subtag, parent: `letter:${s.subtag[0]}`, number: s.subtag, title: s.name })),
  ];
}

/** A line for each successor of the subtags that went out of use between two dates. */
function lineageOf(before: readonly Subtag[], after: readonly Subtag[]): object[] {
  const usable = new Set(after.filter(s => !s.deprecated).map(s => s.subtag));
  const now = new Map(after.map(s => [s.subtag, s]));
  // mwd is split into dmw and xrq, and xrq went over to dmw later: successors are followed until they are in use.
  const inUse = (subtag: string): string[] =>
    usable.has(subtag) ? [subtag] : (now.get(subtag)?.successors ?? []).flatMap(inUse);
  return before
    .filter(s => !s.deprecated && !usable.has(s.subtag))
    .flatMap(({ subtag }): object[] => {
      const heirs = [...new Set(inUse(subtag))];
      if (heirs.length === 0) return [{ from: subtag, reason: 'deprecated' }];
      return heirs.map(to => ({ from: subtag, to }));
    });
}
