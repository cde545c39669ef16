import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLineageFiles, writeLineageFiles } from '../../src/format/lineage-files.ts';
import { edition, lineage } from '../crosswalk/arbitraries.ts';

const read = (...records: object[]) => parseLineageFiles(new Map([['lineage/new/a.json', JSON.stringify(records)]]));

describe('lineage on disk', () => {
  it('comes back equal, ends for several reasons included', () => {
    let several = 0;
    const steps = fc.tuple(edition('old'), edition('new')).chain(([from, to]) => lineage(from, to));
    fc.assert(
      fc.property(steps, records => {
        const { records: back, findings } = parseLineageFiles(writeLineageFiles('new', records, id => id));
        const byId = [...records].sort((a, b) => (a.from! < b.from! ? -1 : 1));
        expect([back, findings]).toEqual([byId, []]);
        if (records.some(r => r.alsoEnds)) several++;
      }),
    );
    expect(several).toBeGreaterThan(20);
  });

  it('reads a record of before, which has room for one end only', () => {
    const record = {
      from: 'a',
      heirs: [],
      withdrawnFor: ['roof'],
      reason: 'law',
      governs: 'The act',
      basis: 'declared',
    };
    expect(read(record)).toEqual({ records: [record], findings: [] });
  });

  it('refuses a further end without a reason or without types', () => {
    const base = { from: 'a', heirs: [], withdrawnFor: ['roof'], reason: 'law', basis: 'declared' };
    for (const also of [[], [{ types: ['street'] }], [{ reason: 'law' }], [{ types: [], reason: 'law' }]]) {
      expect(read({ ...base, alsoEnds: also }).findings, JSON.stringify(also)).toHaveLength(1);
    }
  });
});
