// Fitting both sums of trees on some catalogs. Beliefs that the later one is fitted on come from early trees that did
// not see the catalog in question: in-sample beliefs are sharper than any that it will meet.

import { prepare } from '../../dist/matching/believe.js';
import { evidenceOf, FEATURES } from '../../dist/matching/features.js';
import { scorePairs } from '../../dist/matching/trees.js';
import { fitTrees } from './boost.mjs';
import { randomFrom } from './catalogs.mjs';

/** Rows of one pair of editions that are fitted on; links always, other pairs by lot. */
const MOST_ROWS = 1800;

export function withEvidence(pair) {
  const prepared = prepare(pair.from, pair.to);
  const { pairs, words, sides } = prepared;
  const labels = new Uint8Array(pairs.size);
  let links = 0;
  let found = 0;
  for (const [i, heirs] of pair.truth) {
    for (const j of heirs) {
      links++;
      const p = pairs.find(i, j);
      if (p >= 0) {
        labels[p] = 1;
        found++;
      }
    }
  }
  return { ...pair, prepared, labels, reach: found / links, first: evidenceOf(sides, pairs, words, words.first) };
}

function sampleRows({ prepared: { pairs, words }, labels, truth }, seed) {
  const random = randomFrom(seed);
  const wanted = [];
  const others = [];
  for (let p = 0; p < pairs.size; p++) {
    if (!truth.has(pairs.from[p])) continue;
    if (labels[p]) wanted.push([p, 1]);
    else if (words.first[p] > 0.15) {
      if (random() < 0.5) wanted.push([p, 2]);
    } else others.push(p);
  }
  const share = Math.min(1, Math.max(0.03, (MOST_ROWS - wanted.length) / Math.max(1, others.length)));
  for (const p of others) if (random() < share) wanted.push([p, 1 / share]);
  return wanted;
}

function fitOn(catalogs, evidences, options) {
  const rows = catalogs.map((c, k) => sampleRows(c, k + 1));
  const size = rows.reduce((sum, list) => sum + list.length, 0);
  const columns = FEATURES.map(() => new Float32Array(size));
  const labels = new Uint8Array(size);
  const weights = new Float64Array(size);
  const perGroup = new Map();
  for (const c of catalogs) perGroup.set(c.group, (perGroup.get(c.group) ?? 0) + 1);
  let r = 0;
  catalogs.forEach((c, k) => {
    const links = c.labels.reduce((a, b) => a + b, 0);
    // Every catalog weighs the same however large it is, but a small one may not count each of its links tenfold.
    // The pair as it is counts for more than what was made of it.
    const plain = c.plain ? 2.5 : 1;
    const weight = (plain * Math.min(3, 500 / links)) / Math.sqrt(perGroup.get(c.group) / 4);
    for (const [p, times] of rows[k]) {
      FEATURES.forEach(([name], f) => {
        columns[f][r] = evidences[k][name][p];
      });
      labels[r] = c.labels[p];
      weights[r] = weight * times;
      r++;
    }
  });
  return fitTrees(
    columns,
    labels,
    weights,
    FEATURES.map(([, sign]) => sign),
    options,
  );
}

const EARLY = { rounds: 40, depth: 4, rate: 0.22 };
const LATE = { rounds: 90, depth: 5, rate: 0.13 };
const FOLDS = 3;

/**
 * Fits a sum on all catalogs, and one for each third of the groups left out; `scores` are those that each catalog gets
 * from sums that have not seen it.
 */
function fitBeside(catalogs, evidences, options) {
  const seen = catalogs.map((_, k) => k);
  const sumOf = list =>
    fitOn(
      list.map(k => catalogs[k]),
      list.map(k => evidences[k]),
      options,
    );
  const folds = Array.from({ length: FOLDS }, (_, fold) => sumOf(seen.filter(k => foldOf(catalogs, k) !== fold)));
  const scores = catalogs.map((c, k) => scorePairs(folds[foldOf(catalogs, k)], evidences[k], c.prepared.pairs.size));
  return { trees: sumOf(seen), folds, scores };
}

function foldOf(catalogs, k) {
  const groups = [...new Set(catalogs.map(c => c.group))];
  return groups.indexOf(catalogs[k].group) % FOLDS;
}

const around = (catalogs, scores) =>
  catalogs.map(({ prepared: { sides, pairs, words } }, k) => evidenceOf(sides, pairs, words, scores[k]));

/**
 * Three sums, each fitted on beliefs that come from sums which had not seen the catalog: the early one by words, the late
 * one by what is believed of the pairs around, the last one where a late one would be too sure of itself - it meets its
 * own beliefs otherwise, which are sharper than any that it was fitted on. In the last rounds the mean of the late and
 * the last one judges: on catalogs left out it is better than either.
 */
export function fitRounds(catalogs) {
  const early = fitBeside(
    catalogs,
    catalogs.map(c => c.first),
    EARLY,
  );
  const late = fitBeside(catalogs, around(catalogs, early.scores), LATE);
  return { early, late, seenAgain: around(catalogs, late.scores) };
}

export function fitLearned(catalogs, { early, late, seenAgain } = fitRounds(catalogs)) {
  return { early: early.trees, late: late.trees, last: meanOf(late.trees, fitOn(catalogs, seenAgain, LATE)) };
}

/** What the last round believes of each catalog by sums that had not seen it, to calibrate by. */
export function unseenBeliefs(catalogs, { late, seenAgain }) {
  const last = fitBeside(catalogs, seenAgain, LATE);
  const means = late.folds.map((trees, fold) => meanOf(trees, last.folds[fold]));
  const judged = evidences =>
    catalogs.map((c, k) => scorePairs(means[foldOf(catalogs, k)], evidences[k], c.prepared.pairs.size));
  return judged(around(catalogs, judged(seenAgain)));
}

function meanOf(a, b) {
  const halved = ({ trees }) => trees.map(t => ({ ...t, value: t.value.map(v => v / 2) }));
  return { base: (a.base + b.base) / 2, trees: [...halved(a), ...halved(b)] };
}
