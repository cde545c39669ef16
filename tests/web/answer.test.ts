import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readPublication } from '../../src/commands/bundles/bundle-source.ts';
import { readBundleTemplates } from '../../src/commands/bundles/bundle-templates.ts';
import { dispositionPage } from '../../src/exports/disposition-page.ts';
import { dispositionTable } from '../../src/exports/disposition-tables.ts';
import { numberAnswer } from '../../src/exports/site-numbers.ts';
import type { Item } from '../../src/model/item.ts';
import type { Settings } from '../../src/model/settings.ts';
import { type Catalog, openOrCreate } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { serveForTest } from './viewer.ts';

const SETTINGS: Settings = {
  title: 'Small gardens',
  language: 'en',
  levels: [{ name: 'Part' }, { name: 'Requirement', obliges: true }],
  fileLevel: 1,
  numbering: { levels: [{ style: 'printed' }, { style: 'printed', separator: '.' }], numbersUnique: true },
  installationTypes: [
    { id: 'yard', name: 'Back yard' },
    { id: 'street', name: 'Street frontage' },
  ],
  withdrawalReasons: [{ code: 'elsewhere', meaning: 'another rule governs' }],
};

const part: Item = { id: 'part', number: '1', level: 1, parent: null, title: 'Basins' };
const basin = (id: string, number: string, title: string, text: string, appliesTo?: string[]): Item => ({
  ...{ id, number, level: 2, parent: 'part', title, text },
  ...(appliesTo ? { appliesTo } : {}),
});

const OLD = [
  part,
  basin('repair', '1.10', 'Repair', 'Damage shall be repaired within 14 days.'),
  basin('empty', '1.11', 'Emptying', 'Basins at the street shall be empty within 24 hours.', ['street']),
  basin('lid', '1.12', 'Lid', 'Each basin shall have a lid.'),
];
const NEW = [
  part,
  basin('repair', '1.4', 'Repair', 'Damage shall be repaired within 7 days.'),
  basin('empty', '1.5', 'Emptying', 'Basins shall be empty within 48 hours.', ['yard']),
  basin('lid', '1.6', 'Lid', 'Each basin shall have a lid.', ['yard']),
];

const folder = mkdtempSync(join(tmpdir(), 'fishplate-answer-'));
let catalog: Catalog;
let viewer: Viewer;
beforeAll(async () => {
  const dir = join(folder, 'gardens.git');
  catalog = await openOrCreate(dir);
  const author = { name: 'Steward', email: 'steward@example.org', date: new Date('2024-01-01T00:00:00Z') };
  const shared = { settings: SETTINGS, decisions: [], oldFileOf: () => 'part' };
  const first = { ...shared, name: '2016', replaces: null, dates: {}, items: OLD, lineage: [] };
  await publishEdition(catalog, first, author, 'Edition 2016');
  const heirs = [{ to: 'lid', fromExtent: 'part', toExtent: 'all' }] as const;
  const why = { reason: 'elsewhere', governs: "the city's street rules", governsChecked: '2021-05-01' };
  const lineage = [{ from: 'lid', heirs, withdrawnFor: ['street'], basis: 'declared' as const, confidence: 1, ...why }];
  const second = { ...shared, name: '2022', replaces: '2016', dates: {}, items: NEW, lineage };
  await publishEdition(catalog, second, author, 'Edition 2022');
  viewer = await serveForTest(dir);
}, 60_000);
afterAll(async () => {
  await viewer.close();
  rmSync(folder, { recursive: true, force: true });
});

const read = async (path: string) =>
  (await (await fetch(`${viewer.address}${path}`)).text())
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#34;', '"')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ');

test('an old number is answered with the words that changed and with the new text', async () => {
  const page = await read('search?q=1.10');
  expect(page).toContain('1.10 of 2016 became 1.4 in 2022.');
  expect(page).toContain('Stricter. Value changed: "within 14 days" → "within 7 days"');
  expect(page).toContain('Damage shall be repaired within 7 days.');
  expect(page).toContain('stricter : it asks more than before');
});

test('the first page gives an example that the catalog has', async () => {
  expect(await read('')).toContain('For example 1.4, or Repair.');
});

test('for whom an old number is no longer covered stands in the headline, of its own page as well', async () => {
  for (const path of ['search?q=1.11', 'at/2016/1.11']) {
    const page = await read(path);
    expect([path, page]).toEqual([
      path,
      expect.stringContaining('1.11 of 2016 became 1.5 in 2022, but not for Street frontage.'),
    ]);
    expect(page).toContain('No record says what governs for Street frontage now; ask the office');
  }
});

test('what ends for some and is governed elsewhere says by what', async () => {
  expect(await read('search?q=1.12')).toContain(
    "It ends for Street frontage. What governs there now: the city's street rules. Another rule governs.",
  );
});

test('the published pages answer alike', async () => {
  const publication = await readPublication(catalog, '2016', '2022', false);
  const { line, newItems, joint } = publication;
  const names = { item: (id: string) => id, old: (_: number, id: string) => id };
  const said = (id: string) => {
    const { headline, second } = numberAnswer(line, 0, joint.old.get(id)!, newItems, names);
    return `${headline} ${second}`;
  };
  expect(said('repair')).toContain('Duty: stricter. Value changed: "within 14 days" → "within 7 days"');
  expect(said('empty')).toContain('became 1.5 in 2022, but not for Street frontage.');
  expect(said('lid')).toContain("What governs there now: the city's street rules.");
  const table = dispositionPage(publication, await readBundleTemplates(), dispositionTable(publication));
  expect(table).toContain('Stricter. Value changed: &#34;within 14 days&#34; → &#34;within 7 days&#34;');
});
