import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { governingEdition } from '../../src/carryover/jobs/governing-edition.ts';
import { parsePolicy } from '../../src/carryover/jobs/job-policy.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

const VALE = {
  agency: 'Vale',
  adoptions: [
    { edition: '2024', from: '2024-09-01', transitionEnds: '2024-12-01', early: '2024-07-01' },
    { edition: '2018', from: '2018-10-01' },
  ],
  decidedBy: ['Permit', 'Signed'],
  inTransition: 'older',
  earlyJobs: ['E1'],
};
const policyOf = (more: object = {}) => parsePolicy(JSON.stringify({ ...VALE, ...more }), 'vale.json');

async function carry(csv: string, more: object = {}, options: object = {}) {
  const { files, text } = memoryFiles({ 'jobs.csv': csv });
  const policy = policyOf(more);
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, {
    ...{ input: 'jobs.csv', out: 'out.csv', policy },
    ...options,
  });
  const [head, ...lines] = parse(text('out.csv')!) as string[][];
  const rows = lines.map(l => Object.fromEntries(head!.map((name, at) => [name, l[at]!])));
  return { report, head: head!, rows };
}

describe('which edition governs a line', () => {
  const policy = policyOf();
  const open = { job: 'J', readIn: '2018' };
  const on = (day: string, more = {}) => {
    const { edition, rule } = governingEdition(policy, { ...open, day: { day, header: 'Permit' }, ...more });
    return [edition, rule];
  };

  it('is told by its day and the days of adoption', () => {
    expect(on('2018-09-30')).toEqual([undefined, 'before-all']);
    expect(on('2018-10-01')).toEqual(['2018', 'date']);
    expect(on('2024-08-31')).toEqual(['2018', 'date']);
    expect(on('2024-12-01')).toEqual(['2024', 'date']);
  });

  it('is the older one in a transition, if the policy says so, and asked if it says nothing', () => {
    expect(on('2024-09-01')).toEqual(['2018', 'transition']);
    expect(on('2024-11-30')).toEqual(['2018', 'transition']);
    const silent = policyOf({ inTransition: undefined });
    expect(governingEdition(silent, { ...open, day: { day: '2024-10-01', header: 'x' } }).edition).toBeUndefined();
  });

  it('may be the newer one early, for the jobs that are named', () => {
    expect(on('2024-08-01', { job: 'E1' })).toEqual(['2024', 'early']);
    expect(on('2024-06-30', { job: 'E1' })).toEqual(['2018', 'date']);
  });

  it('stays the newer one for them when the transition has begun, though others still follow the older', () => {
    expect(on('2024-09-01', { job: 'E1' })).toEqual(['2024', 'early']);
    expect(on('2024-11-30', { job: 'E1' })).toEqual(['2024', 'early']);
    expect(on('2024-12-01', { job: 'E1' })).toEqual(['2024', 'date']);
  });

  it('is asked where the day cannot be read, whatever the policy says of lines without one', () => {
    const newer = policyOf({ undated: 'newer' });
    const told = governingEdition(newer, { ...open, day: { unreadable: '31.02.2025', header: 'Permit' } });
    expect(told).toMatchObject({ rule: 'unreadable-day', edition: undefined });
    expect(told.why).toBe('Permit says “31.02.2025”, which is no day that can be read; a person decides.');
    expect(governingEdition(newer, open).edition).toBe('2024');
  });

  it('stays what it was for finished work, whatever the date', () => {
    expect(on('2025-01-01', { closed: 'inspected' })).toEqual(['2018', 'closed']);
  });

  it('is asked for a line without a date', () => {
    expect(governingEdition(policy, open)).toMatchObject({ rule: 'undated', edition: undefined });
  });
});

describe('a job table under a policy', () => {
  const CSV = `Job,Item,Type,State,Permit,Signed
J1,3.1.1,house,open,25/06/2024,
J2,3.1.1,house,open,,22/12/2024
J3,3.1.1,house,signed,01/12/2024,
E1,3.1.1,house,open,01/08/2024,
J5,3.1.1,house,open,,
`;

  it('has the edition that governs and the deciding rule on each line', async () => {
    const { rows, head } = await carry(CSV);
    expect(head.slice(-2)).toEqual(['governed_by', 'rule']);
    const told = rows.filter(r => r.origin === 'input').map(r => [r.Job, r.governed_by, r.to_do]);
    expect(told).toEqual([
      ['J1', '2018', 'Leave this line as it stands: edition 2018 governs it.'],
      ['J2', '2024', 'Cite 3.1.2 from now on.'],
      ['J3', '2018', 'Leave this line as it stands under edition 2018: it is signed.'],
      ['E1', '2024', 'Cite 3.1.2 from now on.'],
      ['J5', 'ask', 'Decide first which edition governs this job; leave the line as it stands until then.'],
    ]);
    expect(rows.find(r => r.Job === 'J1')!.rule).toBe(
      'Permit 2024-06-25 is on or after 2018-10-01, when Vale adopted 2018 and before 2024-09-01, when 2024 follows.',
    );
  });

  it('adds new duties to jobs under the newer edition only, each with the rule that says so', async () => {
    const { rows } = await carry(CSV);
    const added = rows.filter(r => r.origin === 'added');
    expect(added.map(r => [r.Job, r.governed_by, r.rule])).toEqual([
      ['J2', '2024', 'Signed 2024-12-22 is on or after 2024-09-01, when Vale adopted 2024.'],
      ['E1', '2024', 'Vale lets job E1 follow 2024 early, from 2024-07-01 on; Permit 2024-08-01.'],
    ]);
  });

  it('says which cell proved the order of the dates, and refuses to guess it', async () => {
    const { report } = await carry(CSV);
    expect(report.findings.find(f => f.rule === 'date-order')?.message).toContain('25/06/2024 in record 1');
    const doubtful = CSV.replace('25/06/2024', '05/06/2024');
    await expect(carry(doubtful)).rejects.toThrow(/cannot be read: nothing in it tells.*say --dates dmy, mdy or ymd/);
    const { rows } = await carry(doubtful, {}, { dates: 'mdy' });
    expect(rows[0]!.rule).toContain('2024-05-06');
  });

  it('reports cells that are no dates, and a table without the dates that decide', async () => {
    const { report } = await carry(CSV.replace('22/12/2024', 'soon'));
    expect(report.findings.find(f => f.rule === 'no-date')?.message).toContain('"soon" in record 2');
    const told = await carry(CSV.replace('25/06/2024', '06/25/2024'), {}, { dates: 'dmy' });
    expect(told.report.findings.find(f => f.rule === 'no-date')?.message).toContain('"06/25/2024" in record 1');
    await expect(carry('Job,Item\nJ,3.1.1\n')).rejects.toThrow(
      /decides by Permit, Signed, and the table has no such column/,
    );
  });

  it('asks about lines whose day does not exist or is none, even where undated ones follow the newer edition', async () => {
    const csv = 'Job,Item,Permit,Signed\nA,3.1.1,31.02.2025,\nB,3.1.1,n/a,22/12/2024\nC,3.1.1,,\nD,3.1.1,,22/12/2024\n';
    const { rows, report } = await carry(csv, { undated: 'newer' });
    expect(report.totals).toMatchObject({ lines: 4, ungoverned: 2 });
    expect(report.cases.reduce((n, c) => n + c.ungoverned, 0)).toBe(2);
    const told = rows.filter(r => r.origin === 'input').map(r => [r.Job, r.governed_by, r.rule!.slice(0, 24)]);
    expect(told).toEqual([
      ['A', 'ask', 'Permit says “31.02.2025”'],
      ['B', 'ask', 'Permit says “n/a”, which'],
      ['C', '2024', 'The line has none of the'],
      ['D', '2024', 'Signed 2024-12-22 is on '],
    ]);
  });

  it('carries without asking what the agency has settled, and asks what it has not', async () => {
    const csv = 'Job,Item,Type,State,Permit\nJ,3.1.3,house,open,2025-01-01\nJ,3.4.5,court,open,2025-01-01\n';
    const outcomes = async (fates: object) =>
      (await carry(csv, { fates })).rows.filter(r => r.origin === 'input').map(r => r.outcome);
    expect(await outcomes({})).toEqual(['choose', 'choose']);
    expect(await outcomes({ stricter: 'carry' })).toEqual(['carried', 'choose']);
    expect(await outcomes({ 'several-heirs': 'carry' })).toEqual(['choose', 'carried']);
  });

  it('knows types by names of earlier days', async () => {
    const csv = 'Job,Item,Type,State,Permit\nJ,3.1.3,row house,open,2025-01-01\nJ,3.1.3,terrace,open,2025-01-01\n';
    expect((await carry(csv)).report.findings.map(f => f.rule)).toContain('unknown-type');
    const { report } = await carry(csv, { types: { 'Row house': 'terrace row' } });
    expect(report.findings.map(f => f.rule)).not.toContain('unknown-type');
    expect(report.cases).toHaveLength(1);
  });
});

describe('lines of several editions in one table', () => {
  it('are each followed from their own, with the number of lines of each', async () => {
    const older = { ...joint, from: { ...joint.from, header: { ...joint.from.header, name: '2014' } } };
    const { files, text } = memoryFiles({ in: 'no,edition\n3.1.1,2018\n3.1.1,2014\n3.1.1 (2014),\n3.1.1,2010\n' });
    const report = await carryJobs({ files, progress: () => {} }, joint, marks, {
      ...{ input: 'in', out: 'out' },
      others: async () => new Map([['2014', { joint: older, marks }]]),
    });
    const [head, ...lines] = parse(text('out')!) as string[][];
    const at = (name: string) => lines.map(l => l[head!.indexOf(name)]);
    expect(at('outcome')).toEqual(['carried', 'carried', 'carried', 'unknown']);
    expect(at('read_in')).toEqual(['2018', '2014', '2014', '2010']);
    expect(report.editions).toEqual({ 2018: 1, 2014: 2, 2010: 1 });
  });
});

describe('a policy with a mistake', () => {
  it.each([
    [{ agency: '' }, /agency is missing/],
    [{ adoptions: [] }, /adoptions lists no edition/],
    [{ adoptions: [{ edition: '2018', from: '1.10.2018' }] }, /lacks its edition, or its day/],
    [{ inTransition: 'both' }, /inTransition is none of older, newer, ask/],
    [{ fates: { harder: 'carry' } }, /fates names harder/],
    [{ timeZone: 'Vale/Lower' }, /no IANA name/],
    [{ decidedby: ['x'] }, /a field decidedby that means nothing here/],
  ])('%j is refused', (more, sentence) => {
    expect(() => policyOf(more)).toThrow(sentence);
  });
});
