import { compareTexts } from '../../src/content/compare-texts.ts';
import { lostFrom } from '../../src/content/lost/lost.ts';

/** Figures on one line of the test run. */
export const shown = (title: string, figures: Record<string, number>) =>
  process.stdout.write(
    `${title}: ${Object.entries(figures)
      .map(([name, n]) => `${name} ${Number.isInteger(n) ? n : n.toFixed(3)}`)
      .join(', ')}\n`,
  );

export interface Pair {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly wording: string;
  readonly duty: string;
}

/** Shares of pairs judged as labelled; `wrongSame` and `rightOfDecided` say what deciding more costs. */
export function measurePairs(pairs: readonly Pair[]) {
  const told = pairs.map(pair => ({ pair, said: compareTexts(pair.from, pair.to) }));
  const share = (test: (t: (typeof told)[number]) => boolean) => told.filter(test).length / told.length;
  const decided = share(t => t.said.duty !== 'unclear');
  const right = share(t => t.said.duty === t.pair.duty);
  return {
    pairs: pairs.length,
    wording: share(t => t.said.wording === t.pair.wording),
    duty: right,
    decided,
    rightOfDecided: share(t => t.said.duty !== 'unclear' && t.said.duty === t.pair.duty) / decided,
    wrongSame: share(t => t.said.duty === 'same' && t.pair.duty !== 'same'),
  };
}

export interface Heirs {
  readonly id: string;
  readonly from: string;
  readonly heirs: readonly string[];
  readonly lost: readonly string[];
}

const SMALL = new Set('the a an of at least in on to is are shall not be if by'.split(' '));
const content = (text: string) =>
  new Set((text.toLowerCase().match(/[\p{L}\p{N}_]+/gu) ?? []).filter(w => !SMALL.has(w)));

/** Two phrases name one loss if half the words of the shorter one are common, or one stands in the other. */
function isOneLoss(a: string, b: string): boolean {
  const [x, y] = [content(a), content(b)];
  const common = [...x].filter(w => y.has(w)).length;
  if (common > 0 && common >= Math.min(x.size, y.size) / 2) return true;
  return a.toLowerCase().includes(b.toLowerCase()) || b.toLowerCase().includes(a.toLowerCase());
}

/** Lost phrases found, and phrases told that nobody labelled as lost. */
export function measureLosses(rows: readonly Heirs[]) {
  let [wanted, found, alarms] = [0, 0, 0];
  for (const { from, heirs, lost } of rows) {
    const said = lostFrom(from, heirs).map(l => l.text);
    wanted += lost.length;
    found += lost.filter(l => said.some(s => isOneLoss(l, s))).length;
    alarms += said.filter(s => !lost.some(l => isOneLoss(l, s))).length;
  }
  return { rows: rows.length, recall: found / wanted, falseAlarmsPer100: (100 * alarms) / rows.length };
}
