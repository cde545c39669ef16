import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog } from '../demo-catalog.ts';
import { keepShot, RULES_OF_WIDTH, violations } from '../web/judged-page.ts';
import { chromiumPath, openBrowser, serveForTest, signIn, tokenFor } from '../web/viewer.ts';

type State = readonly [name: string, path: string, act?: (page: Page) => Promise<unknown>];

/** Every page in every state that a reader meets. */
const READER: readonly State[] = [
  ['home', '/'],
  ['home-offers', '/', page => offers(page, '4.2.3')],
  ['home-mistyped', '/', page => offers(page, 'r2867c2n')],
  ['search-gone', '/search?q=9.1.1.2'],
  ['search-meanings', '/search?q=4.2.3'],
  ['search-words', '/search?q=overflow+terrace'],
  ['search-nothing', '/search?q=xyzzy'],
  ['item', '/at/2018/4.2.3.1'],
  ['item-one-text', '/at/2018/4.2.3.1?show=new'],
  ['item-withdrawn', '/at/2018/1.2.1.2'],
  ['item-group', '/at/2018/4.2.3'],
  ['item-new-edition', '/at/2024/5.2.2.1'],
  ['number', '/at/2014/4.2'],
  ['edition', '/edition/2024'],
  ['edition-part', 'PART'],
  ['crosswalk', '/crosswalk/2018/2024', page => page.getByText('The picture as a table').click()],
  ['crosswalk-filtered', '/crosswalk/2018/2024?fate=withdrawn'],
  ['crosswalk-over-two', '/crosswalk/2014/2024?page=2'],
  ['losses', '/losses/2018/2024'],
  ['losses-none', '/losses/2018/2024?state=signed'],
  ['sign-in', '/sign-in'],
  ['sign-in-refused', '/sign-in', page => tryToken(page, 'fp-wrong')],
  ['error-edition', '/edition/2099'],
  ['error-number', '/at/2024/4.2.99'],
];

/** And those that only people with a name meet. */
const WRITER: readonly State[] = [
  ['signed-in', '/sign-in'],
  ['item-note', '/at/2018/4.2.3.1'],
  ['item-note-kept', '/at/2018/4.2.3.2', page => leaveNote(page)],
  ['losses-refused', '/losses/2018/2024?kind=condition', page => settle(page, 'It was dropped on purpose', '')],
  [
    'losses-settled',
    '/losses/2018/2024?kind=condition',
    page => settle(page, 'An heir says it in other words', 'So it is.'),
  ],
  ['losses-mine', '/losses/2018/2024?state=settled', page => page.getByText('Settle it otherwise').click()],
  ['losses-decided', '/losses/2018/2024?state=decision'],
];

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 900 };
const COLOURS = ['color-contrast', 'link-in-text-block'];
/** Each page is loaded once; on the other screens only what can change with width or colours is judged again. */
const SCREENS = [
  { name: 'phone', viewport: PHONE, colorScheme: 'light', contrast: 'no-preference', rules: undefined },
  { name: 'phone-dark', viewport: PHONE, colorScheme: 'dark', contrast: 'no-preference', rules: COLOURS },
  { name: 'contrast', viewport: DESK, colorScheme: 'light', contrast: 'more', rules: COLOURS },
  {
    name: 'desk',
    viewport: DESK,
    colorScheme: 'light',
    contrast: 'no-preference',
    rules: RULES_OF_WIDTH,
  },
] as const;

/** One page of each kind is judged in other colours as well: the stylesheet is one for all of them. */
const IN_COLOURS = new Set([
  'home',
  'item',
  'edition-part',
  'crosswalk',
  'losses',
  'sign-in-refused',
  'losses-settled',
]);

/** Some seconds on an idle machine; minutes where others use it too. */
const PATIENCE = 480_000;

describe.skipIf(chromiumPath === undefined)('every page of the viewer in every state', () => {
  let dir: string;
  let viewer: Viewer & { readonly reported: string[] };
  let browser: Browser;
  let reader: BrowserContext;
  let writer: BrowserContext;
  let part: string;
  beforeAll(async () => {
    dir = await copyOfDemoCatalog();
    [viewer, browser] = await Promise.all([serveForTest(dir, { writes: true }), openBrowser()]);
    const outline = await (await fetch(`${viewer.address}edition/2024`)).text();
    part = /href="(\/edition\/2024\/part\/[^"#]+)"/.exec(outline)![1]!;
    reader = await browser.newContext({ baseURL: viewer.address, reducedMotion: 'reduce' });
    writer = await browser.newContext({ baseURL: viewer.address, reducedMotion: 'reduce' });
    const token = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
    await signIn(await writer.newPage(), token);
  });
  afterAll(async () => {
    await browser.close();
    await viewer.close();
    rmSync(dirname(dir), { recursive: true, force: true });
  });

  const walk = async (context: BrowserContext, states: readonly State[]) => {
    const page = await context.newPage();
    const broken: string[] = [];
    page.on('pageerror', error => broken.push(String(error)));
    const wrong: string[] = [];
    for (const [name, path, act] of states) {
      await page.setViewportSize(PHONE);
      await page.goto(path === 'PART' ? part : path);
      await act?.(page);
      for (const { name: screen, viewport, rules, ...media } of SCREENS) {
        if (rules === COLOURS && !IN_COLOURS.has(name)) continue;
        await page.setViewportSize(viewport);
        await page.emulateMedia(media);
        wrong.push(...(await violations(page, rules)).map(v => `${name} ${screen}: ${v}`));
        if (screen === 'phone') {
          const over = await page.locator('html').evaluate(e => e.scrollWidth - e.clientWidth);
          if (over > 0) wrong.push(`${name} ${screen}: ${over} px wider than a phone`);
        }
        await keepShot(page, `${name}-${screen}`);
      }
      if ((await page.locator('h1').count()) !== 1) wrong.push(`${name}: not one h1`);
    }
    await page.close();
    expect([wrong, broken, viewer.reported]).toEqual([[], [], []]);
  };

  test(
    'has no accessibility violation for readers, at both widths, light, dark and in high contrast',
    () => walk(reader, READER),
    PATIENCE,
  );

  test('has none for people with a name either', () => walk(writer, WRITER), PATIENCE);

  test('is worked by the keyboard alone: a loss is settled and a note is left without a mouse', async () => {
    const page = await writer.newPage();
    await page.goto('/losses/2018/2024?kind=reference');
    await tabTo(page, 'input[type=radio]');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    expect(await page.locator('input:checked').getAttribute('value')).toBe('dropped');
    await tabTo(page, 'textarea');
    await page.keyboard.type('Named in the header now.');
    await tabTo(page, '.verdict button');
    await page.keyboard.press('Enter');
    await page.waitForURL('**done=**');
    await expect(page.locator('#done').textContent()).resolves.toContain('Named in the header now.');

    await page.goto('/at/2018/4.2.3.3');
    await tabTo(page, '#note-cause');
    await page.keyboard.type('unclear');
    await tabTo(page, '#note-text');
    await page.keyboard.type('Which side is up?');
    await tabTo(page, '.tell button');
    await page.keyboard.press('Enter');
    await page.waitForURL('**noted=yes**');
    await expect(page.locator('.told-note').textContent()).resolves.toContain('Which side is up?');

    await page.goto('/crosswalk/2018/2024');
    await tabTo(page, '.rails a');
    const n = /: (\d+)$/.exec((await page.locator(':focus').getAttribute('aria-label'))!)![1];
    await page.keyboard.press('Enter');
    await page.waitForURL('**part=**');
    await expect(page.locator('.shown b').textContent()).resolves.toMatch(new RegExp(`^${n} lines? of`));
    await page.close();
  });

  test('prints with edition, date and address in its foot, and without what cannot be used on paper', async () => {
    const page = await writer.newPage();
    await page.goto('/at/2018/4.2.3.1');
    await page.emulateMedia({ media: 'print' });
    const foot = await page.locator('.imprint').textContent();
    expect(foot).toContain('Edition 2018, in force from 1 July 2018');
    expect(foot).toContain('Read on 1 August 2024 at');
    expect(foot).toContain('/at/2018/4.2.3.1');
    for (const useless of ['.lookup', '.sign', '.notes']) expect(await page.locator(useless).isVisible()).toBe(false);
    await page.goto('/losses/2018/2024');
    expect(await page.locator('.verdict form').first().isVisible()).toBe(false);
    await page.close();
  });
});

/** Presses Tab until something has the focus; the focus has to be seen everywhere on the way. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let pressed = 0; pressed < 200; pressed++) {
    await page.keyboard.press('Tab');
    const at = page.locator(':focus');
    if ((await page.locator(`${selector}:focus`).count()) > 0) return;
    if ((await at.count()) > 0) expect((await at.boundingBox()) !== null).toBe(true);
  }
  throw new Error(`${selector} cannot be reached by the keyboard`);
}

async function offers(page: Page, typed: string): Promise<void> {
  await page.getByRole('combobox').fill(typed);
  await page.getByRole('option').first().waitFor();
  await page.keyboard.press('ArrowDown');
}

async function tryToken(page: Page, token: string): Promise<void> {
  await page.getByLabel('Your token').fill(token);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

async function leaveNote(page: Page): Promise<void> {
  await page.getByLabel('Cause').fill('damage seen');
  await page.getByLabel('What was seen').fill('<b>Crates</b> crushed under a car.');
  await page.getByRole('button', { name: 'Keep it' }).click();
}

async function settle(page: Page, verdict: string, because: string): Promise<void> {
  const loss = page.locator('.loss').first();
  await loss.getByLabel(verdict).check();
  await loss.getByRole('textbox', { name: 'Because' }).fill(because);
  await loss.getByRole('button', { name: 'Settle' }).click();
}
