import { iso31663 } from 'iso-3166';
import { describe, expect, it } from 'vitest';
import { composeCrosswalks } from '../../src/crosswalk/compose.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import type { LineageRecord } from '../../src/model/crosswalk.ts';
import { indexOf } from '../../src/store/read.ts';

// Source: ISO 3166-3 in iso-3166 4.4.0, `iso31663`: 31 withdrawn codes with what became of each, by the publisher.

type Withdrawn = (typeof iso31663)[number];

/** Codes as items; a code is its own number. */
function edition(name: string, codes: Iterable<string>) {
  const items = [...new Set(codes)].map(id => ({ id, number: id, level: 1, parent: null, title: id }));
  const numbering = { levels: [], numbersUnique: true };
  const lists = { installationTypes: [], withdrawalReasons: [] };
  const settings = { title: 'Codes', language: 'en', levels: [{ name: 'Code' }], fileLevel: 1, numbering, ...lists };
  return indexOf({ header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' }, settings, items });
}

/** What the withdrawal of some codes did. A merge is into a code that stood before; a change or split makes new ones. */
function step(withdrawn: readonly Withdrawn[]) {
  const heirs = (w: Withdrawn) => w.to.map(t => (t.state === 'assigned' ? t.alpha2 : formerly(t.alpha3)));
  const standing = withdrawn.filter(w => w.type === 'merge').flatMap(heirs);
  const from = edition('before', [...withdrawn.map(w => w.alpha4), ...standing]);
  const to = edition('after', withdrawn.flatMap(heirs));
  const records = withdrawn.map(
    (w): LineageRecord => ({
      from: w.alpha4,
      heirs: heirs(w).map(code => ({ to: code, fromExtent: 'unknown', toExtent: 'unknown' })),
      basis: 'declared',
    }),
  );
  const links = linkByLineage(from.entries, to.entries, records);
  return joinEditions(from, to, { from: 'before', to: 'after', links });
}

/** A code that stands among the heirs of one withdrawal and was itself withdrawn later. */
const formerly = (alpha3: string) => iso31663.find(w => w.from.alpha3 === alpha3)!.alpha4;

const codes = (type: Withdrawn['type']) => iso31663.filter(w => w.type === type);
const OF_TYPE = { change: 'kept', split: 'split', merge: 'merged' } as const;

describe('the 31 withdrawn country codes of ISO 3166-3', () => {
  it('are 11 changed, 7 split and 13 merged ones', () => {
    expect([codes('change').length, codes('split').length, codes('merge').length]).toEqual([11, 7, 13]);
  });

  it.each(iso31663.filter(w => w.alpha4 !== 'FQHH').map(w => [w.alpha4, OF_TYPE[w.type], w] as const))(
    '%s has the fate %s when it is withdrawn',
    (code, fate, withdrawn) => {
      expect(step([withdrawn]).fateOfOld(code)).toBe(fate);
    },
  );

  // FQHH was divided between AQ and TF; the data names AQ alone, so a split is nowhere to be seen in it.
  it('FQHH is split as soon as the target that the data lacks is given', () => {
    const [fqhh] = iso31663.filter(w => w.alpha4 === 'FQHH') as [Withdrawn];
    expect([fqhh.type, fqhh.to.map(t => t.alpha2)]).toEqual(['split', ['AQ']]);
    expect(step([fqhh]).fateOfOld('FQHH')).toBe('kept');
    const whole = { ...fqhh, to: [...fqhh.to, { ...fqhh.to[0]!, alpha2: 'TF', alpha3: 'ATF' }] };
    expect(step([whole]).fateOfOld('FQHH')).toBe('split');
  });

  it('taken as one step, count as merged also the two that share their heir: GEHH with CTKI, FQHH with BQAQ', () => {
    // Without YUCS, whose heir CSXX is itself among the withdrawn ones: that is a second step.
    const joint = step(iso31663.filter(w => w.alpha4 !== 'YUCS'));
    const others = joint.from.entries.flatMap(({ id }) => {
      const withdrawn = iso31663.find(w => w.alpha4 === id);
      const fate = joint.fateOfOld(id);
      return withdrawn && fate !== OF_TYPE[withdrawn.type] ? [[id, withdrawn.type, fate]] : [];
    });
    expect(others).toEqual([
      ['FQHH', 'split', 'merged'],
      ['GEHH', 'change', 'merged'],
    ]);
    expect(
      joint
        .arriving('UM')
        .map(l => l.from)
        .sort(),
    ).toEqual(['JTUM', 'MIUM', 'PUUM', 'UM', 'WKUM']);
  });

  it('lead from YUCS over CSXX, which came after it, to both of its heirs', () => {
    const [first, second] = ['YUCS', 'CSXX'].map(code => step(iso31663.filter(w => w.alpha4 === code)));
    const composed = composeCrosswalks(first!.crosswalk, second!.crosswalk);
    expect(composed.links.map(l => [l.from, l.to])).toEqual([
      ['YUCS', 'ME'],
      ['YUCS', 'RS'],
    ]);
  });
});
