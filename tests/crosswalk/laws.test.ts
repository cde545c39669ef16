import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeCrosswalks, identityCrosswalk } from '../../src/crosswalk/compose.ts';
import { checkConservation } from '../../src/crosswalk/conserve.ts';
import { invertCrosswalk } from '../../src/crosswalk/invert.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import { groupIntoRows } from '../../src/crosswalk/rows.ts';
import type { Crosswalk, Link } from '../../src/model/crosswalk.ts';
import { crosswalk, edition, lineage } from './arbitraries.ts';

/** What the law of composition is about: not the notes that travel along, and not the warning `doubtful`. */
function core(x: Crosswalk) {
  return {
    from: x.from,
    to: x.to,
    links: x.links
      .map(({ from, to, fromExtent, toExtent, basis, confidence, types, reason }) => ({
        from,
        to,
        fromExtent,
        toExtent,
        basis,
        confidence,
        types: types && [...types].sort(),
        reason,
      }))
      .sort((a, b) => (`${a.from} ${a.to} ${a.reason}` < `${b.from} ${b.to} ${b.reason}` ? -1 : 1)),
  };
}

const withoutReasons = (x: Crosswalk): Crosswalk => ({ ...x, links: x.links.map(({ reason: _, ...link }) => link) });

const IDS = [
  ['a', 'b', 'c'],
  ['d', 'e', 'f'],
  ['g', 'h', 'i'],
  ['j', 'k', 'l'],
] as const;
const between = (at: number) => crosswalk(IDS[at]!, IDS[at + 1]!, [`e${at}`, `e${at + 1}`]);
const step = fc
  .tuple(edition('old'), edition('new'))
  .chain(([from, to]) => lineage(from, to).map(records => ({ from, to, records })));

const joined = (from: Parameters<typeof joinEditions>[0], to: typeof from, links: Link[]) =>
  joinEditions(from, to, { from: from.header.name, to: to.header.name, links });

describe('laws that hold', () => {
  it('composition is associative', () => {
    fc.assert(
      fc.property(between(0), between(1), between(2), (a, b, c) => {
        expect(core(composeCrosswalks(composeCrosswalks(a, b), c))).toEqual(
          core(composeCrosswalks(a, composeCrosswalks(b, c))),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('the identity crosswalk changes nothing, on either side', () => {
    const items = (at: number) => IDS[at]!.map(id => ({ id }));
    fc.assert(
      fc.property(between(0), x => {
        expect(core(composeCrosswalks(identityCrosswalk('e0', items(0)), x))).toEqual(core(x));
        expect(core(composeCrosswalks(x, identityCrosswalk('e1', items(1))))).toEqual(core(x));
      }),
    );
  });

  it('inverting twice gives back the crosswalk', () => {
    fc.assert(
      fc.property(between(0), x => {
        expect(invertCrosswalk(invertCrosswalk(x))).toEqual(x);
      }),
    );
  });

  it('inverting a composition composes the inverses in the other order, where nothing is said of why things end', () => {
    const one = (at: number) => between(at).map(withoutReasons);
    fc.assert(
      fc.property(one(0), one(1), (a, b) => {
        expect(core(invertCrosswalk(composeCrosswalks(a, b)))).toEqual(
          core(composeCrosswalks(invertCrosswalk(b), invertCrosswalk(a))),
        );
      }),
    );
  });

  it('rows partition both sides, and every link stands in one row', () => {
    fc.assert(
      fc.property(step, ({ from, to, records }) => {
        const links = linkByLineage(from.entries, to.entries, records);
        const rows = groupIntoRows({ from: 'old', to: 'new', links }, from.entries, to.entries);
        expect(rows.flatMap(r => r.from).sort()).toEqual(from.entries.map(e => e.id).sort());
        expect(rows.flatMap(r => r.to).sort()).toEqual(to.entries.map(e => e.id).sort());
        expect(rows.flatMap(r => r.links).length).toBe(links.length);
      }),
    );
  });

  it('every old item has a link or is named as unaccounted, never both and never neither', () => {
    fc.assert(
      fc.property(step, ({ from, to, records }) => {
        const joint = joined(from, to, linkByLineage(from.entries, to.entries, records));
        const named = new Set(
          checkConservation(joint)
            .filter(f => f.rule === 'unaccounted')
            .map(f => f.subject),
        );
        for (const { id } of from.entries) expect(named.has(id)).toBe(joint.leaving(id).length === 0);
      }),
    );
  });

  it('every installation type of an old item goes on, is withdrawn, or is named as dropped', () => {
    fc.assert(
      fc.property(step, ({ from, to, records }) => {
        const joint = joined(from, to, linkByLineage(from.entries, to.entries, records));
        const dropped = new Map(
          checkConservation(joint)
            .filter(f => f.rule === 'type-dropped')
            .map(f => [f.subject, f.data?.types as string[]]),
        );
        for (const { id } of from.entries) {
          const links = joint.leaving(id);
          if (links.length === 0) continue;
          for (const type of joint.old.types(id)) {
            const covered = links.some(l =>
              l.to === null ? (l.types?.includes(type) ?? true) : joint.new.types(l.to).includes(type),
            );
            expect(dropped.get(id)?.includes(type) ?? false).toBe(!covered);
          }
        }
      }),
    );
  });

  it('every new item has a source or is new', () => {
    fc.assert(
      fc.property(step, ({ from, to, records }) => {
        const joint = joined(from, to, linkByLineage(from.entries, to.entries, records));
        for (const { id } of to.entries) {
          const arriving = joint.arriving(id);
          expect(arriving.length).toBeGreaterThan(0);
          expect(joint.fateOfNew(id) === 'new').toBe(arriving.every(l => l.from === null));
        }
      }),
    );
  });

  it('withdrawn and new are never joined into one link', () => {
    fc.assert(
      fc.property(between(0), between(1), (a, b) => {
        expect(composeCrosswalks(a, b).links.some(l => l.from === null && l.to === null)).toBe(false);
      }),
    );
  });

  it('the fates of both sides agree: what is kept is kept from both ends', () => {
    fc.assert(
      fc.property(step, ({ from, to, records }) => {
        const joint = joined(from, to, linkByLineage(from.entries, to.entries, records));
        for (const { id } of from.entries) {
          if (joint.fateOfOld(id) !== 'kept') continue;
          const heir = joint.leaving(id).find(l => l.to !== null)!.to!;
          expect(joint.fateOfNew(heir)).toBe('kept');
        }
      }),
    );
  });
});

/** One link, said shortly. */
const link = (from: string | null, to: string | null): Link => ({
  from,
  to,
  fromExtent: 'all',
  toExtent: 'all',
  basis: 'declared',
  confidence: 1,
});
const walk = (from: string, to: string, ...links: Link[]): Crosswalk => ({ from, to, links });

describe('laws that do not hold', () => {
  it('there and back is not the identity: a merge forgets which was which', () => {
    const merge = walk('1', '2', link('a', 'm'), link('b', 'm'));
    const there = composeCrosswalks(merge, invertCrosswalk(merge));
    expect(there.links.map(l => `${l.from}${l.to}`).sort()).toEqual(['aa', 'ab', 'ba', 'bb']);
  });

  it('composing over a gap hides the loss: only the step itself shows it', () => {
    const gap = walk('1', '2');
    const onward = walk('2', '3', link('b', 'b'));
    expect(composeCrosswalks(gap, onward).links).toEqual([]);
  });

  it('a merge that is split again yields pairs that may be false, and says so', () => {
    const merge = walk('1', '2', link('a', 'm'), link('b', 'm'));
    const split = walk('2', '3', link('m', 'x'), link('m', 'y'));
    const all = composeCrosswalks(merge, split).links;
    expect(all).toHaveLength(4);
    expect(all.every(l => l.doubtful)).toBe(true);
    expect(composeCrosswalks(merge, walk('2', '3', link('m', 'x'))).links.some(l => l.doubtful)).toBe(false);
  });

  it('weak links chain into one giant row', () => {
    const chain = walk('1', '2', link('a', 'x'), link('b', 'x'), link('b', 'y'), link('c', 'y'));
    const rows = groupIntoRows(chain, [{ id: 'a' }, { id: 'b' }, { id: 'c' }], [{ id: 'x' }, { id: 'y' }]);
    expect(rows.map(r => r.fate)).toEqual(['recombined']);
  });
});
