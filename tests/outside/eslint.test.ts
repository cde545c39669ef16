import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { isPair } from '../../src/content/links/marks.ts';
import type { Catalog } from '../../src/store/open.ts';
import { type Rule, type Rules, readRules } from './eslint.ts';
import { newCatalog } from './new-catalog.ts';

// Source: eslint 7.32.0, 8.57.0 and 10.15.0, lib/rules/*.js, conf/replacements.json, conf/rule-type-list.json. In
// CHECKS.md: 20 removed with official successors, 2 splits, 3 merge targets, 2 without heir; composed = official 10/10.

const eslint = readRules("fates with official successors, and their composition (ESLint's removed rules)");
const none: Rules = { rules: { '7.32.0': [], '8.57.0': [], '10.15.0': [] }, replacements: {}, removed: [] };

describe.skipIf(!eslint)("ESLint's removed and deprecated rules, by the successors that ESLint names", () => {
  const { rules, replacements, removed } = eslint ?? none;
  const kept = newCatalog();
  let catalog: Catalog;

  /**
   * Three editions: every rule name that a configuration may still cite; those left when the replacements named by
   * 8.57 are followed once; those left when the ones named by 10.15 are followed too. The tool has to join the steps.
   */
  beforeAll(async () => {
    const renamed = rules['8.57.0'].filter(r => r.replacedBy?.length);
    const current = rules['8.57.0'].filter(r => !r.replacedBy?.length);
    const replaced = rules['10.15.0'].filter(r => r.replacedBy);
    const there = new Set(current.map(r => r.name));
    const gone = removed.filter(r => there.has(r.removed)).map(r => ({ name: r.removed, replacedBy: r.replacedBy }));
    const newest = rules['10.15.0'].filter(r => !r.replacedBy);
    const plugins = replaced.flatMap(r => r.replacedBy!).filter(name => name.includes('/'));

    await kept.add('cited', rows([...names(rules['8.57.0']), ...Object.keys(replacements)]));
    const before = Object.entries(replacements).map(([name, replacedBy]) => ({ name, replacedBy }));
    await kept.add('8.57', rows(names(current)), { lineage: [...before, ...renamed].flatMap(lineageOf) });
    const after = replaced.filter(r => there.has(r.name));
    await kept.add('10.15', rows([...names(newest), ...plugins]), { lineage: [...after, ...gone].flatMap(lineageOf) });
    catalog = await kept.open();
  });
  afterAll(() => kept.remove());

  it('sends the 20 removed rules to their official heirs: 2 to several, 3 heirs from several, 2 to none', async () => {
    const steps = [await readCrosswalk(catalog, 'cited', '8.57'), await readCrosswalk(catalog, '8.57', '10.15')];
    const heirs = new Map(
      removed.map(({ removed: name }) => {
        // The rule goes in the first step that does not keep it.
        const { joint } = steps.find(s => s.joint.old.get(name) && !s.joint.new.get(name))!;
        return [name, joint.leaving(name).flatMap(l => (l.to === null ? [] : [l.to]))];
      }),
    );
    expect(Object.fromEntries(heirs)).toEqual(Object.fromEntries(removed.map(r => [r.removed, r.replacedBy])));
    const lists = [...heirs.values()];
    const sources = new Map<string, number>();
    for (const heir of lists.flat()) sources.set(heir, (sources.get(heir) ?? 0) + 1);
    expect({
      removed: heirs.size,
      splits: lists.filter(l => l.length > 1).length,
      mergeTargets: [...sources.values()].filter(n => n > 1).length,
      withoutHeir: lists.filter(l => l.length === 0).length,
    }).toEqual({ removed: 20, splits: 2, mergeTargets: 3, withoutHeir: 2 });
  });

  it('composes both steps to what 10.15 itself names for each of the ten rules that 8.57 had replaced by others', async () => {
    const { joint } = await readCrosswalk(catalog, 'cited', '10.15');
    const ten = names(rules['8.57.0'].filter(r => r.replacedBy?.length));
    expect(ten).toHaveLength(10);
    const official = new Map(rules['10.15.0'].map(r => [r.name, r.replacedBy]));
    for (const name of ten) expect([name, joint.leaving(name).map(l => l.to)]).toEqual([name, official.get(name)]);
    expect(joint.leaving('no-spaced-func').map(l => l.to)).toEqual(['@stylistic/eslint-plugin/function-call-spacing']);
  });

  it('accounts for every rule name that was ever cited', async () => {
    const { findings, joint } = await readCrosswalk(catalog, 'cited', '10.15');
    expect(findings).toEqual([]);
    expect(joint.fateOfOld('valid-jsdoc')).toBe('withdrawn');
  });
});

describe.skipIf(!eslint)("ESLint's descriptions from 7.32 to 8.57", () => {
  const { rules } = eslint ?? none;
  const kept = newCatalog();
  afterAll(() => kept.remove());

  it('differ for 284 rules, for 281 of them in capitals and full stops only: editorial', async () => {
    const described = (list: readonly Rule[]) => list.map(r => ({ id: r.name, title: r.name, text: r.description }));
    await kept.add('7.32', described(rules['7.32.0']));
    await kept.add('8.57', described(rules['8.57.0']));
    const { joint, marks } = await readCrosswalk(await kept.open(), '7.32', '8.57');
    const pairs = joint.crosswalk.links.filter(isPair);
    const worded = (wording: string) => pairs.filter(l => marks(l).wording === wording).map(l => l.from);
    expect([worded('editorial').length, worded('same').length]).toEqual([281, 0]);
    // These three say something else: another subject, another object, one more flag.
    expect(worded('substantive')).toEqual(['no-div-regex', 'no-invalid-this', 'require-unicode-regexp']);
  });
});

const names = (list: readonly Rule[]) => list.map(r => r.name);
const rows = (ids: readonly string[]) => [...new Set(ids)].map(id => ({ id, title: id }));

function lineageOf({ name, replacedBy = [] }: Pick<Rule, 'name' | 'replacedBy'>): object[] {
  if (replacedBy.length === 0) return [{ from: name, reason: 'removed without replacement' }];
  return replacedBy.map(to => ({ from: name, to }));
}
