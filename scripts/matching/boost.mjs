// Gradient boosted trees for yes-or-no labels (Friedman 2001), with the direction of features held (monotone
// constraints) and missing values sent the better way. Small enough to read; fitting happens here, never in the program.

const BINS = 40;
const MISSING = BINS;

/**
 * columns: Float32Array for each feature; labels 0/1; weights; signs: 1, -1 or 0 for each feature.
 * Gives { base, trees } as src/matching/trees.ts reads them.
 */
export function fitTrees(
  columns,
  labels,
  weights,
  signs,
  { rounds = 120, depth = 5, rate = 0.12, least = 4, ridge = 2 } = {},
) {
  const size = labels.length;
  const cuts = columns.map(column => cutsOf(column));
  const binned = columns.map((column, f) => binsOf(column, cuts[f]));
  let positive = 0;
  let all = 0;
  for (let r = 0; r < size; r++) {
    positive += labels[r] * weights[r];
    all += weights[r];
  }
  const base = Math.log(positive / (all - positive));
  const scores = new Float64Array(size).fill(base);
  const gradient = new Float64Array(size);
  const hessian = new Float64Array(size);
  const trees = [];
  for (let round = 0; round < rounds; round++) {
    for (let r = 0; r < size; r++) {
      const p = 1 / (1 + Math.exp(-scores[r]));
      gradient[r] = (labels[r] - p) * weights[r];
      hessian[r] = p * (1 - p) * weights[r];
    }
    const tree = { feature: [], threshold: [], missing: [], left: [], right: [], value: [] };
    // Each tree sees another half (Friedman 2002): quicker, and the sum is steadier.
    const rows = Int32Array.from({ length: size >> 1 }, (_, k) => (2 * k + (hash(k, round) & 1)) % size);
    const bins = [];
    grow(tree, bins, rows, depth, [-Infinity, Infinity]);
    for (let r = 0; r < size; r++) {
      let at = 0;
      while (tree.feature[at] >= 0) {
        const bin = binned[tree.feature[at]][r];
        at = (bin === MISSING ? tree.missing[at] : bin <= bins[at]) ? tree.left[at] : tree.right[at];
      }
      scores[r] += tree.value[at];
    }
    trees.push(tree);
  }
  return { base, trees };

  function grow(tree, cutBins, rows, left, [low, high]) {
    const node = tree.feature.length;
    let g = 0;
    let h = 0;
    for (const r of rows) {
      g += gradient[r];
      h += hessian[r];
    }
    const value = clamp(g / (h + ridge), low, high);
    tree.feature.push(-1);
    tree.threshold.push(0);
    tree.missing.push(0);
    tree.left.push(0);
    tree.right.push(0);
    tree.value.push(value * rate);
    const best = left > 0 && h > 2 * least ? bestSplit(rows, g, h, [low, high]) : undefined;
    if (!best) return node;
    const bins = binned[best.feature];
    const goesLeft = r => (bins[r] === MISSING ? best.missingLeft : bins[r] <= best.bin);
    const l = rows.filter(goesLeft);
    const r = rows.filter(row => !goesLeft(row));
    tree.feature[node] = best.feature;
    cutBins[node] = best.bin;
    tree.threshold[node] = cuts[best.feature][best.bin];
    tree.missing[node] = best.missingLeft ? 1 : 0;
    const middle = (best.valueLeft + best.valueRight) / 2;
    const sign = signs[best.feature];
    const bounds =
      sign === 0
        ? [
            [low, high],
            [low, high],
          ]
        : sign > 0
          ? [
              [low, middle],
              [middle, high],
            ]
          : [
              [middle, high],
              [low, middle],
            ];
    tree.left[node] = grow(tree, cutBins, l, left - 1, bounds[0]);
    tree.right[node] = grow(tree, cutBins, r, left - 1, bounds[1]);
    return node;
  }

  function bestSplit(rows, g, h, [low, high]) {
    let best;
    let most = 1e-3 + (g * g) / (h + ridge);
    const gs = new Float64Array(BINS + 1);
    const hs = new Float64Array(BINS + 1);
    for (let f = 0; f < columns.length; f++) {
      if (cuts[f].length === 0) continue;
      gs.fill(0);
      hs.fill(0);
      const bins = binned[f];
      for (let k = 0; k < rows.length; k++) {
        const r = rows[k];
        const b = bins[r];
        gs[b] += gradient[r];
        hs[b] += hessian[r];
      }
      for (const missingLeft of hs[MISSING] > 0 ? [false, true] : [false]) {
        let gl = missingLeft ? gs[MISSING] : 0;
        let hl = missingLeft ? hs[MISSING] : 0;
        for (let b = 0; b < cuts[f].length; b++) {
          gl += gs[b];
          hl += hs[b];
          const [gr, hr] = [g - gl, h - hl];
          if (hl < least || hr < least) continue;
          const [valueLeft, valueRight] = [clamp(gl / (hl + ridge), low, high), clamp(gr / (hr + ridge), low, high)];
          if (signs[f] !== 0 && signs[f] * (valueRight - valueLeft) < 0) continue;
          const gain = (gl * gl) / (hl + ridge) + (gr * gr) / (hr + ridge);
          if (gain > most) {
            most = gain;
            best = { feature: f, bin: b, missingLeft, valueLeft, valueRight };
          }
        }
      }
    }
    return best;
  }
}

function hash(k, round) {
  let x = Math.imul(k ^ Math.imul(round + 1, 0x9e3779b1), 0x85ebca6b);
  x ^= x >>> 13;
  return Math.imul(x, 0xc2b2ae35) >>> 16;
}

const clamp = (value, low, high) => Math.max(low, Math.min(high, value));

/** Values that part the column into bins of about equal size: a row is in bin b if it is below cuts[b]. */
function cutsOf(column) {
  const known = column.filter(v => !Number.isNaN(v)).sort();
  const cuts = [];
  for (let b = 1; b < BINS; b++) {
    const cut = known[Math.floor((b * known.length) / BINS)];
    if (cut !== undefined && cut > known[0] && cut !== cuts.at(-1)) cuts.push(cut);
  }
  // Rare ends matter: most pairs are no links, and quantiles alone would not part the good from the very good.
  for (const share of [0.985, 0.99, 0.995]) {
    const cut = known[Math.floor(share * known.length)];
    if (cut !== undefined && cut > known[0] && !cuts.includes(cut) && cuts.length < BINS - 1) cuts.push(cut);
  }
  return cuts.sort((a, b) => a - b);
}

function binsOf(column, cuts) {
  const bins = new Uint8Array(column.length);
  for (let r = 0; r < column.length; r++) {
    const value = column[r];
    if (Number.isNaN(value)) bins[r] = MISSING;
    else {
      let low = 0;
      let high = cuts.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (value < cuts[middle]) high = middle;
        else low = middle + 1;
      }
      bins[r] = low;
    }
  }
  return bins;
}
