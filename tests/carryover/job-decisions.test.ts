import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const JOBS = `Job,Item,Type,Status
J1,3.4.5,court,open
J2,3.4.5,court,open
J2,3.4.5,court,signed
J3,3.1.3,house,open
J3,3.1.4,house,open
J3,3.1.1,house,open
J4,9.9.9,house,open
`;

type Row = Record<string, string>;

function rowsOf(csv: string): Row[] {
  return parse(csv, { columns: true }) as Row[];
}

async function run(decided?: (rows: Row[]) => void, of = joint) {
  const { files, held, text } = memoryFiles({ in: JOBS });
  const carry = (options: object, by = joint) =>
    carryJobs({ files, progress: () => {} }, by, marks, { input: 'in', out: 'out', ...options });
  await carry({ decisionsOut: 'ask.csv' });
  const asked = rowsOf(text('ask.csv')!);
  if (!decided) return { asked, rows: rowsOf(text('out')!), findings: [], files, text };
  decided(asked);
  held.set('ask.csv', Buffer.from(writeCsv([Object.keys(asked[0]!), ...asked.map(r => Object.values(r))])));
  const report = await carry({ decisions: 'ask.csv', decisionsOut: 'again.csv' }, of);
  return { asked, rows: rowsOf(text('out')!), again: rowsOf(text('again.csv')!), findings: report.findings, report };
}

const find = (rows: Row[], number: string) => rows.find(r => r.number === number)!;

describe('the questions of a job table', () => {
  it('are asked once for each case, with how many lines hang on it, the most first', async () => {
    const { asked } = await run();
    expect(asked.map(r => [r.number, r.state, r.lines])).toEqual([
      ['3.4.5', 'open', '2'],
      ['3.1.3', 'open', '1'],
      ['3.1.4', 'open', '1'],
      ['9.9.9', 'open', '1'],
    ]);
  });

  it('are answered for all lines of the case at once, and the totals still agree', async () => {
    const { rows, report, again } = await run(asked => {
      Object.assign(find(asked, '3.4.5'), {
        answer: 'carry',
        heir: '3.3.3',
        because: 'the cover was meant',
        by: 'Ana',
      });
      Object.assign(find(asked, '3.1.3'), { answer: 'stay', by: 'Ana' });
      Object.assign(find(asked, '3.1.4'), { answer: 'drop', by: 'Ana' });
      Object.assign(find(asked, '9.9.9'), { answer: 'carry', heir: '3.1.1', by: 'Ana' });
    });
    const told = rows.filter(r => r.origin === 'input').map(r => [r.Item, r.Status, r.new_number, r.outcome, r.to_do]);
    expect(told).toEqual([
      ['3.4.5', 'open', '3.3.3', 'carried', 'Cite 3.3.3 from now on.'],
      ['3.4.5', 'open', '3.3.3', 'carried', 'Cite 3.3.3 from now on.'],
      ['3.4.5', 'signed', '3.3.3 | 3.3.4', 'choose', 'Leave this line as it stands under edition 2018: it is signed.'],
      ['3.1.3', 'open', '3.1.3', 'kept', 'Leave this line as it stands under edition 2018.'],
      ['3.1.4', 'open', '', 'withdrawn', 'Take this line out of the job.'],
      ['3.1.1', 'open', '3.1.2', 'carried', 'Cite 3.1.2 from now on.'],
      ['9.9.9', 'open', '3.1.1', 'carried', 'Cite 3.1.1 from now on.'],
    ]);
    expect(rows[0]!.why).toBe('Decided by Ana: the cover was meant.');
    expect(report!.totals).toMatchObject({ agree: true, lines: 7 });
    expect(report!.findings.filter(f => f.rule.startsWith('decision'))).toEqual([]);
    expect(again!.map(r => [r.number, r.answer, r.by])).toContainEqual(['3.4.5', 'carry', 'Ana']);
  });

  it('are asked again once a text or an heir has changed', async () => {
    const changed = {
      ...joint,
      new: { ...joint.new, get: (id: string) => ({ ...joint.new.get(id)!, hash: `${id} anew` }) },
    };
    const { rows, findings, again } = await run(asked => {
      Object.assign(find(asked, '3.4.5'), { answer: 'carry', heir: '3.3.3', by: 'Ana' });
    }, changed);
    expect(rows[0]!.outcome).toBe('choose');
    expect(findings.map(f => f.rule)).toContain('decision-asked-again');
    expect(find(again!, '3.4.5')).toMatchObject({ answer: '', by: '' });
  });

  it('report answers without a name, of unknown words, for unknown numbers and for no line', async () => {
    const { rows, findings } = await run(asked => {
      Object.assign(find(asked, '3.4.5'), { answer: 'carry', heir: '8.8.8', by: 'Ana' });
      Object.assign(find(asked, '3.1.3'), { answer: 'carry' });
      Object.assign(find(asked, '3.1.4'), { answer: 'perhaps', by: 'Ana' });
      Object.assign(find(asked, '9.9.9'), { number: '7.7.7', answer: 'drop', by: 'Ana' });
    });
    expect(findings.map(f => f.message).filter(m => !m.startsWith('No column'))).toEqual([
      'The answer for 3.1.3 has no name under by; fill it in.',
      'perhaps is no answer; write carry, stay or drop.',
      '8.8.8 names nothing, or not one thing, in 2024; correct heir.',
      'No line of the table is what 7.7.7 was decided for.',
    ]);
    expect(rows.map(r => r.outcome)).not.toContain('kept');
  });
});

describe('lines that ask more under a running contract', () => {
  it('are listed by job and case; closed lines are not among them', async () => {
    const { files, text } = memoryFiles({
      in: 'Job,Item,Type,Status\nA,3.1.3,house,open\nA,3.1.3,house,open\nB,3.1.3,house,signed\nB,3.1.1,house,open\n',
    });
    await carryJobs({ files, progress: () => {} }, joint, marks, {
      input: 'in',
      out: 'out',
      priceChanges: 'dearer.csv',
    });
    expect(rowsOf(text('dearer.csv')!).map(r => [r.job, r.first_record, r.lines, r.number, r.new_number])).toEqual([
      ['A', '1', '2', '3.1.3', '3.1.3'],
    ]);
  });

  it('are not listed where a person left them under their edition or took them out of the job', async () => {
    const { files, held, text } = memoryFiles({
      in: 'Job,Item,Type,Status\nA,3.1.3,house,open\nB,3.1.3,terrace,open\n',
    });
    const carry = (options: object) =>
      carryJobs({ files, progress: () => {} }, joint, marks, { input: 'in', out: 'out', ...options });
    await carry({ decisionsOut: 'ask.csv' });
    for (const [answer, jobs] of [
      ['carry', ['A', 'B']],
      ['stay', ['B']],
      ['drop', ['B']],
    ] as const) {
      const rows = rowsOf(text('ask.csv')!).map(r => (r.type === 'house' ? { ...r, answer, by: 'Ana' } : r));
      held.set('answers.csv', Buffer.from(writeCsv([Object.keys(rows[0]!), ...rows.map(r => Object.values(r))])));
      await carry({ decisions: 'answers.csv', priceChanges: 'dearer.csv' });
      expect(rowsOf(text('dearer.csv')!).map(r => r.job)).toEqual(jobs);
    }
  });
});
