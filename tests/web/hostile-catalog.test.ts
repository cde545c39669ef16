import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { testPorts } from '../demo-catalog.ts';
import { chromiumPath, openBrowser, serveForTest } from './viewer.ts';

const SCRIPT = '<script>document.title="run"</script>';
const IMAGE = `"><img src=x onerror="document.title='run'">`;
const IDS = ['__proto__', 'constructor', '<b>id</b>', `a/b?c#d%20"'`, '..'];

describe.skipIf(chromiumPath === undefined)('a catalog full of scripts', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-hostile-'));
  let viewer: Viewer;
  let browser: Browser;

  beforeAll(async () => {
    const catalog = join(folder, 'hostile.git');
    const ports = { ...testPorts('hostile'), author: { name: SCRIPT, email: 'x@example.org' } };
    for (const edition of ['1', '2']) {
      const rows = [
        { id: 'part', number: '1', level: 'Part', parent: '', title: SCRIPT, text: '' },
        ...IDS.map((id, at) => ({
          id,
          number: at === 0 ? SCRIPT : at === 1 ? '1.1' : `1.${IMAGE}${at}`,
          level: 'Requirement',
          parent: '1',
          title: `${IMAGE} ${at}`,
          text: `${SCRIPT} in edition ${edition} <%= 7*7 %>`,
        })),
      ];
      const table = join(folder, `${edition}.json`);
      writeFileSync(table, JSON.stringify(rows));
      const settings = join(folder, 'settings.json');
      writeFileSync(
        settings,
        JSON.stringify({
          title: SCRIPT,
          publisher: IMAGE,
          caution: SCRIPT,
          numbering: { levels: [{ style: 'printed' }, { style: 'printed' }], numbersUnique: false },
        }),
      );
      await importTables(ports, { catalog, edition, tables: [table], settings, dates: { published: '2024-01-01' } });
    }
    [viewer, browser] = await Promise.all([serveForTest(catalog), openBrowser()]);
  });
  afterAll(async () => {
    await browser?.close();
    await viewer?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('shows them as text on every page that can be reached', async () => {
    // Scripts are on here, so that one that slipped through would run.
    const page = await browser.newPage({ baseURL: viewer.address });
    const alerts: string[] = [];
    page.on('dialog', dialog => alerts.push(dialog.message()));
    const start = [
      '/',
      '/edition/1',
      '/edition/2?whole=yes',
      '/crosswalk/1/2',
      `/search?q=${encodeURIComponent(SCRIPT)}`,
    ];
    const waiting = [
      ...start,
      ...IDS.map(id => `/item/${encodeURIComponent(id)}`),
      `/at/2/${encodeURIComponent(SCRIPT)}`,
    ];
    const seen = new Set<string>();
    while (waiting.length > 0 && seen.size < 60) {
      const path = waiting.shift()!;
      if (seen.has(path) || path.includes('.csv')) continue;
      seen.add(path);
      const response = await page.goto(path);
      expect([path, (response?.status() ?? 0) < 400 || path.includes('..')]).toEqual([path, true]);
      expect([path, await page.title()]).not.toEqual([path, 'run']);
      expect(await page.locator('main img, main script, main b b').count()).toBe(0);
      for (const link of await page.locator('main a').all()) {
        const href = await link.getAttribute('href');
        expect(href).toMatch(/^[/#?]/);
        if (href?.startsWith('/')) waiting.push(href.replace(/#.*$/, ''));
      }
    }
    expect(alerts).toEqual([]);
    expect(seen.size).toBeGreaterThan(12);
    await page.goto('/item/__proto__');
    await expect(page.locator('h1').textContent()).resolves.toContain(SCRIPT);
    await expect(page.locator('main').textContent()).resolves.toContain('<%= 7*7 %>');
  });
});
