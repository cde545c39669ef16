import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { lostFrom } from '../../src/content/lost/lost.ts';
import { measureLosses, measurePairs, type Pair, shown } from './measures.ts';

interface Row extends Pair {
  readonly lost: readonly string[];
}

const rows = (set: string): Row[] =>
  JSON.parse(readFileSync(join(import.meta.dirname, `labelled/${set}/pairs.json`), 'utf8'));
const number = (row: Row) => Number(row.id.slice(1));
const losses = (half: readonly Row[]) => measureLosses(half.map(({ to, ...row }) => ({ ...row, heirs: [to] })));

/**
 * Pairs of trades that neither the demo nor the first labels speak of. The third set was written and labelled before the
 * code was opened by the one who then changed it; the fourth, of sixteen trades, by somebody who has not seen it. The
 * halves for tuning may be read; of the others only the sums below were ever looked at. The eighth has no labels of wording.
 */
describe('pairs of other trades', () => {
  it.each<[string, string, (row: Row) => boolean]>([
    ['third', 'even', r => number(r) % 2 === 0],
    ['third', 'odd, unseen', r => number(r) % 2 === 1],
    ['fourth', 'eight trades', r => number(r) <= 80],
    ['fourth', 'eight others, unseen', r => number(r) > 80],
    ['fifth', 'ten trades', r => number(r) <= 100],
    ['fifth', 'ten others, unseen', r => number(r) > 100],
    ['sixth', 'first half', r => number(r) <= 75],
    ['sixth', 'second half, unseen', r => number(r) > 75],
    ['seventh', 'first half', r => number(r) <= 75],
    ['seventh', 'second half, unseen', r => number(r) > 75],
    ['eighth', 'by a judge', r => number(r) <= 100],
    ['eighth', 'by a second judge, unseen', r => number(r) > 100],
  ])('of the %s set, %s, are judged as labelled', (set, name, which) => {
    const pairs = rows(set).filter(which);
    const [duty, lost] = [measurePairs(pairs), losses(pairs)];
    shown(`${set}, ${name}`, duty);
    shown(`${set}, ${name}, lost`, lost);
    if (process.env.FISHPLATE_MISSES && !name.includes('unseen')) tell(pairs);
    expect(duty.wrongSame).toBeLessThan(0.04);
  });
});

/** For whoever tunes: what is judged otherwise. */
function tell(pairs: readonly Row[]): void {
  for (const { id, from, to, wording, duty, lost } of pairs) {
    const said = compareTexts(from, to);
    const told = lostFrom(from, [to]).map(l => l.text);
    if (said.duty === duty && said.wording === wording && told.join() === lost.join()) continue;
    process.stdout.write(
      `${id} ${said.wording}/${said.duty}, labelled ${wording}/${duty}\n  ${from}\n  ${to}\n  lost ${told.join(' | ')}\n  labelled ${lost.join(' | ')}\n`,
    );
  }
}
