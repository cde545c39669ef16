import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { csvHead } from '../../src/commands/jobs/csv-head.ts';
import { openZip } from '../../src/office/open-zip.ts';
import { writeZip } from '../../src/office/write-zip.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { writeXlsx } from '../../src/tables/write-xlsx.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

/** A workbook with its first sheet changed. */
function withSheet(bytes: Uint8Array, change: (xml: string) => string): Uint8Array {
  const parts = openZip(bytes, 'book');
  const sheet = 'xl/worksheets/sheet1.xml';
  const xml = change(new TextDecoder().decode(parts.get(sheet)));
  return writeZip(new Map([...parts, [sheet, new TextEncoder().encode(xml)]]));
}

async function carry(name: string, content: string | Uint8Array) {
  const { files, held, text } = memoryFiles({ [name]: content });
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, { input: name, out: 'out' });
  return { report, files, held, text: () => text('out')! };
}

const JOBS = 'J1,3.1.1,house,open\nJ2,3.1.2,house,open\n';

describe('a head of two lines in csv', () => {
  it('is read as one, told, and no job; ours are named in its last line', async () => {
    const { report, text } = await carry('jobs.csv', `Work,,Place,\nJob,Item,Kind,Status\n${JOBS}`);
    expect(report.totals).toMatchObject({ lines: 2, outcomes: { unknown: 0 } });
    expect(report.columns).toMatchObject({ number: { header: 'Item' }, job: { header: 'Job' } });
    expect(report.findings.filter(f => f.rule === 'second-head').map(f => f.message)).toEqual([
      'The head of jobs.csv is read in two lines; its columns are Job, Item, Kind, Status. If the second is a job, put a line with the names of the columns above it.',
    ]);
    expect(report.findings.map(f => f.rule)).not.toContain('short-line');
    const rows = parse(text()) as string[][];
    expect(rows[0]).toEqual(['Work', '', 'Place', '', ...new Array(9).fill('')]);
    expect(rows[1]!.slice(0, 5)).toEqual(['Job', 'Item', 'Kind', 'Status', 'new_number']);
    expect(text().startsWith('Work,,Place,,')).toBe(true);
  });

  it('is known again in an output of ours, which is left alone', async () => {
    const { files } = await carry('jobs.csv', `Work,,Place,\nJob,Item,Kind,outcome\n${JOBS}`);
    const again = await carryJobs({ files, progress: () => {} }, joint, marks, { input: 'out', out: 'out2' });
    expect(again.leftAlone).toBe(true);
  });

  it.each([
    [
      'names that a cell over two lines leaves out',
      ['Job,Item,Work,', ',,Kind,Status'],
      ['Job', 'Item', 'Kind', 'Status'],
    ],
    [
      'the names of both lines where they say different things',
      ['Order,Rule,Place,State,Note', 'no.,cited,kind,at present,free text'],
      ['Order no.', 'cited', 'kind', 'State at present', 'free text'],
    ],
    [
      'names below the only groups',
      ['Order,,Where,,Remark', ',Rule,Place,State,'],
      ['Order', 'Rule', 'Place', 'State', 'Remark'],
    ],
    [
      'names without a role below the groups',
      ['Order,,Place,', 'No,Rule,Kind,State'],
      ['Order No', 'Rule', 'Kind', 'State'],
    ],
    ['a second language', ['Auftrag,Nummer,Ort,Stand', 'Job,Item,Kind,Status'], ['Job', 'Item', 'Kind', 'Status']],
  ])('has %s', (_, head, names) => {
    const records = [...head, ...JOBS.trim().split('\n')].map(line => line.split(','));
    expect(csvHead(records)).toEqual({ names, records: 2 });
  });

  it.each([
    ['has a job number', 'Job,Item,Kind,Status', 'J0,tbd,house,open'],
    ['has words that come again below', 'Job,Item,Kind,Status', 'Elm,unknown,house,open'],
    ['leaves a gap of the first line open', 'Job,Item,,Status', 'Elm,tbd,,new'],
    ['says nothing of columns', 'Job,Item,Kind,Status', 'Elm,later,cottage,waiting'],
    ['is a job in words below a gap', 'Job,Rule,Place,', 'Barn,as agreed,meadow,call first'],
    ['is a job whose words are like names', 'Job,Rule,Place,Remark', 'Order pending,item missing,meadow,place unclear'],
    ['answers no', 'Job,Rule,Place,Remark', 'Elm,no,stage,open'],
    ['is a job below groups', 'Job,,Place,', 'Barn,as agreed,meadow,no order'],
    ['may be one, but the first names the numbers already', 'Job,Item,Kind,Status', 'Order,Number,Type,State'],
    ['adds to a job, below a gap', 'Job,Item,Place,', ',,see above,order'],
    ['is all there is', 'Job,Item,Kind,Status', ''],
  ])('is none where the second line %s', (_, first, second) => {
    const lines = second === '' ? [first] : [first, second, ...JOBS.trim().split('\n')];
    expect(csvHead(lines.map(line => line.split(',')))).toMatchObject({ records: 1 });
  });
});

describe('a first job in words', () => {
  it('comes out as a line of its own, and the job column is still known', async () => {
    const { report, text } = await carry(
      'jobs.csv',
      'Job,Rule,Place,Remark\nOrder pending,item missing,meadow,place unclear\nMill,3.1.1,orchard,\n',
    );
    expect(report.totals).toMatchObject({ lines: 2, outcomes: { unknown: 1 } });
    expect(report.columns).toMatchObject({ number: { header: 'Rule' }, job: { header: 'Job' } });
    expect((parse(text()) as string[][])[1]!.slice(0, 2)).toEqual(['Order pending', 'item missing']);
  });
});

describe('a merged head in a workbook', () => {
  const book = withSheet(
    writeXlsx([
      {
        name: 'Jobs',
        header: ['Job', '', 'Type', 'Status'],
        rows: JOBS.trim()
          .split('\n')
          .map(l => l.split(',')),
      },
    ]),
    xml => xml.replace('</sheetData>', '</sheetData><mergeCells count="1"><mergeCell ref="A1:B1"/></mergeCells>'),
  );

  it('is called one, and the jobs below it are carried', async () => {
    const { report } = await carry('jobs.xlsx', book);
    expect(report.totals.lines).toBe(2);
    expect(report.findings.filter(f => f.rule === 'merged-head').map(f => f.message)).toEqual([
      'The head is merged: Job is one cell over the columns A to B, which are told apart by what is in them. Take the merge apart and give each its name.',
    ]);
  });

  it('is refused by what needs a name for each column', () => {
    expect(() => readTable('jobs.xlsx', book)).toThrow(
      'jobs.xlsx has a merged head: Job is one cell over several columns; take the merge apart and give each its name.',
    );
  });
});
