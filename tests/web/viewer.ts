import { existsSync } from 'node:fs';
import type { RequestListener } from 'node:http';
import { type Browser, chromium, type Page } from 'playwright-core';
import { briefingPages } from '../../src/commands/bundles/briefing-page.ts';
import { deskOf } from '../../src/commands/desk.ts';
import type { MatchDesk } from '../../src/commands/matching/match-desk.ts';
import { issueToken, type Person } from '../../src/commands/people.ts';
import { publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { type ViewerParts, viewerApp } from '../../src/web/app.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { demoCatalog, publishedDemo, testPorts } from '../demo-catalog.ts';

interface ServeForTest {
  readonly writes?: boolean;
  readonly offline?: ViewerParts['offline'];
  readonly lessons?: ViewerParts['lessons'];
  readonly jobs?: ViewerParts['jobs'];
  readonly matches?: MatchDesk;
}

/** Serves a catalog on a free port of loopback, with a clock that stands still. */
export async function serveForTest(
  dir: string,
  { writes = false, offline, lessons, jobs, matches }: ServeForTest = {},
): Promise<Viewer & { readonly reported: string[]; readonly again: () => Promise<Viewer> }> {
  const reported: string[] = [];
  const catalog = await openCatalog(dir);
  const published = dir === (await demoCatalog()) ? await publishedDemo() : publishedCatalog(catalog);
  const now = () => new Date('2024-08-01T09:00:00Z');
  const desk = deskOf({ ...testPorts(), now }, catalog, () => openForWriting(dir), matches);
  let app: RequestListener = () => {};
  const viewer = await listen({ port: 0, host: '127.0.0.1' }, address => {
    app = viewerApp({
      published,
      address,
      now,
      report: l => reported.push(l),
      ...(offline ? { offline } : {}),
      ...(lessons ? { lessons } : {}),
      ...(jobs ? { jobs } : {}),
      ...(writes ? { desk, briefings: briefingPages(catalog) } : {}),
    });
    return app;
  });
  const port = Number(new URL(viewer.address).port);
  // At the same address, once it was closed.
  const again = () => listen({ port, host: '127.0.0.1' }, () => app);
  return { ...viewer, reported, again };
}

/** Gives somebody a token to sign in with. */
export async function tokenFor(dir: string, person: Person): Promise<string> {
  return issueToken(testPorts(person.address), await openForWriting(dir), person);
}

/** Signs in by the form, as people do. */
export async function signIn(page: Page, token: string): Promise<void> {
  await page.goto('/sign-in');
  await page.getByLabel('Your token').fill(token);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

/** Signs in without a browser; gives the cookie that stands for the person from then on. */
export async function signedIn(address: string, token: string): Promise<string> {
  const cookieIn = (response: Response) => response.headers.getSetCookie()[0]!.split(';')[0]!;
  const form = await fetch(`${address}sign-in`);
  const csrf = /name="csrf" value="([^"]+)"/.exec(await form.text())![1]!;
  const answer = await fetch(`${address}sign-in`, {
    method: 'POST',
    redirect: 'manual',
    headers: { 'Sec-Fetch-Site': 'same-origin', Cookie: cookieIn(form) },
    body: new URLSearchParams({ csrf, token, back: '/' }),
  });
  return cookieIn(answer);
}

const USUAL = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** Where a Chromium is; undefined where none is found, and tests in a browser are then skipped and say so. */
export const chromiumPath: string | undefined = [process.env.FISHPLATE_CHROMIUM ?? '', ...USUAL].find(
  path => path !== '' && existsSync(path),
);

if (chromiumPath === undefined) {
  process.stderr.write(
    'Skipped: the viewer is not tested in a browser, since no Chromium was found. Install one, or name it in FISHPLATE_CHROMIUM.\n',
  );
}

/**
 * A whole Chromium loads two pages for its address bar with every window, which nobody sees here and which cost more
 * than most of ours. A browser heeds the last list of features only, so those that Playwright turns off stand here too.
 */
const TURNED_OFF = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

export function openBrowser(): Promise<Browser> {
  const args = ['--no-sandbox', `--disable-features=${TURNED_OFF.join(',')}`];
  return chromium.launch({ executablePath: chromiumPath!, args });
}

/** A page at phone width in which no script runs, with somebody signed in. */
export async function phoneWithoutScripts(browser: Browser, viewer: Viewer, token: string): Promise<Page> {
  const viewport = { width: 390, height: 844 };
  const context = await browser.newContext({ baseURL: viewer.address, viewport, javaScriptEnabled: false });
  const page = await context.newPage();
  await signIn(page, token);
  return page;
}

/** What a test does with a page again and again: press a button by its name, read the alert, read what the page says. */
export function handsOn(page: () => Page) {
  return {
    press: (name: string) => page().getByRole('button', { name }).click(),
    alert: () => page().getByRole('alert').textContent(),
    main: async () => (await page().locator('main').textContent())!.replace(/\s+/g, ' '),
  };
}
