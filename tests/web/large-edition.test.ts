import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { searchEditions } from '../../src/commands/finding/search-editions.ts';
import { type PublishedCatalog, publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import type { Item } from '../../src/model/item.ts';
import type { Settings } from '../../src/model/settings.ts';
import { openOrCreate } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';

const WORKS = 11;
const EACH = 1000;

let folder: string;
let published: PublishedCatalog;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fishplate-large-'));
  const catalog = await openOrCreate(join(folder, 'large.git'));
  const author = { name: 'Steward', email: '', date: new Date('2024-01-01T00:00:00Z') };
  const edition = { settings, dates: { published: '2024-01-01' }, lineage: [], decisions: [], items: [...items()] };
  const named = { name: '2024', replaces: null, oldFileOf: (id: string) => id };
  await publishEdition(catalog, { ...edition, ...named }, author, 'Edition 2024');
  published = await publishedCatalog(catalog)();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const settings = {
  title: 'Large',
  language: 'en',
  levels: [{ name: 'Work item' }, { name: 'Requirement', obliges: true }],
  fileLevel: 1,
  numbering: { levels: [{ style: 'decimal' }, { style: 'decimal' }], numbersUnique: true },
  installationTypes: [{ id: 'house', name: 'House' }],
  withdrawalReasons: [],
} as unknown as Settings;

function* items(): Generator<Item> {
  for (let w = 1; w <= WORKS; w++) {
    yield { id: `w${w}`, number: `${w}`, level: 1, parent: null, title: `Work ${w}` };
    for (let r = 1; r <= EACH; r++) {
      const text = `Fix bracket ${r} of work ${w}.`;
      yield { id: `r${w}-${r}`, number: `${w}.${r}`, level: 2, parent: `w${w}`, title: `Bracket ${r}`, text };
    }
  }
}

test('of a large edition the file of an item is read, and no other', async () => {
  expect((await published.item('2024', 'r3-7')).text).toBe('Fix bracket 7 of work 3.');
  const read = await published.itemsNamed('2024', ['r3-7', 'r4-1']);
  expect(read.size).toBe(2 * (EACH + 1));
  await expect(published.item('2024', 'r3-9999')).rejects.toThrow('has no item r3-9999');
});

test('a number in it is found with the beginnings of the texts below', async () => {
  const { meanings, editions } = await searchEditions(published, { query: '3', most: 3 });
  expect(meanings.map(m => m.entry.id)).toEqual(['w3']);
  expect(editions[0]!.hits.map(hit => hit.excerpt)).toEqual([1, 2, 3].map(r => `Fix bracket ${r} of work 3.`));
});
