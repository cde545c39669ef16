import { afterAll, describe, expect, it } from 'vitest';
import { judgePassages, removeCatalogs, type Score } from './judge.ts';

afterAll(removeCatalogs);

const precision = (s: Score) => s.right / s.lines;
const recall = (s: Score) => s.found / s.citations;

describe('cite, on passages of letters, lessons, minutes and the like', () => {
  it.each([
    ['ovens', 'tuned on', [0.92, 0.94]],
    ['domes', 'tuned on', [0.83, 0.89]],
    ['walls', 'tuned on', [0.81, 0.86]],
    ['coldrooms', 'tuned on', [0.9, 0.93]],
    ['greenhouses', 'tuned on', [0.85, 0.93]],
    ['skilifts', 'tuned on', [0.89, 0.92]],
    ['showcases', 'tuned on', [0.88, 0.89]],
    ['fishladders', 'tuned on', [0.86, 0.85]],
    ['saunas', 'tuned on', [0.85, 0.74]],
    ['telescopes', 'tuned on', [0.87, 0.95]],
    ['stalls', 'tuned on', [0.87, 0.74]],
    ['playgrounds', 'tuned on', [0.9, 0.88]],
    ['masts', 'never tuned on', [0.88, 0.81]],
    ['costumes', 'never tuned on', [0.94, 0.77]],
    ['rigging', 'never tuned on', [0.78, 0.9]],
    ['organs', 'never tuned on', [0.84, 0.94]],
    ['pumps', 'never tuned on', [0.79, 0.8]],
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
