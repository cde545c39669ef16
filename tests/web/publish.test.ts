import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { branchOf } from '../../src/commands/drafts/branch-draft.ts';
import { operateOnDraft } from '../../src/commands/drafts/draft-operations.ts';
import { readDraft } from '../../src/commands/drafts/read-draft.ts';
import { issueToken } from '../../src/commands/people.ts';
import { publishDraft } from '../../src/commands/releasing/publish-draft.ts';
import { listDrafts, listEditions } from '../../src/store/names.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { readPublication } from '../../src/store/publication.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { smallWorks } from './small-works.ts';
import { chromiumPath, handsOn, openBrowser, phoneWithoutScripts, serveForTest, signedIn, tokenFor } from './viewer.ts';

const EDITOR = { name: 'B. Editor', address: 'editor@example.org' };

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
let reviewers: string;
let editors: string;
beforeAll(async () => {
  dir = await smallWorks();
  // A loss that nobody has settled stops it.
  await operateOnDraft(testPorts('loss'), await openForWriting(dir), {
    draft: '2030',
    operations: [{ op: 'reword', id: '1.1.1', to: { text: 'Set brackets deep.' } }],
  });
  reviewers = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
  editors = await issueToken(testPorts('editor'), await openForWriting(dir), EDITOR, { publishes: true });
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  expect(viewer.reported).toEqual([]);
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const editions = async () => (await listEditions(await openCatalog(dir))).map(h => h.name);
const retitled = async (draft: string, title: string) =>
  operateOnDraft(testPorts(title), await openForWriting(dir), {
    draft,
    operations: [{ op: 'retitle', id: '1.2.1', title }],
  });

test('a token that was not given for it publishes nothing: the page names the command instead', async () => {
  const nobody = await fetch(`${viewer.address}desk/2030/publish`);
  expect(new URL(nobody.url).pathname).toBe('/sign-in');
  const cookie = await signedIn(viewer.address, reviewers);
  const form = await (await fetch(`${viewer.address}desk/2030/review`, { headers: { Cookie: cookie } })).text();
  const csrf = /name="csrf" value="([^"]+)"/.exec(form)![1]!;
  const page = await (await fetch(`${viewer.address}desk/2030/publish`, { headers: { Cookie: cookie } })).text();
  expect(page).toContain('fishplate publish 2030 --notes &#34;what is new&#34; --override');
  expect(page).not.toContain('<form class="tell');
  const headers = { Cookie: cookie, 'Sec-Fetch-Site': 'same-origin' };
  const seen = (await readDraft(await openCatalog(dir), '2030')).branch.tip;
  const typed = { notes: 'New.', override: 'So.', step: 'do', token: reviewers, seen };
  for (const [body, status] of [
    [{ ...typed, csrf }, 400],
    [{ ...typed, csrf, token: editors }, 400],
    [typed, 403],
  ] as const) {
    const answer = await fetch(`${viewer.address}desk/2030/publish`, {
      method: 'POST',
      headers,
      body: new URLSearchParams(body),
    });
    expect(answer.status).toBe(status);
  }
  expect(await editions()).not.toContain('2030');
});

test('a branch is merged before the draft is published, and never published itself', async () => {
  await branchOf(await openForWriting(dir), 'roofs', '2030');
  await retitled('roofs', 'Only on the branch');
  const publish = publishDraft(testPorts(), await openForWriting(dir), { draft: 'roofs', override: 'so' });
  await expect(publish).rejects.toThrow('roofs is a branch of the draft 2030; merge it first');
  expect(await editions()).not.toContain('2030');
});

describe.skipIf(chromiumPath === undefined)('in a browser without scripts', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    page = await phoneWithoutScripts(browser, viewer, editors);
  });
  afterAll(() => browser.close());

  const { press, alert, main } = handsOn(() => page);
  /** Scripts are off on this page, so its HTML is judged on another one. */
  const judge = async (name: string) => {
    const html = await page.content();
    const context = await browser.newContext({ baseURL: viewer.address, reducedMotion: 'reduce' });
    const judged = await context.newPage();
    await judged.route('**/judged', route => route.fulfill({ body: html, contentType: 'text/html' }));
    await judged.goto('/judged');
    const found: string[] = [];
    for (const width of [390, 1280]) {
      await judged.setViewportSize({ width, height: 844 });
      found.push(...(await violations(judged)).map(v => `${name} ${width}: ${v}`));
      const wide = (await judged.evaluate('document.documentElement.scrollWidth')) as number;
      if (wide > width) found.push(`${name} is wider than ${width}`);
      await keepShot(judged, `${name}-${width}`);
    }
    await context.close();
    expect(found).toEqual([]);
  };

  test('publishing is shown before it is done, takes the token once more, and leads to where the edition is', async () => {
    await page.goto('/desk/2030');
    await page.getByRole('link', { name: 'Publish 2030' }).click();
    expect(await page.locator('.lead').textContent()).toMatch(/^\d+ findings? stops? the publication of 2030: settle/);
    expect(await main()).toContain('Left out is what was done on roofs: that branch has work that is not in 2030.');
    await judge('publish');
    await page.getByLabel('Release notes').fill('Overflows <b>&</b> swales.\n\nNumbers stay.');
    await page.getByLabel('Why it is published all the same').fill(' ');
    await press('Show what will stand on record');
    expect(await alert()).toBe('Say why it is published although findings stop it, or settle them first.');
    expect(await page.getByLabel('Release notes').inputValue()).toContain('Numbers stay.');
    await page.getByLabel('Why it is published all the same').fill('The council wants it.');
    await press('Show what will stand on record');
    expect(await main()).toMatch(
      /Edition 2030, published by B\. Editor.*Overflows <b>&<\/b> swales\..*open findings?: The c/,
    );
    await judge('publish-record');

    const plain = await tokenFor(dir, EDITOR);
    for (const token of ['', 'fp-nobody', reviewers, plain]) {
      await page.getByLabel('Your token, once more').fill(token);
      await press('Publish 2030');
      expect(await alert()).toBe('This is not your token. Nothing was published.');
    }
    // Somebody works on the draft meanwhile: what was looked at is not what would be published.
    await retitled('2030', 'Meanwhile');
    await page.getByLabel('Your token, once more').fill(editors);
    await press('Publish 2030');
    // The page of the last refusal has seen the draft as it was.
    expect(await alert()).toMatch(/has changed since you looked\. Nothing was published/);
    expect(await editions()).not.toContain('2030');
    await press('Show what will stand on record');
    await page.getByLabel('Your token, once more').fill(editors);
    await press('Publish 2030');

    expect(new URL(page.url()).pathname).toBe('/desk/2030/published');
    expect(await page.locator('.lead').textContent()).toBe(
      'Edition 2030 is published: 27 items, by B. Editor, on 1 August 2024.',
    );
    expect(await main()).toContain('fishplate bundle 2024 2030 --out publication-2030');
    await judge('published');
    await page.getByRole('link', { name: 'Read edition 2030' }).click();
    expect(await page.locator('h1').textContent()).toContain('2030');
    expect([await editions(), await listDrafts(await openCatalog(dir))]).toEqual([['2018', '2024', '2030'], []]);
    const record = await readPublication(await openCatalog(dir), '2030');
    expect(record).toMatchObject({ by: 'B. Editor', at: '2024-08-01T09:00:00.000Z' });
    expect(record!.said).toMatch(
      /^Overflows <b>&<\/b> swales\.\n\nNumbers stay\.\n\nPublished with \d+ open findings: The council wants it\.$/,
    );

    // What is published cannot be published again, and names of nothing are told.
    await page.goto('/desk/2030/publish');
    expect(new URL(page.url()).pathname).toBe('/desk/2030/published');
    for (const path of ['/desk/none/published', '/desk/none/publish']) {
      expect([path, (await page.goto(path))!.status()]).toEqual([path, 404]);
    }
  });
});
