import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ReadCrosswalk, readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { traceNumber } from '../../src/commands/reading/trace-number.ts';
import { isPair } from '../../src/content/links/marks.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import type { Catalog } from '../../src/store/open.ts';
import { newCatalog } from './new-catalog.ts';
import { controlOf, readStatements, type Statement } from './statements.ts';

// Source: DISA's CCI list in @mitre/hdf-converters 2.14.0, lib/src/utils/CCI_List.js. Several statements stand at one
// number, so that a number is no name. Figures of CHECKS.md.

const list = readStatements('composition over three revisions by id, several statements at one number (CCI list)');

describe.skipIf(!list)('the CCI list over revisions 3, 4 and 5, by the ids of its publisher', () => {
  const { 3: r3, 4: r4, 5: r5 } = list ?? { 3: [], 4: [], 5: [] };
  const kept = newCatalog();
  let catalog: Catalog;
  beforeAll(async () => {
    const settings = { levels: [{ name: 'Control' }, { name: 'Statement', obliges: true }], fileLevel: 1 };
    await kept.add('r3', underControls(r3), { settings });
    await kept.add('r4', underControls(r4));
    await kept.add('r5', underControls(r5));
    catalog = await kept.open();
  });
  afterAll(() => kept.remove());

  it('keeps several statements that stand at one number apart', async () => {
    const { joint } = await readCrosswalk(catalog, 'r3', 'r4');
    expect(joint.from.settings.numbering.numbersUnique).toBe(false);
    expect(statements(joint.from.entries)).toHaveLength(1678);
    expect(joint.old.withNumber('AC-1 a').length).toBeGreaterThan(1);
    const traces = await traceNumber(catalog, { number: 'AC-1 a', edition: 'r3' });
    expect(traces.map(t => t.entry.id).sort()).toEqual(atNumber(r3, 'AC-1 a'));
  });

  it.each([
    ['r3', 'r4', { both: 1127, otherIndex: 310, otherControl: 23, splits: 58, merges: 22 }],
    ['r4', 'r5', { both: 2267, otherIndex: 315, otherControl: 18, splits: 34, merges: 9 }],
  ])('counts from %s to %s what was counted by hand', async (from, to, expected) => {
    const crosswalk = await readCrosswalk(catalog, from, to);
    const pairs = statementPairs(crosswalk);
    const between = numberPairs(crosswalk);
    expect({
      both: pairs.length,
      otherIndex: pairs.filter(l => crosswalk.marks(l).renumbered).length,
      otherControl: pairs.filter(l => crosswalk.marks(l).moved).length,
      splits: [...group(between, 0).values()].filter(to => to.length > 1).length,
      merges: [...group(between, 1).values()].filter(from => from.length > 1).length,
    }).toEqual(expected);
  });

  it('composes revisions 3, 4 and 5 to what linking 3 and 5 directly gives, for all 947 statements', async () => {
    const { joint, path } = await readCrosswalk(catalog, 'r3', 'r5');
    expect(path).toEqual(['r3', 'r4', 'r5']);
    const composed = statementPairs({ joint }).map(l => `${l.from} ${l.to}`);
    const direct = linkByLineage(r3, r5, []).filter(isPair);
    expect(composed).toHaveLength(947);
    expect(composed.sort()).toEqual(direct.map(l => `${l.from} ${l.to}`).sort());
  });

  it('yields none of the pairs that chaining by number would make up for 16 of the 898 numbers of revision 3', async () => {
    expect(new Set(r3.flatMap(s => s.places)).size).toBe(898);
    const byNumber = chain(
      numberPairs(await readCrosswalk(catalog, 'r3', 'r4')),
      numberPairs(await readCrosswalk(catalog, 'r4', 'r5')),
    );
    const ours = new Set(numberPairs(await readCrosswalk(catalog, 'r3', 'r5')).map(p => p.join('\t')));
    expect(byNumber).toHaveLength(667);
    const madeUp = byNumber.filter(p => !ours.has(p.join('\t')));
    expect(new Set(madeUp.map(([from]) => from)).size).toBe(16);
    expect(ours.size).toBe(651);
    expect([...ours].sort()).toEqual(directPairs(r3, r5));
  });
});

/** The statements below one item for each control; where a statement stands, its control tells. */
function underControls(list: readonly Statement[]) {
  const controls = [...new Set(list.map(s => controlOf(s.number)))];
  const id = (control: string) => `control:${control}`;
  return [
    ...controls.map(c => ({ id: id(c), parent: null, number: '', title: c })),
    ...list.map(s => ({ id: s.id, number: s.number, title: s.title, parent: id(controlOf(s.number)) })),
  ];
}

const statements = <T extends { level: number }>(entries: readonly T[]) => entries.filter(e => e.level === 2);
const atNumber = (list: readonly Statement[], number: string) =>
  list
    .filter(s => s.number === number)
    .map(s => s.id)
    .sort();

function statementPairs({ joint }: Pick<ReadCrosswalk, 'joint'>) {
  return joint.crosswalk.links.filter(isPair).filter(l => joint.old.get(l.from)!.level === 2);
}

/** The pairs of numbers that the links of a crosswalk join, each once. */
function numberPairs(crosswalk: ReadCrosswalk): [string, string][] {
  const { joint } = crosswalk;
  const pairs = statementPairs(crosswalk).map(l => `${joint.old.get(l.from)!.number}\t${joint.new.get(l.to)!.number}`);
  return [...new Set(pairs)].map(p => p.split('\t') as [string, string]);
}

function directPairs(from: readonly Statement[], to: readonly Statement[]): string[] {
  const numbers = new Map(to.map(s => [s.id, s.number]));
  return [...new Set(from.filter(s => numbers.has(s.id)).map(s => `${s.number}\t${numbers.get(s.id)}`))].sort();
}

/** What a crosswalk kept by number would say of two steps. */
function chain(first: readonly [string, string][], second: readonly [string, string][]): [string, string][] {
  const onward = group(second, 0);
  const pairs = first.flatMap(([a, b]) => (onward.get(b) ?? []).map(c => `${a}\t${c}`));
  return [...new Set(pairs)].map(p => p.split('\t') as [string, string]);
}

function group(pairs: readonly [string, string][], by: 0 | 1): Map<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const pair of pairs) groups.set(pair[by], [...(groups.get(pair[by]) ?? []), pair[1 - by]!]);
  return groups;
}
