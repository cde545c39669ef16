import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { afterAll, describe, expect, it } from 'vitest';
import { minutesStated } from '../../src/carryover/lessons/lesson-time.ts';
import { coverLessons } from '../../src/commands/documents/cover-lessons.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { openCatalog } from '../../src/store/open.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { readXlsx } from '../../src/tables/read-xlsx.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-coverage-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const cover = async (text: string, more = {}) => {
  const lesson = join(folder, 'lesson.md');
  writeFileSync(lesson, text);
  return coverLessons(testPorts(), await openCatalog(await demoCatalog()), {
    inputs: [lesson],
    from: '2018',
    to: '2024',
    ...more,
  });
};

describe('coverage of lessons', () => {
  it('names what is gone, what is gone but still due, and the time that the lesson states', async () => {
    const { lines, minutes } = await cover('Time: 45 minutes\n\nSee item 2.1.3.5 and item 3.1.3.4 of the catalog.\n');
    const state = (number: string) => lines.filter(l => l.from?.number === number).map(l => l.toDo);
    expect(state('2.1.3.5')).toEqual(['drop']);
    expect(state('3.1.3.4')).toEqual(['keep-law']);
    expect(minutes.map(m => m.minutes)).toEqual([45]);
  });

  it('counts every requirement of the new edition once as taught or as taught by nobody', async () => {
    const { lines } = await cover('Today we look at item 2.1.3.1.\n');
    const taught = new Set(lines.flatMap(l => (l.from && l.to ? [l.to.id] : [])));
    const untaught = lines.filter(l => l.toDo === 'teach').map(l => l.to!.id);
    expect(taught.size).toBeGreaterThan(0);
    expect(untaught.some(id => taught.has(id))).toBe(false);
    expect(new Set(untaught).size).toBe(untaught.length);
  });

  it('takes a part that is cited as a whole for a mention of what stands in it, and teaches none of it', async () => {
    const { lines, counts } = await cover('See Part 2 of the catalog. Today: item 2.1.3.5.\n');
    const inPart = lines.filter(l => l.from?.number.startsWith('2.'));
    expect(lines.filter(l => ['keep', 'reopen'].includes(l.toDo))).toEqual([]);
    expect(lines.filter(l => l.toDo === 'drop' && l.how === 'cited').map(l => l.from!.number)).toEqual(['2.1.3.5']);
    const mentioned = inPart.filter(l => l.toDo === 'mentioned');
    expect(mentioned.length).toBe(counts.mentioned);
    expect(mentioned.length).toBeGreaterThan(10);
    expect(mentioned[0]!.why).toMatch(/^cited is the whole of 2 /);
    const untaught = new Set(lines.filter(l => l.toDo === 'teach').map(l => l.to!.id));
    expect(mentioned.some(l => l.to && untaught.has(l.to.id))).toBe(false);
  });

  it('says of what is gone in a part that is cited as a whole that it is to be taken out, or still due and under what', async () => {
    const { lines } = await cover('See Part 3 of the catalog.\n');
    const gone = lines.filter(l => l.from && !l.to);
    expect(gone.filter(l => l.toDo === 'keep-law').map(l => l.from!.number)).toContain('3.1.3.4');
    expect(gone.find(l => l.from!.number === '3.1.3.4')!.why).toMatch(
      /^keep teaching.* due under .+; cited is the whole of 3 /,
    );
    expect(gone.map(l => l.toDo)).not.toContain('mentioned');
    expect(lines.filter(l => l.to && l.how === 'part').every(l => l.toDo === 'mentioned')).toBe(true);
  });

  it('tells the minutes that lessons state in the lines of what they teach, and for each lesson', async () => {
    const quick = join(folder, 'quick.md');
    const silent = join(folder, 'silent.md');
    writeFileSync(quick, '---\ntitle: Quick\nhours: 1.5\n---\n\nSee item 2.1.3.5.\n');
    writeFileSync(silent, 'See item 3.1.3.4.\n');
    const out = join(folder, 'minutes.csv');
    const xlsx = join(folder, 'minutes.xlsx');
    const text = 'Time: 45 minutes\n\nSee items 2.1.3.5 and 3.1.3.4.\n';
    const inputs = [join(folder, 'lesson.md'), quick, silent];
    await cover(text, { inputs, out });
    const rows = readTable(out, readFileSync(out)).rows;
    const minutes = (number: string) =>
      rows.filter(r => r.cells.get('number_2018') === number).map(r => r.cells.get('minutes_of_lessons'));
    expect(minutes('2.1.3.5')).toEqual(['135']);
    expect(minutes('3.1.3.4')).toEqual(['45']);
    await cover(text, { inputs, out: xlsx });
    const lessons = readXlsx(xlsx, readFileSync(xlsx), 'Lessons').rows.map(r => [...r.cells.values()]);
    expect(lessons.map(l => l.slice(1))).toEqual([
      ['45', '0', '0', '1', '1', '0', '0'],
      ['90', '0', '0', '1', '0', '0', '0'],
      ['', '0', '0', '0', '1', '0', '0'],
    ]);
  });

  it('takes a cited work item for all that stands in it', async () => {
    const { lines } = await cover('This lesson teaches work item 2.1.3.\n');
    expect(lines.filter(l => l.from?.number.startsWith('2.1.3.')).length).toBeGreaterThan(2);
  });

  it('counts what is told in words as taught, says so, and says where', async () => {
    const { lines, findings } = await cover(
      'In a shared passage, leave a clear way at least 900 mm wide past the butt and its fittings.\n\nSee 2.1.3.5 of the catalog.\n',
    );
    const line = lines.find(l => l.from?.number === '3.1.2.2')!;
    expect([line.how, line.toDo, line.to?.number]).toEqual(['told', 'keep', '4.1.1.4']);
    expect(lines.find(l => l.from?.number === '2.1.3.5')!.how).toBe('cited');
    expect(lines.find(l => l.toDo === 'teach')!.how).toBeUndefined();
    expect(findings).toMatchObject([{ rule: 'coverage-told', severity: 'note' }]);
    expect(findings[0]!.message).toContain('line 1 tells 3.1.2.2 Clear way in a shared passage without its number');
  });

  it('is told by a sentence that cites another requirement no more than by one about times past', async () => {
    const { lines } = await cover(
      'In a shared passage a clear way at least 900 mm wide is left past the butt and its fittings (3.2.1.1).\n\nIn 2014 a clear way at least 900 mm wide was left in a shared passage past the butt and its fittings.\n',
    );
    expect(lines.some(l => l.from?.number === '3.1.2.2')).toBe(false);
  });

  it('writes a page with a square for each requirement that is valid html and needs no other file', async () => {
    const out = join(folder, 'coverage.html');
    const { lines } = await cover('See item 2.1.3.5, item 3.1.3.4 and item 3.1.2.2 of the <catalog>.\n', { out });
    const page = readFileSync(out, 'utf8');
    const count = (of: string) => page.split(of).length - 1;
    const squares = count('<g><title>');
    const legend = 8;
    const taughtOld = new Set(lines.flatMap(l => l.from?.id ?? [])).size;
    const allNew = new Set(lines.flatMap(l => l.to?.id ?? [])).size;
    expect(squares).toBe(taughtOld + allNew + legend);
    expect(page).toContain(`Of the ${allNew} requirements of 2024, the lessons teach 1: 1 stay as they are`);
    expect(page).not.toMatch(/(?:src|href)="|undefined|\[object/);
    const report = await new HtmlValidate({
      extends: ['html-validate:standard'],
      rules: { 'no-trailing-whitespace': 'off' },
    }).validateString(page);
    expect(report.results.flatMap(r => r.messages.map(m => `${m.line} ${m.message}`))).toEqual([]);
  });

  it('writes csv, and refuses a table of another kind', async () => {
    await expect(cover('item 2.1.3.1', { out: join(folder, 'c.pdf') })).rejects.toThrow('neither csv, xlsx nor html');
    const out = join(folder, 'coverage.csv');
    await cover('See item 2.1.3.5.', { out });
    expect(readFileSync(out, 'utf8')).toContain('Bristle inserts');
  });
});

it.each([
  ['Time: 45 minutes', 45],
  ['Duration: 1.5 hours', 90],
  ['The bed drains in 45 minutes.', undefined],
  ['hours: 1,5', 90],
  ['Opening hours: 9', undefined],
  ['Length: 3', undefined],
  ['Duration: 1 h 30 min', 90],
  ['Time: 2 hours and 5 minutes.', 125],
  ['Level: new hands; time: 45 min', 45],
  ['Total time: 2 h', 120],
  ['Reaction time: 2 min is enough.', undefined],
  ['Curing-time: 2 h', undefined],
])('%s: %s minutes', (text, minutes) => {
  expect(minutesStated([text])).toBe(minutes);
});

it('sums what headings state where a lesson states nothing as a whole', () => {
  const texts = ['Slides (1.5 h)', 'Yard [30 min]', 'Item 3 (1 m)'];
  const headings = texts.map(text => ({ text }));
  expect(minutesStated(texts, headings)).toBe(120);
  expect(minutesStated(['Time: 45 min', ...texts], headings)).toBe(45);
});

it.each([
  [
    'markdown',
    'lesson.md',
    '# Slings (3 h)\n\n## Sleeves (1.5 h)\n\n### Care\n\n## Angles (1.5 h)\n\n# Log (1 h 10 min)\n',
  ],
  [
    'html',
    'lesson.html',
    '<h2>Slings (3 h)</h2><h3>Sleeves (1.5 h)</h3><h4>Care</h4><h3>Angles (1.5 h)</h3><h2>Log (70 min)</h2>',
  ],
])('counts headings that stand below one another in %s once', async (_, name, text) => {
  const { passages } = await readDocument(name, new TextEncoder().encode(text));
  expect(minutesStated([], passages)).toBe(250);
});

it('takes the parts where they say more than the whole', () => {
  const [whole, ...parts] = ['Slings (1 h)', 'Sleeves (45 min)', 'Angles (45 min)'];
  const headings = [{ text: whole!, level: 1 }, ...parts.map(text => ({ text, level: 2 }))];
  expect(minutesStated([], headings)).toBe(90);
});
