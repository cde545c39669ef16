// What a practitioner would put together instead: TF-IDF of stems, for each old row the new row of the greatest cosine.
// Prints its link F1, and the F1 at the one threshold that suits the pair best, which nobody could know beforehand.
// Without folders: every pair that is fitted on.
//   node scripts/matching/ordinary.mjs [FOLDER…]     (old.csv, new.csv, truth.csv)
import { basename } from 'node:path';
import { stemmer } from 'stemmer';
import { allCatalogs, readPair } from './catalogs.mjs';

const THRESHOLDS = Array.from({ length: 17 }, (_, i) => i / 20);

const folders = process.argv.slice(2);
const pairs =
  folders.length > 0 ? folders.map(folder => ({ name: basename(folder), ...readPair(folder) })) : allCatalogs();

for (const { name, from, to, truth } of pairs) {
  const vector = tfIdf([...from, ...to]);
  const news = to.map(vector);
  const best = [...truth.keys()].map(i => nearest(vector(from[i]), news, i));
  const f1 = threshold => scoreOf(best, truth, threshold);
  const top = Math.max(...THRESHOLDS.map(f1));
  console.log(`${name.padEnd(20)} best match ${f1(0).toFixed(3)}, with its best threshold ${top.toFixed(3)}`);
}

function tfIdf(rows) {
  const stems = ({ title, text }) => (`${title} ${text}`.toLowerCase().match(/[a-z0-9]+/g) ?? []).map(stemmer);
  const bearers = new Map();
  for (const row of rows) for (const s of new Set(stems(row))) bearers.set(s, (bearers.get(s) ?? 0) + 1);
  return row => {
    const weights = new Map();
    for (const s of stems(row)) weights.set(s, (weights.get(s) ?? 0) + Math.log(rows.length / bearers.get(s)));
    const length = Math.hypot(...weights.values()) || 1;
    return new Map([...weights].map(([s, w]) => [s, w / length]));
  };
}

function nearest(own, news, from) {
  let best = { from, to: 0, cosine: -1 };
  news.forEach((other, to) => {
    let cosine = 0;
    for (const [s, w] of own) cosine += w * (other.get(s) ?? 0);
    if (cosine > best.cosine) best = { from, to, cosine };
  });
  return best;
}

function scoreOf(best, truth, threshold) {
  const links = [...truth.values()].reduce((sum, heirs) => sum + heirs.length, 0);
  const said = best.filter(b => b.cosine >= threshold);
  const right = said.filter(b => truth.get(b.from).includes(b.to)).length;
  return (2 * right) / (said.length + links || 1);
}
