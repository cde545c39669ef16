import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, describe, expect, it } from 'vitest';
import { keepDecisions, keptDecisions } from '../../src/commands/carrying/kept-decisions.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { policyOf } from '../../src/commands/jobs/job-policies.ts';
import type { Catalog } from '../../src/store/open.ts';
import { openForWriting } from '../../src/store/open.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { fsWithSecondWriter } from '../store/second-writer.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const JOBS = 'Job,Item,Type,Status\nJ1,3.4.5,court,open\nJ2,3.1.4,house,open\n';
const WAY = { from: '2018', to: '2024' };

type Row = Record<string, string>;
const rowsOf = (csv: string) => parse(csv, { columns: true }) as Row[];

async function carry(options: object, answers: Readonly<Record<string, Row>> = {}) {
  const { files, held, text } = memoryFiles({ in: JOBS });
  const ports = { files, progress: () => {} };
  const run = (more: object) => carryJobs(ports, joint, marks, { input: 'in', out: 'out', ...more });
  if (Object.keys(answers).length > 0) {
    await run({ decisionsOut: 'ask.csv' });
    const asked = rowsOf(text('ask.csv')!).map(r => ({ ...r, ...answers[r.number!] }));
    held.set('ask.csv', Buffer.from(writeCsv([Object.keys(asked[0]!), ...asked.map(r => Object.values(r))])));
    options = { ...options, decisions: 'ask.csv' };
  }
  const report = await run({ ...options, decisionsOut: 'again.csv' });
  const told = rowsOf(text('out')!).filter(r => r.origin === 'input');
  return { report, outcomes: told.map(r => [r.Item, r.outcome, r.new_number]), again: rowsOf(text('again.csv')!) };
}

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});
async function someCatalog(): Promise<Catalog> {
  const copy = await copyOfDemoCatalog();
  folders.push(dirname(copy));
  return openForWriting(copy);
}

const ANA = { '3.4.5': { answer: 'carry', heir: '3.3.3', because: 'the cover', by: 'Ana' } };

describe('decisions kept for an agency', () => {
  it('are found by a later run without any questionnaire, and stand in the next one', async () => {
    const catalog = await someCatalog();
    const first = await carry({}, ANA);
    expect(await keepDecisions(testPorts(), catalog, 'Vale & Sons', first.report.answered)).toBe(1);
    const { answers, findings } = await keptDecisions(catalog, 'Vale & Sons', WAY);
    expect([answers.length, findings]).toEqual([1, []]);
    const later = await carry({ kept: answers });
    expect(later.outcomes).toEqual([
      ['3.4.5', 'carried', '3.3.3'],
      ['3.1.4', 'withdrawn', ''],
    ]);
    expect(later.again.map(r => [r.number, r.answer, r.by])).toContainEqual(['3.4.5', 'carry', 'Ana']);
    expect(later.report.answered).toEqual([]);
    expect(await keptDecisions(catalog, 'another', WAY)).toMatchObject({ answers: [] });
    expect(await keptDecisions(catalog, 'Vale & Sons', { from: '2014', to: '2018' })).toMatchObject({ answers: [] });
  });

  it('give way to a later questionnaire, and are kept once however often they are said', async () => {
    const catalog = await someCatalog();
    const first = await carry({}, ANA);
    await keepDecisions(testPorts(), catalog, 'a', first.report.answered);
    const later = () => new Date('2024-05-05T09:00:00Z');
    expect(await keepDecisions({ ...testPorts(), now: later }, catalog, 'a', first.report.answered)).toBe(0);
    const { answers } = await keptDecisions(catalog, 'a', WAY);
    const ben = { '3.4.5': { answer: 'stay', heir: '', because: '', by: 'Ben' } };
    const second = await carry({ kept: answers }, ben);
    expect(second.outcomes[0]).toEqual(['3.4.5', 'kept', '3.3.3 | 3.3.4']);
    expect(second.report.findings.filter(f => f.rule.startsWith('decision'))).toEqual([]);
    expect(await keepDecisions({ ...testPorts(), now: later }, catalog, 'a', second.report.answered)).toBe(1);
    const after = await keptDecisions(catalog, 'a', WAY);
    expect(after.answers.map(a => [a.verdict, a.by, a.date])).toEqual([['stay', 'Ben', '2024-05-05']]);
  });

  it('are not written over what somebody else has kept in the meantime', async () => {
    const catalog = await someCatalog();
    const { answered } = (await carry({}, ANA)).report;
    const { fs, before } = fsWithSecondWriter();
    const bens = await openForWriting(catalog.dir, fs);
    // First the answers are read, then main is read to be written.
    before(2, 'refs/heads/main', () => keepDecisions(testPorts(), catalog, 'a', answered));
    const ben = answered.map(a => ({ ...a, verdict: 'stay' as const, heirs: [], by: 'Ben' }));
    await expect(keepDecisions(testPorts(), bens, 'a', ben)).rejects.toThrow('written by somebody else');
    expect((await keptDecisions(catalog, 'a', WAY)).answers.map(a => a.by)).toEqual(['Ana']);
  });

  it('are asked again once a text has changed, and not complained of where no line needs them', async () => {
    const { report } = await carry({}, ANA);
    const kept = report.answered.map(a => ({ ...a, date: '2024-01-01' }));
    const changed = await carry({ kept: kept.map(a => ({ ...a, askedOn: 'other' })) });
    expect(changed.outcomes[0]![1]).toBe('choose');
    expect(changed.report.findings).toMatchObject([{ rule: 'decision-asked-again' }]);
    const idle = await carry({ kept: kept.map(a => ({ ...a, number: '3.4.6' })) });
    expect(idle.report.findings.filter(f => f.rule.startsWith('decision'))).toEqual([]);
  });

  it('keep nothing that was of no use', async () => {
    const { report } = await carry({}, { '3.4.5': { answer: 'carry', heir: '9.9', by: 'Ana' } });
    expect(report.answered).toEqual([]);
  });

  it('need no policy of the agency', async () => {
    const catalog = await someCatalog();
    await expect(policyOf(testPorts(), catalog, { agency: 'a' })).rejects.toThrow('keeps no policy of a');
    expect(await policyOf(testPorts(), catalog, { agency: 'a', mayLack: true })).toBeUndefined();
  });
});
