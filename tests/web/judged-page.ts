import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Where a page was judged whole, these are what another width can change. */
export const RULES_OF_WIDTH = ['target-size', 'scrollable-region-focusable'];

/**
 * What axe finds wrong with a page: a line for each rule, with up to three places. Only that is brought out of the
 * browser: axe's whole answer tells of each element that is right as well, a megabyte for a long page.
 *
 * @param rules these alone; absent: all
 */
export async function violations(page: Page, rules?: readonly string[]): Promise<string[]> {
  // Run from outside: the page itself lets no stranger's script in.
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(AXE);
  const options = { resultTypes: ['violations'], ...(rules ? { runOnly: { type: 'rule', values: rules } } : {}) };
  return page.evaluate(
    `axe.run(${JSON.stringify(options)}).then(r => r.violations.map(v => v.id + ": " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + " " + n.failureSummary).join(" | ")))`,
  );
}

/** A picture for people to look at, made only where FISHPLATE_SHOTS names a folder for them: no test reads one. */
export async function keepShot(page: Page, name: string, fullPage = false): Promise<void> {
  const folder = process.env.FISHPLATE_SHOTS;
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage });
}
