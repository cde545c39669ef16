import { afterAll, describe, expect, it } from 'vitest';
import { judgeCiting, removeCatalogs, type Score } from './judge.ts';

afterAll(removeCatalogs);

const precision = (s: Score) => s.right / s.lines;
const recall = (s: Score) => s.found / s.citations;
const told = (name: string, s: Score) =>
  `${name}: ${s.citations} citations, ${s.lines} lines; precision ${precision(s).toFixed(3)}, recall ${recall(s).toFixed(3)}`;

describe('cite, on documents labelled by someone who has not seen it', () => {
  it.each([
    [0, 'the half for tuning', [0.94, 0.92, 0.98, 0.83]],
    [1, 'the half that is never tuned on', [0.87, 0.88, 0.89, 0.75]],
  ] as const)('half %i: %s', async (half, name, least) => {
    const { all, certain } = await judgeCiting(half);
    process.stdout.write(`${told(`${name}, all`, all)}\n${told(`${name}, certain`, certain)}\n`);
    // For whoever tunes: what was missed or made up, in the half for tuning only.
    if (process.env.FISHPLATE_MISSES && half === 0) {
      for (const m of all.misses) process.stdout.write(`${m.kind.padEnd(14)} ${m.file}: ${m.said}\n`);
    }
    const reached = [precision(all), recall(all), precision(certain), recall(certain)];
    reached.forEach((value, at) => {
      expect(value).toBeGreaterThan(least[at]!);
    });
  });
});
