import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateIn as fishplate } from './run-here.ts';

const PAIRS = `id,from_text,to_text,type
1,Keep hands off.,KEEP HANDS OFF!,
2,"Lap sheets at least 100 mm, with tape.",Lap sheets at least 150 mm.,roof
`;

describe('compare', () => {
  it('writes a line for each pair, in order, and needs no catalog', async () => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 'pairs.csv'), PAIRS);
    const { status, stdout } = await fishplate(dir, 'compare', '--pairs', 'pairs.csv', '--out', 'result.csv');
    expect([status, stdout]).toEqual([0, expect.stringContaining('2 pairs compared.')]);
    expect(readFileSync(join(dir, 'result.csv'), 'utf8').trim().split(/\r?\n/)).toEqual([
      'id,wording,duty,lost,evidence,type',
      '1,editorial,same,,,',
      expect.stringMatching(/^2,substantive,mixed,tape,"?value changed: .*,roof$/),
    ]);
  });

  it.each([
    ['id,from_text\n1,x\n', /has no column to_text; name its columns/],
    ['', /is empty; it needs a header line/],
  ])('refuses %j with one sentence that says what to do', async (bytes, sentence) => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 'pairs.csv'), bytes);
    const { status, stderr } = await fishplate(dir, 'compare', '--pairs', 'pairs.csv', '--out', 'result.csv');
    expect([status, stderr]).toEqual([2, expect.stringMatching(sentence)]);
  });

  it('does not write over its input', async () => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 'pairs.csv'), PAIRS);
    expect((await fishplate(dir, 'compare', '--pairs', 'pairs.csv', '--out', 'pairs.csv')).status).toBe(2);
    expect(readFileSync(join(dir, 'pairs.csv'), 'utf8')).toBe(PAIRS);
  });
});
