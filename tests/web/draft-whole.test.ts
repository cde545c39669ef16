import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { type ReadDraft, readDraft } from '../../src/commands/drafts/read-draft.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { testPorts } from '../demo-catalog.ts';
import { smallWorks } from './small-works.ts';
import { chromiumPath, handsOn, openBrowser, phoneWithoutScripts, serveForTest, tokenFor } from './viewer.ts';

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
let token: string;
beforeAll(async () => {
  dir = await smallWorks();
  await openDraft(testPorts(), await openForWriting(dir), { name: 'printed', from: '2018' });
  token = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  expect(viewer.reported).toEqual([]);
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const state = async (draft = '2030'): Promise<ReadDraft['state']> =>
  (await readDraft(await openCatalog(dir), draft)).state;
const numbered = async (number: string) => (await state()).items.find(i => i.number === number)!;

test('what is done to a draft as a whole is done by people with a name only', async () => {
  for (const path of ['add', 'decide', 'rename', 'renumber', 'left/x/link']) {
    const response = await fetch(`${viewer.address}desk/2030/${path}`);
    expect([path, new URL(response.url).pathname]).toEqual([path, '/sign-in']);
  }
});

describe.skipIf(chromiumPath === undefined)('in a browser without scripts', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    page = await phoneWithoutScripts(browser, viewer, token);
  });
  afterAll(() => browser.close());

  const { press, alert, main } = handsOn(() => page);
  const open = async (number: string, operation: string) => {
    await page.goto(`/desk/2030/item/${(await numbered(number)).id}`);
    await page.getByRole('link', { name: new RegExp(`^${operation} `) }).click();
  };
  const whole = async (operation: string) => {
    await page.goto('/desk/2030/work');
    await page.getByRole('link', { name: new RegExp(`^${operation} `) }).click();
  };

  test('a decision goes on record for the whole edition, and a withdrawal follows from it', async () => {
    await whole('Decide');
    await page.getByLabel('What was decided').fill('Ladders <b>&</b> scaffolds are left to the law');
    await page.getByLabel('Because').fill('The law governs them.');
    await page.getByLabel('Who decided').fill('Committee');
    await page.getByLabel('What it covers').fill('Every clause on ladders');
    await page.getByLabel('Short name').fill('../../law');
    await press('Show what it does');
    expect(await alert()).toMatch(/^"\.\.\/\.\.\/law" cannot be the short name of a decision; use up to 60 letters/);
    await page.getByLabel('Short name').fill('');
    await press('Show what it does');
    expect(await main()).toContain('Decided: Ladders <b>&</b> scaffolds are left to the law');
    expect((await state()).decisions).toEqual([]);
    await press('Do it');
    const [decision] = (await state()).decisions;
    expect(decision).toMatchObject({ id: 'ladders-b-b-scaffolds-are-left-to-the', authority: 'Committee' });
    expect(await main()).toContain('Committee; covers: Every clause on ladders');

    const gone = await numbered('1.2.3');
    await open('1.2.3', 'Withdraw');
    await page.getByLabel('Reason').selectOption('obsolete');
    await page.getByLabel('Decision that it follows from').selectOption(decision!.id);
    await press('Show what it does');
    await press('Do it');
    expect((await state()).lineage.find(r => r.from === gone.id)).toMatchObject({ heirs: [], decision: decision!.id });

    // Of an old item that ended it can be said afterwards that it goes on.
    await page.getByRole('link', { name: /has ended or gone on in others/ }).click();
    await page.getByRole('link', { name: 'Link' }).click();
    await page.getByLabel('In which item').fill('1.2.2');
    await page.getByLabel('How much of that item it is').selectOption('a part of it');
    await press('Show what it does');
    expect(await main()).toContain('1.2.3 of 2024 goes on in 1.2.2.');
    await press('Do it');
    const { id } = await numbered('1.2.2');
    const record = (await state()).lineage.find(r => r.from === gone.id)!;
    expect(record.heirs).toEqual([{ to: id, fromExtent: 'unknown', toExtent: 'part' }]);
    expect(record.reason).toBeUndefined();
  });

  test('an older item is linked to another one and unlinked again; what would be lost by that is refused', async () => {
    const [from, to] = [await numbered('1.1.1'), await numbered('1.1.2')];
    await open('1.1.2', 'Link');
    await page.getByLabel('Which older item').fill('1.1.99');
    await press('Show what it does');
    expect(await alert()).toMatch(/^There is no 1\.1\.99 in 2024; the nearest numbers are .*1\.1\./);
    await page.getByLabel('Which older item').fill('1.1.1');
    await page.getByLabel('How much of the older item goes on here').selectOption('part');
    await press('Show what it does');
    expect(await main()).toContain('1.1.1 of 2024 goes on in 1.1.1 and 1.1.2.');
    await press('Do it');
    expect((await state()).lineage.find(r => r.from === from.id)!.heirs.map(h => h.to)).toContain(to.id);

    await page.getByRole('link', { name: /^Unlink / }).click();
    await page.getByLabel('Which item of 2024').selectOption(to.id);
    await press('Show what it does');
    expect(await alert()).toMatch(/would be lost.*Withdraw it with a reason, or let another item carry it on\.$/);
    await page.getByLabel('Which item of 2024').selectOption(from.id);
    await press('Show what it does');
    expect(await main()).toContain('1.1.1 of 2024 goes on in 1.1.1.');
    await press('Do it');
    expect((await state()).lineage.find(r => r.from === from.id)?.heirs.map(h => h.to) ?? [from.id]).toEqual([from.id]);
  });

  test("an outside standard's wording is taken in with its source, and something new stands at the top", async () => {
    await open('1.1.2', 'Incorporate');
    await page.getByLabel('Wording of the outside standard').fill('Overflows carry twice the storm of ten years.');
    await page.getByLabel('Which standard').fill('Gutter code, 5.2');
    await page.getByLabel('Its edition').fill('2023');
    await page.getByLabel('Who allowed it').fill(' ');
    await press('Show what it does');
    expect(await alert()).toBe('Say who allowed it, and when.');
    await page.getByLabel('Who allowed it').fill('Letter of 12 May');
    await press('Show what it does');
    await press('Do it');
    const item = await numbered('1.1.2');
    expect(item.text).toBe('Overflows carry twice the storm of ten years.');
    expect(item.references).toContain('Gutter code, 5.2, 2023');
    expect((await state()).lineage.find(r => r.from === item.id)!.note).toContain('Permission: Letter of 12 May.');

    await whole('Add');
    await page.getByLabel('Title').fill('Care over the years');
    for (const box of await page.getByRole('checkbox').all()) await box.uncheck();
    await press('Show what it does');
    expect(await alert()).toBe('Tick at least one installation type that it applies to.');
    await page.getByLabel('House lot').check();
    await page.getByLabel('Right after which item').fill('1');
    await press('Show what it does');
    expect(await main()).toContain('New: 2 Care over the years');
    // Every later part gets another number; the page tells the first of them and counts the rest.
    expect(await main()).toMatch(/and \d+ renumbered items more/);
    await press('Do it');
    expect(await numbered('2')).toMatchObject({ title: 'Care over the years', appliesTo: ['house'], level: 1 });
  });

  test('types and levels get other names, which changes no item; a draft with printed numbers is renumbered', async () => {
    await whole('Rename');
    await page.getByLabel('What').selectOption('type house');
    await page.getByLabel('Its name').fill('Terrace row');
    await press('Show what it does');
    expect(await alert()).toBe('There is another type called "Terrace row"; give another name.');
    await page.getByLabel('Its name').fill('Detached house');
    await press('Show what it does');
    expect(await main()).toContain('The installation type "House lot" is called "Detached house".');
    expect(await page.getByRole('heading', { name: /^Changes/ }).count()).toBe(0);
    await press('Do it');
    expect((await state()).settings.installationTypes.find(t => t.id === 'house')!.name).toBe('Detached house');

    expect(await page.getByRole('link', { name: /^Renumber / }).count()).toBe(0);
    await page.goto('/desk/2030/renumber');
    await press('Show what it does');
    expect(await alert()).toBe('2030 is numbered by place already, without gaps; nothing is to be renumbered.');
    await page.goto('/desk/printed/work');
    await page.getByRole('link', { name: /^Renumber / }).click();
    await press('Show what it does');
    expect(await main()).toContain('Items are numbered by their places from now on, without gaps.');
    await press('Do it');
    expect((await state('printed')).settings.numbering.levels.map(l => l.style)).not.toContain('printed');
    await press('Take back');
    expect((await state('printed')).settings.numbering.levels.map(l => l.style)).toContain('printed');
  });
});
