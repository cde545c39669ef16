import { expect, test } from 'vitest';
import { readTogether } from '../../src/commands/reading/read-together.ts';

test('who asks while a reading runs shares the one after it, and so sees what was written in between', async () => {
  let written = 1;
  let readings = 0;
  const go: (() => void)[] = [];
  const ask = readTogether(async () => {
    readings++;
    const seen = written;
    await new Promise<void>(resolve => go.push(resolve));
    return seen;
  });
  const first = ask();
  written = 2;
  const later = [ask(), ask(), ask()];
  go[0]!();
  expect(await first).toBe(1);
  await new Promise(resolve => setTimeout(resolve, 5));
  go[1]!();
  expect(await Promise.all(later)).toEqual([2, 2, 2]);
  expect(readings).toBe(2);
});

test('a reading that fails fails for its own askers only', async () => {
  let fail = true;
  const ask = readTogether(async () => {
    if (fail) throw new Error('unreadable');
    return 'read';
  });
  const first = ask();
  fail = false;
  const second = ask();
  await expect(first).rejects.toThrow('unreadable');
  expect(await second).toBe('read');
});
