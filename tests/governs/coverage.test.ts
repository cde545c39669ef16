import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { minutesStated } from '../../src/carryover/lesson-time.ts';
import { coverLessons } from '../../src/commands/cover-lessons.ts';
import { openCatalog } from '../../src/store/open.ts';
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

  it('takes a cited work item for all that stands in it', async () => {
    const { lines } = await cover('This lesson teaches work item 2.1.3.\n');
    expect(lines.filter(l => l.from?.number.startsWith('2.1.3.')).length).toBeGreaterThan(2);
  });

  it('writes csv, and refuses a table of another kind', async () => {
    await expect(cover('item 2.1.3.1', { out: join(folder, 'c.pdf') })).rejects.toThrow('neither csv nor xlsx');
    const out = join(folder, 'coverage.csv');
    await cover('See item 2.1.3.5.', { out });
    expect(readFileSync(out, 'utf8')).toContain('Bristle inserts');
  });
});

it.each([
  ['Time: 45 minutes', 45],
  ['Duration: 1.5 hours', 90],
  ['The bed drains in 45 minutes.', undefined],
])('%s: %s minutes', (text, minutes) => {
  expect(minutesStated([text])).toBe(minutes);
});
