// Matching without ids: 3,000 × 1,800 rows, and 100,000 × 100,000 where FISHPLATE_BENCH_LARGE is set (minutes). The rival
// is what a practitioner would write: TF-IDF cosines of all pairs, the best one taken. It links one to one and knows no
// merges, no outline and no probability; it is here for its time only.
import { randomFrom } from '../matching/catalogs.mjs';

export async function run() {
  const { matchRows } = await import('../../dist/matching/match-rows.js');
  const { LEARNED } = await import('../../dist/matching/learned.js');
  const sizes = [[3000, 1800], ...(process.env.FISHPLATE_BENCH_LARGE ? [[100_000, 100_000]] : [])];
  return sizes.map(([olds, news]) => {
    const from = edition(olds, 1);
    const to = from.slice(0, news).map(row => ({ ...row, text: reworded(row.text, row.number) }));
    const ours = timed(() => matchRows(from, to, LEARNED));
    const rival = olds > 10_000 ? undefined : timed(() => allPairs(from, to));
    const peak = Math.round(process.resourceUsage().maxRSS / 1024);
    return {
      name: `matching ${olds.toLocaleString('en')} × ${news.toLocaleString('en')}`,
      ours,
      rival,
      ratio: rival === undefined ? undefined : ours / rival,
      note: `rival: all-pairs TF-IDF; peak of this process ${peak} MB`,
    };
  });
}

function timed(work) {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

/** Invented rows: parts of 60, titles of 3 and texts of 25 words out of some 8,000, the frequent ones often. */
function edition(size, seed) {
  const random = randomFrom(seed);
  const word = () => `w${Math.floor(8000 * random() ** 3).toString(36)}`;
  const words = n => Array.from({ length: n }, word).join(' ');
  return Array.from({ length: size }, (_, i) => {
    const head = i % 60 === 0;
    const part = Math.floor(i / 60);
    return {
      number: head ? `${part + 1}` : `${part + 1}.${i % 60}`,
      level: '',
      parent: head ? -1 : part * 60,
      title: words(3),
      text: head ? '' : words(25),
      table: 0,
    };
  });
}

function reworded(text, number) {
  const random = randomFrom(number.length * 7919 + text.length);
  return text.replace(/\w+/g, w => (random() < 0.2 ? `v${w}` : w));
}

function allPairs(from, to) {
  const terms = row => `${row.title} ${row.text}`.split(' ');
  const df = new Map();
  for (const row of [...from, ...to]) for (const t of new Set(terms(row))) df.set(t, (df.get(t) ?? 0) + 1);
  const vector = row => {
    const v = new Map();
    for (const t of terms(row)) v.set(t, (v.get(t) ?? 0) + Math.log((from.length + to.length) / df.get(t)));
    const length = Math.hypot(...v.values()) || 1;
    for (const [t, x] of v) v.set(t, x / length);
    return v;
  };
  const news = to.map(vector);
  return from.map(row => {
    const v = vector(row);
    let best = -1;
    let most = 0;
    news.forEach((w, j) => {
      let dot = 0;
      for (const [t, x] of v) dot += x * (w.get(t) ?? 0);
      if (dot > most) {
        most = dot;
        best = j;
      }
    });
    return best;
  });
}
