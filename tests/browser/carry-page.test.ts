import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import axe from 'axe-core';
import exceljs from 'exceljs';
import { HtmlValidate } from 'html-validate';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { publishBundle } from '../../src/commands/bundles/publish-bundle.ts';
import { openCatalog } from '../../src/store/open.ts';
import { fishplate } from '../cli/run-cli.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';
import { chromiumPath, openBrowser } from '../web/viewer.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const CATALOG = join(ROOT, 'catalog');
const built = existsSync(join(ROOT, 'dist', 'browser', 'carry.js'));
if (!built) process.stderr.write('Skipped: the page that carries files over was not built; run npm run build.\n');

const folder = mkdtempSync(join(tmpdir(), 'fishplate-page-'));
const site = join(folder, 'publication', 'site');
let catalog: string;
let browser: Browser;

beforeAll(async () => {
  if (!built || chromiumPath === undefined) return;
  catalog = await demoCatalog();
  const out = join(folder, 'publication');
  await publishBundle(testPorts(), await openCatalog(catalog), { from: '2018', to: '2024', out, only: ['site'] });
  browser = await openBrowser();
}, 180_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function open(options: BrowserContextOptions = {}, prepare?: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 800 }, ...options });
  context.setDefaultTimeout(90_000);
  if (prepare) await context.addInitScript(prepare);
  const page = await context.newPage();
  page.on('pageerror', error => {
    throw error;
  });
  await page.goto(`file://${join(site, 'carry.html')}`);
  return page;
}

const give = async (page: Page, path: string) => {
  await page.setInputFiles('#file', join(CATALOG, path));
  await page.locator('#take a').first().waitFor();
};

async function take(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name, exact: true }).click(),
  ]);
  const path = join(folder, `taken-${name}`);
  await download.saveAs(path);
  return path;
}

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = (await page.evaluate('axe.run(document)')) as axe.AxeResults;
  return violations.flatMap(v => v.nodes.map(n => `${v.id}: ${n.html.slice(0, 150)}`));
}
const wide = (page: Page) => page.evaluate('document.documentElement.scrollWidth > window.innerWidth');

describe.skipIf(!built || chromiumPath === undefined)(
  'the page that carries a file over, opened from its folder',
  () => {
    it('says what it found, lets people decide by case with the keys alone, and gives the bytes of carry jobs', async () => {
      const page = await open();
      await give(page, 'jobs/lower-vale.csv');
      expect(await page.locator('#found').textContent()).toContain('628 lines: the number in column req_ref');
      expect(await page.locator('#becomes .says').textContent()).toMatch(/^Of 628 lines carried to 2024, /);
      const counts = await page.locator('.counts td.count').allTextContents();
      expect(counts.reduce((sum, n) => sum + Number(n), 0)).toBe(628);
      const before = readFileSync(await take(page, 'lower-vale-2024.csv'));

      for (const at of [0, 1, 2]) {
        await page.locator('.case').nth(at).getByLabel('Leave it open').focus();
        await page.keyboard.press('ArrowDown');
      }
      await page.getByLabel('Because').first().fill('=as agreed');
      await page.getByRole('button', { name: 'Make the file with your answers' }).focus();
      await page.keyboard.press('Enter');
      expect(await page.locator('#by-lacks').textContent()).toMatch(/Write your name/);
      expect(await faults(page)).toEqual([]);
      await page.keyboard.type('R. Poole');
      await page.getByRole('button', { name: 'Make the file with your answers' }).focus();
      await page.keyboard.press('Enter');
      await page.locator('#take a').first().waitFor();
      expect(await page.locator('#decide .says').textContent()).toContain('Decided: 3,');

      const carried = readFileSync(await take(page, 'lower-vale-2024.csv'));
      const decisions = await take(page, 'lower-vale-2024-decisions.csv');
      const out = join(folder, 'cli.csv');
      const run = (...more: string[]) =>
        fishplate(
          folder,
          ...['--catalog', catalog, 'carry', 'jobs', join(CATALOG, 'jobs/lower-vale.csv')],
          ...['--from', '2018', '--to', '2024', '--out', out, ...more],
        );
      expect(run().status).toBe(1);
      expect(before.equals(readFileSync(out))).toBe(true);
      expect(run('--decisions', decisions).status).toBe(1);
      expect(carried.equals(readFileSync(out))).toBe(true);
      expect(carried.equals(before)).toBe(false);

      // The answers of that day are found again on another.
      await page.reload();
      await give(page, 'jobs/lower-vale.csv');
      await page.getByText('Read it differently').click();
      await page.setInputFiles('#earlier', decisions);
      await page.getByRole('button', { name: 'Read it again' }).click();
      await page.getByText('Decided: 3,').waitFor();
      expect(readFileSync(await take(page, 'lower-vale-2024.csv')).equals(carried)).toBe(true);
      await page.context().close();
    });

    it('gives a workbook of the same bytes, which a second library opens', async () => {
      const page = await open({ colorScheme: 'dark' });
      await give(page, 'jobs/lower-vale.xlsx');
      expect(await faults(page)).toEqual([]);
      const taken = await take(page, 'lower-vale-2024.xlsx');
      const out = join(folder, 'cli.xlsx');
      fishplate(
        folder,
        ...['--catalog', catalog, 'carry', 'jobs', join(CATALOG, 'jobs/lower-vale.xlsx')],
        ...['--from', '2018', '--to', '2024', '--out', out],
      );
      expect(readFileSync(taken).equals(readFileSync(out))).toBe(true);
      const workbook = new exceljs.Workbook();
      await workbook.xlsx.readFile(taken);
      expect(workbook.worksheets.map(s => s.name)).toEqual(
        expect.arrayContaining(['Carried over', 'Added lines', 'Cases']),
      );
      await page.context().close();
    });

    it('carries lessons to the bytes of carry docs, with what still tells of the older edition beside', async () => {
      const page = await open();
      const lessons = ['1-storage.md', '2-infiltration.html', '3-paving.docx', '4-roofs.pptx'];
      const outDir = join(folder, 'course');
      fishplate(
        folder,
        ...['--catalog', catalog, 'carry', 'docs', ...lessons.map(lesson => join(CATALOG, 'course', lesson))],
        ...['--from', '2018', '--to', '2024', '--out', outDir],
      );
      for (const lesson of lessons) {
        await give(page, `course/${lesson}`);
        await page.getByText(`${lesson} is a`).waitFor();
        const taken = readFileSync(await take(page, lesson.replace('.', '-2024.')));
        expect(taken.equals(readFileSync(join(outDir, lesson))), lesson).toBe(true);
      }
      expect(await page.locator('#stale tbody tr').count()).toBeGreaterThan(0);
      expect(await faults(page)).toEqual([]);
      expect(await wide(page)).toBe(false);
      await page.context().close();
    });

    it('is accessible in every other state, at the width of a phone and of a desk, light and dark', async () => {
      for (const options of [{ colorScheme: 'dark' }, { viewport: { width: 1200, height: 900 } }] as const) {
        const page = await open(options);
        expect(await faults(page)).toEqual([]);
        await page.setInputFiles('#file', {
          name: 'names.csv',
          mimeType: 'text/csv',
          buffer: Buffer.from('who,what\nA,B\n'),
        });
        await page.getByText('No column holds numbers of edition 2018').waitFor();
        expect(await faults(page)).toEqual([]);
        await give(page, 'jobs/upper-vale.csv');
        for (const summary of await page.locator('summary:visible').all()) await summary.click();
        await page.getByRole('button', { name: /^Show 15 more cases/ }).click();
        expect(await page.locator('.case').count()).toBe(30);
        expect(await faults(page)).toEqual([]);
        expect(await wide(page)).toBe(false);
        await page.context().close();
      }
    });

    it('shows hostile cells and names as what they are', async () => {
      const page = await open();
      const evil = '<img src=x onerror="document.title=1">';
      const quoted = `"${evil.replaceAll('"', '""')}"`;
      const table = `Item,Type,${quoted}\n${quoted},terrace,=1+1\n3.1.1.1,${quoted},x\n`;
      await page.setInputFiles('#file', { name: `${evil}.csv`, mimeType: 'text/csv', buffer: Buffer.from(table) });
      await page.locator('#take a').first().waitFor();
      for (const summary of await page.locator('summary:visible').all()) await summary.click();
      expect(await page.locator('img').count()).toBe(0);
      expect(await page.locator('#answer').textContent()).toContain(evil);
      expect(await page.title()).toMatch(/^Carry your file over/);
      await page.context().close();
    });

    it('sends nothing: whatever a script on it tried, no request would leave', async () => {
      let seen = 0;
      const server = createServer((_, answer) => {
        seen++;
        answer.setHeader('Access-Control-Allow-Origin', '*').end();
      });
      await new Promise<void>(listening => server.listen(0, '127.0.0.1', listening));
      const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
      const page = await open();
      const requests: string[] = [];
      page.on('request', request => requests.push(request.url()));
      await give(page, 'jobs/upper-vale.csv');
      const tries = `(async address => {
      const image = new Image();
      const shown = new Promise(done => { image.onload = image.onerror = done; });
      image.src = address + 'image';
      navigator.sendBeacon(address + 'beacon', 'x');
      const inside = new Worker(URL.createObjectURL(new Blob(['fetch("' + address + 'worker").then(() => postMessage(1), () => postMessage(0))'])));
      const fetched = new Promise(done => { inside.onmessage = e => done(e.data); });
      const direct = await fetch(address).then(() => 1, () => 0);
      await shown;
      return [direct, await fetched];
    })('${address}')`;
      expect(await page.evaluate(tries)).toEqual([0, 0]);
      expect(seen).toBe(0);
      expect(requests.filter(url => /^https?:/.test(url) && !url.startsWith(address))).toEqual([]);
      server.close();
      await page.context().close();
    });

    it('works where no worker can be had, and says what to do where no script runs', async () => {
      const page = await open({}, 'delete window.Worker;');
      await give(page, 'course/1-storage.md');
      expect(await page.locator('#found').textContent()).toContain('1-storage.md is a text in Markdown');
      await page.context().close();
      const bare = await open({ javaScriptEnabled: false });
      expect(await bare.locator('.note').textContent()).toMatch(
        /needs a script.*numbers of 2018.*fishplate carry jobs/s,
      );
      expect(await bare.locator('#give').isVisible()).toBe(false);
      await bare.context().close();
    });

    it('is reached from the first page in one sentence, and is valid html', async () => {
      const page = await open();
      await page.goto(`file://${join(site, 'index.html')}`);
      await page.getByRole('link', { name: 'Carry your file over' }).click();
      expect(basename(new URL(page.url()).pathname)).toBe('carry.html');
      await page.context().close();
      const judge = new HtmlValidate({ extends: ['html-validate:standard'] });
      for (const name of ['carry.html', 'index.html']) {
        const { results } = await judge.validateString(readFileSync(join(site, name), 'utf8'));
        expect(results.flatMap(r => r.messages.map(m => `${name}:${m.line} ${m.ruleId} ${m.message}`))).toEqual([]);
      }
    });
  },
);
