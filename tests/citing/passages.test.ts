import { afterAll, describe, expect, it } from 'vitest';
import { judgePassages, removeCatalogs, type Score } from './judge.ts';

afterAll(removeCatalogs);

const precision = (s: Score) => s.right / s.lines;
const recall = (s: Score) => s.found / s.citations;

describe('cite, on passages of letters, lessons, minutes and the like', () => {
  it.each([
    ['ovens', 'tuned on', [0.88, 0.88]],
    ['domes', 'tuned on', [0.82, 0.88]],
    ['walls', 'tuned on', [0.77, 0.83]],
    ['coldrooms', 'tuned on', [0.89, 0.94]],
    ['greenhouses', 'tuned on', [0.91, 0.92]],
    ['rigging', 'never tuned on', [0.74, 0.86]],
    ['organs', 'never tuned on', [0.81, 0.91]],
    ['pumps', 'never tuned on', [0.85, 0.78]],
  ] as const)('about %s, %s', async (catalog, name, [least, leastFound]) => {
    const judged = await judgePassages(catalog);
    for (const [kind, s] of Object.entries(judged)) {
      process.stdout.write(
        `${catalog}, ${name}, ${kind}: ${s.citations} citations, ${s.lines} lines; precision ${precision(s).toFixed(3)}, recall ${recall(s).toFixed(3)}\n`,
      );
    }
    if (process.env.FISHPLATE_MISSES && name === 'tuned on') {
      for (const m of judged.all.misses) process.stdout.write(`${m.kind.padEnd(14)} ${m.file}: ${m.said}\n`);
    }
    expect(precision(judged.all)).toBeGreaterThan(least);
    expect(recall(judged.all)).toBeGreaterThan(leastFound);
  });
});
