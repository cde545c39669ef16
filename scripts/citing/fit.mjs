// Fits the weights of evidence that a number is a citation: node scripts/citing/fit.mjs [--write]. Prints, for each
// labelled catalog left out in turn, what the weights fitted on the others reach there. Logistic regression with a
// quadratic penalty (ridge), a weight at a time by Newton's method; one that would turn its reason round is held at nought.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { examples } from './examples.mjs';

const { SPEAKS } = await import('../../dist/citing/evidence.js');
const { neighbourhoods } = await import('../../dist/citing/neighbours.js');
const { neighbourly, oddsOf } = await import('../../dist/citing/belief.js');

const RIDGE = 1;
const SIGNS = {
  ...Object.fromEntries(Object.entries(SPEAKS).map(([name, way]) => [name, way === 'for' ? 1 : -1])),
  ...Object.fromEntries(
    ['sentence', 'passage', 'document', 'list'].flatMap(w => [
      [`${w}For`, 1],
      [`${w}Against`, -1],
    ]),
  ),
};

/** @param rows [{ evidence, cited, count }] */
function fitWeights(rows) {
  const counts = rows.map(r => r.count);
  const names = [...new Set(rows.flatMap(r => Object.keys(r.evidence)))];
  const columns = names.map(n => Float64Array.from(rows, r => r.evidence[n] ?? 0));
  const cited = rows.map(r => (r.cited ? 1 : 0));
  const sums = new Float64Array(rows.length);
  const weights = names.map(() => 0);
  let base = 0;
  /** One Newton step along one column; its weight stays on its side of nought. */
  const step = (column, from, ridge, sign) => {
    let [slope, bend] = [ridge * from, ridge + 1e-6];
    for (let i = 0; i < sums.length; i++) {
      const value = column ? column[i] : 1;
      if (value === 0) continue;
      const p = 1 / (1 + Math.exp(-sums[i]));
      slope += counts[i] * (p - cited[i]) * value;
      bend += counts[i] * Math.max(p * (1 - p), 0.01) * value * value;
    }
    let to = from - slope / bend;
    if (sign !== undefined && to * sign < 0) to = 0;
    if (to !== from) for (let i = 0; i < sums.length; i++) sums[i] += (to - from) * (column ? column[i] : 1);
    return to;
  };
  for (let sweep = 0; sweep < 60; sweep++) {
    base = step(undefined, base, 0);
    names.forEach((name, j) => {
      weights[j] = step(columns[j], weights[j], RIDGE, SIGNS[name]);
    });
  }
  return { base, weights: Object.fromEntries(names.map((n, j) => [n, Number(weights[j].toFixed(3))])) };
}

/**
 * The plain sentences of tests/citing are few and say what has to hold; whole documents are few as well, and what people
 * use the finder on. Passages, half of which were written as traps, would outvote both.
 */
const COUNTS = { sentences: 12, boats: 2, signs: 2, demo: 2 };

const flat = docs =>
  docs.flatMap(d => d.evidence.map((evidence, i) => ({ evidence, cited: d.cited[i], count: COUNTS[d.catalog] ?? 1 })));

/** Second round: neighbours as believed by weights that have not seen the document's fold. */
function withNeighbours(docs, first) {
  return docs.map(d => {
    const odds = d.evidence.map(e => oddsOf(first(d), e));
    const near = neighbourhoods(d.candidates, odds);
    return { ...d, evidence: d.evidence.map((e, i) => ({ ...e, ...neighbourly(near[i]) })) };
  });
}

function fitBoth(docs) {
  const FOLDS = 5;
  const folds = Array.from({ length: FOLDS }, (_, k) => fitWeights(flat(docs.filter((_, i) => i % FOLDS !== k))));
  const foldOf = new Map(docs.map((d, i) => [d, folds[i % FOLDS]]));
  const second = fitWeights(flat(withNeighbours(docs, d => foldOf.get(d))));
  return { first: fitWeights(flat(docs)), second };
}

function judge(docs, { first, second }) {
  const judged = withNeighbours(docs, () => first);
  let [hit, listed, all] = [0, 0, 0];
  const misses = [];
  for (const d of judged) {
    all += d.citations.length;
    d.evidence.forEach((e, i) => {
      const odds = oddsOf(second, e);
      const yes = odds > 0;
      const n = d.candidates[i].group.members.length;
      if (yes) listed += n;
      if (yes && d.cited[i]) hit += n;
      if (yes !== d.cited[i]) {
        const { group, text } = d.candidates[i];
        const said = `${text.slice(Math.max(0, group.start - 50), group.start)}»${text.slice(group.start, group.end)}«${text.slice(group.end, group.end + 40)}`;
        const parts = Object.entries(e)
          .filter(([n, v]) => v && Math.abs(second.weights[n] * v) > 0.25)
          .map(([n, v]) => `${n} ${(second.weights[n] * v).toFixed(1)}`);
        misses.push(
          `${yes ? 'made up' : 'missed'} ${d.catalog} ${d.file} ${odds.toFixed(1)}: ${said.replace(/\s+/g, ' ')}  [${parts.join(', ')}]`,
        );
      }
    });
    for (const m of d.missed) misses.push(`no candidate ${d.catalog} ${d.file}: ${m.replace(/\s+/g, ' ')}`);
  }
  const odds = judged.flatMap(d => d.evidence.map((e, i) => [oddsOf(second, e), d.cited[i]]));
  return { precision: hit / listed, recall: hit / all, misses, odds };
}

const docs = await examples();
const catalogs = [...new Set(docs.map(d => d.catalog))];
const unseen = [];
for (const left of catalogs) {
  const { precision, recall, misses, odds } = judge(
    docs.filter(d => d.catalog === left),
    fitBoth(docs.filter(d => d.catalog !== left)),
  );
  unseen.push(...odds);
  process.stdout.write(`${left} left out: precision ${precision.toFixed(3)}, recall ${recall.toFixed(3)}\n`);
  if (process.env.FISHPLATE_MISSES) process.stdout.write(`${misses.join('\n')}\n`);
}
for (const least of [0, 0.5, 1, 1.5, 2, 3]) {
  const above = unseen.filter(([odds]) => odds > least);
  const right = above.filter(([, cited]) => cited).length;
  const all = unseen.filter(([, cited]) => cited).length;
  process.stdout.write(
    `log-odds over ${least}: ${(right / above.length).toFixed(3)} right, ${(right / all).toFixed(3)} of all\n`,
  );
}
const both = fitBoth(docs);
const all = judge(docs, both);
process.stdout.write(
  `all, fitted on themselves: precision ${all.precision.toFixed(3)}, recall ${all.recall.toFixed(3)}\n`,
);
process.stdout.write(
  `${Object.entries(both.second.weights)
    .map(([n, w]) => `${n} ${w}`)
    .join(', ')}, base ${both.second.base.toFixed(2)}\n`,
);
if (process.argv.includes('--write')) {
  const told = ({ base, weights }) => `{ base: ${base.toFixed(3)}, weights: ${JSON.stringify(weights)} }`;
  writeFileSync(
    join(import.meta.dirname, '../../src/citing/weights.ts'),
    `import type { Weights } from './belief.ts';

/** What each reason adds to the log-odds of a citation; written by scripts/citing/fit.mjs. */
export const FIRST: Weights = ${told(both.first)};

/** The same once the neighbours of a number are believed or not. */
export const SECOND: Weights = ${told(both.second)};
`,
  );
}
