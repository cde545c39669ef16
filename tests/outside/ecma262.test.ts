import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ReadCrosswalk, readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { traceNumber } from '../../src/commands/reading/trace-number.ts';
import { isPair } from '../../src/content/links/marks.ts';
import { tellTrace } from '../../src/content/links/tell.ts';
import { composeCrosswalks } from '../../src/crosswalk/compose.ts';
import { invertCrosswalk } from '../../src/crosswalk/invert.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import { writeCrosswalkCsv } from '../../src/exports/crosswalk-csv.ts';
import { crosswalkLines } from '../../src/exports/crosswalk-lines.ts';
import type { Link } from '../../src/model/crosswalk.ts';
import { type Catalog, openCatalog } from '../../src/store/open.ts';
import { BUILDS, clausesOf } from './ecma262.ts';
import { newCatalog } from './new-catalog.ts';

// Source: @tc39/ecma262-biblio 2.0.2285, 2.1.2336, 2.1.2407, 2.1.2775, 2.1.3018, 2.2.3175, 2.2.3180, biblio.json.
// The figures are those of CHECKS.md, counted by hand from the packages and not by this project.

const builds = Object.keys(BUILDS).map(Number) as (keyof typeof BUILDS)[];
const kept = newCatalog();
let catalog: Catalog;

beforeAll(async () => {
  for (const build of builds) await kept.add(String(build), clausesOf(build));
  catalog = await kept.open();
}, 120_000);
afterAll(() => kept.remove());

const git = (...args: string[]) => execFileSync('git', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

function counts({ joint, marks }: ReadCrosswalk) {
  const pairs = joint.crosswalk.links.filter(isPair);
  const marked = pairs.map(marks);
  return {
    old: joint.from.entries.length,
    new: joint.to.entries.length,
    kept: joint.from.entries.filter(e => joint.fateOfOld(e.id) === 'kept').length,
    renumbered: marked.filter(m => m.renumbered).length,
    retitled: marked.filter(m => m.wording !== 'same').length,
    moved: marked.filter(m => m.moved).length,
    gone: joint.from.entries.filter(e => joint.fateOfOld(e.id) === 'unaccounted').length,
    added: joint.to.entries.filter(e => joint.fateOfNew(e.id) === 'new').length,
  };
}

/** Old numbers that the newer edition prints on another item: what falling back to the number would get wrong. */
function reused({ joint }: ReadCrosswalk) {
  return joint.from.entries.filter(
    e => e.number !== '' && joint.new.withNumber(e.number).some(other => other.id !== e.id),
  );
}

/** Links as comparable lines; order is no part of a crosswalk. */
const sorted = (links: readonly Link[]) => links.map(l => JSON.stringify(l, Object.keys(l).sort())).sort();

describe('ECMA-262 over seven editions, by the ids of its publisher', () => {
  it('counts from 2285 to 3180 what was counted by hand', async () => {
    const crosswalk = await readCrosswalk(catalog, '2285', '3180');
    expect(counts(crosswalk)).toEqual({
      old: 2029,
      new: 2341,
      kept: 1909,
      renumbered: 710,
      retitled: 434,
      moved: 26,
      gone: 120,
      added: 432,
    });
    expect(reused(crosswalk)).toHaveLength(564);
  });

  it('calls 26 clauses moved, of which the old parent still exists for 18', async () => {
    const { joint, marks } = await readCrosswalk(catalog, '2285', '3180');
    const moved = joint.crosswalk.links.filter(isPair).filter(l => marks(l).moved);
    const parentStays = moved.filter(l => joint.new.get(joint.old.get(l.from)?.parent ?? '') !== undefined);
    expect([moved.length, parentStays.length]).toEqual([26, 18]);
  });

  it('counts the step from 2336 to 2407 as it was counted by hand', async () => {
    expect(counts(await readCrosswalk(catalog, '2336', '2407'))).toMatchObject({ renumbered: 165, gone: 5, added: 13 });
  });

  it('finds nothing at all between 3175 and 3180', async () => {
    const crosswalk = await readCrosswalk(catalog, '3175', '3180');
    const none = { renumbered: 0, retitled: 0, moved: 0, gone: 0, added: 0 };
    expect(counts(crosswalk)).toEqual({ old: 2341, new: 2341, kept: 2341, ...none });
    expect(crosswalk.findings).toEqual([]);
    expect(reused(crosswalk)).toEqual([]);
  });

  it('tells of each of the 120 clauses that are gone, and of no other, that no record accounts for it', async () => {
    const { joint, findings } = await readCrosswalk(catalog, '2285', '3180');
    const newest = new Set(clausesOf(3180).map(c => c.id));
    const gone = clausesOf(2285).filter(c => !newest.has(c.id));
    expect(gone).toHaveLength(120);
    for (const { id } of gone) {
      expect(joint.leaving(id)).toEqual([]);
      expect(findings.map(f => f.subject)).toContain(id);
    }
  });

  it('composes six steps to the same links as linking the first and the last edition by equal ids', async () => {
    const { joint, path } = await readCrosswalk(catalog, '2285', '3180');
    expect(path).toEqual(builds.map(String));
    expect(sorted(joint.crosswalk.links)).toEqual(sorted(linkByLineage(clausesOf(2285), clausesOf(3180), [])));
  });

  // Composed and direct agree here because no id of these seven builds vanishes and returns. That is a fact about the
  // data, so it is checked; and where one does return, the two must differ: the step that lost it said so, while equal
  // ids of the ends alone would claim an unbroken line.
  it('has no id that vanishes and returns, and differs from direct linking in exactly such an id where there is one', () => {
    const present = builds.map(b => new Set(clausesOf(b).map(c => c.id)));
    const returns = (id: string) => /10+1/.test(present.map(ids => (ids.has(id) ? '1' : '0')).join(''));
    expect([...new Set(present.flatMap(ids => [...ids]))].filter(returns)).toEqual([]);

    const [first, middle, last] = [clausesOf(2285), clausesOf(2775), clausesOf(3180)];
    const missing = 'sec-array.prototype.copywithin';
    const gap = middle.filter(c => c.id !== missing);
    const step = (a: typeof first, b: typeof first) => ({ from: 'a', to: 'b', links: linkByLineage(a, b, []) });
    const composed = composeCrosswalks(step(first, gap), step(gap, last)).links;
    const direct = linkByLineage(first, last, []);
    const onlyIn = (a: readonly Link[], b: readonly Link[]) => {
      const known = new Set(b.map(l => `${l.from} ${l.to}`));
      return a.filter(l => !known.has(`${l.from} ${l.to}`)).map(l => [l.from, l.to]);
    };
    expect(onlyIn(direct, composed)).toEqual([[missing, missing]]);
    expect(onlyIn(composed, direct)).toEqual([[null, missing]]);
  });

  it('reads backwards as the inverse, and twice inverted as itself', async () => {
    const there = await readCrosswalk(catalog, '2285', '3180');
    const back = await readCrosswalk(catalog, '3180', '2285');
    expect(back.backwards).toBe(true);
    expect(sorted(back.joint.crosswalk.links)).toEqual(sorted(invertCrosswalk(there.joint.crosswalk).links));
    expect(invertCrosswalk(invertCrosswalk(there.joint.crosswalk))).toEqual(there.joint.crosswalk);
    const { kept: same, renumbered, retitled, moved } = counts(back);
    expect({ same, renumbered, retitled, moved }).toEqual({ same: 1909, renumbered: 710, retitled: 434, moved: 26 });
  });

  it('keeps a repository that native git finds sound', () => {
    expect(git('-C', kept.dir, 'fsck', '--strict', '--full').trim()).toBe('');
    expect(git('-C', kept.dir, 'tag', '--list', 'edition/*').trim().split('\n')).toHaveLength(builds.length);
  });

  it('is cloned by native git, packed and with a work tree, and says the same there', async () => {
    // --no-local: a local clone would only link the loose objects, and a packed repository would never be read.
    const packed = `${kept.dir}.packed`;
    git('clone', '--quiet', '--bare', '--no-local', kept.dir, packed);
    const csv = async (from: Catalog) => {
      const { joint, marks } = await readCrosswalk(from, '2285', '3180');
      return writeCrosswalkCsv(crosswalkLines(joint, marks));
    };
    expect(await csv(await openCatalog(packed))).toBe(await csv(catalog));

    const tree = `${kept.dir}.tree`;
    git('clone', '--quiet', kept.dir, tree);
    const idsIn = (entry: { id: string; items?: [] }): string[] => [entry.id, ...(entry.items ?? []).flatMap(idsIn)];
    const files = readdirSync(join(tree, 'items'));
    const ids = files.flatMap(file => idsIn(JSON.parse(readFileSync(join(tree, 'items', file), 'utf8'))));
    expect(ids.sort()).toEqual(
      clausesOf(3180)
        .map(c => c.id)
        .sort(),
    );
  });

  it('traces a number that moved step by step, and never mistakes it for the clause that has the number now', async () => {
    // 7.4.11, later 7.4.13, 7.4.17 and 7.4.18; in the newest edition 7.4.11 is IteratorClose.
    const id = 'sec-createlistiteratorRecord';
    const numbers = builds.map(b => clausesOf(b).find(c => c.id === id)!.number);
    expect([...new Set(numbers)]).toEqual(['7.4.11', '7.4.13', '7.4.17', '7.4.18']);
    const [trace, ...others] = await traceNumber(catalog, { number: '7.4.11', edition: '2285' });
    expect(others).toEqual([]);
    expect(trace!.hops.map(h => h.heirs.map(x => x.entry.number))).toEqual(numbers.slice(1).map(n => [n]));
    expect(trace!.now.map(e => [e.id, e.number])).toEqual([[id, '7.4.18']]);
    expect(tellTrace(trace!)).toHaveLength(builds.length - 1);

    const meanings = await traceNumber(catalog, { number: '7.4.11' });
    expect(meanings.find(t => t.edition === '2285')!.entry.id).toBe(id);
    expect(meanings.find(t => t.edition === '3180')!.entry.id).toBe('sec-iteratorclose');
  });
});
