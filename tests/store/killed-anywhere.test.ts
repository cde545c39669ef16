import { cpSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { realFs } from '../../src/store/durable-fs.ts';
import { fsDyingAt } from './failing-fs.ts';
import { between, OPERATIONS, readAll, visible } from './store-operations.ts';
import { damagedBelow, temporaryFolder } from './temp-catalog.ts';

/** Each operation is killed at every fifth call, and at each with FISHPLATE_EVERY_CALL=1; scripts/kill kills processes. */
const STEP = process.env.FISHPLATE_EVERY_CALL ? 1 : 5;

describe('killed at any call of the file system', () => {
  it.each(OPERATIONS)('$name is done whole or not at all, and can be done again', async ({ name, before, run }) => {
    const origin = join(temporaryFolder(), 'origin');
    await before(origin);
    const withMain = name === 'writing a local rule';
    const was = visible(origin, withMain);
    const whole = join(temporaryFolder(), 'whole');
    if (was !== 'no catalog') cpSync(origin, whole, { recursive: true });
    const { fs, calls } = fsDyingAt(Number.POSITIVE_INFINITY);
    await run(whole, fs);
    const became = visible(whole, withMain);
    expect(became).not.toBe(was);
    const total = calls();
    expect(total).toBeGreaterThan(10);

    const folder = temporaryFolder();
    for (let call = 1 + (total % STEP); call <= total; call += STEP) {
      const dead = join(folder, `dead-${call}`);
      if (was !== 'no catalog') cpSync(origin, dead, { recursive: true });
      await run(dead, fsDyingAt(call).fs).catch(() => {});
      const now = visible(dead, withMain);
      expect([was, became, ...between(was, became)], `call ${call} of ${total}`).toContain(now);
      const again = join(folder, `again-${call}`);
      if (existsSync(dead)) cpSync(dead, again, { recursive: true });
      if (now === 'no catalog') rmSync(dead, { recursive: true, force: true });
      if (now !== became) await run(again, realFs);
      expect(visible(again, withMain), `again after call ${call}`).toBe(became);
      await readAll(again);
    }
    expect(damagedBelow(folder)).toEqual([]);
  });
});
