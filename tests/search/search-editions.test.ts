import { readFile, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { searchEditions } from '../../src/commands/finding/search-editions.ts';
import { searchIndexPath } from '../../src/commands/finding/search-index-file.ts';
import { type PublishedCatalog, publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { openCatalog } from '../../src/store/open.ts';
import { copyOfDemoCatalog } from '../demo-catalog.ts';

let folder: string;
let published: PublishedCatalog;

beforeAll(async () => {
  folder = await copyOfDemoCatalog();
  published = await publishedCatalog(await openCatalog(folder))();
});
afterAll(() => rm(dirname(folder), { recursive: true, force: true }));

const search = (query: string, edition?: string) =>
  searchEditions(published, { query, most: 10, ...(edition === undefined ? {} : { edition }) });

test('a number with several meanings shows all of them and chooses none', async () => {
  const { meanings } = await search('4.2.3');
  expect(meanings.map(m => `${m.edition} ${m.entry.title}`)).toEqual(['2018 Soakaway, apartment court', '2014 Soil']);
});

test('a number that is gone from the asked edition leads to what became of it', async () => {
  const { meanings } = await search('9.1.1.2', '2024');
  expect(meanings.map(m => m.edition)).toEqual(['2018']);
  expect(meanings[0]!.trace.told[0]).toMatch(/^2018 9\.1\.1\.2 .* in 2024/);
});

test('a number typed with commas, blanks or hyphens is the number that is printed with points', async () => {
  const found = async (query: string) => (await search(query)).meanings.map(m => `${m.edition} ${m.entry.number}`);
  const printed = await found('9.1.1.2');
  expect(printed).toContain('2018 9.1.1.2');
  for (const typed of ['9,1,1,2', '9 1 1 2', '9-1-1-2']) expect([typed, await found(typed)]).toEqual([typed, printed]);
  expect((await search('4,2,3,99')).nearest[0]).toMatch(/^4\.2\.3\./);
});

test('the beginning of a number lists what stands below it, in order', async () => {
  const { editions } = await search('4.2', '2024');
  expect(editions[0]!.hits.slice(0, 2).map(h => h.entry.number)).toEqual(['4.2.1', '4.2.1.1']);
  expect(editions[0]!.hits.every(h => h.entry.number.startsWith('4.2.'))).toBe(true);
});

test('words are found by their stem, and an unfinished last word by its beginning', async () => {
  expect((await search('entering trench', '2018')).editions[0]!.hits[0]!.entry.title).toBe('Entering trenches');
  expect((await search('emptying tim', '2024')).editions[0]!.hits[0]!.entry.title).toBe('Emptying time');
});

test('a word with one wrong letter is found as spelt alike, and said so', async () => {
  const [found] = (await search('soakway', '2024')).editions;
  expect(found!.matched).toBe('alike');
  expect(found!.total).toBeGreaterThan(0);
});

test('"not" is looked for like any other word', async () => {
  const [found] = (await search('not', '2018')).editions;
  expect(found!.total).toBeGreaterThan(100);
});

test('a number that no edition has offers the nearest', async () => {
  const answer = await search('4.2.3.99');
  expect(answer.meanings).toEqual([]);
  expect(answer.nearest[0]).toMatch(/^4\.2\.3\./);
});

test('an id with a wrong check character is caught, and the id that was meant is offered', async () => {
  const { id } = (await published.edition('2024')).entries[0]!;
  const wrong = id.slice(0, -1) + (id.endsWith('0') ? '1' : '0');
  expect((await search(wrong)).mistyped).toEqual({ id: wrong, meant: [id] });
  expect((await search(id)).meanings.map(m => m.entry.id)).toEqual([id]);
});

test('an edition that does not exist is refused with the known ones', async () => {
  await expect(search('x', '2099')).rejects.toThrow('There is no edition 2099; use one of: 2014, 2018, 2024.');
});

test('no text that anybody types makes the search throw', async () => {
  const nasty = [
    '*',
    '~1',
    '^',
    '+a -b',
    'title:x',
    '"',
    '__proto__',
    'constructor',
    '\ud800',
    '%',
    '\0',
    'a*b~2^9',
    '.',
  ];
  for (const query of nasty) await search(query);
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 60 }), async query => {
      await search(query);
    }),
    { numRuns: 60 },
  );
});

test('a query of any length is cut, and said to be', async () => {
  const { query, cut } = await search('soakaway '.repeat(5000));
  expect(query.length).toBeLessThanOrEqual(200);
  expect(cut).toBe(true);
});

test('the index is saved beside the catalog and a damaged one is built again', async () => {
  await search('soakaway', '2024');
  const catalog = await openCatalog(folder);
  const path = searchIndexPath(catalog, (await published.edition('2024')).commit);
  const whole = await readFile(path, 'utf8');
  for (const damage of [whole.slice(0, 1000), '{}', 'null', '{"version":2,"ids":[],"index":{"version":"2.3.9"}}', '']) {
    await writeFile(path, damage);
    const again = await publishedCatalog(catalog)();
    const answer = await searchEditions(again, { query: 'soakaway', edition: '2024', most: 10 });
    expect(answer.editions[0]!.total).toBeGreaterThan(0);
    expect(await readFile(path, 'utf8')).toBe(whole);
  }
});
