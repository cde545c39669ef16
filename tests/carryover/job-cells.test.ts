import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(csv: string, stateNames = {}) {
  const { files, text } = memoryFiles({ 'jobs.csv': csv });
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, {
    input: 'jobs.csv',
    out: 'out.csv',
    decisionsOut: 'ask.csv',
    stateNames,
  });
  const all = parse(text('out.csv') ?? '', { columns: true }) as Record<string, string>[];
  return { report, lines: all.filter(line => line.origin === 'input') };
}

describe('a cell with a number in it, as people fill it in', () => {
  it.each([
    'cl. 3.1.1',
    'Cl 3.1.1',
    'clause 3.1.1',
    '§ 3.1.1',
    '§§3.1.1',
    'Nr. 3.1.1',
    'sec. 3.1.1',
    '3.1.1;',
    '3.1.1,',
  ])('is read: %s', async cell => {
    const { lines } = await carry(`item,state\n"${cell}",open\n3.1.2,open\n`);
    expect(lines[0]).toMatchObject({ outcome: 'carried', new_number: '3.1.2' });
  });

  it.each([
    ['3.1.1; 3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1;3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1, 3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1 3.1.2', '3.1.2 | 3.1.1'],
    ['clauses 3.1.1 and 3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1 / 3.1.2 (2018)', '3.1.2 | 3.1.1'],
    ['3.1.1 to 3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1–3.1.2', '3.1.2 | 3.1.1'],
    ['3.1.1; 9.9.9', '3.1.2'],
  ])('with several in it is one line that a person takes apart: %s', async (cell, heirs) => {
    const { lines } = await carry(`item\n"${cell}"\n3.1.2\n`);
    expect(lines[0]).toMatchObject({
      outcome: 'choose',
      new_number: heirs,
      to_do: 'Put each number on a line of its own, and run again.',
    });
  });

  it.each(['3.1.1 Base, 2 slabs', '3.1.1 Base and 2.5 m of it', '3.1.1 urgent'])(
    'with words behind the number is no list: %s',
    async cell => {
      const { lines } = await carry(`item\n"${cell}"\n3.1.2\n`);
      expect(lines[0]).toMatchObject({ outcome: 'carried', new_number: '3.1.2' });
    },
  );

  it('that says the newer edition is kept as it is, if that prints the number', async () => {
    const { lines } = await carry('item\n3.1.4 (2024)\n3.1.4\n9.9.9 (2024)\n3.1.1\n');
    expect(lines[0]).toMatchObject({ outcome: 'kept', new_number: '3.1.4', new_title: 'Strap', to_do: '' });
    expect(lines[0]!.why).toBe('3.1.4 is said to be of 2024 already.');
    expect(lines[1]).toMatchObject({ outcome: 'withdrawn' });
    expect(lines[2]).toMatchObject({ outcome: 'unknown', why: 'Edition 2024 has no 9.9.9.' });
  });
});

describe('a line that sums up others', () => {
  it('is told as such, even where its sum is a number of the edition, and nobody is asked about it', async () => {
    const { lines, report } = await carry('job,item,state\nA,3.1.1,open\nB,3.1.2,open\nTotal,3,\nSumme:,11,\n');
    expect(lines.slice(2).map(l => [l.outcome, l.to_do])).toEqual([
      ['unknown', 'Leave it as it is.'],
      ['unknown', 'Leave it as it is.'],
    ]);
    expect(lines[2]!.why).toBe('This line is headed “Total”: it sums up others and is no job.');
    expect(report.questions).toEqual([]);
    expect(report.totals).toMatchObject({ lines: 4, agree: true });
  });

  it('is a job where it has a state', async () => {
    const { lines } = await carry('job,item,state\nTotal,3.1.1,open\n');
    expect(lines[0]).toMatchObject({ outcome: 'carried' });
  });
});

describe('the state of a line', () => {
  it.each(['erledigt', 'Abgenommen', 'abgerechnet', 'terminé'])('is known in German and French: %s', async word => {
    const { report } = await carry(`Nr;Stand\n3.1.1;offen\n3.1.2;${word}\n`);
    expect(report.columns.state?.header).toBe('Stand');
    expect(report.totals.closed).toBe(1);
    expect(report.findings.filter(f => f.rule === 'unknown-state')).toEqual([]);
  });

  it.each(['nicht erledigt', 'in Arbeit', 'noch nicht geprüft', 'en cours'])(
    'is open where it says so: %s',
    async word => {
      const { report } = await carry(`Nr;Stand\n3.1.1;${word}\n3.1.2;erledigt\n`);
      expect(report.totals.closed).toBe(1);
      expect(report.findings.filter(f => f.rule === 'unknown-state')).toEqual([]);
    },
  );

  it('can be taught, and a word that is on no list is told with the way to teach it', async () => {
    const csv = 'no,status\n3.1.1,hotovo\n3.1.2,open\n3.1.3,open\n';
    const untaught = await carry(csv);
    expect(untaught.report.totals.closed).toBe(0);
    expect(untaught.report.findings.map(f => f.message).join()).toContain('--state-name "hotovo=done"');
    const { report } = await carry(csv, { Hotovo: 'done' });
    expect(report.totals.closed).toBe(1);
    expect(report.findings.filter(f => f.rule === 'unknown-state')).toEqual([]);
  });
});

describe('a number that a spreadsheet may have cut before it saved the file as csv', () => {
  const entries = joint.from.entries.map(e => ({ ...e, number: { stays: '3.10', w31: '3.01' }[e.id] ?? e.number }));
  const numbered = entries.map(e => (e.id === 'base' ? { ...e, number: '3.1' } : e));
  const cuttable = joinEditions({ ...joint.from, entries: numbered }, joint.to, joint.crosswalk);
  const carriedOf = async (csv: string, name = 'jobs.csv') => {
    const { files, text } = memoryFiles({ [name]: csv });
    const report = await carryJobs({ files, progress: () => {} }, cuttable, marks, { input: name, out: 'out' });
    const told = report.findings.filter(f => f.rule === 'perhaps-cut').map(f => f.message);
    return { report, told, text: text('out')! };
  };
  const outcomesOf = (csv: string) => (parse(csv, { columns: true }) as Record<string, string>[]).map(r => r.outcome);

  it('is for a person to look up, on each of its lines, and told for the whole table', async () => {
    const { report, told, text } = await carriedOf('job,item,status\nA,3.1,open\nA,3.1,open\nB,3.1,inspected\n');
    expect(outcomesOf(text)).toEqual(['choose', 'choose', 'choose']);
    expect(text).toContain('A spreadsheet may have cut the last zero of this number; it may have been 3.1 or 3.10.');
    expect(report.totals.folded).toBe(0);
    expect(told).toEqual([
      expect.stringMatching(/^3\.1 stands on 3 lines, and 3\.10, which 2018 prints too, on none: /),
    ]);
  });

  it('is what the title beside it names, as in a workbook', async () => {
    const { text } = await carriedOf(
      'item,description\n3.1,Outlet\n3.1,Base for the butt\n3.1,Outlet\n3.1,look again\n',
    );
    const rows = parse(text, { columns: true }) as Record<string, string>[];
    expect(rows.map(r => r.outcome)).toEqual(['carried', 'carried', 'carried', 'choose']);
    expect(rows[0]!.new_title).toBe('Outlet');
    expect(rows[1]!.new_title).toBe('Base for the butt');
  });

  it('is decided for all lines that say it at once, which is said before and after, and kept for no other table', async () => {
    const input = 'job,item,status\nA,3.1,open\nB,3.1,open\n';
    const asked = memoryFiles({ 'jobs.csv': input });
    const decide = (held: typeof asked, options: object) =>
      carryJobs({ files: held.files, progress: () => {} }, cuttable, marks, {
        input: 'jobs.csv',
        out: 'out',
        ...options,
      });
    await decide(asked, { decisionsOut: 'ask.csv' });
    const questions = asked.text('ask.csv')!;
    expect(questions).toContain('An answer here decides all lines that say 3.1 alike.');
    const given = questions.replace(/,,,,(\r?\n)$/, ',stay,,it is 3.1,Ana$1');
    const answered = memoryFiles({ 'jobs.csv': input, 'given.csv': given });
    const report = await decide(answered, { decisions: 'given.csv' });
    const rows = parse(answered.text('out')!, { columns: true }) as Record<string, string>[];
    expect(rows.map(r => r.why)).toEqual(
      new Array(2).fill(
        'Decided by Ana for all lines like this one: it is 3.1. A spreadsheet may have cut the last zero of this number; it may have been 3.1 or 3.10.',
      ),
    );
    expect(report.findings.filter(f => f.rule === 'decision-for-all')).toMatchObject([{ severity: 'note' }]);
    expect(report.answered).toEqual([]);
  });

  it('is none where another number has kept its zero', async () => {
    const { report, told, text } = await carriedOf('job,item,status\nA,3.1,open\nA,3.1,open\nB,3.10,open\n');
    expect(outcomesOf(text)).not.toContain('choose');
    expect([report.totals.folded, told]).toEqual([1, []]);
  });

  it('is looked up in JSON Lines as well, where numbers without quotes lose their zero', async () => {
    for (const cell of ['"3.1"', '3.1', '3.10']) {
      const { text } = await carriedOf(`{"item":${cell}}\n{"item":"3.4.5"}\n`, 'jobs.jsonl');
      expect(JSON.parse(text.split('\n')[0]!)).toMatchObject({ outcome: 'choose' });
    }
  });
});
