import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '../../src/web/listen.ts';
import type { Suggestions } from '../../src/web/reading/suggestions.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { chromiumPath, openBrowser, serveForTest } from './viewer.ts';

let viewer: Viewer;
beforeAll(async () => {
  viewer = await serveForTest(await demoCatalog());
});
afterAll(() => viewer.close());

const asked = async (typed: string): Promise<Suggestions> =>
  (await (await fetch(`${viewer.address}suggest?q=${encodeURIComponent(typed)}`)).json()) as Suggestions;

test('a number of any edition is offered first where it is printed so, with what became of it', async () => {
  const { suggestions } = await asked('4.2.3');
  expect(suggestions.slice(0, 2).map(s => [s.edition, s.number, s.became])).toEqual([
    ['2018', '4.2.3', 'became 5.3.1, 5.3.2 and 5.3.3 in 2024. All of them apply.'],
    ['2014', '4.2.3', 'became 5.2.2.1 and 5.2.2.2 in 2024. All of them apply.'],
  ]);
  expect(suggestions.slice(2).every(s => s.number.startsWith('4.2.3.'))).toBe(true);
});

test('every edition has a turn among longer numbers', async () => {
  const { suggestions } = await asked('1.1');
  expect(new Set(suggestions.map(s => s.edition)).size).toBe(3);
});

test('a title is found by the beginnings of its words, once for an item that several editions have', async () => {
  const { suggestions } = await asked('overflow');
  expect(suggestions.length).toBeGreaterThan(2);
  expect(suggestions.every(s => /overflow/i.test(s.title))).toBe(true);
  expect((await asked('dist build')).suggestions.map(s => s.title)).toContain('Distance from buildings and trees');
});

test('an id with one wrong character is told, and the one that is meant is offered', async () => {
  const page = await (await fetch(`${viewer.address}at/2018/4.2.3.1`)).text();
  const id = /href="\/item\/([0-9a-z]{8})"/.exec(page)![1]!;
  expect((await asked(id)).suggestions[0]!.href).toBe('/at/2018/4.2.3.1');
  const wrong = id.slice(0, 6) + (id[6] === '2' ? '3' : '2') + id.slice(7);
  const { note, suggestions } = await asked(wrong);
  expect(note).toContain('its check character does not agree');
  expect(suggestions[0]!.href).toBe(`/item/${id}`);
});

test('anything may be typed', async () => {
  for (const typed of ['', ' ', '%', '<b>', '__proto__', '.', '(', 'x'.repeat(1000), '٤.٢']) {
    const { suggestions, note } = await asked(typed);
    expect([typed, suggestions.length === 0 || note === '']).toEqual([typed, true]);
  }
});

describe.skipIf(chromiumPath === undefined)('the look-up box', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());
  beforeEach(async () => {
    page = await (await browser.newContext({ baseURL: viewer.address })).newPage();
    await page.goto('/');
    await page.getByRole('combobox').fill('4.2.3.1');
    await page.getByRole('option').first().waitFor();
  });

  test('is worked by arrow keys, Enter and Escape, the box keeping the focus', async () => {
    const box = page.getByRole('combobox');
    expect(await box.getAttribute('aria-expanded')).toBe('true');
    await page.keyboard.press('ArrowDown');
    const active = await box.getAttribute('aria-activedescendant');
    expect(await page.locator(`#${active}`).getAttribute('aria-selected')).toBe('true');
    await expect(page.locator(`#${active}`).textContent()).resolves.toContain('became 5.3.1.1 in 2024');
    await page.keyboard.press('Escape');
    expect(await page.getByRole('listbox').isVisible()).toBe(false);
    expect(await box.inputValue()).toBe('4.2.3.1');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/at/2018/4.2.3.1');
  });

  test('sends what was typed where nothing was chosen', async () => {
    await page.keyboard.press('Enter');
    await page.waitForURL('**/search?q=4.2.3.1');
  });

  test('opens what is tapped', async () => {
    await page.getByRole('option').first().click();
    await page.waitForURL('**/at/2018/4.2.3.1');
  });
});
