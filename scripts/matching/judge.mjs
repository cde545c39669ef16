// Leave-one-catalog-out: each pair of editions is matched with trees that were fitted without its catalog.
//   node scripts/matching/judge.mjs [NAME…]

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { believe } from '../../dist/matching/believe.js';
import { allCatalogs } from './catalogs.mjs';
import { figuresOf } from './figures.mjs';
import { fitLearned, withEvidence } from './fitting.mjs';
import { harder } from './harder.mjs';

/** Beliefs of the plain pairs are kept, for fit.mjs to calibrate by: no tree that gave them had seen the catalog. */
function keep({ name, prepared: { pairs }, labels, truth }, beliefs) {
  const folder = join(import.meta.dirname, '..', '..', '.cache', 'matching', 'unseen');
  mkdirSync(folder, { recursive: true });
  const rows = [];
  for (let p = 0; p < pairs.size; p++) if (truth.has(pairs.from[p])) rows.push([beliefs[p], labels[p]]);
  writeFileSync(join(folder, `${name}.json`), JSON.stringify(rows));
}

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
    if (base.some(b => b.name === c.name)) keep(c, beliefs);
    console.log(`${c.name.padEnd(36)} reach ${c.reach.toFixed(3)} ${figuresOf(c, beliefs)} (${seconds()} s)`);
  }
}
