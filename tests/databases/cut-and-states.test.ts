import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePolicy } from '../../src/carryover/jobs/job-policy.ts';
import type { DatabaseJobsOptions } from '../../src/commands/databases/db-jobs.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { carryIn, saidIn, saidOfFile, way } from './carry.ts';
import { ENGINES, type TestDatabase } from './engines.ts';

/** The fixture with a 3.1 and a 3.10, of which a spreadsheet makes a 3.1 too. */
const { joint } = way;
const numbers: Readonly<Record<string, string>> = { base: '3.1', stays: '3.10', w31: '3.01' };
const entries = joint.from.entries.map(e => ({ ...e, number: numbers[e.id] ?? e.number }));
const cuttable = { ...way, joint: joinEditions({ ...joint.from, entries }, joint.to, joint.crosswalk) };

const HEADER = ['job', 'item', 'status'];
const CUT = [
  ['A', '3.1', 'open'],
  ['A', '3.1', 'open'],
  ['A', '3.4.5', 'open'],
  ['A', '3.4.5', 'open'],
];
const STATES = [
  ['A', '3.1', 'Parked'],
  ['A', '3.10', 'open'],
  ['A', '3.1', 'open'],
  ['A', '3.1', 'open'],
  ['B', '3.1', 'odd'],
];

describe.each(ENGINES)('a table in $name is read as a file is', engine => {
  let test: TestDatabase;
  beforeAll(async () => {
    if (engine.absent) return;
    await engine.start();
    test = await engine.fresh();
    await test.table('cut', HEADER, CUT);
    await test.table('states', HEADER, STATES);
    await test.table('stored', HEADER, CUT.slice(0, 2), [
      'text',
      engine.name === 'SQLite' ? 'real' : 'numeric',
      'text',
    ]);
  });
  afterAll(() => engine.stop());

  async function both(table: string, rows: readonly (readonly string[])[], options: Partial<DatabaseJobsOptions> = {}) {
    const report = await test.with(db => carryIn(db, { table, ...options }, cuttable));
    const ofFile = await saidOfFile(HEADER, rows, options, cuttable);
    const inside = await saidIn(test, table);
    expect(inside).toEqual({ lines: ofFile.lines, added: ofFile.added });
    expect(report.totals).toEqual(ofFile.report.totals);
    const told = (findings: readonly { rule: string; message: string }[]) =>
      findings.map(f => `${f.rule} ${f.message}`);
    expect(told(report.findings)).toEqual(told(ofFile.report.findings));
    return { ...report, lines: inside.lines };
  }

  it.skipIf(engine.absent)(
    'numbers that a spreadsheet may have cut are told, and each of their lines is for a person',
    async () => {
      for (const options of [{}, { batch: 1 }]) {
        const { totals, findings, lines } = await both('cut', CUT, options);
        expect(lines.filter(line => line.includes('it may have been 3.1 or 3.10'))).toHaveLength(2);
        expect(findings.filter(f => f.rule === 'perhaps-cut')).toMatchObject([
          { rule: 'perhaps-cut', data: { number: '3.1', lines: 2 }, subject: 'cut' },
        ]);
        expect(totals.folded).toBe(0);
      }
    },
  );

  it.skipIf(engine.absent)('days that cannot be read are for a person, and named jobs stay early', async () => {
    const said = {
      agency: 'Vale',
      adoptions: [
        { edition: '2018', from: '2018-10-01' },
        { edition: '2024', from: '2024-09-01', transitionEnds: '2024-12-01', early: '2024-07-01' },
      ],
      ...{ decidedBy: ['day'], inTransition: 'older', undated: 'newer', earlyJobs: ['E'] },
    };
    const policy = parsePolicy(JSON.stringify(said), 'vale.json');
    const days = ['31.02.2025', 'n/a', '', '25.10.2024'];
    const rows = ['A', 'E'].flatMap(job => days.map(day => [job, '3.1.2', day]));
    await test.table('days', ['job', 'item', 'day'], rows);
    const { totals } = await test.with(db => carryIn(db, { table: 'days', policy }, way));
    expect(totals.ungoverned).toBe(4);
    const { lines } = await saidIn(test, 'days', true);
    expect(lines).toEqual((await saidOfFile(['job', 'item', 'day'], rows, { policy }, way)).lines);
    expect(lines.filter(line => line.includes('is no day that can be read'))).toHaveLength(4);
    expect(lines.filter(line => line.includes('lets job E follow 2024 early'))).toHaveLength(1);
  });

  it.skipIf(engine.absent)('a table that there is not is told with theirs, not with ours', async () => {
    await test.with(db => carryIn(db, { table: 'cut' }, cuttable));
    const asked = test.with(db => carryIn(db, { table: 'nope' }, cuttable));
    await expect(asked).rejects.toThrow(
      /has no table nope; it has (?:cut|days|states|stored)(?:, (?:cut|days|states|stored)){2,3};/,
    );
  });

  it.skipIf(engine.absent)('a column of numbers is not taken for one of cut texts', async () => {
    const { findings } = await test.with(db => carryIn(db, { table: 'stored' }, cuttable));
    expect(findings.map(f => f.rule)).not.toContain('perhaps-cut');
  });

  it.skipIf(engine.absent)(
    'words for a state are told apart as they are told, and a number that kept its zero frees the others',
    async () => {
      const plain = await both('states', STATES);
      expect(plain.totals).toMatchObject({ closed: 0, folded: 2 });
      const told = await both('states', STATES, { stateNames: { parked: 'done' } });
      expect(told.totals).toMatchObject({ closed: 1, folded: 1 });
      expect(told.lines[0]).toContain('it is ');
      expect(told.run).not.toBe(plain.run);
    },
  );
});
