import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import axe from 'axe-core';
import { parse } from 'csv-parse/sync';
import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { publishBundle } from '../../src/commands/bundles/publish-bundle.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';
import { chromiumPath, openBrowser } from '../web/viewer.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-bundle-'));
const out = join(folder, 'publication');
const files = () =>
  readdirSync(out, { recursive: true, withFileTypes: true })
    .filter(f => f.isFile())
    .map(f => join(f.parentPath, f.name))
    .sort();
const pages = () => files().filter(f => f.endsWith('.html'));

beforeAll(async () => {
  await publishBundle(testPorts(), await openCatalog(await demoCatalog()), { from: '2018', to: '2024', out });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('what is published on the day', () => {
  it('has checksums that sha256sum accepts', () => {
    const { status, stdout } = spawnSync('sha256sum', ['-c', 'SHA256SUMS'], { cwd: out, encoding: 'utf8' });
    expect(status).toBe(0);
    expect(
      stdout
        .trim()
        .split('\n')
        .every(line => line.endsWith(': OK')),
    ).toBe(true);
    expect(stdout.trim().split('\n')).toHaveLength(files().length - 1);
  });

  it('is the same bytes again', async () => {
    const again = join(folder, 'again');
    await publishBundle(testPorts('other'), await openCatalog(await demoCatalog()), {
      from: '2018',
      to: '2024',
      out: again,
    });
    for (const file of files()) {
      expect(readFileSync(file.replace(out, again)).equals(readFileSync(file)), file).toBe(true);
    }
  }, 120_000);

  it('lists every old item in the disposition table, and every new one in the derivation table', () => {
    const rows = (name: string) =>
      parse(readFileSync(join(out, 'tables', name)), { bom: true, columns: true }) as object[];
    const first = (name: string) => new Set(rows(name).map(row => Object.values(row).slice(0, 2).join(' ')));
    expect(first('disposition-2018-2024.csv').size).toBeGreaterThanOrEqual(526);
    expect(first('derivation-2024-2018.csv').size).toBeGreaterThanOrEqual(361);
  });

  it('tells for each old address a page of this site, and in a README which server the addresses are of', () => {
    const rows = parse(readFileSync(join(out, 'redirects.csv')), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(rows).toHaveLength(526);
    const ids = new Map<string, Set<string>>();
    for (const { page, status, to } of rows) {
      const [file = '', anchor = ''] = page!.split('#');
      const known =
        ids.get(file) ?? new Set([...readFileSync(join(out, file), 'utf8').matchAll(/ id="([^"]+)"/g)].map(m => m[1]!));
      ids.set(file, known);
      expect(known.has(anchor), page).toBe(true);
      expect([status === 'moved', to !== '']).toEqual([/^site\/part-/.test(file), /^site\/part-/.test(file)]);
    }
    const readme = readFileSync(join(out, 'README.txt'), 'utf8');
    expect(readme).toMatch(/redirects.*addresses of the viewer \(fishplate serve\)/);
    for (const folder of readdirSync(out).filter(f => f !== 'README.txt'))
      expect(readme).toContain(folder.replace(/\.(?:csv|json)$/, ''));
  });

  it('has no link that leads nowhere', () => {
    const broken: string[] = [];
    const anchors = new Map<string, Set<string>>();
    const anchorsIn = (file: string) => {
      const known =
        anchors.get(file) ?? new Set([...readFileSync(file, 'utf8').matchAll(/ id="([^"]+)"/g)].map(m => m[1]!));
      anchors.set(file, known);
      return known;
    };
    for (const page of pages()) {
      const html = readFileSync(page, 'utf8');
      for (const [, raw] of html.matchAll(/\b(?:href|src|action)="([^"]+)"/g)) {
        const target = raw!.replaceAll('&amp;', '&');
        if (/^(?:https?:|mailto:|data:)/.test(target)) continue;
        const [path = '', anchor] = target.split('#');
        const file = path === '' ? page : join(dirname(page), decodeURIComponent(path.split('?')[0]!));
        if (!existsSync(file)) broken.push(`${page}: ${target}`);
        else if (anchor && !anchorsIn(file).has(decodeURIComponent(anchor))) {
          broken.push(`${page}: ${target}`);
        }
      }
    }
    expect(broken).toEqual([]);
  });

  it('is valid html', async () => {
    const judge = new HtmlValidate({ extends: ['html-validate:standard'] });
    for (const page of pages().filter(p => /index|part-1|lookup|disposition|numbers-2018|search/.test(p))) {
      const report = await judge.validateString(readFileSync(page, 'utf8'));
      const told = report.results.flatMap(r => r.messages.map(m => `${page}:${m.line} ${m.ruleId} ${m.message}`));
      expect(told.slice(0, 5)).toEqual([]);
    }
  });
});

describe.skipIf(chromiumPath === undefined)('the published site, opened from its folder', () => {
  it('says what became of an old number and finds words, with no server', async () => {
    const browser = await openBrowser();
    try {
      const page = await browser.newPage({ viewport: { width: 390, height: 800 } });
      const errors: string[] = [];
      page.on('pageerror', error => errors.push(error.message));
      await page.goto(`file://${join(out, 'lookup.html')}`);
      await page.locator('input').first().fill('3.1.1.1');
      await page.getByText('3.1.1.1 of 2018 became 4.1.1.1 in 2024.').waitFor();
      await page.locator('input').first().fill('3,1,1,1');
      await page.getByText('3.1.1.1 of 2018 became 4.1.1.1 in 2024.').waitFor();
      await page.locator('input').first().fill('3.1.1.99');
      await page.getByText('No edition has 3.1.1.99. Beside it, below 3.1.1:').waitFor();
      await page.getByRole('button', { name: /^3\.1\.1\.1\b/ }).waitFor();
      await page.locator('input').first().fill('gutter');
      await page.getByRole('button', { name: /^2\.1\.1\.1\b/ }).click();
      await page.getByText('2.1.1.1 stands in 2024.').waitFor();
      await page.evaluate(axe.source);
      const { violations } = (await page.evaluate('axe.run(document)')) as axe.AxeResults;
      expect(violations.map(v => v.id)).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= window.innerWidth')).toBe(true);
      await page.goto(`file://${join(out, 'site', 'search.html')}`);
      const box = page.locator('input').first();
      await box.fill('overflow');
      await box.press('Enter');
      await page.getByText('Visible overflow').first().waitFor();
      expect(errors).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= window.innerWidth')).toBe(true);
    } finally {
      await browser.close();
    }
  }, 120_000);
});
