import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { operateOnDraft, type WrittenOperation } from '../../src/commands/drafts/draft-operations.ts';
import { readDraft } from '../../src/commands/drafts/read-draft.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { smallWorks } from './small-works.ts';
import {
  chromiumPath,
  handsOn,
  openBrowser,
  phoneWithoutScripts,
  serveForTest,
  signedIn,
  signIn,
  tokenFor,
} from './viewer.ts';

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
let token: string;
beforeAll(async () => {
  dir = await smallWorks();
  token = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  expect(viewer.reported).toEqual([]);
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const read = async (draft: string) => readDraft(await openCatalog(dir), draft);
const numbered = async (draft: string, number: string) =>
  (await read(draft)).state.items.find(i => i.number === number)!;
const elsewhere = async (draft: string, ...operations: WrittenOperation[]) => {
  const other = { ...testPorts(`${draft} ${operations.length}`), author: { name: 'B. Other', email: 'b@example.org' } };
  await operateOnDraft(other, await openForWriting(dir), { draft, operations });
};

test('branches are seen, begun and merged by people with a name only, by forms of this viewer only', async () => {
  for (const path of ['branches', 'branches/roofs']) {
    const response = await fetch(`${viewer.address}desk/2030/${path}`);
    expect([path, new URL(response.url).pathname]).toEqual([path, '/sign-in']);
    const cookie = await signedIn(viewer.address, token);
    const body = new URLSearchParams({ name: 'roofs', step: 'do' });
    const refused = await fetch(`${viewer.address}desk/2030/${path}`, {
      method: 'POST',
      body,
      headers: { Cookie: cookie },
    });
    expect([path, refused.status]).toEqual([path, 403]);
  }
  await expect(read('roofs')).rejects.toThrow('There is no edition roofs');
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
  const lead = () => page.locator('.lead').textContent();
  const side = (of: string, what: string) =>
    page.getByRole('group', { name: `Which holds for ${of}` }).getByLabel(what, { exact: true });

  test('a branch is begun and worked on, and what is done there does not stand in the draft', async () => {
    await page.goto('/desk/2030/work');
    await page.getByRole('link', { name: 'Branches of 2030' }).click();
    expect(await lead()).toBe('2030 has no branch: everybody works on the draft itself.');
    for (const [name, why] of [
      ['draft/x', /cannot be a branch's name; use up to 60 letters/],
      ['main', /cannot be a branch's name/],
    ] as const) {
      await page.getByLabel('Its name').fill(name);
      await press('Begin it');
      expect(await alert()).toMatch(why);
      expect(await page.getByLabel('Its name').inputValue()).toBe(name);
    }
    await page.getByLabel('Its name').fill('roofs');
    await press('Begin it');
    expect(await page.locator('h1').textContent()).toBe('Work on roofs');
    expect(await lead()).toMatch(/^roofs is a branch of the draft 2030: what is done here does not stand there/);

    await page.getByLabel('Number or id in the draft').fill('1.2.1');
    await press('Open');
    await page.getByRole('link', { name: /^Retitle / }).click();
    await page.getByLabel('Title').fill('Outlet <b>&</b> swale');
    await press('Show what it does');
    await press('Do it');
    expect((await numbered('roofs', '1.2.1')).title).toBe('Outlet <b>&</b> swale');
    expect((await numbered('2030', '1.2.1')).title).toBe('Outlet');
    await press('Take it back');
    expect(await page.locator('h1').textContent()).toBe('Work on roofs');
    expect((await numbered('roofs', '1.2.1')).title).toBe('Outlet');

    // The name of an edition or a draft would mean that one.
    await page.goto('/desk/2030/branches');
    await page.getByLabel('Its name').fill('roofs');
    await press('Begin it');
    expect(await alert()).toBe('There is a branch roofs already; choose another name, or work on it.');
  });

  test('a branch with conflicts is merged when a side was chosen for each, and nothing is written before', async () => {
    await elsewhere(
      'roofs',
      { op: 'retitle', id: '1.2.1', title: 'Outlet <b>&</b> swale' },
      { op: 'withdraw', id: '1.2.2', reason: 'obsolete' },
      { op: 'move', id: '2.1.1', under: '2.2' },
      { op: 'reword', id: '3.2.1', to: { text: 'Only here.' } },
    );
    await elsewhere(
      '2030',
      { op: 'retitle', id: '1.2.1', title: 'Open outlet' },
      { op: 'reword', id: '1.2.2', to: { text: 'Somebody needs it.' } },
      { op: 'move', id: '2.1.1', under: '3.1' },
    );
    const moved = (await numbered('2030', '3.1')).id;
    const { tip } = (await read('2030')).branch;
    await page.goto('/desk/2030/branches');
    expect(await lead()).toBe('1 of 1 branch of 2030 has work that is not in the draft.');
    // The step that was done and taken back counts: the log tells both.
    expect(await main()).toContain('6 steps by B. Other, A. Reviewer, the last on');
    expect(await main()).toContain('Retitle 1.2.1 as "Outlet <b>&</b> swale"');
    await page.getByRole('link', { name: 'Merge roofs' }).click();
    expect(await lead()).toMatch(/^3 things were changed on roofs and on 2030 in ways that cannot both stand\./);
    const [title, gone, place] = ['1.2.1 Open outlet', "1.2.2 Neighbour's land", '3.1.4 Place of the pits'];
    await side(title, 'What roofs has').check();
    await press('Show what it does');
    expect(await alert()).toBe('2 conflicts still need a choice that settles it. Nothing was written.');
    expect(await page.getByRole('group').count()).toBe(2);
    await side(gone, 'What 2030 has').check();
    await side(place, 'What 2030 has').check();
    await press('Show what it does');
    expect(await lead()).toBe('roofs can be merged into 2030: every conflict is settled. Nothing is done yet.');
    expect(await main()).toContain('Changes: 3.2.1');
    await press('Choose otherwise');
    expect(await side(title, 'What roofs has').isChecked()).toBe(true);
    await side(gone, 'What roofs has').check();
    await press('Show what it does');
    expect(await main()).toContain('1.2.2 of 2024 ends.');
    expect((await read('2030')).branch.tip).toBe(tip);

    // Somebody is faster: nothing is done, and what it would do now is shown.
    await elsewhere('2030', { op: 'reword', id: '3.2.2', to: { text: 'Meanwhile.' } });
    await press('Merge it');
    expect(await alert()).toMatch(/^Somebody has worked on one of them since you looked\. Nothing was done/);
    await press('Merge it');
    expect(await page.getByRole('status').textContent()).toBe('Done: roofs is merged into 2030.');
    expect(await lead()).toBe('Everything on the 1 branch of 2030 is in the draft.');
    const { items } = (await read('2030')).state;
    expect(items.find(i => i.number === '1.2.1')!.title).toBe('Outlet <b>&</b> swale');
    expect(items.some(i => i.text === 'Somebody needs it.')).toBe(false);
    expect(items.filter(i => i.title === 'Place of the pits').map(i => i.parent)).toEqual([moved]);
    expect(items.map(i => i.text)).toEqual(expect.arrayContaining(['Only here.', 'Meanwhile.']));

    // The merge is a step like any other: it stands in the log, and is taken back by its button.
    await page.goto('/desk/2030/work');
    await page
      .getByRole('listitem')
      .filter({ hasText: /^\s*Merge roofs into the draft 2030/ })
      .getByRole('button', { name: 'Take back' })
      .click();
    expect((await numbered('2030', '1.2.1')).title).toBe('Open outlet');
  });

  test('a branch takes in what was done on the draft since; where nothing is to be merged, that is said', async () => {
    await page.goto('/desk/roofs/work');
    await page.getByRole('link', { name: 'Take in what was done on 2030 since' }).click();
    expect(await lead()).toMatch(/^2030 can be merged into roofs: nothing was changed by both\./);
    await press('Merge it');
    expect(await page.locator('h1').textContent()).toBe('Work on roofs');
    expect((await numbered('roofs', '1.2.1')).title).toBe('Open outlet');
    const again = await page.goto('/desk/roofs/branches/2030');
    expect([again!.status(), await lead()]).toEqual([
      400,
      'Everything on 2030 is in roofs already; nothing is to be merged.',
    ]);
    for (const path of ['/desk/2030/branches/2024', '/desk/2030/branches/nothing', '/desk/2024/branches']) {
      const response = await page.goto(path);
      expect([path, response!.status() === 400 || response!.status() === 404]).toEqual([path, true]);
    }
  });

  test('both pages are without accessibility violations, narrow and wide, and conflicts are settled by keyboard', async () => {
    await elsewhere('roofs', { op: 'retitle', id: '1.1.1', title: 'Theirs' });
    await elsewhere('2030', { op: 'retitle', id: '1.1.1', title: 'Ours' });
    const context = await browser.newContext({ baseURL: viewer.address, reducedMotion: 'reduce' });
    const judged = await context.newPage();
    await signIn(judged, token);
    const found: string[] = [];
    for (const [name, path] of [
      ['branches', '/desk/2030/branches'],
      ['merge', '/desk/2030/branches/roofs'],
    ] as const) {
      await judged.goto(path);
      for (const width of [390, 1280]) {
        await judged.setViewportSize({ width, height: 844 });
        found.push(...(await violations(judged)).map(v => `${name} ${width}: ${v}`));
        const wide = (await judged.evaluate('document.documentElement.scrollWidth')) as number;
        if (wide > width) found.push(`${name} is wider than ${width}`);
        await keepShot(judged, `draft-${name}-${width}`);
      }
    }
    expect(found).toEqual([]);
    await judged.getByRole('radio').first().focus();
    await judged.keyboard.press('ArrowRight');
    await judged.keyboard.press('Tab');
    await judged.keyboard.press('Enter');
    await judged.getByRole('button', { name: 'Merge it' }).focus();
    await judged.keyboard.press('Enter');
    await judged.waitForURL('**merged=roofs');
    expect((await numbered('2030', '1.1.1')).title).toBe('Theirs');
  });
});
