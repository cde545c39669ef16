import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { holdReview } from '../../src/commands/matching/held-review.ts';
import { matchDesk } from '../../src/commands/matching/match-desk.ts';
import { onePerson } from '../../src/commands/people.ts';
import { FEATURES } from '../../src/matching/features.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { matchReviewApp } from '../../src/web/matching/match-review-app.ts';
import { REASON_WORDS } from '../../src/web/matching/match-review-words.ts';
import { testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { chromiumPath, openBrowser } from './viewer.ts';

const TOKEN = `fp-${'k'.repeat(43)}`;
const BY = 'A. Reviewer <a@example.org>';

/** Titles that try to be more than text; among what is asked of them: did 2 end, is 3 new, 3 > 2, 4 > 2. */
const OLD = `number,parent,title,text
1,,Gutters,
1.1,1,Brackets,The gutter shall be fixed with brackets at 600 mm centres.
1.2,1,Downpipes,Downpipes shall be clipped to the wall at every joint.
2,,"Conduct <script>alert(1)</script>",
2.1,2,Greeting,The inspector shall be greeted politely on arrival.
3,,"Overflow of house tanks ""><img src=x onerror=alert(2)>",Overflow pipes of house tanks shall discharge away from the foundation.
4,,Overflow of terrace tanks,Overflow pipes of terrace tanks shall discharge away from the foundation wall.
`;
const NEW = `number,parent,title,text
1,,Roof drainage,
1.1,1,Pipe clips,Clip downpipes to the wall at each joint.
1.2,1,Gutter brackets,Fix gutters with brackets at centres of 600 mm.
2,,Overflow,Discharge every tank overflow away from the foundation.
3,,Labels {{7*7}} <%= 1 %>,Label each valve with its number.
`;

interface Served extends Viewer {
  readonly reported: string[];
}

let dir: string;
let file: string;
let viewer: Served;
beforeEach(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-review-'));
  file = join(dir, 'answers.csv');
  writeFileSync(join(dir, 'old.csv'), OLD);
  writeFileSync(join(dir, 'new.csv'), NEW);
  viewer = await serve();
});
afterEach(async () => {
  await viewer.close();
  rmSync(dir, { recursive: true, force: true });
});

async function serve(): Promise<Served> {
  const ports = testPorts();
  const held = holdReview(ports, { tables: [join(dir, 'old.csv'), join(dir, 'new.csv')], answers: [file] });
  await held.opened;
  const reported: string[] = [];
  const people = onePerson({ name: 'A. Reviewer', address: 'a@example.org' }, TOKEN);
  const served = await listen({ port: 0, host: '127.0.0.1' }, address =>
    matchReviewApp({
      desk: matchDesk(ports, [{ ...held, key: '1', command: 'fishplate match' }]),
      people,
      address,
      now: ports.now,
      report: l => reported.push(l),
    }),
  );
  return { ...served, reported };
}

const rows = () => parse(readFileSync(file, 'utf8'), { columns: true }) as Record<string, string>[];
const answers = () => rows().map(r => `${r.from_number}>${r.to_number} ${r.instead || r.answer}`);

test('every kind of evidence has words for people', () => {
  for (const [, , reason] of FEATURES)
    expect([reason, Object.keys(REASON_WORDS)]).toEqual([reason, expect.arrayContaining([reason])]);
});

test('without the token nothing of either text is shown, and nothing is written', async () => {
  for (const path of [
    '',
    'desk/match/1/done',
    'desk/match/1/q/p000000000000',
    'desk/match/1/crosswalk.csv',
    'sign-in',
  ]) {
    const got = await fetch(`${viewer.address}${path}`);
    expect(got.url).toContain('/sign-in');
    expect(await got.text()).not.toMatch(/Gutter|Overflow|Conduct/);
  }
  const { host } = new URL(viewer.address);
  const post = (headers: Record<string, string>) =>
    fetch(`${viewer.address}desk/match/1/undo`, {
      method: 'POST',
      headers,
      body: new URLSearchParams({ answer: 'yes' }),
    });
  expect((await post({ origin: 'http://127.0.0.1:1' })).status).toBe(403);
  expect((await post({ origin: `http://${host}` })).status).toBe(403);
});

test('no text of the tables becomes part of a page', async () => {
  const page = await signInByHand();
  for (let body = await page.get(''); !body.includes('Nothing is left to look at.'); body = await page.get('')) {
    expect(body).not.toMatch(/<script>alert|<img src=x|>49</);
    expect([...body.matchAll(/<script\b[^>]*>/g)].map(m => m[0])).toEqual([
      '<script src="/suggest.js" defer>',
      '<script src="/match-review.js" defer>',
    ]);
    await page.answer(body, 'yes');
    // Whether a row ended is no question to which n or w is an answer.
    const keys = [...body.matchAll(/<button name="answer"[^>]* data-key="(.)"/g)].map(m => m[1]);
    expect(body).toContain(`Answer with single keys: ${keys.join(', ')}, i for another number`);
  }
  expect(rows().map(r => r.from_title)).toContain('Conduct <script>alert(1)</script>');
  expect(viewer.reported).toEqual([]);
});

/** A browser of few words: cookies and hidden fields, no more. */
async function signInByHand() {
  let cookie = '';
  const { origin } = new URL(viewer.address);
  const ask = async (path: string, fields?: Record<string, string>): Promise<string> => {
    const init = fields ? { method: 'POST', body: new URLSearchParams(fields) } : {};
    const got = await fetch(`${origin}${path}`, { ...init, headers: { cookie, origin }, redirect: 'manual' });
    cookie = got.headers.get('set-cookie')?.split(';')[0] ?? cookie;
    return got.status === 303 ? ask(got.headers.get('location')!) : got.text();
  };
  const csrf = (body: string) => /name="csrf" value="([^"]+)"/.exec(body)![1]!;
  await ask('/sign-in', { csrf: csrf(await ask('/sign-in')), token: TOKEN, back: '/' });
  return {
    get: (path: string) => ask(`/${path}`),
    answer: (body: string, answer: string) =>
      ask(/<form class="review" action="([^"]+)"/.exec(body)![1]!, { csrf: csrf(body), answer }),
  };
}

describe.skipIf(chromiumPath === undefined)('in a browser', () => {
  let browser: Browser;
  let context: BrowserContext | undefined;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  afterEach(async () => {
    await context?.close();
    context = undefined;
  });

  async function signedIn(options: Parameters<Browser['newContext']>[0] = {}): Promise<Page> {
    context = await browser.newContext({ baseURL: viewer.address, ...options });
    const page = await context.newPage();
    await page.goto('/');
    await page.getByLabel('Your token').fill(TOKEN);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.waitForSelector('.review');
    return page;
  }

  const heading = (page: Page) => page.locator('h1').textContent();
  /** Does something that leads to another page, and waits for that page. */
  async function go(page: Page, act: () => Promise<unknown>): Promise<string | null> {
    await Promise.all([page.waitForEvent('load'), act()]);
    return heading(page);
  }

  test('with the mouse and without JavaScript: yes, no, another one, its number, taken back, matched anew', async () => {
    const page = await signedIn({ javaScriptEnabled: false });
    const press = (name: string | RegExp) => go(page, () => page.getByRole('button', { name }).click());
    expect(page.url()).not.toContain(TOKEN);
    const first = await heading(page);
    await press(/ y$/);
    expect(await page.getByRole('status').textContent()).toContain('Saved');
    expect(await press(/^Undo/)).toBe(first);
    expect(rows()).toEqual([]);
    while ((await page.locator('.review').count()) > 0) {
      const asked = await heading(page);
      if (asked === 'Did 3 become 2?') {
        await page.getByLabel('Because').fill('the ducks, "all" of them');
        await press('No n');
      } else if (asked === 'Did 4 become 2?') {
        await page.getByLabel('Number in new').fill('1.3');
        await go(page, () => page.keyboard.press('Enter'));
        expect(await page.getByRole('alert').textContent()).toContain(
          'The new edition has no number 1.3; the nearest are',
        );
        await page.getByLabel('Number in new').fill('1.1');
        await press('It became this instead');
      } else await press(/ y$/);
    }
    expect(answers()).toEqual(expect.arrayContaining(['2> withdrawn', '>3 new', '3>2 no', '4>2 1.1']));
    expect(rows().find(r => r.answer === 'no')!.because).toBe('the ducks, "all" of them');
    expect(new Set(rows().map(r => r.by))).toEqual(new Set([BY]));
    expect(await page.locator('pre').textContent()).toBe('fishplate match');
    await press('Match anew');
    expect(await page.locator('.pressing').count()).toBe(0);
  });

  test('with the keyboard alone: y, n, w, a number, arrows, the reason, u', async () => {
    const page = await signedIn({ viewport: { width: 1280, height: 900 } });
    const key = (name: string) => go(page, () => page.keyboard.press(name));
    const first = await heading(page);
    const second = await key('ArrowRight');
    expect(second).not.toBe(first);
    expect(await key('ArrowLeft')).toBe(first);
    while ((await page.locator('.review').count()) > 0) {
      const asked = await heading(page);
      if (asked === 'Did 3 become 2?') {
        await page.keyboard.press('b');
        await page.keyboard.type('yes and now');
        await page.keyboard.press('Escape');
        await key('w');
      } else if (asked === 'Did 4 become 2?') {
        await page.keyboard.press('i');
        await page.keyboard.type('1.1');
        await key('Enter');
      } else await key('y');
    }
    expect(answers()).toEqual(expect.arrayContaining(['2> withdrawn', '>3 new', '3> withdrawn', '4>2 1.1']));
    expect(rows().find(r => r.from_number === '3')!.because).toBe('yes and now');
    const given = rows();
    await key('u');
    expect([rows(), page.url()]).toEqual([
      given.slice(0, -1),
      `${viewer.address}desk/match/1/q/${given.at(-1)!.asked}`,
    ]);
  });

  test('keys can be turned off, and stay off', async () => {
    const page = await signedIn();
    const first = await heading(page);
    await page.getByLabel(/Answer with single keys/).uncheck();
    await page.keyboard.press('y');
    await go(page, () => page.getByRole('link', { name: 'Skip', exact: true }).click());
    await page.keyboard.press('y');
    await page.waitForTimeout(200);
    expect(await page.getByLabel(/Answer with single keys/).isChecked()).toBe(false);
    expect(await heading(page)).not.toBe(first);
    await expect(async () => rows()).rejects.toThrow('ENOENT');
  });

  test('a number of the list is chosen by its key, and sent by Enter', async () => {
    const page = await signedIn();
    while ((await heading(page)) !== 'Did 4 become 2?') await go(page, () => page.keyboard.press('ArrowRight'));
    const number = await page.locator('.others li b').first().textContent();
    await page.keyboard.press('1');
    await go(page, () => page.keyboard.press('Enter'));
    expect(answers()).toEqual([`4>2 ${number}`]);
  });

  test('stopped and begun again, it goes on with what is left', async () => {
    const page = await signedIn();
    const answered = await heading(page);
    await go(page, () => page.keyboard.press('y'));
    const left = await page.locator('.so-far p').textContent();
    await viewer.close();
    viewer = await serve();
    await context!.close();
    const again = await signedIn();
    expect(await again.locator('.so-far p').textContent()).toBe(left);
    expect(left).toContain('1 link answered, 5 left to look at');
    // The answer is a fixed point of the new matching, which may find another question more valuable now.
    expect(await heading(again)).not.toBe(answered);
  });

  const SCREENS = [
    { name: 'desk', viewport: { width: 1280, height: 900 } },
    { name: 'phone-dark', viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
    { name: 'contrast', viewport: { width: 1280, height: 900 }, contrast: 'more' },
  ] as const;
  test.each(SCREENS)('has no accessibility violation and fits the screen: $name', async ({ name, ...options }) => {
    const page = await signedIn({ ...options });
    const found: string[] = [];
    const look = async (state: string) => {
      await keepShot(page, `match-review-${state}-${name}`);
      found.push(...(await violations(page)).map(v => `${state}: ${v}`));
      const wider = await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth');
      const small = await page.evaluate(
        '[...document.querySelectorAll("button, .plain-button, input:not([type=hidden], [type=radio], [type=checkbox])")].filter(e => e.offsetHeight > 0 && e.offsetHeight < 44).map(e => e.outerHTML)',
      );
      expect([state, wider, small, await page.locator('h1').count()]).toEqual([state, 0, [], 1]);
    };
    while ((await heading(page)) !== 'Did 4 become 2?') await go(page, () => page.keyboard.press('ArrowRight'));
    await page.getByLabel('Number in new').fill('9');
    await go(page, () => page.keyboard.press('Enter'));
    await look('pair-and-trouble');
    await page.goto('/');
    while ((await page.locator('.review').count()) > 0) await go(page, () => page.keyboard.press('y'));
    await look('done');
    await page.goto(`/desk/match/1/q/${rows()[0]!.asked}`);
    await look('answered');
    await page.goto('/desk/match/1/q/p0');
    await look('missing');
    await page.goto('/sign-in');
    await look('signed-in');
    expect(found).toEqual([]);
  });
});
