import { describe, expect, it } from 'vitest';
import { checkLineage } from '../../src/crosswalk/check-lineage.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import { crosswalkStatistics } from '../../src/crosswalk/statistics.ts';
import type { LineageRecord } from '../../src/model/crosswalk.ts';
import type { EditionIndex } from '../../src/model/edition.ts';

const index = (name: string, ids: string): EditionIndex => ({
  header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
  settings: {
    title: '',
    language: 'en',
    levels: [{ name: 'Requirement' }],
    fileLevel: 1,
    numbering: { levels: [], numbersUnique: true },
    installationTypes: [],
    withdrawalReasons: [],
  },
  entries: [...ids].map((id, at) => ({
    id,
    number: String(at),
    parent: null,
    level: 1,
    title: id,
    hash: id,
    obliges: true,
  })),
});

const said = (from: string | null, heirs: string, more: Partial<LineageRecord> = {}): LineageRecord => ({
  from,
  heirs: [...heirs].map(to => ({ to, fromExtent: 'unknown', toExtent: 'unknown' })),
  basis: 'declared',
  ...more,
});

function join(from: string, to: string, ...records: LineageRecord[]) {
  const [a, b] = [index('old', from), index('new', to)];
  return joinEditions(a, b, { from: 'old', to: 'new', links: linkByLineage(a.entries, b.entries, records) });
}

describe('each item has its own fate', () => {
  it('an equal id is kept', () => {
    expect(join('a', 'a').fateOfOld('a')).toBe('kept');
  });

  it('an id that is gone without a record is unaccounted, not withdrawn', () => {
    expect(join('ab', 'b').fateOfOld('a')).toBe('unaccounted');
  });

  it('an id that is gone with a reason is withdrawn', () => {
    expect(join('ab', 'b', said('a', '', { reason: 'obsolete' })).fateOfOld('a')).toBe('withdrawn');
  });

  it('an item that others were merged into is merged, and so are they', () => {
    const joint = join('abc', 'a', said('b', 'a'), said('c', 'a'));
    expect(['a', 'b', 'c'].map(joint.fateOfOld)).toEqual(['merged', 'merged', 'merged']);
    expect(joint.fateOfNew('a')).toBe('merged');
  });

  it('an item with two heirs of its own is split', () => {
    const joint = join('a', 'xy', said('a', 'xy'));
    expect(joint.fateOfOld('a')).toBe('split');
    expect(['x', 'y'].map(joint.fateOfNew)).toEqual(['split', 'split']);
  });

  it('in one crossing group one item is recombined while its neighbour is merely merged', () => {
    const joint = join('ab', 'xy', said('a', 'xy'), said('b', 'y'));
    expect(joint.fateOfOld('a')).toBe('recombined');
    expect(joint.fateOfOld('b')).toBe('merged');
    expect(joint.fateOfNew('x')).toBe('split');
    expect(joint.fateOfNew('y')).toBe('recombined');
  });

  it('an equal id that no longer means the same is cut by notSame', () => {
    const joint = join('ab', 'ab', said('a', 'b', { notSame: true }));
    expect(joint.leaving('a').map(l => l.to)).toEqual(['b']);
    expect(joint.fateOfNew('a')).toBe('new');
  });

  it('a redirect to a whole section is shown, and is no link', () => {
    const joint = join('a', 's', said('a', '', { reason: 'superseded', pointsTo: 's' }));
    expect(joint.fateOfOld('a')).toBe('withdrawn');
    expect(joint.fateOfNew('s')).toBe('new');
    expect(joint.leaving('a')[0]?.pointsTo).toBe('s');
  });

  it('a redirect that is later reversed does not loop: each step stands alone', () => {
    expect(join('a', 'b', said('a', 'b')).fateOfOld('a')).toBe('kept');
    expect(join('b', 'a', said('b', 'a')).fateOfOld('b')).toBe('kept');
  });

  it('an item may end for one installation type and go on for the others', () => {
    const joint = join('a', 'x', said('a', 'x', { withdrawnFor: ['street'], reason: 'obsolete' }));
    expect(joint.fateOfOld('a')).toBe('kept');
    expect(joint.leaving('a').map(l => [l.to, l.types])).toEqual([
      ['x', undefined],
      [null, ['street']],
    ]);
  });

  it('an item may end for each installation type with a reason of its own, and what goes on is told none of them', () => {
    const law = { withdrawnFor: ['roof'], reason: 'law', governs: 'The act', governsChecked: '2030-01-01' };
    const joint = join('a', 'x', said('a', 'x', { ...law, alsoEnds: [{ types: ['street'], reason: 'obsolete' }] }));
    expect(joint.leaving('a').map(l => [l.to, l.types, l.reason, l.governs])).toEqual([
      ['x', undefined, undefined, undefined],
      [null, ['roof'], 'law', 'The act'],
      [null, ['street'], 'obsolete', undefined],
    ]);
    const gone = join('a', '', said('a', '', { ...law, alsoEnds: [{ types: ['street'], reason: 'obsolete' }] }));
    expect(crosswalkStatistics(gone).whole.withdrawnBy).toEqual({ law: 1, obsolete: 1 });
  });

  it('a record that names an heir or an end twice is a finding', () => {
    const also = [{ types: ['roof', 'street'], reason: 'obsolete', decision: 'nowhere', pointsTo: 'gone' }];
    const record = said('a', 'xx', { withdrawnFor: ['street'], reason: 'law', alsoEnds: also });
    const rules = checkLineage([record], new Set('a'), new Set('x'), []).map(f => f.rule);
    expect(rules).toEqual(['heir-twice', 'ends-twice', 'lineage-to-unknown', 'decision-unknown']);
  });

  it('ids are compared as they are: __proto__, case and spelling make no exceptions', () => {
    const a = { id: '__proto__' };
    const links = linkByLineage([a, { id: 'Con' }, { id: 'con' }], [{ id: 'con' }, a], []);
    expect(links.map(l => [l.from, l.to])).toEqual([
      ['__proto__', '__proto__'],
      ['con', 'con'],
    ]);
  });

  it('reasons are counted whatever they are called', () => {
    const reasons = ['constructor', '__proto__', 'obsolete', 'obsolete'];
    const joint = join('abcd', '', ...reasons.map((reason, at) => said('abcd'[at]!, '', { reason })));
    expect(Object.entries(crosswalkStatistics(joint).whole.withdrawnBy)).toEqual([
      ['constructor', 1],
      ['__proto__', 1],
      ['obsolete', 2],
    ]);
  });
});
