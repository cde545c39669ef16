// Fits the matcher on all catalogs and writes src/matching/learned.ts. Takes some minutes; the same catalogs give the same
// file. Needs a built dist/, which itself needs some learned.ts: the one that lies there.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allCatalogs } from './catalogs.mjs';
import { fitLearned, fitRounds, unseenBeliefs, withEvidence } from './fitting.mjs';
import { harder } from './harder.mjs';

const base = allCatalogs();
const catalogs = [...base, ...base.flatMap(harder)].map(withEvidence);
const rounds = fitRounds(catalogs);
const learned = fitLearned(catalogs, rounds);
const calibration = calibrate(unseen(unseenBeliefs(catalogs, rounds)));
function short({ base, trees }) {
  return {
    base: round(base),
    trees: trees.map(t => ({ ...t, threshold: t.threshold.map(round), value: t.value.map(round) })),
  };
}
const names = base.map(c => c.name).join(', ');
const source = `// Written by scripts/matching/fit.mjs on: ${names},
// and on harder versions of each. Not edited by hand.
import type { Learned } from './believe.ts';

export const LEARNED = JSON.parse(
  '${JSON.stringify({ early: short(learned.early), late: short(learned.late), last: short(learned.last), calibration })}',
) as Learned;
`;
/** Pairs as they are, without their harder versions; every catalog weighs the same. */
function unseen(beliefs) {
  return catalogs.flatMap(({ plain, labels, truth, prepared: { pairs } }, k) => {
    if (!plain) return [];
    const judged = Array.from(beliefs[k].keys()).filter(p => truth.has(pairs.from[p]) && beliefs[k][p] > 0.02);
    return judged.map(p => ({ x: logit(beliefs[k][p]), label: labels[p], weight: 1000 / judged.length }));
  });
}

/** Slope and shift of the greatest likelihood, by Newton's method in small steps: whole ones overshoot and run away. */
function calibrate(rows) {
  let [slope, shift] = [0.6, 0];
  for (let step = 0; step < 200; step++) {
    const sums = { g0: 0, g1: 0, h00: 1e-6, h01: 0, h11: 1e-6 };
    for (const { x, label, weight } of rows) {
      const p = 1 / (1 + Math.exp(-(slope * x + shift)));
      const h = weight * p * (1 - p);
      sums.g0 += weight * (label - p);
      sums.g1 += weight * (label - p) * x;
      sums.h00 += h;
      sums.h01 += h * x;
      sums.h11 += h * x * x;
    }
    const { g0, g1, h00, h01, h11 } = sums;
    const d = h00 * h11 - h01 * h01;
    const small = x => Math.max(-0.05, Math.min(0.05, x));
    shift += small((h11 * g0 - h01 * g1) / d);
    slope += small((h00 * g1 - h01 * g0) / d);
  }
  return { slope: round(slope), shift: round(shift) };
}

function round(x) {
  return Number(x.toPrecision(6));
}

function logit(p) {
  const q = Math.min(1 - 1e-5, Math.max(1e-5, p));
  return Math.log(q / (1 - q));
}

writeFileSync(join(import.meta.dirname, '..', '..', 'src', 'matching', 'learned.ts'), source);
