import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(input: string | Uint8Array, columns = {}, chunk?: number) {
  const { files, held, text } = memoryFiles({ 'jobs.csv': input }, chunk);
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, {
    input: 'jobs.csv',
    out: 'out.csv',
    columns,
  });
  const out = text('out.csv') ?? '';
  return { report, out, held, files };
}

const records = (csv: string, delimiter = ',') =>
  parse(csv, { bom: true, delimiter, record_delimiter: ['\r\n', '\n', '\r'], relax_column_count: true }) as string[][];

const JOBS = `Job,Item,Type,Status,Remark
J1,3.1.1,house lot,open,"two, of them"
J1,3.2.1,house lot,open,
J1,3.1.4,house lot,open,
J2,3.1.2,terrace row,signed,=1+1
J2,3.1.3,terrace row,open,
J3,3.4.5,courtyard block,planned,
J3,3.1.9,court,open,
`;

describe('carrying a job table', () => {
  it('brings every line back as it was, with our columns at the right', async () => {
    const { out } = await carry(JOBS);
    expect(out).toMatchInlineSnapshot(`
      "Job,Item,Type,Status,Remark,new_number,new_title,outcome,why,to_do,origin,folds_into,read_in,carried_to
      J1,3.1.1,house lot,open,"two, of them",3.1.2,Base for the butt,carried,3.1.1 is 3.1.2 Base for the butt in 2024 and asks the same.,Cite 3.1.2 from now on.,input,,2018,2024
      J1,3.2.1,house lot,open,,3.2.1,Capacity of the overflow,choose,"3.2.1 is 3.2.1 Capacity of the overflow in 2024 and asks more than before. Demand added: ""without splashing"" (stricter).",Compare 3.2.1 of 2018 with 3.2.1 of 2024 before citing the latter.,input,,2018,2024
      J1,3.1.4,house lot,open,,,,withdrawn,3.1.4 is withdrawn in 2024: the product is no longer used. Lead paint is not sold any more.,Read 3.1.4 Strap of 2024 and decide whether it takes the place of 3.1.4.,input,,2018,2024
      J1,,house lot,,,3.1.4,Strap,added,New in 2024 for house lot under 3.1 Setting rain butts.,Plan it if this job follows the newer edition.,added,,2018,2024
      J2,3.1.2,terrace row,signed,=1+1,3.1.1,Lid,carried,3.1.2 is 3.1.1 Lid in 2024 and asks the same.,Leave this line as it stands under edition 2018: it is signed.,input,,2018,2024
      J2,3.1.3,terrace row,open,,3.1.3,Tap height,choose,"3.1.3 is 3.1.3 Tap height in 2024 and asks more than before. Value changed: ""at least 300 mm"" → ""at least 450 mm"" (stricter).",Compare 3.1.3 of 2018 with 3.1.3 of 2024 before citing the latter.,input,,2018,2024
      J2,,terrace row,,,3.1.4,Strap,added,New in 2024 for terrace row under 3.1 Setting rain butts.,Plan it if this job follows the newer edition.,added,,2018,2024
      J2,,terrace row,,,3.1.5,Label,added,New in 2024 for terrace row under 3.1 Setting rain butts.,Plan it if this job follows the newer edition.,added,,2018,2024
      J3,3.4.5,courtyard block,planned,,3.3.3 | 3.3.4,Cover | Lock,choose,"In 2024, 3.4.5 has gone to 3.3.3 Cover and 3.3.4 Lock.",Say which of 3.3.3 and 3.3.4 this citation means; it may be all of them.,input,,2018,2024
      J3,3.1.9,court,open,,,,unknown,Edition 2018 has no 3.1.9.,Check the number; near it are 3.1.5 and 3.1.4.,input,,2018,2024
      "
    `);
  });

  it('names what it found each column to be', async () => {
    const { report } = await carry(JOBS);
    const found = Object.entries(report.columns).map(([role, c]) => `${role}: ${c.header} (${c.how})`);
    expect(found).toEqual(['number: Item (found)', 'type: Type (found)', 'state: Status (found)', 'job: Job (found)']);
  });

  it('adds up: lines in are the sum of the outcomes and of the cases', async () => {
    const { report, out } = await carry(JOBS);
    expect(report.totals.agree).toBe(true);
    expect(report.totals.lines).toBe(7);
    expect(Object.values(report.totals.outcomes).reduce((a, b) => a + b)).toBe(7);
    expect(report.cases.reduce((n, c) => n + c.lines, 0)).toBe(7);
    const [header, ...lines] = records(out);
    const origin = header!.indexOf('origin');
    expect(lines.filter(l => l[origin] === 'input')).toHaveLength(7);
    expect(lines.filter(l => l[origin] === 'added')).toHaveLength(report.totals.added);
  });

  it('folds later lines of a job into the first that has the same heir and type, and into no closed line', async () => {
    const { out, report } = await carry(
      'job,no,type,state\nA,3.2.1,house,signed\nA,3.2.1,house,open\nA,3.2.1,house,open\nB,3.2.1,house,open\n',
    );
    const at = records(out)[0]!.indexOf('folds_into');
    const input = records(out)
      .slice(1)
      .filter(l => l.includes('input'));
    expect(input.map(l => l[at])).toEqual(['', '', '2', '']);
    expect(report.totals.folded).toBe(1);
  });

  it('adds what is new under the work items of open lines, for the type of the job, once', async () => {
    const lines = (csv: string) =>
      records(csv)
        .filter(l => l.includes('added'))
        .map(l => [l[0], l[1], l[2], l[4]]);
    const header = 'job,no,type,state\n';
    expect(
      lines((await carry(`${header}A,3.1.1,terrace,open\nA,3.1.3,terrace,open\nB,3.4.1,court,open\n`)).out),
    ).toEqual([
      ['A', '', 'terrace', '3.1.4'],
      ['A', '', 'terrace', '3.1.5'],
    ]);
    expect(lines((await carry(`${header}A,3.1,house,open\n`)).out)).toEqual([['A', '', 'house', '3.1.4']]);
    expect(lines((await carry(`${header}A,3.1.1,terrace,inspected\n`)).out)).toEqual([]);
  });

  it('says of a closed line to leave it under the older edition', async () => {
    const { out, report } = await carry(JOBS);
    const line = records(out).find(l => l[3] === 'signed')!;
    expect(line).toContain('Leave this line as it stands under edition 2018: it is signed.');
    expect(report.totals.closed).toBe(1);
  });

  it('says so when a job comes back after other jobs', async () => {
    const { report } = await carry('job,no\nA,3.1.1\nB,3.1.1\nA,3.1.1\n');
    expect(report.findings.filter(f => f.rule === 'job-returns').map(f => f.message)).toEqual([
      'Job A comes back in record 3 after other jobs; its parts are folded each for itself. Sort the table by job to join them.',
    ]);
  });

  it('takes the edition that a line names, and answers for no other than the one it starts from', async () => {
    const { out } = await carry('no,edition\n3.1.1,2018\n3.1.1,2014\n3.1.1 (2014),\n');
    const [, ...lines] = records(out);
    expect(lines.map(l => l[4])).toEqual(['carried', 'unknown', 'unknown']);
    expect(lines[1]![6]).toBe('Run again with --from 2014.');
    expect(lines.map(l => l[9])).toEqual(['2018', '2014', '2014']);
  });

  it('checks the number by the title beside it', async () => {
    const { out } = await carry('no,what\n3.1.1,Base for the butt\n3.1.1,Lid\n3.1.1,urgent\n3.1.2 Lid,\n');
    expect(
      records(out)
        .slice(1)
        .map(l => l[4]),
    ).toEqual(['carried', 'choose', 'carried', 'carried']);
  });
});

describe('tables as people have them', () => {
  it.each([
    ['a number of the edition', '3.1.1\n3.1.2\n', '3.1.1 is a number of 2018'],
    ['a number with its title', 'J1,3.1.1 Base for the butt\nJ2,3.1.2 Lid\n', '3.1.1 Base for the butt is a number of'],
    ['a number that the edition does not print', 'J1,9.9.9\nJ2,3.1.2\n', '9.9.9 looks like a number'],
    ['a job without a number', 'J1,,2018-03-04\nJ2,3.1.2,2018-03-05\n', '2018-03-04 is a day'],
  ])('are refused where a job stands in place of the head: %s', async (_, csv, what) => {
    await expect(carry(csv)).rejects.toThrow(`The first line looks like a job, not like a head: ${what}`);
  });

  it('may call their columns by words with a number in them', async () => {
    const { report } = await carry('Job,Item 1,Part 3\nA,3.1.1,x\n');
    expect(report.columns.number?.header).toBe('Item 1');
  });

  it.each([
    ['a byte order mark and CRLF', '\ufeffjob,no\r\nA,3.1.1\r\n'],
    ['semicolons', 'job;no;rest\nA;3.1.1;"x;y"\n'],
    ['tabs', 'job\tno\nA\t3.1.1\n'],
    ['mixed line ends', 'job,no\r\nA,3.1.1\nB,3.1.2\rC,3.1.3\r\n'],
    ['no line end at the end', 'job,no\nA,3.1.1'],
    ['quotes where none are needed', '"job","no"\n"A","3.1.1"\n"B ""the big""","3.1.2"\n'],
    ['line breaks inside cells', 'job,no,note\nA,3.1.1,"one\r\ntwo\nthree"\nB,3.1.2,\n'],
    ['short lines', 'job,no,note\nA,3.1.1\nB,3.1.2,x\n'],
    ['a header called __proto__', '__proto__,no,constructor\nA,3.1.1,x\n'],
    ['two headers of one name', 'no,note,note\n3.1.1,a,b\n'],
    ['our own header names', 'no,outcome,why\n3.1.1,good,because\n'],
    ['formulas', 'no,note\n3.1.1,=cmd()\n3.1.2,@x\n'],
    ['blank lines', 'job,no\n\nA,3.1.1\n\n'],
  ])('%s: not a byte of the user is changed, wherever the chunks end', async (_, input) => {
    const whole = await carry(input);
    for (const chunk of [1, 2, 3, 5, 7]) {
      expect((await carry(input, {}, chunk)).out).toBe(whole.out);
    }
    const theirs = input.split(/(?<=\n|\r(?!\n))/);
    let at = 0;
    for (const line of theirs) {
      const body = line.replace(/[\r\n]+$/, '');
      const found = whole.out.indexOf(body, at);
      expect(found).toBeGreaterThanOrEqual(at);
      at = found + body.length;
    }
    expect(whole.report.totals.agree).toBe(true);
  });

  it('keeps any table whole: dropping our columns gives the bytes that came in', async () => {
    const cell = fc.oneof(
      fc.constantFrom(...joint.from.entries.map(e => e.number)),
      fc.string({ unit: 'grapheme' }).map(s => `"${s.replaceAll('"', '""')}"`),
    );
    const table = fc.tuple(fc.array(cell, { minLength: 1, maxLength: 20 }), fc.constantFrom('\n', '\r\n'));
    await fc.assert(
      fc.asyncProperty(table, fc.integer({ min: 1, max: 50 }), async ([cells, end], chunk) => {
        const lines = ['no,note', '3.1.1,first', ...cells.map(c => `3.1.2,${c}`)];
        const { out, report } = await carry(lines.join(end) + end, { number: 'no', job: 'note' }, chunk);
        expect(report.totals.agree).toBe(true);
        const back = records(out)
          .filter(r => r.includes('input'))
          .map(r => r.slice(0, 2));
        expect(back).toEqual(records(lines.slice(1).join(end)));
        for (const line of lines) expect(out).toContain(line);
      }),
      { numRuns: 60 },
    );
  });

  it('tells two headers of one name apart by position, and says so', async () => {
    const { report } = await carry('no,note,note\n3.1.1,a,b\n');
    expect(report.findings.map(f => f.rule)).toContain('duplicate-header');
    await expect(carry('no,no\n3.1.1,3.1.2\n', { number: 'no' })).rejects.toMatchObject({ code: 'BadArgument' });
    const second = await carry('no,no\n3.1.1,3.1.2\n', { number: '2' });
    expect(second.report.cases[0]!.number).toBe('3.1.2');
  });

  it('gives our headers a number where the user has them already', async () => {
    const { out } = await carry('no,outcome,why\n3.1.1,good,because\n');
    expect(records(out)[0]!.slice(3)).toEqual(
      'new_number,new_title,outcome_2,why_2,to_do,origin,folds_into,read_in,carried_to'.split(','),
    );
  });

  it('makes cells of ours harmless that begin like a formula', async () => {
    const { out } = await carry('no,note\n=2+5,=2+5\n3.1.1,-1\n');
    expect(out.split('\n')[1]).toMatch(/^=2\+5,=2\+5,/);
    const hostile = {
      ...joint,
      new: { ...joint.new, get: (id: string) => ({ ...joint.new.get(id)!, title: '=HYPERLINK("x")' }) },
    };
    const { files, text } = memoryFiles({ a: 'no\n3.1.1\n' });
    await carryJobs({ files, progress: () => {} }, hostile, marks, { input: 'a', out: 'b' });
    expect(text('b')).toContain(`"'=HYPERLINK(""x"")"`);
  });

  it('survives a cell of 1 MB', async () => {
    const big = 'x'.repeat(1024 * 1024);
    const { out, report } = await carry(`no,note\n3.1.1,"${big}"\n${big},\n3.1.2,\n`);
    expect(report.totals.lines).toBe(3);
    expect(report.totals.outcomes.carried).toBe(2);
    expect(out.length).toBeLessThan(2 * big.length + 3000);
  });

  it.each([
    ['a quote that is never closed', 'no,note\n3.1.1,x\n3.1.2,"y\n', 3, 2],
    ['a quote inside a cell', 'no,note\n3.1.1,a "b" c\n', 2, 2],
    ['text after a closing quote', 'no,note\n3.1.1,"a"b\n', 2, 2],
    ['a line longer than the header', 'no,note\n3.1.1,a\n3.1.2,a,b\n', 3, 3],
  ])('%s is refused with line and column, and nothing is written', async (_, input, line, column) => {
    const { files, held } = memoryFiles({ 'jobs.csv': input });
    const told = carryJobs({ files, progress: () => {} }, joint, marks, { input: 'jobs.csv', out: 'out.csv' });
    await expect(told).rejects.toMatchObject({ code: 'BadTable', data: { line, column } });
    expect([...held.keys()]).toEqual(['jobs.csv']);
  });

  it('refuses bytes that are not UTF-8, naming the line', async () => {
    const latin = Buffer.concat([Buffer.from('no,note\n3.1.1,a\n3.1.2,Stra'), Buffer.from([0xdf]), Buffer.from('e\n')]);
    await expect(carry(latin)).rejects.toMatchObject({ code: 'BadTable', data: { line: 3, column: 2 } });
    await expect(carry(Buffer.from('\ufeffno\n3.1.1\n', 'utf16le'))).rejects.toThrow(/UTF-16/);
  });

  it('refuses an empty table and one without any number of the edition', async () => {
    await expect(carry('')).rejects.toMatchObject({ code: 'BadTable' });
    await expect(carry('a,b\nx,y\n')).rejects.toThrow(/No column holds numbers of edition 2018/);
  });
});

describe('running again', () => {
  const run = async (files: ReturnType<typeof memoryFiles>['files'], input: string, out: string) =>
    carryJobs({ files, progress: () => {} }, joint, marks, { input, out });

  it('on the original gives the same bytes', async () => {
    const { files, text } = memoryFiles({ in: JOBS });
    await run(files, 'in', 'out');
    const first = [text('out'), text('out.fishplate.json')];
    await run(files, 'in', 'out');
    expect([text('out'), text('out.fishplate.json')]).toEqual(first);
  });

  it('on an output leaves it alone', async () => {
    const { files, held } = memoryFiles({ in: JOBS });
    await run(files, 'in', 'out');
    expect(await run(files, 'out', 'again')).toMatchObject({ leftAlone: true, to: '2024' });
    expect(held.has('again')).toBe(false);
  });

  it('on an edited output, or on one without its sidecar, is refused', async () => {
    const { files, held } = memoryFiles({ in: JOBS });
    await run(files, 'in', 'out');
    held.set('out', Buffer.concat([held.get('out')!, Buffer.from('\n')]));
    await expect(run(files, 'out', 'again')).rejects.toMatchObject({ code: 'AlreadyCarried' });
    await expect(run(files, 'in', 'out')).rejects.toMatchObject({ code: 'AlreadyCarried' });
    held.delete('out.fishplate.json');
    await expect(run(files, 'out', 'again')).rejects.toMatchObject({ code: 'AlreadyCarried' });
  });

  it('onto the input is refused', async () => {
    const { files } = memoryFiles({ in: JOBS });
    await expect(run(files, 'in', 'in')).rejects.toMatchObject({ code: 'OutputIsInput' });
  });
});
