import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';
import { publishedCatalog } from '../../src/commands/published-catalog.ts';
import { openCatalog } from '../../src/store/open.ts';
import { viewerApp } from '../../src/web/app.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';

/** Serves a catalog on a free port of loopback, with a clock that stands still. */
export async function serveForTest(catalog: string): Promise<Viewer & { readonly reported: string[] }> {
  const reported: string[] = [];
  const published = publishedCatalog(await openCatalog(catalog));
  const viewer = await listen({ port: 0, host: '127.0.0.1' }, address =>
    viewerApp({ published, address, now: () => new Date('2024-08-01T09:00:00Z'), report: l => reported.push(l) }),
  );
  return { ...viewer, reported };
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

export function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox'] });
}
