import { describe, expect, it } from 'vitest';
import { governing, leadSentence } from '../../src/carryover/local/governs.ts';
import { localProvisions } from '../../src/carryover/local/local-provisions.ts';
import { governs } from '../../src/commands/local/governs.ts';
import { governsAll } from '../../src/commands/local/governs-all.ts';
import type { LocalRecord } from '../../src/model/local.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { deepFreeze } from '../freeze.ts';

const record = (text: string, more: Partial<LocalRecord> = {}): LocalRecord =>
  deepFreeze({
    id: 'r',
    kind: 'rule',
    place: 'p',
    title: 'A rule',
    text,
    cites: { edition: '1', number: '1.1' },
    from: '2020-01-01',
    until: null,
    approver: 'An office',
    state: 'approved',
    ...more,
  });
const DATE = '2022-01-01';

describe('a local rule beside a requirement', () => {
  it.each([
    ['Insulate the pipe to at least R-8.', 'Pipes are insulated to at least R-6.', 'catalog'],
    ['Insulate the pipe to R-8.', 'Pipe insulation is R-6.', 'catalog'],
    ['Insulate the pipe to R-6.', 'Pipe insulation is at least R-8.', 'local'],
    ['The trench shall be at least 600 mm deep.', 'A trench is at least 800 mm deep.', 'local'],
    ['The trench shall be at least 600 mm deep.', 'A trench is at least 600 mm deep.', 'catalog'],
  ])('%s | %s: governs %s', (requirement, local, who) => {
    expect(governing(requirement, record(local), DATE).governs).toBe(who);
  });

  it('binds beside the catalog where it asks more in one thing and less in another', () => {
    const asked = 'The tank shall be not less than 5 m from any building and not less than 2.5 m from the boundary.';
    const verdict = governing(
      asked,
      record('A tank is at least 6 m from any building; 2 m from the boundary is enough.'),
      DATE,
    );
    expect(verdict.provisions.map(p => p.local)).toEqual(['stricter', 'relaxed']);
    expect(verdict.governs).toBe('both');
  });

  it('is left to a person where bounds exclude each other, or where times of day stand in place of measures', () => {
    expect(
      governing('The gap shall be at least 50 mm wide.', record('A gap is at most 30 mm wide.'), DATE),
    ).toMatchObject({
      governs: 'person',
      provisions: [{ contradicts: true }],
    });
    const hours = governing(
      'Noisy work is done between 8 in the morning and 6 in the evening.',
      record('Noisy work is done between 9 in the morning and 5 in the evening.'),
      DATE,
    );
    expect(hours.governs).toBe('person');
  });

  it('keeps to the value that stands for the same thing when two could', () => {
    const asked =
      'The tap shall be not less than 350 mm above the ground, and a label shall be fixed within 200 mm of the tap.';
    expect(localProvisions(asked, 'A label is fixed within 200 mm of the tap.').map(p => p.local)).toEqual([
      'silent',
      'same',
    ]);
  });

  it('says who pays for more, where the program decided that', () => {
    const why = (costEffective: boolean) =>
      governing(
        'The pipe shall be at least 75 mm wide.',
        record('A pipe is at least 90 mm wide.', { costEffective }),
        DATE,
      ).why;
    expect(why(true)).toContain('pays for it');
    expect(why(false)).toContain('does not pay for it');
  });
});

describe('a variance', () => {
  const asked = 'Leave a clear way at least 900 mm wide.';
  const text = 'The clear way may be 820 mm instead of 900 mm.';
  it.each([
    ['approved', null, true],
    ['approved', '2021-12-31', false],
    ['approved', '2022-01-01', true],
    ['requested', null, false],
    ['denied', null, false],
    ['expired', null, false],
    ['moot', null, false],
  ] as const)('that is %s until %s overrides on 2022-01-01: %s', (state, until, overrides) => {
    const verdict = governing(asked, record(text, { kind: 'variance', state, until }), DATE);
    expect([verdict.inForce, verdict.governs]).toEqual([overrides, overrides ? 'variance' : 'catalog']);
    expect(verdict.provisions[0]).toMatchObject({ local: 'relaxed' });
  });

  it('does not override before it begins', () => {
    expect(governing(asked, record(text, { kind: 'variance' }), '2019-12-31').inForce).toBe(false);
  });
});

it('without anything in force the first sentence names the catalog', () => {
  expect(leadSentence('1.1', '1', DATE, [])).toMatch(/^On 2022-01-01 the catalog governs/);
});

describe('in the demo catalog', () => {
  const ask = async (number: string, place: string, more = {}) =>
    governs(await openCatalog(await demoCatalog()), { number, place, date: '2023-10-01', edition: '2018', ...more });

  it('a soakaway in Hollin keeps both distances, and a variance that is only asked for changes nothing', async () => {
    const { verdicts } = await ask('4.2.1.2', 'hollin');
    expect(verdicts.map(v => [v.record.id, v.governs, v.inForce])).toEqual([
      ['soakaway-distance', 'both', true],
      ['v-2023-001', 'catalog', false],
    ]);
  });

  it('a rule about house lots does not touch a terrace row', async () => {
    expect((await ask('3.2.1.3', 'hollin', { type: 'house' })).verdicts).toHaveLength(1);
    expect((await ask('3.2.1.3', 'hollin', { type: 'terrace' })).verdicts).toHaveLength(0);
  });

  it('a work item is touched by rules about what stands in it', async () => {
    expect((await ask('4.2.1', 'hollin')).verdicts).toHaveLength(2);
  });

  it('says what is known when a number or a place is not', async () => {
    await expect(ask('4.2.1.22', 'hollin')).rejects.toThrow('the nearest are');
    await expect(ask('4.2.1.2', 'nowhere')).rejects.toThrow('hollin');
  });
});

it('all local records of the demo have a standing beside 2024, and those not in force are not asked about', async () => {
  const { edition, standings } = await governsAll(await openCatalog(await demoCatalog()), { date: '2024-07-01' });
  expect(edition).toBe('2024');
  expect(standings).toHaveLength(14);
  const state = (id: string) => standings.find(s => s.record.id === id)?.standing;
  expect(['v-2019-002', 'v-2018-001', 'v-2020-007', 'v-2023-001'].map(state)).toEqual(Array(4).fill('not in force'));
});
