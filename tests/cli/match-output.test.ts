import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { matchTables } from '../../src/commands/matching/match-tables.ts';
import { readXlsx } from '../../src/tables/read-xlsx.ts';
import { testPorts } from '../demo-catalog.ts';
import { fishplateIn } from './run-here.ts';

/** Two kinds of boats; both tables count from 1. */
const YAWLS = `number,title,text
1.1,Planks,Planks of yawls shall be at least 18 mm thick.
1.2,Fastenings,Planks shall be fastened with copper rivets at spacings of 60 mm.
2.1,Shrouds,Shrouds shall be of galvanized wire 6 mm thick.
`;
const PUNTS = `number,title,text
1.1,Bottom boards,Bottom boards of punts shall be at least 22 mm thick.
1.2,Fastenings,Bottom boards shall be fastened with copper rivets at spacings of 50 mm.
`;
const BOATS = `number,title,text
1.1,Thickness of planks and boards,Planks are 18 mm thick or more and bottom boards 22 mm or more.
1.2,Rivets,Rivet planks with copper every 60 mm and bottom boards every 50 mm.
2.1,Wire,Shrouds are galvanized wire of 6 mm.
`;

let dir = '';
const at = (file: string) => join(dir, file);
const match = (...args: string[]) => fishplateIn(dir, 'match', ...args);
const ALL = ['yawls.csv', 'punts.csv', 'boats.csv'];
const read = (file: string) => parse(readFileSync(at(file), 'utf8'), { columns: true }) as Record<string, string>[];

beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-output-'));
  writeFileSync(at('yawls.csv'), YAWLS);
  writeFileSync(at('punts.csv'), PUNTS);
  writeFileSync(at('boats.csv'), BOATS);
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('several old tables', () => {
  it('are told apart in each line of the csv, the workbook and the json', async () => {
    for (const out of ['all.csv', 'all.xlsx', 'all.json']) await match(...ALL, '--out', out);
    const lines = read('all.csv').map(l => `${l.from_table}:${l.from_number}`);
    expect(lines).toEqual(expect.arrayContaining(['yawls:1.2', 'punts:1.2', 'yawls:2.1']));
    const book = readXlsx('all.xlsx', readFileSync(at('all.xlsx')));
    expect(book.rows.map(r => `${r.cells.get('from_table')}:${r.cells.get('from_number')}`)).toEqual(lines);
    const json = JSON.parse(readFileSync(at('all.json'), 'utf8')).lines as { from?: Record<string, string> }[];
    expect(json.map(l => `${l.from?.table ?? ''}:${l.from?.number ?? ''}`)).toEqual(lines);
  });

  it('are a column only where there are several', async () => {
    await match('yawls.csv', 'boats.csv', '--out', 'one.csv');
    expect(Object.keys(read('one.csv')[0]!)).not.toContain('from_table');
  });

  it('are named by --explain, which asks where several print the number', async () => {
    const asked = await match(...ALL, '--explain', '1.2');
    expect([asked.status, asked.stderr]).toEqual([
      2,
      expect.stringContaining('say which: --explain yawls:1.2 or --explain punts:1.2'),
    ]);
    const told = await match(...ALL, '--explain', 'punts:1.2');
    expect([told.status, told.stdout]).toEqual([0, expect.stringMatching(/^1\.2 Fastenings \(punts\)\n/)]);
    expect(told.stdout.match(/Fastenings/g)).toHaveLength(1);
    expect((await match(...ALL, '--explain', '2.1')).stdout).toMatch(/^2\.1 Shrouds \(yawls\)\n/);
    expect((await match(...ALL, '--explain', 'punts:2.1')).stderr).toContain('The table punts has no number 2.1');
  });

  it('of one name in two folders go by their paths', async () => {
    const { mkdirSync } = await import('node:fs');
    for (const folder of ['a', 'b']) mkdirSync(at(folder));
    writeFileSync(at('a/old.csv'), YAWLS);
    writeFileSync(at('b/old.csv'), PUNTS);
    await match('a/old.csv', 'b/old.csv', 'boats.csv', '--out', 'paths.csv');
    expect(new Set(read('paths.csv').map(l => l.from_table))).toEqual(new Set(['a/old.csv', 'b/old.csv']));
  });
});

describe('what is written', () => {
  it('has an ending that is known, or nothing is matched and nothing written', async () => {
    const { status, stderr } = await match('yawls.csv', 'boats.csv', '--out', 'o.pdf');
    expect([status, stderr]).toEqual([2, expect.stringContaining('written as csv, xlsx or json')]);
    expect(existsSync(at('o.pdf'))).toBe(false);
  });

  it('goes by the ending of --out, while --json reports', async () => {
    const { stdout } = await match('yawls.csv', 'boats.csv', '--json', '--out', 'by-ending.csv');
    expect(read('by-ending.csv')[0]).toMatchObject({ from_number: '1.1' });
    expect(JSON.parse(stdout)).toMatchObject({ out: 'by-ending.csv', answered: 0, findings: [] });
  });

  it('is written beside an explanation as well', async () => {
    const { stdout } = await match('yawls.csv', 'boats.csv', '--explain', '1.2', '--out', 'beside.csv');
    expect(stdout).toMatch(/^1\.2 Fastenings\n/);
    expect(read('beside.csv').length).toBeGreaterThan(0);
    const { status } = await match('yawls.csv', 'boats.csv', '--explain', '9.9', '--out', 'no-number.csv');
    expect([status, existsSync(at('no-number.csv'))]).toEqual([2, false]);
  });

  it('explains the words of a sum that do not explain themselves', async () => {
    const { stdout } = await match('yawls.csv', 'boats.csv', '--explain', '1.2');
    const last = stdout.trimEnd().split('\n').at(-1)!;
    expect(last).toMatch(/rivals: how strong other candidates of its two rows are/);
    expect(last.length).toBeLessThan(400);
  });
});

describe('rows that lack something', () => {
  it('are counted, with the first places: no number, no words, nothing at all', async () => {
    writeFileSync(
      at('holes.csv'),
      `number,level,title,text\n1,,Planks,\n,,Rivets,Copper rivets.\n2,,,\n3,,,\n,item,,\n`,
    );
    const { status, stderr } = await match('holes.csv', 'boats.csv', '--out', 'holes-out.csv');
    expect(status).toBe(1);
    expect(stderr).toContain('1 row of holes.csv has no number (line 3)');
    expect(stderr).toContain('2 rows of holes.csv have neither title nor text (lines 4, 5)');
    expect(stderr).toMatch(/holes\.csv:6: .* neither a number nor a title nor a text\. It is left out\./);
  });

  it('are as they were meant where a whole table has no numbers, or no texts', async () => {
    writeFileSync(at('titles.csv'), 'title\nPlanks\nRivets\n');
    const { status, stderr } = await match('titles.csv', 'boats.csv', '--out', 'titles-out.csv');
    expect([status, stderr]).toEqual([0, '']);
  });
});

it('a column Was is not used by match, and that is said', async () => {
  writeFileSync(at('was.csv'), 'number,Was,title,text\n1,7,Planks,Planks are 18 mm thick.\n');
  const { stderr } = await match('was.csv', 'boats.csv', '--out', 'was-out.csv');
  expect(stderr).toContain('The column Was of was.csv is not used: match goes by words and place.');
});

describe('tables of two languages', () => {
  it('are matched by place and numbers alone, and one sentence says so', async () => {
    writeFileSync(
      at('ru.csv'),
      'number,text\n1.1,Доски должны быть не тоньше 18 мм.\n1.2,Заклёпки из меди через каждые 60 мм.\n2.1,Ванты из проволоки 6 мм.\n',
    );
    const { status, stderr } = await match('ru.csv', 'boats.csv', '--out', 'ru-out.csv');
    expect(status).toBe(1);
    expect(stderr.trim().split('\n')).toEqual([
      'warning: 3 of the 3 rows of ru (1.1, 1.2, 2.1) share no word with boats, nor have they words that the matcher knows: only place and numbers were used for them, and their links are to be looked at. [words-unknown]',
    ]);
    expect(read('ru-out.csv').every(l => l.band === 'look' && Number(l.confidence) <= 0.9)).toBe(true);
    const { stdout } = await match('ru.csv', 'boats.csv', '--explain', '1.2');
    expect(stdout).toContain('no word speaks for it, so at most 90 % is shown');
  });
});

describe('the progress of a matching', () => {
  const told = async (secondsACall: number) => {
    const lines: string[] = [];
    const ports = { ...testPorts(), progress: (line: string) => void lines.push(line) };
    let now = 0;
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => {
      now += secondsACall * 1000;
      return now;
    });
    try {
      await matchTables(ports, { from: [at('yawls.csv')], to: [at('boats.csv')] });
    } finally {
      clock.mockRestore();
    }
    return lines;
  };

  it('has a line for each step where it takes seconds: which of how many, and since when', async () => {
    const lines = await told(2);
    expect(lines[0]).toBe('Matching 3 with 3 rows');
    expect(lines).toHaveLength(9);
    expect(lines[2]).toBe('Step 2 of 8, after 4 s: finding pairs of rows that are worth comparing');
    expect(lines.at(-1)).toMatch(/^Step 8 of 8, after 16 s: comparing the texts of \d links$/);
  });

  it('is one line where it is quick', async () => {
    expect(await told(0.01)).toEqual(['Matching 3 with 3 rows']);
  });
});
