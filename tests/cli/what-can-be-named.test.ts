import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { demoCatalog } from '../demo-catalog.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateHere } from './run-here.ts';

it('cite without --edition names the editions to choose from', async () => {
  const file = join(temporaryFolder(), 'lesson.md');
  writeFileSync(file, 'See clause 1.1.\n');
  const { status, stderr } = await fishplateHere('--catalog', await demoCatalog(), 'cite', file);
  expect([status, stderr]).toEqual([2, expect.stringMatching(/--edition 2024 \(the catalog has 2014, 2018, 2024\)/)]);
}, 60_000);

it('a command of a group that there is not names those that there are', async () => {
  const { status, stderr } = await fishplateHere('review', '2022');
  expect([status, stderr]).toEqual([2, expect.stringMatching(/unknown command '2022'[\s\S]*review has: .*\blist\b/)]);
});
