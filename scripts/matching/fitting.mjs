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

export function fitLearned(catalogs) {
  const early = fitOn(
    catalogs,
    catalogs.map(c => c.first),
    EARLY,
  );
  const groups = [...new Set(catalogs.map(c => c.group))];
  const folds = 3;
  const evidences = catalogs.map(() => undefined);
  for (let fold = 0; fold < folds; fold++) {
    const out = c => groups.indexOf(c.group) % folds === fold;
    const others = catalogs.filter(c => !out(c));
    const trees = fitOn(
      others,
      others.map(c => c.first),
      EARLY,
    );
    catalogs.forEach((c, k) => {
      if (!out(c)) return;
      const { sides, pairs, words } = c.prepared;
      evidences[k] = evidenceOf(sides, pairs, words, scorePairs(trees, c.first, pairs.size));
    });
  }
  const late = fitOn(catalogs, evidences, LATE);
  return { early, late };
}
