// What answers are worth in the order of a review: somebody who knows the truth answers ten links, the matcher runs
// anew with them, and so on. Printed is the share of right links (F1) after each round, for four orders of asking.
//   node scripts/matching/review-order.mjs [NAME…]
// The shipped matcher was fitted on these pairs: the orders can be compared with each other, not with judge.mjs.
import { LEARNED } from '../../dist/matching/learned.js';
import { matchRows } from '../../dist/matching/match-rows.js';
import { reviewOrder, settledBy } from '../../dist/matching/review-order.js';
import { allCatalogs } from './catalogs.mjs';

const ROUNDS = 6;
const EACH = 10;

const inDoubt = ({ links }) => links.filter(l => l.band === 'look');
const ORDERS = {
  'most valuable first': (matching, { from, to }) => reviewOrder(matching.links, from, to).map(q => q.link),
  'likeliest wrong first': matching => inDoubt(matching).sort((a, b) => a.confidence - b.confidence),
  'least sure first': matching =>
    inDoubt(matching).sort((a, b) => Math.abs(a.confidence - 0.5) - Math.abs(b.confidence - 0.5)),
  'as they stand': matching => inDoubt(matching),
  'by lot': matching => {
    // The same lots every time (a linear congruential generator).
    let state = 42;
    const lots = new Map(
      inDoubt(matching).map(link => {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        return [link, state];
      }),
    );
    return [...lots.keys()].sort((a, b) => lots.get(a) - lots.get(b));
  },
};

/** What a person who knows would say; one other heir at most, as a page takes it. */
function told({ truth, sources }, { from, to }) {
  const because = '';
  if (from === null) {
    const source = sources.get(to)?.[0];
    return source === undefined ? [{ kind: 'new', to, because }] : [{ kind: 'yes', from: source, to, because }];
  }
  const heirs = truth.get(from) ?? [];
  if (to !== null && heirs.includes(to)) return [{ kind: 'yes', from, to, because }];
  if (heirs.length === 0) return [{ kind: 'withdrawn', from, because }];
  const other = { kind: 'yes', from, to: heirs[0], because };
  return to === null ? [other] : [other, { kind: 'no', from, to, because }];
}

function figure({ truth }, { links }) {
  let [got, hit, wanted] = [0, 0, 0];
  for (const heirs of truth.values()) wanted += heirs.length;
  for (const { from, to } of links) {
    if (from === null || to === null || !truth.has(from)) continue;
    got++;
    if (truth.get(from).includes(to)) hit++;
  }
  return (2 * hit) / (got + wanted || 1);
}

const asked = process.argv.slice(2);
for (const pair of allCatalogs().filter(c => asked.length === 0 || asked.includes(c.name))) {
  const sources = new Map();
  for (const [from, heirs] of pair.truth) for (const to of heirs) sources.set(to, [...(sources.get(to) ?? []), from]);
  const known = { ...pair, sources };
  // Only rows whose truth is known are asked about.
  const judged = ({ from, to }) => (from === null ? sources.has(to) || pair.truth.size > 0 : pair.truth.has(from));
  const first = matchRows(pair.from, pair.to, LEARNED);
  console.log(`${pair.name}: ${first.links.filter(l => l.band === 'look').length} to look at`);
  for (const [name, order] of Object.entries(ORDERS)) {
    let [matching, answers] = [first, []];
    const figures = [figure(pair, first)];
    for (let round = 0; round < ROUNDS; round++) {
      let given = 0;
      for (const link of order(matching, pair)) {
        if (given === EACH) break;
        if (!judged(link) || settledBy(answers)(link)) continue;
        answers = [...answers, ...told(known, link)];
        given++;
      }
      if (given === 0) break;
      matching = matchRows(pair.from, pair.to, LEARNED, answers);
      figures.push(figure(pair, matching));
    }
    console.log(`  ${name.padEnd(22)} ${figures.map(f => f.toFixed(3)).join(' ')}`);
  }
}
