import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fishplateHere } from './run-here.ts';

const COURSE = ['1-storage.md', '1-handout.docx', '2-infiltration.html', '3-paving.docx', '4-roofs.pptx', 'quiz.md'];
const SOURCE = join(import.meta.dirname, '..', '..', 'catalog');

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'fishplate-demo-'));
});
afterAll(() => rm(dir, { recursive: true, force: true }));

describe('the demo', () => {
  it('lists stale content of its lessons as carry docs does, and says how much', async () => {
    const demo = join(dir, 'demo');
    const told = await fishplateHere('demo', demo);
    expect(told.status).toBe(0);
    const review = await readFile(join(demo, 'out', 'lessons', 'review.md'), 'utf8');
    const listed = Number(/^(\d+) stretches tell what 2024 no longer asks/m.exec(review)?.[1]);
    expect(listed).toBeGreaterThan(30);
    expect(told.stdout).toContain(`${listed} stretches that tell what 2024 no longer asks, below the citations`);

    const files = COURSE.map(name => join(SOURCE, 'course', name));
    const others = ['record/inspection-record.md', 'checklist/site-checklist.txt'].map(name => join(SOURCE, name));
    const way = ['--catalog', join(demo, 'catalog.git'), '--from', '2018', '--to', '2024'];
    await fishplateHere('carry', 'docs', ...files, ...others, ...way, '--out', join(dir, 'again'));
    expect(await readFile(join(dir, 'again', 'review.md'), 'utf8')).toBe(review);
  }, 60_000);
});
