import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import ExcelJS from 'exceljs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fishplate as fishplateApart } from './run-cli.ts';
import { fishplateIn as fishplate } from './run-here.ts';

const OLD = `Ref,parent,Heading,Wording
1,,Gutters,
1.1,1,Brackets,The gutter shall be fixed with brackets at 600 mm centres.
1.2,1,Downpipes,Downpipes shall be clipped to the wall at every joint.
2,,Conduct,
2.1,2,Greeting,The inspector shall be greeted politely on arrival.
`;
const NEW = `number,parent,title,text
1,,Roof drainage,
1.1,1,Pipe clips,Clip downpipes to the wall at each joint.
1.2,1,Gutter brackets,Fix gutters with brackets at centres of 600 mm.
`;
const HEADERS = ['--columns', 'number=Ref,title=Heading,text=Wording'];

interface Line {
  readonly from_number: string;
  readonly to_number: string;
  readonly band: string;
  readonly why: string;
  readonly pair: string;
  readonly confidence: string;
  readonly basis: string;
}

describe('match', () => {
  let dir = '';
  beforeAll(() => {
    dir = mkdtempSync(join(tmpdir(), 'fishplate-match-'));
    writeFileSync(
      join(dir, 'old.csv'),
      OLD.replace('Ref', 'number').replace('Heading', 'title').replace('Wording', 'text'),
    );
    writeFileSync(join(dir, 'other-headers.csv'), OLD);
    writeFileSync(join(dir, 'new.csv'), NEW);
    writeFileSync(join(dir, 'empty.csv'), '');
    writeFileSync(join(dir, 'damaged.csv'), 'number,parent,title\n3.9,9,Ninth\n3.1,,Tenth\n3.1,,First\n4-May,,Date\n');
  });
  afterAll(() => rmSync(dir, { recursive: true, force: true }));

  const lines = (file: string) => parse(readFileSync(join(dir, file), 'utf8'), { columns: true }) as Line[];

  it('links rows by what they say, and never by the number that was used again', async () => {
    const { status, stdout } = await fishplate(dir, 'match', 'old.csv', 'new.csv', '--out', 'out.csv');
    expect([status, stdout]).toEqual([0, expect.stringContaining('should be looked at')]);
    const links = lines('out.csv').map(l => `${l.from_number}>${l.to_number}`);
    expect(links).toEqual(expect.arrayContaining(['1.1>1.2', '1.2>1.1', '2.1>']));
    expect(links).not.toContain('1.1>1.1');
  });

  it('gives the same bytes again', () => {
    // A process of its own, which has matched nothing before.
    fishplateApart(dir, 'match', 'old.csv', 'new.csv', '--out', 'again.csv');
    expect(readFileSync(join(dir, 'again.csv'))).toEqual(readFileSync(join(dir, 'out.csv')));
  });

  it('takes answers back from its own output, and they stand', async () => {
    const filled = readFileSync(join(dir, 'out.csv'), 'utf8')
      .split('\r\n')
      .map(line => (/,2\.1,/.test(line) ? line.replace(/,,,$/, ',,1.1,the office says so') : line))
      .join('\r\n');
    writeFileSync(join(dir, 'filled.csv'), filled);
    const { status } = await fishplate(
      dir,
      'match',
      'old.csv',
      'new.csv',
      '--answers',
      'filled.csv',
      '--out',
      'answered.csv',
    );
    expect(status).toBe(0);
    const link = lines('answered.csv').find(l => l.from_number === '2.1');
    expect(link).toMatchObject({ to_number: '1.1', basis: 'confirmed', band: 'accept', confidence: '1' });
    expect(link?.why).toContain('the office says so');
  });

  it('writes a workbook that another library reads, and takes it back with answers, saved by that library', async () => {
    await fishplate(dir, 'match', 'old.csv', 'new.csv', '--out', 'out.xlsx');
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(join(dir, 'out.xlsx'));
    const sheet = book.worksheets[0]!;
    const csv = parse(readFileSync(join(dir, 'out.csv'), 'utf8')) as string[][];
    const cells = csv.map((row, r) => row.map((_, c) => sheet.getCell(r + 1, c + 1).text));
    expect(cells).toEqual(csv);
    const row = csv.findIndex(cell => cell.includes('2.1'));
    sheet.getCell(row + 1, csv[0]!.indexOf('instead') + 1).value = '1.1';
    await book.xlsx.writeFile(join(dir, 'filled.xlsx'));
    const { status } = await fishplate(
      dir,
      'match',
      'old.csv',
      'new.csv',
      '--answers',
      'filled.xlsx',
      '--out',
      'w.csv',
    );
    expect([status, lines('w.csv').find(l => l.from_number === '2.1')]).toMatchObject([0, { to_number: '1.1' }]);
  });

  it('reads tables from workbooks too', async () => {
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet('Old');
    for (const row of parse(readFileSync(join(dir, 'old.csv'), 'utf8')) as string[][]) sheet.addRow(row);
    await book.xlsx.writeFile(join(dir, 'old.xlsx'));
    await fishplate(dir, 'match', 'old.xlsx', 'new.csv', '--out', 'from-xlsx.csv');
    const links = (file: string) => lines(file).map(l => [l.from_number, l.to_number, l.confidence]);
    expect(links('from-xlsx.csv')).toEqual(links('out.csv'));
  });

  it('does not take an answer whose text has changed since', async () => {
    writeFileSync(join(dir, 'changed.csv'), NEW.replace('each joint', 'each second joint'));
    const told = readFileSync(join(dir, 'out.csv'), 'utf8').split('\r\n');
    const stale = told.map(line => (/,1\.2,Downpipes,/.test(line) ? line.replace(/,,,$/, ',yes,,') : line));
    writeFileSync(join(dir, 'stale.csv'), stale.join('\r\n'));
    const { status, stderr } = await fishplate(
      dir,
      'match',
      'old.csv',
      'changed.csv',
      '--answers',
      'stale.csv',
      '--out',
      'x.csv',
    );
    expect([status, stderr]).toEqual([1, expect.stringContaining('fits no pair of these tables')]);
  });

  it('explains a link by a sum, with the runners-up', async () => {
    const { stdout } = await fishplate(dir, 'match', 'old.csv', 'new.csv', '--explain', '1.1');
    expect(stdout).toMatch(/→ +\d+\.\d % {2}1\.2 Gutter brackets\n.*\(log-odds\)/);
  });

  it('reads headers that are told outright', async () => {
    await fishplate(dir, 'match', 'other-headers.csv', 'new.csv', ...HEADERS, '--out', 'told.csv');
    expect(readFileSync(join(dir, 'told.csv'))).toEqual(readFileSync(join(dir, 'out.csv')));
  });

  it('reports what a spreadsheet did to numbers, and a parent that is missing, and works', async () => {
    const { status, stderr } = await fishplate(dir, 'match', 'damaged.csv', 'new.csv', '--out', 'damaged-out.csv');
    expect(status).toBe(1);
    expect(stderr).toContain('may have cut 3.10');
    expect(stderr).toContain('4-May looks like a date');
    expect(stderr).toContain('its parent 9 is in none of the tables');
    expect(lines('damaged-out.csv').map(l => l.from_number)).toEqual(expect.arrayContaining(['3.9', '3.1', '4-May']));
  });

  it('records what can be accepted as lineage of a catalog, under a name, and leaves the rest unaccounted', async () => {
    const at = ['--catalog', 'works.git'];
    await fishplate(dir, 'import', 'old.csv', '--edition', '2018', ...at);
    await fishplate(dir, 'import', 'new.csv', '--edition', '2024', ...at);
    const { links } = JSON.parse((await fishplate(dir, 'match', '2018', '2024', '--json', ...at)).stdout).lines.reduce(
      (sum: { links: number }, l: { band: string; from?: object; to?: object }) => ({
        links: sum.links + (l.band === 'accept' && l.from && l.to ? 1 : 0),
      }),
      { links: 0 },
    );
    expect(links).toBeGreaterThan(0);
    const { status, stdout } = await fishplate(
      dir,
      'match',
      '2018',
      '2024',
      '--record',
      ...at,
      '--author',
      'A. Steward',
    );
    expect([status, stdout]).toEqual([0, expect.stringMatching(/^Erratum 2024\.1: \d+ records? added/)]);
    await fishplate(dir, 'crosswalk', '2018', '2024', '--out', 'recorded.csv', ...at);
    const recorded = lines('recorded.csv').filter(l => l.basis === 'inferred');
    expect(recorded.length).toBe(links);
    expect(lines('recorded.csv').some(l => l.from_number === '2.1' && l.to_number !== '')).toBe(false);
  });

  it('tells an answer that found no rows, where lineage is recorded too', async () => {
    writeFileSync(join(dir, 'lost.csv'), 'pair,answer,because\np0123456789ab,yes,seen\n');
    for (const goal of [['--json'], ['--explain', '1.1'], ['--record', '--author', 'A. Steward']]) {
      const at = ['--catalog', 'works-2.git'];
      await fishplate(dir, 'import', 'old.csv', '--edition', '2018', ...at);
      await fishplate(dir, 'import', 'new.csv', '--edition', '2024', ...at);
      const { stderr } = await fishplate(dir, 'match', '2018', '2024', '--answers', 'lost.csv', ...goal, ...at);
      expect(stderr).toContain('The answer yes for p0123456789ab fits no pair of these tables');
    }
  });

  it.each([
    [
      'lineage without a catalog',
      ['match', 'old.csv', 'new.csv', '--record'],
      /name it: fishplate match 2018 2024 --record/,
    ],
    ['an empty table', ['match', 'empty.csv', 'new.csv'], /empty\.csv is empty/],
    ['one table', ['match', 'old.csv'], /fishplate match OLD\.csv NEW\.csv/],
    [
      'a header that is not there',
      ['match', 'old.csv', 'new.csv', '--columns', 'number=Nr'],
      /has a column Nr; the columns are/,
    ],
    ['a number that is not there', ['match', 'old.csv', 'new.csv', '--explain', '9.9'], /have no number 9\.9/],
    [
      'an output that is an input',
      ['match', 'old.csv', 'new.csv', '--out', 'new.csv'],
      /new\.csv is an input; name another file/,
    ],
  ])('refuses %s with one sentence and writes nothing', async (_, args, sentence) => {
    const { status, stderr } = await fishplate(dir, ...args);
    expect([status, stderr]).toEqual([2, expect.stringMatching(sentence)]);
    expect(readFileSync(join(dir, 'new.csv'), 'utf8')).toBe(NEW);
  });
});
