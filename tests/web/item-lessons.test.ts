import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { lessonsCiting } from '../../src/commands/finding/lessons-citing.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { serveForTest } from './viewer.ts';

const ports = { files: realFiles, progress: () => {} };

it('the page of an item names the lessons that cite it, also under the number of another edition', async () => {
  const dir = await demoCatalog();
  const course = ['1-storage.md', '1-handout.docx'].map(f => join(import.meta.dirname, '../../catalog/course', f));
  const lessons = await lessonsCiting(ports, await openCatalog(dir), course, '2018');
  const viewer = await serveForTest(dir, { lessons });
  try {
    const text = await (await fetch(`${viewer.address}at/2018/3.1.1.1`)).text();
    const [, section] = /Lessons that cite it<\/h2>([\s\S]*?)<\/section>/.exec(text) ?? [];
    expect(section).toMatch(/1-storage\.md.*line \d+.* as <b class="n">3\.1\.1\.1 of 2018/s);
    const heir = /href="(\/at\/2024\/[^"]+)"/.exec(text)![1]!;
    expect(await (await fetch(`${viewer.address}${heir.slice(1)}`)).text()).toContain('3.1.1.1 of 2018');
    expect(await (await fetch(`${viewer.address}at/2018/8`)).text()).not.toContain('Lessons that cite it');
  } finally {
    await viewer.close();
  }
});

it('tells equal names apart by their folders, and leaves out what is in doubt', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-lessons-'));
  try {
    const files = ['a', 'b'].map(name => {
      const at = mkdtempSync(join(folder, `${name}-`));
      writeFileSync(join(at, 'lesson.md'), 'Requirement 3.1.1.1 asks for a base. Spare jet: 3.1.1.2.\n');
      return join(at, 'lesson.md');
    });
    const lessons = await lessonsCiting(ports, await openCatalog(await demoCatalog()), files, '2018');
    expect(lessons.of('2018', '3.1.1.1').map(l => l.file)).toEqual(files.map(f => f.split('/').slice(-2).join('/')));
    expect(lessons.of('2018', '3.1.1.2')).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
