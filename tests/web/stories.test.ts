import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '../../src/web/listen.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { chromiumPath, openBrowser, serveForTest } from './viewer.ts';

/** As people meet it: scripts are off throughout, since no page needs any. */
describe.skipIf(chromiumPath === undefined)('in a browser without scripts', () => {
  let viewer: Viewer;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    [viewer, browser] = await Promise.all([serveForTest(await demoCatalog()), openBrowser()]);
  });
  afterAll(async () => {
    await browser.close();
    await viewer.close();
  });
  beforeEach(async () => {
    context = await browser.newContext({
      baseURL: viewer.address,
      javaScriptEnabled: false,
      viewport: { width: 390, height: 844 },
    });
    page = await context.newPage();
  });
  afterEach(() => context.close());

  const lookUp = async (query: string) => {
    await page.goto('/');
    await page.getByRole('searchbox').fill(query);
    await page.getByRole('button', { name: 'Look up' }).click();
  };

  test('a crew lead looks up an old number that is gone and reads on the first screen what governs now', async () => {
    await lookUp('9.1.1.2');
    const answer = page.getByRole('article').first();
    await expect(page.getByRole('heading', { level: 1 }).textContent()).resolves.toContain('became');
    const heir = answer.getByRole('listitem').first();
    const box = await heir.boundingBox();
    expect(box!.y).toBeLessThan(844);
    await expect(answer.textContent()).resolves.toContain('Verified');
  });

  test('a withdrawn number says so, and what governs now', async () => {
    await lookUp('1.2.1.2');
    const answers = await page.getByRole('article').allInnerTexts();
    const withdrawn = answers.find(text => text.includes('2018 1.2.1.2'))!;
    expect(withdrawn).toContain('1.2.1.2 of 2018 was withdrawn in 2024.');
    expect(withdrawn).toContain("What governs now: the authority's excavation rules.");
  });

  test('a number with several meanings shows all of them and chooses none', async () => {
    await lookUp('4.2.3');
    await expect(page.getByRole('heading', { level: 1 }).textContent()).resolves.toContain('4.2.3 has 2 meanings');
    expect(await page.getByRole('article').count()).toBe(2);
    await page.goto('/at/2014/4.2');
    await expect(page.getByRole('heading', { level: 1 }).textContent()).resolves.toBe('4.2 has 2 meanings in 2014');
  });

  test('an item stands beside its heir, changes marked and said in words', async () => {
    await page.goto('/at/2018/4.2.3.1');
    const pair = page.getByRole('article').first();
    await expect(pair.locator('del').first().textContent()).resolves.toMatch(
      /^removed text begins .* removed text ends$/,
    );
    await expect(pair.locator('ins').first().textContent()).resolves.toMatch(/^added text begins .* added text ends$/);
    await expect(pair.textContent()).resolves.toMatch(/merged/);
    const [old, heir] = [
      await pair.locator('.rail.old').first().boundingBox(),
      await pair.locator('.rail.new').first().boundingBox(),
    ];
    expect(old!.y).toBeLessThan(heir!.y);
  });

  test('any other edition can be chosen to compare with', async () => {
    await page.goto('/at/2018/4.2.3.1');
    await page.getByLabel('Compare 2018 with').selectOption('2014');
    await page.getByRole('button', { name: 'Show' }).click();
    await expect(page.getByRole('heading', { name: '2014 beside 2018' }).count()).resolves.toBe(1);
    expect(page.url()).toContain('with=2014');
  });

  test('either text can be read alone, without marks', async () => {
    await page.goto('/at/2018/4.2.3.1');
    await page.getByRole('link', { name: '2024 only' }).click();
    expect(new URL(page.url()).searchParams.get('show')).toBe('new');
    const pair = page.getByRole('article').first();
    expect(await pair.locator('del, ins, .rail.old').count()).toBe(0);
    await expect(pair.textContent()).resolves.toContain('Keep the soakaway at least 5 m from any building');
    await page.getByLabel('Compare 2018 with').selectOption('2014');
    await page.getByRole('button', { name: 'Show' }).click();
    expect(page.url()).toMatch(/show=new.*with=2014/);
    await page.getByRole('link', { name: 'Both, changes marked' }).click();
    expect(await page.locator('ins').count()).toBeGreaterThan(0);
  });

  test('the life of an item is a line, and a list says the same with all that joined it', async () => {
    await page.goto('/at/2018/4.2.3.1');
    const life = page.getByRole('region', { name: 'Its life' });
    expect(await life.getByRole('img').count()).toBe(1);
    const stages = await life.locator('.life > li').allInnerTexts();
    expect(stages.map(s => s.replace(/\s+/g, ' '))).toEqual([
      '2014 3.1.1 Distance',
      '2018 split also into 4.2.2.1 reworded; read both texts 4.2.3.1 Distance from buildings and trees this page',
      '2024 merged with 4.2.1.2, 4.2.2.1 reworded; read both texts 5.3.1.1 Distances',
    ]);
    await page.goto('/at/2018/1.2.1.2');
    await expect(life.locator('.life > li').last().textContent()).resolves.toMatch(
      /withdrawn\s+Nothing stands in its place/,
    );
  });

  test('who decided and why stands with a withdrawal', async () => {
    await page.goto('/at/2018/1.2.1.2');
    const said = await page.getByRole('article', { name: 'Withdrawal' }).textContent();
    expect(said).toContain('Worker safety is left to the law');
    expect(said).toContain('Requirements committee of the partnership');
  });

  test('the crosswalk is filtered by a form, and the choice stands in the address', async () => {
    await page.goto('/crosswalk/2018/2024');
    await page.getByLabel('Fate').selectOption('withdrawn');
    await page.getByLabel('Reason').selectOption('obsolete');
    await page.getByLabel('Kind').selectOption('requirements');
    await page.getByRole('button', { name: 'Show' }).click();
    expect(new URL(page.url()).searchParams.get('fate')).toBe('withdrawn');
    await expect(page.locator('.shown').textContent()).resolves.toMatch(/^\s*9 lines of \d+/);
    await expect(page.getByLabel('Reason').inputValue()).resolves.toBe('obsolete');
    await page.getByRole('link', { name: 'Show all' }).click();
    expect(new URL(page.url()).search).toBe('');
  });

  test('long crosswalks are paged', async () => {
    await page.goto('/crosswalk/2018/2024');
    expect(await page.locator('.lines tbody tr').count()).toBe(50);
    await page.getByRole('link', { name: 'Next page' }).click();
    await expect(page.getByRole('navigation', { name: 'Pages' }).textContent()).resolves.toContain('Page 2 of');
  });

  test('what a step loses is shown as what it is', async () => {
    await page.goto('/crosswalk/2018/2024');
    await expect(page.getByRole('region', { name: 'Not accounted for' }).textContent()).resolves.toContain(
      '4.1.3.3 Emptying time',
    );
  });

  test('an edition is narrowed to one installation type, on the parts as well', async () => {
    await page.goto('/edition/2018');
    const all = await page.locator('.outline li').count();
    await page.getByLabel('Installation type').selectOption('terrace');
    await page.getByRole('button', { name: 'Show' }).click();
    expect(await page.locator('.outline li').count()).toBeLessThan(all);
    await page.locator('.outline .level-1 a').first().click();
    expect(page.url()).toContain('type=terrace');
    expect(await page.locator('.block').count()).toBeGreaterThan(0);
  });

  test('retired neighbours stand beside the text', async () => {
    await page.goto('/edition/2024?whole=yes');
    await expect(page.locator('aside').first().textContent()).resolves.toContain('Withdrawn');
  });

  test('everything can be reached by keyboard alone, and the focus is seen', async () => {
    await page.goto('/crosswalk/2018/2024');
    await page.keyboard.press('Tab');
    await expect(page.locator(':focus').textContent()).resolves.toBe('Skip to the content');
    await page.keyboard.press('Enter');
    expect(page.url()).toContain('#main');
    await page.goto('/');
    for (let at = 0; at < 6 && (await page.locator('#q:focus').count()) === 0; at++) await page.keyboard.press('Tab');
    const outline = await page
      .locator(':focus')
      .evaluate(
        e =>
          (
            e.ownerDocument.defaultView as never as { getComputedStyle(of: unknown): { outlineStyle: string } }
          ).getComputedStyle(e).outlineStyle,
      );
    expect(outline).toBe('solid');
    await page.keyboard.type('9.1.1.2');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/search?q=9.1.1.2');
    await page.locator('.kicker a').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL('**/at/2018/9.1.1.2');
  });

  test('nothing is wider than a phone', async () => {
    for (const path of [
      '/',
      '/search?q=4.2.3',
      '/at/2018/4.2.3.1',
      '/edition/2024',
      '/edition/2024?whole=yes',
      '/crosswalk/2018/2024',
      '/nowhere',
    ]) {
      await page.goto(path);
      const over = await page.locator('html').evaluate(e => e.scrollWidth - e.clientWidth);
      expect([path, over]).toEqual([path, 0]);
    }
  });

  test('what one taps is at least 44 px high where it is not part of a sentence', async () => {
    for (const path of ['/', '/at/2018/4.2.3.1', '/crosswalk/2018/2024', '/edition/2024']) {
      await page.goto(path);
      for (const target of await page
        .locator('button, input:not([type=hidden]), select, .outline a, .top nav a')
        .all()) {
        const box = await target.boundingBox();
        if (box) expect([path, box.height >= 44]).toEqual([path, true]);
      }
    }
  });
});
