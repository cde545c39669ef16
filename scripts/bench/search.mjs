// Searching an edition of 3,000 and more items, against a linear scan over the same texts in lower case. The items are
// made from the sentences of the demo catalog. Needs a built dist/. Prints one line when run by itself; `run()` gives
// it as a value.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parse } from 'csv-parse/sync';

const CATALOG = join(import.meta.dirname, '..', '..', 'catalog');
const SIZES = [3_000, 5_000, 10_000, 20_000];
const LIMIT = 0.1;
const QUERIES = 300;
const SETTINGS = { language: 'en', installationTypes: [], levels: [] };

/** @returns {Promise<{name: string, ours: number, rival: number, ratio: number, note: string}>} seconds, p99 at 3,000 */
export async function run() {
  const { indexEdition, loadLunr } = await import('../../dist/search/index-edition.js');
  const { openIndex } = await import('../../dist/search/search-index.js');
  const lunr = await loadLunr();
  const texts = demoTexts();
  const told = [];
  let first;
  let largest = 0;
  for (const size of SIZES) {
    const items = itemsOf(size, texts);
    const folded = items.map(i => `${i.title} ${i.text}`.toLowerCase());
    const queries = queriesOf(items);
    const start = performance.now();
    const saved = JSON.stringify(indexEdition(lunr, SETTINGS, items));
    const build = (performance.now() - start) / 1000;
    const index = openIndex(lunr, JSON.parse(saved));
    const ours = p99(queries, query => index.find(query, 20));
    const rival = p99(queries, query => {
      const words = query.toLowerCase().split(' ');
      return folded.filter(text => words.every(word => text.includes(word)));
    });
    first ??= { ours, rival };
    if (ours < LIMIT) largest = size;
    told.push(
      `${size}: p99 ${ms(ours)}, scan ${ms(rival)}, built in ${build.toFixed(1)} s, ${(saved.length / 1e6).toFixed(0)} MB`,
    );
    if (ours >= LIMIT && size >= 10_000) break;
  }
  const note = `${told.join('; ')}; largest size tried under 100 ms: ${largest}`;
  const { ours, rival } = first;
  return { name: 'a search among 3,000 items, p99, against a linear scan', ours, rival, ratio: ours / rival, note };
}

function demoTexts() {
  const rows = ['2018', '2024'].flatMap(edition =>
    readdirSync(join(CATALOG, edition))
      .filter(name => name.endsWith('.csv'))
      .flatMap(name => parse(readFileSync(join(CATALOG, edition, name)), { columns: true, bom: true })),
  );
  return rows.filter(row => row.text).map(row => ({ title: row.title, sentences: row.text.split(/(?<=\.)\s+/) }));
}

/** Each item has a title of one requirement and sentences of two others, so that no two items are the same. */
function itemsOf(size, texts) {
  const random = seeded(size);
  const pick = list => list[Math.floor(random() * list.length)];
  return Array.from({ length: size }, (_, at) => ({
    id: `i${at}`,
    number: `${1 + (at % 9)}.${1 + (Math.floor(at / 9) % 9)}.${1 + (Math.floor(at / 81) % 40)}.${1 + Math.floor(at / 3240)}`,
    level: 1,
    parent: null,
    title: pick(texts).title,
    text: [...pick(texts).sentences, pick(pick(texts).sentences)].join(' '),
  }));
}

/** One to three words of an item, common ones too; every seventh query has a slip of a letter, every ninth is a number. */
function queriesOf(items) {
  const random = seeded(7);
  return Array.from({ length: QUERIES }, (_, at) => {
    const item = items[Math.floor(random() * items.length)];
    if (at % 9 === 8) return item.number.slice(0, 5);
    const words = `${item.title} ${item.text}`.match(/[A-Za-z]{3,}/g) ?? ['rain'];
    const chosen = Array.from({ length: 1 + (at % 3) }, () => words[Math.floor(random() * words.length)]);
    return at % 7 === 6 ? `${chosen.join(' ').slice(0, -1)}x` : chosen.join(' ');
  });
}

function p99(queries, ask) {
  for (const query of queries.slice(0, 30)) ask(query);
  const times = queries.map(query => {
    const start = performance.now();
    ask(query);
    return (performance.now() - start) / 1000;
  });
  return times.sort((a, b) => a - b)[Math.floor(times.length * 0.99)];
}

function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const ms = seconds => `${(seconds * 1000).toFixed(1)} ms`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { name, ours, rival, ratio, note } = await run();
  process.stdout.write(`${name}: ${ms(ours)} / ${ms(rival)} = ${ratio.toFixed(2)} (${note})\n`);
}
