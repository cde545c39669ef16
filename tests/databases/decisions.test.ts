import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { parsePolicy } from '../../src/carryover/jobs/job-policy.ts';
import type { DatabaseJobsOptions } from '../../src/commands/databases/db-jobs.ts';
import { undoDatabaseRun } from '../../src/commands/databases/undo-database.ts';
import type { JobAnswer } from '../../src/model/job-answer.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { memoryFiles } from '../carryover/memory-files.ts';
import { carryIn, saidIn, saidOfFile, way } from './carry.ts';
import { ENGINES, type TestDatabase } from './engines.ts';

const HEADER = ['Job', 'Item', 'Type', 'Status', 'Ordered'];
const JOBS = [
  ['J2', '3.1.3', 'house lot', 'open', '2023-01-31'],
  ['J1', '3.4.5', 'court', 'open', '2024-08-01'],
  ['J1', '3.1.3', 'house lot', 'open', '2024-08-01'],
  [' J1 ', '3.1.3', 'house lot', 'open', '2024-08-01'],
  ['J2', '3.1.3', 'house lot', 'signed', '2024-08-01'],
  ['', '3.1.3', 'terrace row', 'open', '2024-08-01'],
  ['', '3.1.3', '', 'open', '2024-08-01'],
  ['J3', '3.1.4', 'house lot', 'open', '2024-08-01'],
  ['J3', '3.4.5', 'court', 'signed', '2024-08-01'],
  ['J1', '3.1.3 (2018)', 'house lot', 'open', ''],
];

const POLICY = parsePolicy(
  JSON.stringify({
    agency: 'Vale',
    adoptions: [
      { edition: '2018', from: '2018-07-01' },
      { edition: '2024', from: '2024-07-01' },
    ],
    decidedBy: ['Ordered'],
    inTransition: 'older',
    undated: 'ask',
  }),
  'vale.json',
);

type Row = Record<string, string>;
const rowsOf = (csv: string) => parse(csv, { columns: true }) as Row[];

/** The questionnaire as it went out, with answers to some of its numbers. */
function filledIn(asked: string, answers: Readonly<Record<string, Row>>): string {
  const rows = rowsOf(asked).map(r => ({ ...r, ...answers[r.number!] }));
  return writeCsv([Object.keys(rows[0]!), ...rows.map(r => Object.values(r))]);
}

const ANA = {
  '3.4.5': { answer: 'carry', heir: '3.3.3', because: 'the cover', by: 'Ana' },
  '3.1.3': { answer: 'stay', by: 'Ana' },
};

describe.each(ENGINES)('decisions about jobs in $name', engine => {
  let test: TestDatabase;
  beforeAll(async () => {
    if (!engine.absent) await engine.start();
  });
  beforeEach(async () => {
    if (engine.absent) return;
    test = await engine.fresh();
    await test.table('jobs', HEADER, JOBS);
  });
  afterAll(() => engine.stop());

  /** Carries the same lines inside the database and as a file, and shows that both say the same. */
  async function both(options: Partial<DatabaseJobsOptions>, given: Readonly<Record<string, string>> = {}) {
    const asked = { decisionsOut: 'ask.csv', priceChanges: 'dearer.csv', ...options };
    const held = memoryFiles(given);
    const report = await test.with(db => carryIn(db, asked, way, held));
    const ofFile = await saidOfFile(HEADER, JOBS, asked, way, given);
    const governed = options.policy !== undefined;
    const { lines } = await saidIn(test, 'jobs', governed);
    // A file folds the parts of a job that comes back each for itself, which is another matter.
    const unfolded = (line: string) => JSON.stringify((JSON.parse(line) as unknown[]).toSpliced(6, 1));
    expect(lines.map(unfolded)).toEqual(ofFile.lines.map(unfolded));
    expect(held.text('dearer.csv')).toBe(ofFile.text('dearer.csv'));
    expect(held.text('ask.csv')).toBe(ofFile.text('ask.csv'));
    expect(report.answered).toEqual(ofFile.report.answered);
    return { report, lines, asked: held.text('ask.csv')!, dearer: rowsOf(held.text('dearer.csv')!) };
  }

  async function anasAnswers(): Promise<readonly JobAnswer[]> {
    const { asked } = await both({});
    const { report } = await both({ decisions: 'filled.csv' }, { 'filled.csv': filledIn(asked, ANA) });
    return report.answered.map(a => ({ ...a, date: '2024-02-01' }));
  }

  it.skipIf(engine.absent)(
    'that the catalog keeps hold as they do for a file, and stand in the next questions',
    async () => {
      const kept = await anasAnswers();
      expect(kept.map(a => [a.number, a.type, a.verdict])).toContainEqual(['3.4.5', 'court', 'carry']);
      const { report, lines, asked } = await both({ kept });
      expect(report.answered).toEqual([]);
      expect(lines.filter(l => l.includes('Decided by Ana'))).toHaveLength(7);
      expect(rowsOf(asked).filter(r => r.by === 'Ana')).toHaveLength(kept.length);
    },
  );

  it.skipIf(engine.absent)('give way to a later questionnaire and to a changed text', async () => {
    const kept = await anasAnswers();
    const { asked } = await both({ kept });
    const ben = { '3.4.5': { answer: 'drop', heir: '', because: '', by: 'Ben' } };
    const later = await both({ kept, decisions: 'filled.csv' }, { 'filled.csv': filledIn(asked, ben) });
    expect(later.lines[1]).toContain('Decided by Ben');
    const changed = await both({ kept: kept.map(a => ({ ...a, askedOn: 'other' })) });
    expect(changed.report.findings.map(f => f.rule)).toContain('decision-asked-again');
    expect(changed.lines.filter(l => l.includes('Decided by'))).toEqual([]);
  });

  it.skipIf(engine.absent)('make a run of their own, which the same decisions repeat', async () => {
    const kept = await anasAnswers();
    const before = await test.with(db => carryIn(db, { batch: 3 }));
    const after = await test.with(db => carryIn(db, { batch: 3, kept }));
    expect(after.run).not.toBe(before.run);
    expect((await test.with(db => carryIn(db, { batch: 3, kept }))).run).toBe(after.run);
    await test.with(db => undoDatabaseRun(db, after.run));
  });

  it.skipIf(engine.absent)(
    'leave the list of dearer lines as it is: job by job, with the first record and how many',
    async () => {
      const { dearer } = await both({});
      expect(dearer.map(r => [r.job, r.first_record, r.lines, r.number, r.type, r.new_number])).toEqual([
        ['J2', '1', '1', '3.1.3', 'house', '3.1.3'],
        ['J1', '3', '3', '3.1.3', 'house', '3.1.3'],
        ['', '6', '1', '3.1.3', 'terrace', '3.1.3'],
        ['', '7', '1', '3.1.3', '', '3.1.3'],
      ]);
      // What Ana leaves under its edition costs what was agreed.
      expect((await both({ kept: await anasAnswers() })).dearer).toEqual([]);
      const carried = (await anasAnswers()).map(a => ({ ...a, verdict: 'carry' as const, heirs: [] }));
      const decided = await both({ kept: carried });
      expect(decided.dearer.map(r => [r.first_record, r.why])).toEqual(
        ['1', '3', '6', '7'].map(record => [record, 'Decided by Ana.']),
      );
    },
  );

  it.skipIf(engine.absent)(
    'list no line as dearer that a policy leaves under its edition, or nobody has placed',
    async () => {
      const { dearer } = await both({ policy: POLICY });
      expect(dearer.map(r => [r.job, r.first_record, r.lines])).toEqual([
        ['J1', '3', '2'],
        ['', '6', '1'],
        ['', '7', '1'],
      ]);
    },
  );

  it.skipIf(engine.absent)(
    'list the same in a dry run, and in batches that go on where they were broken off',
    async () => {
      const listed = async (options: Partial<DatabaseJobsOptions>) => {
        const held = memoryFiles({});
        await test.with(db => carryIn(db, { priceChanges: 'dearer.xlsx', ...options }, way, held));
        return held.held.get('dearer.xlsx')!.toString('base64');
      };
      const whole = await listed({});
      expect(await listed({ dryRun: true })).toBe(whole);
      const breaking = test.with(db => {
        let begun = 0;
        const breakingDb = {
          ...db,
          together: <T>(work: () => Promise<T>) => {
            if (++begun === 3) throw new Error('killed');
            return db.together(work);
          },
        };
        return carryIn(breakingDb, { batch: 3 });
      });
      await expect(breaking).rejects.toThrow('killed');
      expect(await listed({ batch: 3 })).toBe(whole);
    },
  );
});

describe('the list of dearer lines', () => {
  it('never takes the place of the database itself', async () => {
    const engine = ENGINES[0]!;
    await engine.start();
    const test = await engine.fresh();
    await test.table('jobs', HEADER, JOBS);
    for (const name of ['priceChanges', 'decisionsOut']) {
      const refused = test.with(db => carryIn(db, { [name]: test.address }));
      await expect(refused).rejects.toThrow(/is the database itself; choose another name/);
    }
    await engine.stop();
  });
});
