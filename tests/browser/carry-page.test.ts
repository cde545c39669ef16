import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import axe from 'axe-core';
import exceljs from 'exceljs';
import { unzipSync } from 'fflate';
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

/** Answers the case with the first of its answers, and leaves the focus there. */
async function decideByKeys(page: Page, at: number): Promise<void> {
  if (at > 0) {
    await page
      .locator('.case')
      .nth(at - 1)
      .getByRole('button', { name: 'Next case' })
      .focus();
    await page.keyboard.press('Enter');
  }
  await page.locator('.case').nth(at).getByLabel('Leave it open').focus();
  await page.keyboard.press('ArrowDown');
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

      for (const at of [0, 1, 2]) await decideByKeys(page, at);
      await page.locator('.case').nth(2).getByLabel('Because').fill('=as agreed');
      const make = page.getByRole('button', { name: 'Make the file with your answers' });
      await make.focus();
      await page.keyboard.press('Enter');
      expect(await page.locator('#by-lacks').textContent()).toMatch(/Write your name/);
      expect(await faults(page)).toEqual([]);
      await page.keyboard.type('R. Poole');
      await make.focus();
      await page.keyboard.press('Enter');
      await page.locator('#take a').first().waitFor();
      expect(await page.locator('#decide .says').textContent()).toContain('Decided: 3,');

      const carried = readFileSync(await take(page, 'lower-vale-2024.csv'));
      const decisions = await take(page, 'lower-vale-2024-decisions.csv');
      expect(readFileSync(decisions, 'utf8')).toMatch(/,'=as agreed,"?R\. Poole, \d{4}-\d\d-\d\d/);
      const out = join(folder, 'cli.csv');
      const run = (...more: string[]) =>
        fishplate(
          folder,
          ...['--catalog', catalog, 'carry', 'jobs', join(CATALOG, 'jobs/lower-vale.csv')],
          ...['--from', '2018', '--to', '2024', '--out', out, ...more],
        );
      expect(run('--decisions', decisions).status).toBe(1);
      expect(carried.equals(readFileSync(out))).toBe(true);
      expect(carried.equals(before)).toBe(false);

      // The answers of that day are there on another, until they are forgotten; then they come back from their file.
      await page.reload();
      await give(page, 'jobs/lower-vale.csv');
      expect(await page.locator('#decide .says').textContent()).toContain('Decided: 3,');
      expect(readFileSync(await take(page, 'lower-vale-2024.csv')).equals(carried)).toBe(true);
      await page.getByRole('button', { name: 'Forget them' }).click();
      await page.getByRole('button', { name: 'Really forget all of them?' }).click();
      await page.reload();
      await page.setInputFiles('#file', decisions);
      await page.getByText('3 answers of taken-lower-vale-2024-decisions.csv are taken up. Now choose').waitFor();
      await give(page, 'jobs/lower-vale.csv');
      expect(readFileSync(await take(page, 'lower-vale-2024.csv')).equals(carried)).toBe(true);
      await page.context().close();
    });

    it('lets people decide about lessons by case, and gives the bytes of carry docs with the same answers', async () => {
      const page = await open();
      const lessons = ['1-storage.md', '2-infiltration.html', '3-paving.docx', '4-roofs.pptx'];
      await page.setInputFiles(
        '#file',
        lessons.map(name => join(CATALOG, 'course', name)),
      );
      await page.locator('#take a').first().waitFor();
      expect(await page.locator('#found .says').textContent()).toMatch(
        /^These are 4 lessons; they cite numbers \d+ times/,
      );
      // The largest first: what the texts say of their edition, then numbers with both texts beside.
      expect(await page.locator('.case .about').first().textContent()).toMatch(/^edition 2018\d+ places$/);
      for (const at of [0, 1, 2, 3]) await decideByKeys(page, at);
      const texts = page.locator('.case').nth(3).locator('.texts');
      expect(await texts.locator('.was h3').textContent()).toMatch(/^2018: \d/);
      expect(await texts.locator('.now h3').first().textContent()).toMatch(/^2024: \d/);
      expect(await faults(page)).toEqual([]);
      await page.getByLabel('Your name').fill('A. Trainer');
      await page.getByRole('button', { name: 'Make the file with your answers' }).click();
      await page.locator('#take a').first().waitFor();
      const decisions = await take(page, 'lessons-2024-decisions.csv');
      const outDir = join(folder, 'decided');
      fishplate(
        folder,
        ...['--catalog', catalog, 'carry', 'docs', ...lessons.map(name => join(CATALOG, 'course', name))],
        ...['--from', '2018', '--to', '2024', '--out', outDir, '--decisions', decisions],
      );
      const parts = unzipSync(readFileSync(await take(page, 'lessons-2024.zip')));
      expect(Object.keys(parts)).toEqual(expect.arrayContaining(lessons));
      for (const [name, bytes] of Object.entries(parts)) {
        const written = readFileSync(name === 'decisions.csv' ? decisions : join(outDir, name));
        expect(written.equals(bytes), name).toBe(true);
      }
      expect(Buffer.from(parts['review.md']!).toString()).toContain('Decided by A. Trainer, 2');
      await page.context().close();
    });

    it('asks at the top what the table leaves open, and reads it as the person says', async () => {
      const page = await open();
      const rows = ['3.1.1.1', '3.1.1.2', '3.1.2.1'].map(
        (number, at) => `${number},house,${at === 0 ? 'parked' : 'open'},J1`,
      );
      const buffer = Buffer.from(`Item,Type,Status,Job\n${rows.join('\n')}\n`);
      await page.setInputFiles('#file', { name: 'parked.csv', mimeType: 'text/csv', buffer });
      await page.getByText('Please look at this first').waitFor();
      expect(await page.locator('#asks p').textContent()).toBe(
        '“parked” is no state that is known; 1 line with it is taken for open.',
      );
      const asked = await page.locator('#asks').boundingBox();
      expect(asked!.y).toBeLessThan((await page.locator('#becomes').boundingBox())!.y);
      expect(await faults(page)).toEqual([]);
      await page.getByLabel('“parked” means').selectOption('done');
      await page.getByRole('button', { name: 'Go on with this' }).click();
      await page.getByText(/1 of them is finished and left alone/).waitFor();
      expect(await page.locator('#asks').isVisible()).toBe(false);
      await page.context().close();
    });

    it('carries several files one after the other where they are tables, lessons together', async () => {
      const page = await open();
      await page.setInputFiles('#file', [
        join(CATALOG, 'jobs/upper-vale.csv'),
        join(CATALOG, 'course/1-storage.md'),
        join(CATALOG, 'jobs/lower-vale.csv'),
        join(CATALOG, 'course/quiz.md'),
      ]);
      await page.getByRole('link', { name: 'upper-vale-2024.csv', exact: true }).waitFor();
      expect(await page.locator('#units button').allTextContents()).toEqual([
        'upper-vale.csv',
        'lower-vale.csv',
        '2 lessons together',
      ]);
      expect(await faults(page)).toEqual([]);
      await page.getByRole('button', { name: '2 lessons together' }).click();
      await page.getByRole('link', { name: 'lessons-2024.zip' }).waitFor();
      expect(await page.locator('#units [aria-current]').textContent()).toBe('2 lessons together');
      expect(await wide(page)).toBe(false);
      await page.context().close();
    });

    it('gives a workbook that a second library opens', async () => {
      const page = await open({ colorScheme: 'dark' });
      await give(page, 'jobs/lower-vale.xlsx');
      const taken = await take(page, 'lower-vale-2024.xlsx');
      const workbook = new exceljs.Workbook();
      await workbook.xlsx.readFile(taken);
      expect(workbook.worksheets.map(s => s.name)).toEqual(
        expect.arrayContaining(['Carried over', 'Added lines', 'Cases']),
      );
      await page.context().close();
    });

    it('shows what a lesson still tells of the older edition, with the text before and now beside it', async () => {
      const page = await open();
      await give(page, 'course/3-paving.docx');
      expect(await page.locator('#found').textContent()).toContain(
        '3-paving.docx is a Word document; it cites numbers',
      );
      const stale = page.locator('#stale details').first();
      expect(await stale.locator('mark').textContent()).not.toBe('');
      expect(await stale.locator('h3').allTextContents()).toEqual([
        'The lesson says',
        expect.stringMatching(/^Before: \d/),
        expect.stringMatching(/^Now: \d/),
      ]);
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
        await page.getByRole('button', { name: /^Show 10 more cases/ }).click();
        expect(await page.locator('.case').count()).toBe(20);
        expect(await faults(page)).toEqual([]);
        expect(await wide(page)).toBe(false);
        await page.context().close();
      }
    });

    it('says of a number that is typed whether the edition has it, and takes an empty one for no answer', async () => {
      const page = await open();
      await give(page, 'jobs/upper-vale.csv');
      const first = page.locator('.case').first();
      const typed = first.getByRole('textbox', { name: /^Another number/ });
      await typed.fill('9.9.9');
      await typed.blur();
      expect(await first.locator('.lacks').textContent()).toBe(
        '9.9.9 is no number of 2024, or not of one thing alone.',
      );
      expect(await first.locator('.stands').textContent()).toBe('9.9.9: no such number');
      await typed.fill('3.1.1.1');
      expect(await first.locator('.lacks').textContent()).toBe('');
      expect(await first.locator('.stands').textContent()).toBe('→ 3.1.1.1');
      await typed.fill('');
      expect(await first.locator('.stands').textContent()).toBe('open');
      expect(await page.locator('#decide .says').textContent()).toContain('None is decided yet.');
      await page.context().close();
    });

    it('prints every case that is shown with both texts, answered or to be ticked', async () => {
      const page = await open();
      await give(page, 'jobs/upper-vale.csv');
      await page.evaluate("window.dispatchEvent(new Event('beforeprint'))");
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.case .texts').count()).toBe(10);
      expect(await page.locator('.case .way:visible').count()).toBeGreaterThan(30);
      expect(await page.locator('#take, #bar, #give').filter({ visible: true }).count()).toBe(0);
      await page.evaluate("window.dispatchEvent(new Event('afterprint'))");
      expect(await page.locator('details.row[open]').count()).toBe(1);
      await page.context().close();
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
