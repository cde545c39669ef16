import { createHash } from 'node:crypto';
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog } from '../demo-catalog.ts';
import { chromiumPath, openBrowser, serveForTest, signIn, tokenFor } from './viewer.ts';

/** Who made every change of the demo's editions. */
const AUTHOR = { name: 'Standards steward', address: 'steward@example.org' };
const FIRST = { name: 'A. Reviewer', address: 'reviewer@example.org' };
const SECOND = { name: 'S. &amp; "Second"', address: 'second@example.org' };

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const read = async (path: string) => (await fetch(`${viewer.address}${path}`)).text();

test('the losses of two editions are a list with both texts, the lost words marked, to which everybody may read', async () => {
  const page = await read('losses/2018/2024');
  expect(page).toMatch(/None of \d+ losses is settled yet\./);
  expect(page).toContain(
    '<mark><span class="said">lost words begin </span>excavation<span class="said"> lost words end</span></mark>',
  );
  expect(page).not.toContain('<button>Settle</button>');
  expect(page).toContain('sign in with your token');
});

test('the filter stands in the address and holds for the csv as well', async () => {
  const page = await read('losses/2018/2024?state=all&kind=type');
  expect(page.match(/class="loss"/g)).toHaveLength(1);
  expect(page).toContain('Nothing in 2024 takes it over for Street frontage');
  const csv = await read('losses/2018/2024/lines.csv?state=all&kind=type');
  expect(csv.trim().split(/\r?\n/)).toHaveLength(2);
});

test('editions named backwards, unknown ones and queries of any shape are answered in words', async () => {
  for (const [path, status, said] of [
    ['losses/2024/2018', 400, 'name the older edition first'],
    ['losses/2018/2018', 400, 'is compared with itself'],
    ['losses/2018/2099', 404, 'use one of'],
    ['losses/2018/2024?state=nonsense&kind[]=x&part=__proto__&page=-1&done=x', 200, 'Nothing fits this choice'],
  ] as const) {
    const response = await fetch(`${viewer.address}${path}`);
    expect([path, response.status, (await response.text()).includes(said)]).toEqual([path, status, true]);
  }
  expect(viewer.reported).toEqual([]);
});

test('a verdict without a name, or from the page of somebody else, is not kept', async () => {
  const key = /id="loss-([0-9a-f]+)"/.exec(await read('losses/2018/2024'))![1]!;
  const body = new URLSearchParams({ verdict: 'stated' });
  for (const headers of [{}, { origin: 'https://evil.example' }, { origin: new URL(viewer.address).origin }]) {
    const response = await fetch(`${viewer.address}losses/2018/2024/${key}`, { method: 'POST', body, headers });
    expect(response.status).toBe(403);
  }
  expect(await read('losses/2018/2024')).toContain('None of');
});

test('the briefing of a bundle is served as it is, and its own script and style alone may run', async () => {
  expect(await read('crosswalk/2018/2024')).toContain('href="/briefing/2018/2024"');
  const response = await fetch(`${viewer.address}briefing/2018/2024`);
  const policy = response.headers.get('content-security-policy')!;
  const html = await response.text();
  for (const [element, directive] of [
    ['style', 'style-src'],
    ['script', 'script-src'],
  ]) {
    const source = new RegExp(`<${element}>(.*?)</${element}>`, 's').exec(html)![1]!;
    const hash = createHash('sha256').update(source).digest('base64');
    expect(policy).toContain(`${directive} 'sha256-${hash}'`);
  }
  expect(policy).not.toContain('unsafe');
  expect((await fetch(`${viewer.address}briefing/2024/2018`)).status).toBe(400);
  expect((await fetch(`${viewer.address}briefing/2018/2099`)).status).toBe(404);
});

describe.skipIf(chromiumPath === undefined)('people with a name, without scripts', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());
  const asPerson = async (person: typeof FIRST): Promise<Page> => {
    const page = await (await browser.newContext({ baseURL: viewer.address, javaScriptEnabled: false })).newPage();
    await signIn(page, await tokenFor(dir, person));
    return page;
  };

  test('settle what is lost, a second one signs, and whoever made the change does neither', async () => {
    const first = await asPerson(FIRST);
    await first.goto('/losses/2018/2024?kind=quantity');
    const all = Number(/of (\d+) losses/.exec((await first.locator('.lead').textContent())!)![1]);
    const loss = first.locator('.loss').first();
    const heading = (await loss.getByRole('heading').first().textContent())!;
    await loss.getByLabel('It was dropped on purpose').check();
    await loss.getByRole('button', { name: 'Settle' }).click();
    await expect(first.getByRole('alert').textContent()).resolves.toContain('is dropped without a reason');
    expect(await loss.getByLabel('It was dropped on purpose').isChecked()).toBe(true);

    await loss.getByRole('textbox', { name: 'Because' }).fill('It stands in the <i>law</i>.');
    await loss.getByRole('button', { name: 'Settle' }).click();
    expect(new URL(first.url()).searchParams.get('kind')).toBe('quantity');
    await expect(first.locator('.lead').textContent()).resolves.toBe(
      `1 of ${all} losses is settled; ${all - 1} are left to work off.`,
    );
    await expect(first.getByRole('status').textContent()).resolves.toContain('It stands in the <i>law</i>.');
    await first.goto('/losses/2018/2024?state=settled');
    expect(await first.locator('.loss').count()).toBe(1);
    await expect(first.locator('.loss').textContent()).resolves.toContain('You settled this yourself');

    const author = await asPerson(AUTHOR);
    await author.goto('/losses/2018/2024');
    expect(await author.getByRole('button', { name: 'Settle' }).count()).toBe(0);
    await expect(author.locator('.loss').first().textContent()).resolves.toContain('somebody else has to settle it');
    await author.goto('/losses/2018/2024?state=settled');
    expect(await author.getByRole('button', { name: 'Sign' }).count()).toBe(0);

    const second = await asPerson(SECOND);
    await second.goto('/losses/2018/2024?state=settled');
    await expect(second.locator('.loss h3').first().textContent()).resolves.toBe(heading);
    await second.getByRole('button', { name: 'Sign as the second person' }).click();
    await second.goto('/losses/2018/2024?state=signed');
    await expect(second.locator('.verdict > p').first().textContent()).resolves.toBe(
      'Settled by A. Reviewer on 1 August 2024 as dropped on purpose: It stands in the <i>law</i>. Signed by S. &amp; "Second" on 1 August 2024.',
    );
    expect(viewer.reported).toEqual([]);
  });

  test('lose nothing when two settle at the same moment', async () => {
    const settled = () => read('losses/2018/2024').then(page => Number(/>(\d+) of \d+ loss/.exec(page)?.[1] ?? 0));
    const before = await settled();
    const pages = await Promise.all([asPerson(FIRST), asPerson({ name: 'Third', address: 'third@example.org' })]);
    await Promise.all(
      pages.map(async (page, at) => {
        await page.goto('/losses/2018/2024?kind=thing');
        const loss = page.locator('.loss').nth(at);
        await loss.getByLabel('An heir says it in other words').check();
        await loss.getByRole('button', { name: 'Settle' }).click();
      }),
    );
    expect(await settled()).toBe(before + 2);
  });
});
