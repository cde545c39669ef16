// Leave-one-catalog-out: each pair of editions is matched with trees that were fitted without its catalog.
//   node scripts/matching/judge.mjs [NAME…]

import { believe } from '../../dist/matching/believe.js';
import { allCatalogs } from './catalogs.mjs';
import { figuresOf } from './figures.mjs';
import { fitLearned, withEvidence } from './fitting.mjs';
import { harder } from './harder.mjs';

const asked = process.argv.slice(2);
const seconds = () => Math.round(performance.now() / 1000);
const base = allCatalogs();
const catalogs = [...base, ...base.flatMap(harder)].map(withEvidence);
console.log(`${catalogs.length} pairs prepared, ${seconds()} s`);
const groups = [...new Set(catalogs.map(c => c.group))].filter(g => asked.length === 0 || asked.includes(g));
for (const group of groups) {
  const learned = fitLearned(catalogs.filter(c => c.group !== group));
  for (const c of catalogs.filter(c => c.group === group)) {
    const { beliefs } = believe(c.prepared, learned);
    console.log(`${c.name.padEnd(36)} reach ${c.reach.toFixed(3)} ${figuresOf(c, beliefs)} (${seconds()} s)`);
  }
}
