import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '../../src/web/listen.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { chromiumPath, openBrowser, serveForTest } from './viewer.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const SHOTS = join(import.meta.dirname, '..', '..', '.shots');

const PAGES = {
  home: '/',
  'search-gone': '/search?q=9.1.1.2',
  'search-meanings': '/search?q=4.2.3',
  'search-words': '/search?q=overflow+terrace',
  'search-nothing': '/search?q=xyzzy',
  item: '/at/2018/4.2.3.1',
  'item-withdrawn': '/at/2018/1.2.1.2',
  'item-group': '/at/2018/4.2.3',
  'item-new-edition': '/at/2024/5.2.2.1',
  number: '/at/2014/4.2',
  edition: '/edition/2024',
  'edition-part': 'PART',
  crosswalk: '/crosswalk/2018/2024',
  'crosswalk-filtered': '/crosswalk/2018/2024?fate=withdrawn',
  'crosswalk-over-two': '/crosswalk/2014/2024',
  'error-edition': '/edition/2099',
  'error-number': '/at/2024/4.2.99',
};

const SCREENS = [
  { name: 'desk', viewport: { width: 1280, height: 900 }, colorScheme: 'light' },
  { name: 'desk-dark', viewport: { width: 1280, height: 900 }, colorScheme: 'dark' },
  { name: 'phone', viewport: { width: 390, height: 844 }, colorScheme: 'light' },
  { name: 'phone-dark', viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
  { name: 'contrast', viewport: { width: 1280, height: 900 }, colorScheme: 'light', contrast: 'more' },
] as const;

describe.skipIf(chromiumPath === undefined)('every page, seen and heard', () => {
  let viewer: Viewer;
  let browser: Browser;
  let part: string;
  beforeAll(async () => {
    mkdirSync(SHOTS, { recursive: true });
    [viewer, browser] = await Promise.all([serveForTest(await demoCatalog()), openBrowser()]);
    const outline = await (await fetch(`${viewer.address}edition/2024`)).text();
    part = /href="(\/edition\/2024\/part\/[^"#]+)"/.exec(outline)![1]!;
  });
  afterAll(async () => {
    await browser.close();
    await viewer.close();
  });

  for (const { name: screen, ...options } of SCREENS) {
    test(`has no accessibility violation: ${screen}`, async () => {
      const context = await browser.newContext({ baseURL: viewer.address, ...options });
      const page = await context.newPage();
      const violations: string[] = [];
      for (const [name, path] of Object.entries(PAGES)) {
        await page.goto(path === 'PART' ? part : path);
        await page.screenshot({ path: join(SHOTS, `${name}-${screen}.png`), fullPage: true });
        // Run from outside: the page itself lets no script in.
        await page.evaluate(AXE);
        const found = await page.evaluate(
          'axe.run().then(r => r.violations.map(v => v.id + ": " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + " " + n.failureSummary).join(" | ")))',
        );
        violations.push(...(found as string[]).map(v => `${name}: ${v}`));
        expect([name, await page.locator('h1').count()]).toEqual([name, 1]);
      }
      await context.close();
      expect(violations).toEqual([]);
    });
  }

  test('prints with edition, date and address in its foot, and without what cannot be used on paper', async () => {
    const page = await browser.newPage({ baseURL: viewer.address });
    await page.goto('/at/2018/4.2.3.1');
    await page.emulateMedia({ media: 'print' });
    const foot = await page.locator('.imprint').textContent();
    expect(foot).toContain('Edition 2018, in force from 1 July 2018');
    expect(foot).toContain('Read on 1 August 2024 at');
    expect(foot).toContain('/at/2018/4.2.3.1');
    expect(await page.locator('.lookup').isVisible()).toBe(false);
    await page.pdf({ path: join(SHOTS, 'item.pdf') });
    await page.close();
  });
});
