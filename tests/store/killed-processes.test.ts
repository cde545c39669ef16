import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';

const SCRIPT = join(import.meta.dirname, '..', '..', 'scripts', 'kill', 'main.mjs');
const KILLS = 8;
const SEED = 5;

interface Counts {
  readonly kills: number;
  readonly killed: number;
  readonly before: number;
  readonly between: number;
  readonly after: number;
  readonly neither: number;
  readonly traces: number;
}

/** The long run is the same script with more kills: node scripts/kill/main.mjs 1000. */
describe(`${KILLS} processes killed while they import, open a draft, publish or correct`, () => {
  let report: { counts: Record<string, Counts>; wrong: unknown[] };
  beforeAll(() => {
    const args = [SCRIPT, String(KILLS), String(SEED), '--json'];
    const { stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
    if (stdout === '') throw new Error(stderr);
    report = JSON.parse(stdout);
  }, 600_000);

  const sum = (key: keyof Counts) => Object.values(report.counts).reduce((total, row) => total + row[key], 0);

  it('leave a catalog that is sound, is as before or as after, and that the next writer completes', () => {
    expect(report.wrong).toEqual([]);
    expect(sum('kills')).toBe(KILLS);
    expect(sum('before') + sum('between') + sum('after')).toBe(KILLS);
  });

  it('were killed in the midst of writing, and not only before or after it', () => {
    expect(sum('killed')).toBeGreaterThanOrEqual(KILLS / 4);
    expect(sum('traces')).toBeGreaterThan(0);
  });
});
