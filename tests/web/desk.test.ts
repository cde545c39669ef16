import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { openForWriting } from '../../src/store/open.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { chromiumPath, openBrowser, serveForTest, signIn, tokenFor } from './viewer.ts';

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  await openDraft(testPorts(), await openForWriting(dir), { name: '2030' });
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

test('a draft is read at the desk by people with a name only', async () => {
  for (const path of ['desk', 'desk/2030', 'desk/2030/review']) {
    const response = await fetch(`${viewer.address}${path}`);
    expect([
      path,
      new URL(response.url).pathname,
      (await response.text()).includes('Trees and planted ground'),
    ]).toEqual([path, '/sign-in', false]);
  }
  const body = new URLSearchParams({ answer: 'yes', because: 'so' });
  const refused = await fetch(`${viewer.address}desk/2030/review/2.1.1.1/singular`, { method: 'POST', body });
  expect(refused.status).toBe(403);
});

describe.skipIf(chromiumPath === undefined)('at the desk', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    page = await (
      await browser.newContext({ baseURL: viewer.address, viewport: { width: 390, height: 844 } })
    ).newPage();
    await signIn(page, await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' }));
  });
  afterAll(() => browser.close());

  const sound = async (name: string) => {
    await keepShot(page, name);
    expect([name, await violations(page)]).toEqual([name, []]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
  };

  test('one sees what stops a draft, answers the question that matters most, by keyboard alone, and it stands under the name', async () => {
    await page.goto('/');
    await page.getByRole('link', { name: 'Desk' }).click();
    await sound('desk');
    await page.getByRole('link', { name: '2030', exact: true }).click();
    await expect(page.locator('.lead').textContent()).resolves.toMatch(/^\d+ findings stop the publication of 2030\.$/);
    await sound('desk-release');
    for (const [name, path] of [
      ['Work on the draft', 'work'],
      ['The comments', 'comments'],
      ['What came in from the work', 'intake'],
    ] as const) {
      expect(await page.getByRole('link', { name }).getAttribute('href')).toBe(`/desk/2030/${path}`);
    }
    await page.getByRole('link', { name: 'The review questions' }).click();
    const first = page.locator('.loss').first();
    const heading = await first.locator('h3').textContent();
    await first.getByLabel('Yes', { exact: true }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    // Something speaks against a yes, so it needs a reason: nothing is kept, and what was typed stands there.
    await expect(page.getByRole('alert').textContent()).resolves.toMatch(/needs a reason/);
    await sound('desk-review-refused');
    await page.locator('.loss').first().getByLabel('Yes', { exact: true }).check();
    await page
      .locator('.loss')
      .first()
      .getByLabel(/^Because/)
      .fill('Seen on three sites; it is one act.');
    await page.locator('.loss').first().getByRole('button', { name: 'Answer' }).click();
    await expect(page.locator('.lead').textContent()).resolves.toMatch(/^1 of [\d,]+ questions is answered\.$/);
    expect(await page.locator('.loss').first().locator('h3').textContent()).not.toBe(heading);
    await page.goto('/desk/2030/review?state=all');
    await expect(page.locator('main').textContent()).resolves.toContain('1 by A. Reviewer');
    await sound('desk-review');
    expect(viewer.reported).toEqual([]);
  });
});
