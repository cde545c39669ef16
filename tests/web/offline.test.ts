import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer as createGateway } from 'node:http';
import { createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import { publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { openForWriting, openOrCreate } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';
import { readEdition } from '../../src/store/read.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { chromiumPath, openBrowser, serveForTest, signIn, tokenFor } from './viewer.ts';

let dir: string;
let viewer: Viewer;
let again: () => Promise<Viewer>;
let stopped = false;
const stop = async () => {
  await viewer.close();
  stopped = true;
};
/** At the same address: a phone knows a viewer by it. */
const goOn = async () => {
  viewer = await again();
  stopped = false;
};
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  const served = await serveForTest(dir, { writes: true, offline: { patienceMs: 1500 } });
  viewer = served;
  again = served.again;
});
afterAll(async () => {
  await stop();
  rmSync(dirname(dir), { recursive: true, force: true });
});

test('a page says that it may be kept only where everybody sees it alike', async () => {
  const marked = async (path: string) => {
    const { headers } = await fetch(`${viewer.address}${path}`);
    return [headers.get('fishplate-version') !== null, headers.get('cache-control')];
  };
  for (const path of ['', 'lookup', 'search?q=4.2.3', 'at/2018/4.2.3.1', 'edition/2024', 'crosswalk/2018/2024']) {
    expect([path, ...(await marked(path))]).toEqual([path, true, 'no-cache']);
  }
  for (const path of ['sign-in', 'desk', 'nowhere', 'suggest?q=4', 'crosswalk/2018/2024/lines.csv']) {
    expect([path, (await marked(path))[0]]).toEqual([path, false]);
  }
});

test('the page for looking up has every number of every edition with its heirs, duty, what governs and when it is verified', async () => {
  const html = await (await fetch(`${viewer.address}lookup`)).text();
  const catalog = await openForWriting(dir);
  const published = await publishedCatalog(catalog)();
  const sizes = await Promise.all(published.headers.map(async h => (await published.edition(h.name)).entries.length));
  expect(html.match(/<div class="a"/g)).toHaveLength(sizes.reduce((a, b) => a + b));
  const told = (headline: string) => {
    const at = html.indexOf(headline);
    const all = html.slice(at, html.indexOf('<div class="a"', at)).replace(/<[^>]*>/g, ' ');
    return all.replace(/\s+/g, ' ').trim();
  };
  const became = told('4.2.3.1 of 2018 became');
  expect(became).toMatch(/^4\.2\.3\.1 of 2018 became 5\.3\.1\.1 in 2024\. Duty: reworded, read both texts\. /);
  expect(became).toContain('alue changed: &#34;not less than 3 m&#34; → &#34;3 m&#34;');
  expect(became).toMatch(
    / 5\.3\.1\.1 Distances Verified: Before covering: distances measured; By document: letter of consent, where there is one$/,
  );
  expect(told('1.2.1.2 of 2018 was withdrawn')).toContain('What governs now:');
  expect(told('5.3.1.1 stands in 2024.')).toContain('Verified: Before covering');
});

test('a catalog with one edition, or with none, has the page too', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-offline-'));
  const empty = join(folder, 'empty.git');
  await openOrCreate(empty);
  const served = await serveForTest(empty, { offline: {} });
  const read = async () => (await fetch(`${served.address}lookup`)).text();
  expect(await read()).toContain('Nothing is published yet.');
  const source = join(folder, 'one.csv');
  writeFileSync(
    source,
    'number,level,title,text\n1,1,Roofs,\n1.1,2,Gutters,\n1.1.1,3,Fall,Gutters fall to the outlet.\n',
  );
  await importTables(testPorts(), { catalog: empty, tables: [source], edition: '2030' });
  const html = await read();
  expect(html).toContain('1.1.1 stands in 2030.');
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The newest edition once more under another name: what matters here is that something was published. */
async function publishAgain(name: string): Promise<void> {
  const catalog = await openForWriting(dir);
  const { header, settings, items } = await readEdition(catalog, '2024');
  const dates = { published: '2030-02-01', effective: '2030-03-01' };
  const edition = { name, replaces: header.name, dates, settings, items, lineage: [], decisions: [] };
  const author = { name: 'Steward', email: '', date: new Date('2030-02-01T00:00:00Z') };
  await publishEdition(catalog, { ...edition, oldFileOf: (id: string) => id }, author, `Edition ${name}`);
}

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));
const until = (holds: () => Promise<boolean>) => expect.poll(holds, { timeout: 60_000, interval: 100 }).toBe(true);

describe.skipIf(chromiumPath === undefined)('a phone that has opened the viewer once', () => {
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let broken: string[];
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());
  beforeEach(async () => {
    context = await browser.newContext({ baseURL: viewer.address, viewport: { width: 390, height: 844 } });
    page = await context.newPage();
    broken = [];
    page.on('pageerror', error => broken.push(String(error)));
  });
  afterEach(async () => {
    await context.close();
    if (stopped) await goOn();
    expect(broken).toEqual([]);
  });

  /** Opens a page and waits until it is kept. */
  const openAndKeep = async (path: string) => {
    await page.goto(path);
    await until(async () => (await kept()).includes(path));
  };
  const inCaches = <T>(told: string) =>
    page.evaluate(`(async () => {
      const found = [];
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
          const path = request.url.slice(location.origin.length);
          found.push(${told});
        }
      }
      return found;
    })()`) as Promise<T[]>;
  /** What lies in the caches: path, and all that is in it. */
  const contents = () =>
    inCaches<[path: string, all: string]>(
      'await cache.match(request).then(async r => [path, JSON.stringify([...(r?.headers ?? [])]) + (await r?.text())])',
    );
  /** The paths alone: what is waited for is asked again and again, and a catalog's numbers have a megabyte. */
  const kept = () => inCaches<string>('path');
  const note = () => page.locator('#no-network').textContent();
  const shot = async (name: string) => {
    await keepShot(page, `offline-${name}`, true);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
  };
  /** Once on each kind of page, and without the thousand answers that are hidden: axe would walk through all of them. */
  const sound = async (name: string) => {
    await shot(name);
    await page.evaluate("for (const answer of document.querySelectorAll('.a[hidden]')) answer.remove()");
    expect([name, await violations(page)]).toEqual([name, []]);
  };

  test('looks old numbers up with the server gone, by typing and by address, and reads what it read before', async () => {
    await openAndKeep('/');
    await openAndKeep('/at/2018/4.2.3.2');
    await until(async () => (await kept()).includes('/lookup'));
    await stop();
    await expect(fetch(viewer.address)).rejects.toThrow();

    await page.goto('/');
    expect(await note()).toMatch(
      /^No network\. This page was kept on \d+ \w+ \d{4} at \d\d:\d\d, edition state: Edition 2024, in force from 1 July 2024\./,
    );
    await page.locator('#q').fill('4.2.3.1');
    await page.keyboard.press('Enter');
    await page.getByText('4.2.3.1 of 2018 became 5.3.1.1 in 2024.').waitFor();
    await shot('typed');
    await page.locator('#asked').fill('1.2.1.2');
    await page.getByText('What governs now').filter({ visible: true }).waitFor();

    await page.goto('/at/2014/4.2.3');
    await page.getByText('4.2.3 of 2014 became 5.2.2.1 and 5.2.2.2 in 2024.').waitFor();
    // The number stands in two editions; the one that was asked for comes first.
    expect(await page.locator('#answers section:visible h2').allInnerTexts()).toEqual(['Edition 2014', 'Edition 2018']);
    await shot('address');
    await page.getByRole('link', { name: '5.2.2.1 Depth of filter soil' }).first().click();
    await page.getByText('5.2.2.1 stands in 2024.').waitFor();

    await page.goto('/crosswalk/2018/2024');
    expect(await note()).toMatch(
      /^No network, and this page was not kept: look a number up here, or read one of the pages below\./,
    );
    await sound('missing');
    await page.getByRole('link', { name: /^4\.2\.3\.2 / }).click();
    await page.waitForURL('**/at/2018/4.2.3.2');
    expect(await note()).toContain('This page was kept on');
    await sound('kept');
    await page.emulateMedia({ colorScheme: 'dark' });
    await shot('kept-dark');
    await goOn();
    await page.reload();
    expect(await page.locator('#no-network').count()).toBe(0);
  });

  test('shows what it kept where the network takes a request and does not answer it, or a gateway has lost the server', async () => {
    await openAndKeep('/at/2018/4.2.3.2');
    await stop();
    const silent = createServer(() => {});
    const sockets = new Set<Socket>();
    silent.on('connection', socket => sockets.add(socket));
    await new Promise<void>(resolve => silent.listen(Number(new URL(viewer.address).port), '127.0.0.1', resolve));
    await page.goto('/at/2018/4.2.3.2');
    expect(await note()).toMatch(/^No answer in 1\.5 seconds\. This page was kept on/);
    for (const socket of sockets) socket.destroy();
    await new Promise(resolve => silent.close(resolve));

    // A gateway that has lost its server answers, and for styles and scripts too.
    const lost = createGateway((_, response) => response.writeHead(502).end('Bad gateway'));
    await new Promise<void>(resolve => lost.listen(Number(new URL(viewer.address).port), '127.0.0.1', resolve));
    await page.goto('/at/2014/4.2.3');
    expect(await note()).toContain('edition state: Edition 2024');
    expect(await page.locator('.one').filter({ visible: true }).allTextContents()).toEqual([
      '4.2.3 of 2014 became 5.2.2.1 and 5.2.2.2 in 2024.',
      '4.2.3 of 2018 became 5.3.1, 5.3.2 and 5.3.3 in 2024.',
    ]);
    lost.closeAllConnections();
    await new Promise(resolve => lost.close(resolve));
  });

  test('fetches the numbers anew at the next visit after a publication, and says of older pages that they are older', async () => {
    await openAndKeep('/at/2018/4.2.3.1');
    await openAndKeep('/edition/2024');
    const before = (await kept()).length;
    await publishAgain('2030');
    await page.goto('/edition/2024');
    await until(async () => {
      const lookup = (await contents()).filter(([path]) => path === '/lookup').map(([, all]) => all);
      return lookup.length === 1 && lookup[0]!.includes('4.2.3.1 of 2018 became 5.3.1.1 in 2030.');
    });
    expect(await kept()).toHaveLength(before);
    await stop();
    await page.goto('/at/2014/4.2.3');
    await page.getByText('4.2.3 of 2014 became 5.2.2.1 and 5.2.2.2 in 2030.').waitFor();
    expect(await note()).toContain('Edition 2030, in force from 1 March 2030');
    await page.goto('/at/2018/4.2.3.1');
    expect(await note()).toMatch(
      /edition state: Edition 2024, in force from 1 July 2024\. Something was published since then: what became of it as of Edition 2030/,
    );
    await shot('older');
    await page.getByRole('link', { name: 'what became of it' }).click();
    await page.getByText('4.2.3.1 of 2018 became 5.3.1.1 in 2030.').waitFor();
    await page.goto('/edition/2024');
    expect(await note()).toContain('edition state: Edition 2030');
  });

  test('keeps nothing of what somebody with a name read or wrote, neither while signed in nor after signing out', async () => {
    const token = await tokenFor(dir, { name: 'A. Private Reviewer', address: 'private@example.org' });
    await openAndKeep('/at/2018/4.2.3.1');
    await signIn(page, token);
    for (const path of ['/edition/2024', '/at/2018/4.2.3.3', '/crosswalk/2018/2024', '/desk', '/at/2018/4.2.3.1'])
      await page.goto(path);
    await page.getByLabel('Cause').fill('damage seen');
    await page.getByLabel('What was seen').fill('What only people with a name read.');
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByText('What only people with a name read.').waitFor();
    const isPrivate = ([, all]: readonly [string, string]) => /Private|What only people|csrf|Sign out/.test(all);
    const paths = async () => (await kept()).filter(path => !/\.(css|js|svg)$/.test(path)).sort();
    await wait(500);
    expect((await contents()).filter(isPrivate).map(([path]) => path)).toEqual([]);
    expect(await paths()).toEqual(['/at/2018/4.2.3.1', '/lookup']);
    await page.goto('/sign-in');
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.waitForURL('**/');
    await until(async () => (await kept()).includes('/'));
    expect((await contents()).filter(isPrivate).map(([path]) => path)).toEqual([]);
    expect(await paths()).toEqual(['/', '/at/2018/4.2.3.1', '/lookup']);
  });

  test('keeps sixty pages and no more, those that were opened last', async () => {
    await openAndKeep('/');
    await page.evaluate(
      "for (let n = 1; n <= 70; n++) navigator.serviceWorker.controller.postMessage({ keep: '/search?q=none' + n })",
    );
    const pages = async () => (await kept()).filter(path => path === '/' || path.startsWith('/search'));
    await until(async () => (await pages()).includes('/search?q=none70') && (await pages()).length <= 60);
    await wait(500);
    expect(await pages()).toHaveLength(60);
  });

  test('is told where its browser keeps nothing, and looks up all the same, a number or a whole edition', async () => {
    await page.addInitScript('Object.defineProperty(Navigator.prototype, "serviceWorker", { get: () => undefined })');
    await page.goto('/lookup?q=4.2.3.1');
    await page.getByText('4.2.3.1 of 2018 became').waitFor();
    await page.getByText('it does so over https and on localhost only').waitFor();

    const shown = () => page.locator('#answers h2').filter({ visible: true }).allTextContents();
    expect(await shown()).toEqual(['Edition 2018']);
    for (const typed of ['', '3.1.1.1']) {
      await page.locator('#asked').fill(typed);
      await page.getByRole('link', { name: 'All of 2014' }).click();
      await until(async () => JSON.stringify(await shown()) === '["Edition 2014"]');
    }
  });
});
