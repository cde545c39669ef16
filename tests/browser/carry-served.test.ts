import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import axe from 'axe-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { servedCarry } from '../../src/commands/bundles/carry-page.ts';
import { publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { openCatalog } from '../../src/store/open.ts';
import { viewerApp } from '../../src/web/app.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { chromiumPath, openBrowser } from '../web/viewer.ts';

const JOBS = join(import.meta.dirname, '..', '..', 'catalog', 'jobs', 'upper-vale.csv');

describe('a viewer that is served', () => {
  let viewer: Viewer;
  let offered: boolean;
  beforeAll(async () => {
    const catalog = await openCatalog(await demoCatalog());
    const carry = servedCarry(catalog);
    offered = carry !== undefined;
    viewer = await listen({ port: 0, host: '127.0.0.1' }, address =>
      viewerApp({
        published: publishedCatalog(catalog),
        address,
        now: () => new Date('2024-08-01T09:00:00Z'),
        report: () => {},
        ...(carry ? { carry } : {}),
      }),
    );
  }, 120_000);
  afterAll(() => viewer.close());

  it.skipIf(chromiumPath === undefined)(
    'carries a file in the browser; after the page is loaded no request is made',
    async context => {
      if (!offered) context.skip('the part for browsers was not built; run npm run build');
      const browser = await openBrowser();
      try {
        const tab = await browser.newContext({ viewport: { width: 390, height: 800 }, acceptDownloads: true });
        tab.setDefaultTimeout(90_000);
        const page = await tab.newPage();
        await page.goto(viewer.address);
        await page.getByRole('link', { name: 'Carry your file over' }).click();
        await page.locator('#give').waitFor();
        const requests: string[] = [];
        const workers: string[] = [];
        page.on('request', request => requests.push(request.url()));
        page.on('worker', worker => workers.push(worker.url()));
        await page.setInputFiles('#file', JOBS);
        const link = page.getByRole('link', { name: 'upper-vale-2024.csv', exact: true });
        const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
        const taken = readFileSync((await download.path())!, 'utf8');
        expect(taken.split(/\r?\n/)[0]).toMatch(/new_number,new_title,outcome/);
        expect(taken.startsWith(readFileSync(JOBS, 'utf8').split(/\r?\n/)[0]!)).toBe(true);
        // The browser asks for the icon of the page when it likes.
        expect(requests.filter(url => !url.startsWith('blob:') && !url.endsWith('/icon.svg'))).toEqual([]);
        expect(workers.filter(url => url.startsWith('blob:'))).toHaveLength(1);
        await page.evaluate(axe.source);
        const { violations } = (await page.evaluate('axe.run(document)')) as axe.AxeResults;
        expect(violations.map(v => v.id)).toEqual([]);
      } finally {
        await browser.close();
      }
    },
  );

  it('gives the page a policy of its own, and answers for no other file beside it', async context => {
    if (!offered) context.skip('the part for browsers was not built; run npm run build');
    const page = await fetch(`${viewer.address}carry`);
    expect(page.headers.get('content-security-policy')).toContain("connect-src 'none'");
    expect((await fetch(`${viewer.address}carry/..%2Fstyle.css`)).status).toBe(404);
    expect((await fetch(`${viewer.address}carry/package.json`)).status).toBe(404);
  });
});
