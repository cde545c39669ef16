import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import ExcelJS from 'exceljs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pairCode } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import { fishplateIn } from './run-here.ts';

const OLD = `number,parent,title,text
1,,Gutters,
1.1,1,Brackets,The gutter shall be fixed with brackets at 600 mm centres.
1.2,1,Downpipes,Downpipes shall be clipped to the wall at every joint.
2,,Conduct,
2.1,2,Greeting,The inspector shall be greeted politely on arrival.
2.2,2,Overflow,Overflow pipes of house tanks shall discharge away from the foundation.
`;
const NEW = `number,parent,title,text
1,,Roof drainage,
1.1,1,Pipe clips,Clip downpipes to the wall at each joint.
1.2,1,Gutter brackets,Fix gutters with brackets at centres of 600 mm.
2,,Water,
2.1,2,Discharge,Discharge every tank overflow away from the foundation.
2.2,2,Labels,Label each valve with its number.
`;

type Line = Record<string, string>;

let dir = '';
const at = (file: string) => join(dir, file);
const read = (file: string) => parse(readFileSync(at(file), 'utf8'), { columns: true }) as Line[];
const fill = (file: string, rows: readonly Line[]) => writeFileSync(at(file), stringify([...rows], { header: true }));
const match = (...args: string[]) => fishplateIn(dir, 'match', 'old.csv', 'new.csv', ...args);
const ends = (l: Line) => `${l.from_number}>${l.to_number}`;
/** What stands in the columns for people, by the rows that it stands beside. */
const given = (file: string) =>
  read(file)
    .filter(l => l.answer || l.instead || l.because)
    .map(l => [ends(l), l.answer, l.instead, l.because, l.by].join('|'));

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-answers-'));
  writeFileSync(at('old.csv'), OLD);
  writeFileSync(at('new.csv'), NEW);
  await match('--out', 'out.csv');
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const rowsOf = (table: string): BareRow[] =>
  (parse(table, { columns: true }) as Line[]).map(row => ({
    number: row.number!,
    level: '',
    parent: -1,
    title: row.title!,
    text: row.text!,
    table: 0,
  }));
const [OLDS, NEWS] = [rowsOf(OLD), rowsOf(NEW)];

/** Lines as match writes them, with what is filled in; `2.1>` is the line of an old row that ends. */
const answered = (answers: Readonly<Record<string, Line>>): Line[] =>
  Object.entries(answers).map(([key, filled]) => {
    const [i, j] = [OLDS, NEWS].map((rows, side) => rows.findIndex(row => row.number === key.split('>')[side]));
    return {
      pair: pairCode(OLDS[i!], i!, NEWS[j!], j!),
      from_number: OLDS[i!]?.number ?? '',
      from_title: OLDS[i!]?.title ?? '',
      to_number: NEWS[j!]?.number ?? '',
      to_title: NEWS[j!]?.title ?? '',
      by: '',
      date: '',
      answer: '',
      instead: '',
      because: '',
      ...filled,
    };
  });

describe('a round of answers', () => {
  it('has every answer of the round before, with who and why, also those that no line shows any more', async () => {
    const rows = answered({
      '1.1>1.2': { answer: 'yes', because: 'same brackets', by: 'A. Steward', date: '2026-11-02' },
      '1.2>1.1': { instead: '2.2', because: 'they said so', by: 'B. Warden' },
      '2.1>': { answer: 'withdrawn', because: 'no longer wanted' },
      '2.2>2.1': { because: 'ask the plumbers' },
    });
    fill('round-1.csv', rows);
    await match('--answers', 'round-1.csv', '--out', 'round-2.csv');
    expect(given('round-2.csv')).toEqual([
      '1.1>1.2|yes||same brackets|A. Steward',
      '1.2>2.2|yes||they said so|B. Warden',
      '2.1>|withdrawn||no longer wanted|',
      '2.2>2.1|||ask the plumbers|',
      '>|no||they said so|B. Warden',
    ]);
    expect(read('round-2.csv').at(-1)).toMatchObject({
      row: '',
      fate: '',
      band: '',
      pair: rows.find(l => ends(l) === '1.2>1.1')!.pair,
      why: 'answered no: 1.2 Downpipes → 1.1 Pipe clips',
    });
    expect(read('round-2.csv')[1]!.date).toBe('2026-11-02');
    await match('--answers', 'round-2.csv', '--out', 'round-3.csv');
    expect(readFileSync(at('round-3.csv'), 'utf8')).toBe(readFileSync(at('round-2.csv'), 'utf8'));
  });

  it('can be imported as lineage: what stands behind its lines is about no item', async () => {
    fill(
      'import-1.csv',
      answered({
        '1>1': { answer: 'yes' },
        '1.1>1.2': { answer: 'yes', because: 'same brackets', by: 'A. Steward', date: '2026-11-02' },
        '1.2>1.1': { answer: 'no', instead: '2.2' },
        '2>2': { answer: 'yes' },
        '2.1>': { answer: 'withdrawn', because: 'obsolete' },
        '2.2>2.1': { answer: 'yes' },
      }),
    );
    await match('--answers', 'import-1.csv', '--out', 'import-2.csv');
    expect(given('import-2.csv').at(-1)).toMatch(/^>\|no/);
    const at = ['--catalog', 'works.git'];
    await fishplateIn(dir, 'import', 'old.csv', '--edition', '2018', ...at);
    const { status, stderr } = await fishplateIn(
      dir,
      ...['import', 'new.csv', '--edition', '2024', '--lineage', 'import-2.csv', ...at],
    );
    expect([status, stderr]).toEqual([0, expect.not.stringContaining('cannot be used')]);
  });

  it('tells an answer whose rows are gone, and keeps it until they are there again', async () => {
    fill('gone-1.csv', answered({ '1.1>1.2': { answer: 'yes', because: 'seen' }, '1.2>1.1': { answer: 'yes' } }));
    writeFileSync(at('other.csv'), NEW.replace('1.2,1,Gutter brackets,Fix', '1.3,1,Holders,Fasten'));
    const other = (...args: string[]) => fishplateIn(dir, 'match', 'old.csv', 'other.csv', ...args);
    const { status, stdout, stderr } = await other('--answers', 'gone-1.csv', '--out', 'gone-2.csv');
    expect(status).toBe(1);
    expect(stdout).toContain('1 answer used; 1 answer not used, but kept in gone-2.csv');
    expect(stderr).toMatch(
      /The answer yes for p[0-9a-f]{12} \(1\.1 Brackets → 1\.2 Gutter brackets\) fits no pair of these tables: the new table has no row 1\.2 Gutter brackets\. Answer it again\./,
    );
    const tail = read('gone-2.csv').at(-1)!;
    expect([tail.answer, tail.because, tail.why]).toEqual([
      'yes',
      'seen',
      'fits no pair of these tables: 1.1 Brackets → 1.2 Gutter brackets',
    ]);
    await other('--answers', 'gone-2.csv', '--out', 'gone-3.csv');
    expect(read('gone-3.csv')).toEqual(read('gone-2.csv'));
    await match('--answers', 'gone-3.csv', '--out', 'gone-4.csv');
    expect(given('gone-4.csv')).toContain('1.1>1.2|yes||seen|');
  });

  it('tells a changed text as what it is', async () => {
    fill('text-1.csv', answered({ '1.2>1.1': { answer: 'yes' } }));
    writeFileSync(at('changed.csv'), NEW.replace('each joint', 'each second joint'));
    const { stderr } = await fishplateIn(dir, 'match', 'old.csv', 'changed.csv', '--answers', 'text-1.csv');
    expect(stderr).toContain('the words, the number or the place of one of its rows have changed since');
  });

  it('is never written over the answers that it was made with', async () => {
    fill('same.csv', answered({ '1.1>1.2': { answer: 'yes' } }));
    const before = readFileSync(at('same.csv'), 'utf8');
    const { status, stderr } = await match('--answers', 'same.csv', '--out', './same.csv');
    expect([status, stderr]).toEqual([2, expect.stringContaining('./same.csv holds the answers')]);
    expect(readFileSync(at('same.csv'), 'utf8')).toBe(before);
  });

  it('goes on in the json and in the workbook that match writes', async () => {
    fill('any-1.csv', answered({ '1.1>1.2': { answer: 'yes', because: 'seen' }, '1.2>1.1': { instead: '2.2' } }));
    await match('--answers', 'any-1.csv', '--out', 'any-2.json');
    await match('--answers', 'any-2.json', '--out', 'any-3.xlsx');
    await match('--answers', 'any-3.xlsx', '--out', 'any-4.csv');
    expect(given('any-4.csv')).toEqual(['1.1>1.2|yes||seen|', '1.2>2.2|yes|||', '>|no|||']);
    await match('--out', 'any-5.json');
    const written = JSON.parse(readFileSync(at('any-5.json'), 'utf8'));
    const line = written.lines.find((l: { from?: { number: string } }) => l.from?.number === '2.1');
    writeFileSync(at('any-5.json'), JSON.stringify({ ...written, lines: [{ ...line, answer: 'withdrawn' }] }));
    const { status } = await match('--answers', 'any-5.json', '--out', 'any-6.csv');
    expect([status, given('any-6.csv')]).toEqual([0, expect.arrayContaining(['2.1>|withdrawn|||'])]);
  });
});

describe('what a person wrote besides an answer', () => {
  const besides = (file: string) =>
    read(file)
      .filter(l => l.note || l.reason || l.Priority || l.by || l.date)
      .map(l => [ends(l), l.answer, l.by, l.date, l.reason, l.note, l.Priority, l.Room].join('|'));
  const rows = () =>
    answered({
      '1.1>1.2': { answer: 'yes', note: 'see plan 7', Priority: 'high', Room: '=A1' },
      '1.2>1.1': { instead: '2.2', note: 'both clips', Priority: 'low' },
      '2.1>': { answer: 'withdrawn', because: 'no longer wanted', reason: 'obsolete' },
      '2.2>2.1': { Priority: 'ask', by: 'B. Warden', date: '2026-11-03' },
      '1>1': { by: 'A. Steward' },
    }).map(l => ({ note: '', reason: '', Priority: '', Room: '', ...l }));
  const WRITTEN = [
    '1>1||A. Steward|||||',
    "1.1>1.2|yes||||see plan 7|high|'=A1",
    '1.2>2.2|yes||||both clips|low|',
    '2.1>|withdrawn|||obsolete|||',
    '2.2>2.1||B. Warden|2026-11-03|||ask|',
  ];

  it('goes on beside its line: note, reason, by and date, and columns of their own', async () => {
    fill('own-1.csv', rows());
    const { status } = await match('--answers', 'own-1.csv', '--out', 'own-2.csv');
    expect([status, besides('own-2.csv')]).toEqual([0, WRITTEN]);
    await match('--answers', 'own-2.csv', '--out', 'own-3.csv');
    expect(readFileSync(at('own-3.csv'), 'utf8')).toBe(readFileSync(at('own-2.csv'), 'utf8'));
  });

  it('goes on through the json and the workbook', async () => {
    fill('own-any.csv', rows());
    await match('--answers', 'own-any.csv', '--out', 'own-any.json');
    await match('--answers', 'own-any.json', '--out', 'own-any.xlsx');
    await match('--answers', 'own-any.xlsx', '--out', 'own-any-2.csv');
    expect(besides('own-any-2.csv')).toEqual(WRITTEN);
  });

  it('is none of match itself: the reason of an end follows the answer', async () => {
    fill('ends-1.csv', answered({ '2.1>': { answer: 'withdrawn', because: 'no longer wanted' } }));
    await match('--answers', 'ends-1.csv', '--out', 'ends-2.csv');
    const end = (file: string) => read(file).find(l => l.answer === 'withdrawn')!;
    expect(end('ends-2.csv').reason).toBe('no longer wanted');
    fill(
      'ends-3.csv',
      read('ends-2.csv').map(l => (l.answer ? { ...l, because: 'obsolete' } : l)),
    );
    await match('--answers', 'ends-3.csv', '--out', 'ends-4.csv');
    expect(end('ends-4.csv')).toMatchObject({ reason: 'obsolete', because: 'obsolete' });
  });

  it('is told where no line has a code: the file is none that match wrote', async () => {
    const { status, stderr } = await match('--answers', 'old.csv', '--out', 'no-codes.csv');
    expect([status, stderr]).toEqual([1, expect.stringContaining('old.csv has no column pair')]);
  });
});

describe('a kept answer whose rows go', () => {
  it.each([
    ['no', '1.2>1.1', { answer: 'no', because: 'seen' }, '1.2 Downpipes → 1.1 Pipe clips'],
    ['one that was not used', '2.1>1.1', { answer: 'maybe' }, '2.1 Greeting → 1.1 Pipe clips'],
  ])('is told with them round after round: %s', async (_, key, change, about) => {
    // Told as another pair, so that no line shows the one that was asked.
    fill('lose-1.csv', [...answered({ [key]: change }), ...answered({ '1.2>2.2': { answer: 'yes' } })]);
    await match('--answers', 'lose-1.csv', '--out', 'lose-2.csv');
    expect(read('lose-2.csv').at(-1)!.why).toContain(about);
    writeFileSync(at('lost.csv'), NEW.replace('1.1,1,Pipe clips,Clip', '1.1,1,Straps,Strap'));
    for (const round of [2, 3, 4]) {
      const files = ['--answers', `lose-${round}.csv`, '--out', `lose-${round + 1}.csv`];
      const { status, stderr } = await fishplateIn(dir, 'match', 'old.csv', 'lost.csv', ...files);
      expect([status, stderr]).toEqual([1, expect.stringContaining(`(${about}) fits no pair of these tables`)]);
      expect(read(`lose-${round + 1}.csv`).at(-1)).toMatchObject({
        answer: change.answer,
        why: `fits no pair of these tables: ${about}`,
      });
    }
  });
});

describe('the code of a pair', () => {
  it('alone finds the rows', async () => {
    const pairs = answered({ '1.1>1.2': { answer: 'YES ' }, '2.1>': { answer: 'withdrawn' } });
    fill(
      'bare.csv',
      pairs.map(({ pair = '', answer = '' }) => ({ pair: pair.toUpperCase(), answer })),
    );
    const { status, stdout } = await match('--answers', 'bare.csv', '--out', 'bare-out.csv');
    expect([status, stdout]).toEqual([0, expect.stringContaining('2 answers used')]);
    expect(given('bare-out.csv')).toEqual(['1.1>1.2|yes|||', '2.1>|withdrawn|||']);
  });

  it('finds rows whose numbers a spreadsheet made dates or cut, and that is told', async () => {
    const rows = answered({
      '1.1>1.2': { answer: 'yes', from_number: '01. Jan', to_number: '2026-02-01' },
      '2.1>': { answer: 'withdrawn', from_number: '2' },
    });
    fill('dates.csv', rows);
    const { status, stdout, stderr } = await match('--answers', 'dates.csv', '--out', 'dates-out.csv');
    expect([status, stdout]).toEqual([1, expect.stringContaining('2 answers used')]);
    expect(stderr).toContain('3 numbers beside answers are not what the rows print (01. Jan for 1.1 in line 2');
    expect(given('dates-out.csv')).toEqual(['1.1>1.2|yes|||', '2.1>|withdrawn|||']);
  });

  it('finds rows of a workbook whose number cells another library made dates and numbers', async () => {
    await match('--out', 'cells.xlsx');
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(at('cells.xlsx'));
    const sheet = book.worksheets[0]!;
    const heads = (sheet.getRow(1).values as string[]).slice(1);
    const column = (name: string) => heads.indexOf(name) + 1;
    sheet.eachRow((row, line) => {
      if (row.getCell(column('from_number')).text !== '1.1' || line === 1) return;
      row.getCell(column('from_number')).value = new Date(Date.UTC(2026, 0, 1));
      row.getCell(column('to_number')).value = 1.2;
      row.getCell(column('answer')).value = 'yes';
    });
    await book.xlsx.writeFile(at('cells-filled.xlsx'));
    const { stdout } = await match('--answers', 'cells-filled.xlsx', '--out', 'cells-out.csv');
    expect(stdout).toContain('1 answer used');
    expect(given('cells-out.csv')).toEqual(['1.1>1.2|yes|||']);
  });

  it.each([
    ['no column pair', { pair: undefined }, /has no column pair, by which answers find their rows/],
    ['an empty code', { pair: '' }, /The answer yes has no code under pair/],
    ['something else', { pair: '1.1' }, /1\.1 is no code of a pair, so the answer yes finds no rows/],
  ])('is missed by its name: %s', async (_, change, sentence) => {
    const [line] = answered({ '1.1>1.2': { answer: 'yes' } }).filter(l => l.answer);
    const { pair, ...rest } = { ...line!, ...change };
    fill('no-code.csv', [pair === undefined ? rest : { ...rest, pair }]);
    const { status, stderr } = await match('--answers', 'no-code.csv', '--out', 'no-code-out.csv');
    expect([status, stderr]).toEqual([1, expect.stringMatching(sentence)]);
    expect(given('no-code-out.csv')).toEqual(['>|yes|||']);
  });
});

describe('answers that contradict each other', () => {
  it.each([
    ['yes and no for one pair', [{ answer: 'yes' }, { answer: 'no' }]],
    ['withdrawn, and an heir', [{ answer: 'withdrawn' }, { answer: 'yes' }]],
    ['new, and a source', [{ answer: 'new' }, { answer: 'yes' }]],
  ])('are told, neither is used, and both are kept: %s', async (_, both) => {
    const [line] = answered({ '1.1>1.2': {} });
    fill(
      'both.csv',
      both.map(change => ({ ...line, ...change })),
    );
    const { status, stdout, stderr } = await match('--answers', 'both.csv', '--out', 'both-out.csv');
    expect(status).toBe(1);
    expect(stderr).toContain('This answer and that of line 3 contradict each other, so neither is used');
    expect(stderr).toContain('This answer and that of line 2 contradict each other');
    expect(stdout).not.toContain('answers used');
    expect(read('both-out.csv').every(l => l.basis !== 'confirmed')).toBe(true);
    const kept = read('both-out.csv').flatMap(l => l.answer || []);
    expect(kept.sort()).toEqual(both.map(b => b.answer).sort());
  });

  it.each([
    ['of one line', [{}, {}], ['1.1>1.2', '1.1>1.2']],
    ['of one row, by two people', [{ by: 'A. Steward' }, { by: 'B. Warden' }], ['1.1>1.2', '1.1>1.1']],
    ['of a new row', [{}, {}], ['>1.2', '>1.2']],
  ])('are two numbers instead, of which neither is used: %s', async (_, who, keys) => {
    const numbers = ['2.1', '2.2'];
    const rows = keys.flatMap((key, n) => answered({ [key]: { instead: numbers[n]!, ...who[n] } }));
    fill('instead.csv', rows);
    const { status, stdout, stderr } = await match('--answers', 'instead.csv', '--out', 'instead-out.csv');
    expect(status).toBe(1);
    expect(stderr).toContain('This answer and that of line 3 contradict each other, so neither is used');
    expect(stderr).toContain('This answer and that of line 2 contradict each other');
    expect(stdout).not.toContain('answers used');
    const kept = read('instead-out.csv').filter(l => l.instead !== '');
    expect(kept.map(l => l.instead).sort()).toEqual(numbers);
    expect(read('instead-out.csv').every(l => l.basis !== 'confirmed')).toBe(true);
  });

  it('are two numbers instead in files of two people who did not sign, and none where both say the same', async () => {
    const row = (instead: string) => answered({ '1.1>1.2': { instead } });
    fill('one.csv', row('2.1'));
    fill('two.csv', row('2.2'));
    fill('three.csv', row('2.1'));
    const told = await match('--answers', 'one.csv', 'two.csv', '--out', 'people-1.csv');
    expect(told.stderr).toContain('that of two.csv, line 2 contradict each other');
    const agreed = await match('--answers', 'one.csv', 'three.csv', '--out', 'people-2.csv');
    expect([agreed.status, given('people-2.csv')]).toEqual([0, ['1.1>2.1|yes|||', '>|no|||']]);
  });

  it('are none where one person names two for two lines of a row', async () => {
    fill('heirs.csv', answered({ '1.1>1.2': { instead: '2.1' }, '1.1>1.1': { instead: '2.2' } }));
    const { status, stdout } = await match('--answers', 'heirs.csv', '--out', 'heirs-out.csv');
    expect([status, stdout]).toEqual([0, expect.stringContaining('2 answers used')]);
  });

  it('are none where a row goes to two: that is a split', async () => {
    const [line] = answered({ '1.1>1.2': {} });
    fill('split.csv', [{ ...line, instead: '1.2; 2.2' }]);
    const { status } = await match('--answers', 'split.csv', '--out', 'split-out.csv');
    expect([status, given('split-out.csv')]).toEqual([0, ['1.1>1.2|yes|||', '1.1>2.2|yes|||']]);
  });
});

describe('a finding on answers in json', () => {
  const lineOf = (text: string, code: string) => text.split('\n').findIndex(l => l.includes(`"pair": "${code}"`)) + 1;
  const rows = () =>
    answered({ '1.1>1.2': { answer: 'maybe', because: 'a "{" \n and [' }, '1.2>1.1': { answer: 'maybe' } });
  /** The line that each finding names, and the one on which its object begins. */
  const told = (stderr: string) =>
    [...stderr.matchAll(/json:(\d+): warning: maybe is no answer/g)].map(m => Number(m[1]));

  it('names the line on which the object begins in the file, of the lines and behind them', async () => {
    fill('place.csv', [...rows(), ...answered({ '2.1>1.1': { answer: 'perhaps' } })]);
    await match('--answers', 'place.csv', '--out', 'place.json');
    const text = readFileSync(at('place.json'), 'utf8');
    const { stderr } = await match('--answers', 'place.json', '--out', 'place-out.csv');
    const begins = (code: string) => text.split('\n').slice(0, lineOf(text, code)).lastIndexOf('    {') + 1;
    expect(told(stderr)).toEqual(rows().map(row => begins(row.pair!)));
    const kept = /json:(\d+): warning: perhaps is no answer/.exec(stderr)?.[1];
    expect(text.split('\n')[Number(kept)]).toContain('"pair"');
    expect(Number(kept)).toBeGreaterThan(text.split('\n').findIndex(l => l.includes('"kept"')));
  });

  it('names it in a list of answers too, and the pair where all stand on one line', async () => {
    const list = JSON.stringify(rows(), null, 1);
    writeFileSync(at('list.json'), list);
    const first = await match('--answers', 'list.json', '--out', 'list-out.csv');
    expect(told(first.stderr)).toEqual([2, list.split('\n').lastIndexOf(' {') + 1]);
    writeFileSync(at('list-flat.json'), JSON.stringify(rows()));
    const flat = await match('--answers', 'list-flat.json', '--out', 'list-out-2.csv');
    for (const { pair } of rows()) {
      expect(flat.stderr).toContain(`list-flat.json:1: warning: ${pair}: maybe is no answer here`);
    }
  });
});

describe('a line with one side', () => {
  it('that is new takes an old number under instead', async () => {
    fill('came.csv', answered({ '>2.2': { instead: '2.1', because: 'the label greets' } }));
    const { status } = await match('--answers', 'came.csv', '--out', 'came-out.csv');
    expect([status, given('came-out.csv')]).toEqual([0, ['2.1>2.2|yes||the label greets|']]);
  });

  it('that ends takes a new number under instead', async () => {
    fill('went.csv', answered({ '2.1>': { instead: '2.2' } }));
    const { status } = await match('--answers', 'went.csv', '--out', 'went-out.csv');
    expect([status, given('went-out.csv')]).toEqual([0, ['2.1>2.2|yes|||']]);
  });

  it('asks for the other number where it says no only, and keeps that', async () => {
    fill('not.csv', answered({ '2.1>': { answer: 'no' }, '>2.2': { answer: 'no' } }));
    const { status, stderr } = await match('--answers', 'not.csv', '--out', 'not-out.csv');
    expect(status).toBe(1);
    expect(stderr).toContain(
      'No says that 2.1 did not end, but not what it became; write the new number under instead.',
    );
    expect(stderr).toContain('No says that 2.2 is not new, but not where it came from; write the old number');
    expect(read('not-out.csv').filter(l => l.answer === 'no')).toHaveLength(2);
  });

  it('tells a number under instead that no row of the other side has', async () => {
    fill('none.csv', answered({ '>2.2': { instead: '9.9' }, '1.1>1.2': { answer: 'yes', instead: '2.1' } }));
    const { stderr } = await match('--answers', 'none.csv', '--out', 'none-out.csv');
    expect(stderr).toContain('No old row has the number 9.9 that stands under instead');
    expect(stderr).toContain('This line says yes and names 2.1 instead; leave one of the two.');
    expect(given('none-out.csv')).toContain('1.1>1.2|yes|2.1||');
    expect(read('none-out.csv').map(l => l.instead)).toContain('9.9');
  });
});
