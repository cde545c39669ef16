import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { logDraft } from '../../src/commands/drafts/draft-log.ts';
import { operateOnDraft } from '../../src/commands/drafts/draft-operations.ts';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { readEdition } from '../../src/store/read.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { keepShot, RULES_OF_WIDTH, violations } from './judged-page.ts';
import {
  chromiumPath,
  handsOn,
  openBrowser,
  phoneWithoutScripts,
  serveForTest,
  signedIn,
  signIn,
  tokenFor,
} from './viewer.ts';

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
let token: string;
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  await openDraft(testPorts(), await openForWriting(dir), { name: '2030' });
  token = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
  viewer = await serveForTest(dir, { writes: true });
});
afterAll(async () => {
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const draft = async () => readEdition(await openCatalog(dir), '2030');
const numbered = async (number: string) => (await draft()).items.find(i => i.number === number)!;
const idOf = async (id: string) => (await draft()).items.find(i => i.id === id);
const whole = async () => logDraft(await openCatalog(dir), '2030');
const log = async () => (await whole()).filter(s => s.kind !== 'other');

test('a draft is worked on by people with a name only, and by forms of this viewer only', async () => {
  const { id } = await numbered('1.1.1.1');
  for (const path of ['work', 'left', 'find?item=1.1.1.1', `item/${id}`, `item/${id}/reword`]) {
    const response = await fetch(`${viewer.address}desk/2030/${path}`);
    expect([path, new URL(response.url).pathname]).toEqual([path, '/sign-in']);
  }
  const body = new URLSearchParams({ text: 'Anything goes.', step: 'do' });
  const refused = await fetch(`${viewer.address}desk/2030/item/${id}/reword`, { method: 'POST', body });
  expect([refused.status, (await log()).length]).toEqual([403, 0]);
});

describe.skipIf(chromiumPath === undefined)('in a browser without scripts', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    page = await phoneWithoutScripts(browser, viewer, token);
  });
  afterAll(() => browser.close());

  const { press, alert, main } = handsOn(() => page);
  const open = async (number: string, operation: string) => {
    await page.goto(`/desk/2030/item/${encodeURIComponent((await numbered(number)).id)}`);
    await page.getByRole('link', { name: new RegExp(`^${operation} `) }).click();
  };

  test('an item is found, reworded after a look at what that does, and the step is taken back', async () => {
    await page.goto('/desk');
    await page.getByRole('link', { name: 'Items and steps of draft 2030' }).click();
    expect(await page.locator('.lead').textContent()).toBe('Nothing was done to 2030 yet: it says what 2024 says.');
    await page.getByLabel('Number or id in the draft').fill('4.2.2.11');
    await press('Open');
    expect(await alert()).toMatch(/^There is no 4\.2\.2\.11 in the draft; the nearest numbers are .*4\.2\.2\.1/);
    await page.getByLabel('Number or id in the draft').fill('4.2.2.1');
    await press('Open');
    expect(await page.locator('.lead').textContent()).toBe('It says what 4.2.2.1 of 2024 says.');

    await page.getByRole('link', { name: /^Reword / }).click();
    await press('Show what it does');
    expect(await alert()).toBe('Nothing was changed; change a field, or go back to the item.');
    const before = (await numbered('4.2.2.1')).text!;
    const after = `${before.replace('2 m', '3 m')} <i>Not</i> in frost.`;
    await page.getByLabel('Text', { exact: true }).fill(after);
    await page.getByLabel('Verified').fill('Somehow: seen');
    await press('Show what it does');
    expect(await alert()).toMatch(
      /^"Somehow: seen" does not say when it is verified; begin the line with Before covering/,
    );
    expect(await page.getByLabel('Text', { exact: true }).inputValue()).toBe(after);
    await page.getByLabel('Verified').fill('At completion: outlet seen running\nBy document');
    await page.getByLabel('Why').fill('Frost lifts the paving.');
    await press('Show what it does');
    expect(await page.locator('.lead').textContent()).toBe('Reword 4.2.2.1. Nothing is done yet.');
    expect(await page.getByRole('alert').count()).toBe(0);
    expect((await page.locator('ins').allTextContents()).join(' ')).toContain('<i>Not</i>');
    expect(await log()).toEqual([]);
    await press('Change it');
    expect(await page.getByLabel('Why').inputValue()).toBe('Frost lifts the paving.');
    await press('Show what it does');
    await press('Do it');

    expect(await page.getByRole('status').textContent()).toContain('Done: Reword 4.2.2.1.');
    const item = await numbered('4.2.2.1');
    expect(item.text).toBe(after);
    expect(item.verified).toEqual([{ when: 'at-completion', how: 'outlet seen running' }, { when: 'by-document' }]);
    expect((await log())[0]).toMatchObject({
      by: 'A. Reviewer',
      did: 'Reword 4.2.2.1',
      why: 'Frost lifts the paving.',
    });
    expect(await page.locator('.lead').textContent()).toBe('It says something else than 4.2.2.1 of 2024.');

    await press('Take it back');
    expect(await page.getByRole('status').textContent()).toBe('Done: Undo: Reword 4.2.2.1.');
    expect((await numbered('4.2.2.1')).text).toBe(before);
    expect(await main()).toContain('2 steps were done on 2030, 1 of them taken back since.');
  });

  test('an item is withdrawn with a reason, found among what has gone, and restored', async () => {
    const item = await numbered('1.1.1.2');
    await open('1.1.1.2', 'Withdraw');
    await page.getByLabel('Reason').selectOption('law-governs');
    await page.getByLabel('Number of an item to send readers to').fill('1.1.1.2');
    await press('Show what it does');
    // The operation's own refusal, on the page of the form with what was typed.
    expect(await alert()).toMatch(/ ends as well, so it cannot be pointed to; name another\.$/);
    expect(await page.getByLabel('Reason').inputValue()).toBe('law-governs');
    await page.getByLabel('Number of an item to send readers to').fill('1.1.1.3');
    await page.getByLabel('What governs instead').fill("The authority's rules for trees");
    await page.getByLabel('Day on which that was read').fill('2024-07-30');
    await press('Show what it does');
    const told = await main();
    expect(told).toContain('1.1.1.2 of 2024 ends.');
    expect(told).toMatch(/Gets another number.*1\.1\.1\.3 becomes 1\.1\.1\.2/);
    await press('Do it');
    expect(await page.getByRole('status').textContent()).toMatch(/^Done: Withdraw 1\.1\.1\.2: law-governs\.$/);
    expect(await idOf(item.id)).toBeUndefined();

    await page.getByRole('link', { name: '1 item of 2024 has ended or gone on in others' }).click();
    expect(await page.locator('.lead').textContent()).toBe('1 item of 2024 ended, 0 went on in others.');
    await page.getByRole('link', { name: 'Restore' }).click();
    expect(await page.getByLabel('Under which item').inputValue()).toBe('1.1.1');
    await page.getByLabel('Where there').selectOption('after');
    await page.getByLabel('Right after which item').fill('1.1.1.1');
    await press('Show what it does');
    await press('Do it');
    expect((await numbered('1.1.1.2')).id).toBe(item.id);
  });

  test('an item is moved, retitled, combined and split; each says first what becomes of the older items', async () => {
    const moved = await numbered('4.2.2.2');
    await open('4.2.2.2', 'Move');
    await page.getByLabel('Under which item').fill('4.2.99');
    await press('Show what it does');
    expect(await alert()).toMatch(/^There is no 4\.2\.99 in the draft; the nearest numbers are /);
    await page.getByLabel('Under which item').fill('4.2.1');
    await page.getByLabel('Where there').selectOption('first');
    await press('Show what it does');
    expect(await main()).toContain('Stands elsewhere');
    await press('Do it');
    expect((await numbered('4.2.1.1')).id).toBe(moved.id);

    await open('4.2.1.1', 'Retitle');
    await page.getByLabel('Title').fill('Overflow "A" & <B>');
    await press('Show what it does');
    await press('Do it');
    expect((await idOf(moved.id))!.title).toBe('Overflow "A" & <B>');
    expect(await page.locator('h1').textContent()).toContain('Overflow "A" & <B>');

    const other = await numbered('4.2.1.2');
    await open('4.2.1.1', 'Combine');
    await page.getByLabel('Numbers of the others').fill('4.2.1.2');
    await press('Show what it does');
    expect(await main()).toContain('4.2.1.1 of 2024 goes on in 4.2.1.1.');
    await press('Do it');
    const combined = (await idOf(moved.id))!;
    expect(combined.text).toBe(`${moved.text}\n\n${other.text}`);
    expect(await idOf(other.id)).toBeUndefined();

    // A browser sends lines ended in two characters; that alone is no rewording.
    await open('4.2.1.1', 'Reword');
    await press('Show what it does');
    expect(await alert()).toMatch(/^Nothing was changed/);

    await open('4.2.1.1', 'Split');
    await page.getByLabel('Title of the first part').fill('Overflow');
    await page.getByLabel('Text of the first part').fill(moved.text!);
    await page.getByLabel('Title of the second part').fill('Size again');
    await page.getByLabel('Text of the second part').fill(other.text!);
    const types = page.getByRole('group', { name: 'The second part applies to' }).getByRole('checkbox');
    for (const box of await types.all()) await box.uncheck();
    await press('Show what it does');
    expect(await alert()).toBe('Every part has to apply to at least one installation type.');
    for (const box of await types.all()) await box.check();
    await press('Show what it does');
    expect(await main()).toMatch(/New: ?4\.2\.1\.2 Size again/);
    await press('Do it');
    expect(await numbered('4.2.1.2')).toMatchObject({ title: 'Size again', text: other.text });

    // The title cannot be taken back while the split's own title rests on it.
    await page.goto('/desk/2030/work');
    const retitling = page.getByRole('listitem').filter({ hasText: /^\s*Retitle / });
    await retitling.getByRole('button', { name: 'Take back' }).click();
    expect(await alert()).toMatch(/cannot be undone by itself, since later work rests on it/);
  });

  test('an item is added, applies to other types, and the draft has its days, each under the name of who did it', async () => {
    await open('7.1.1', 'Add below');
    await page.getByLabel('Title').fill('Roots');
    await page.getByLabel('Text', { exact: true }).fill('Keep roots 1 m from the pipe.');
    await page.getByLabel('Right after which item').fill('7.1.1.1');
    await press('Show what it does');
    expect(await main()).toMatch(/New: ?7\.1\.1\.2 Roots/);
    await press('Do it');
    expect(await numbered('7.1.1.2')).toMatchObject({ title: 'Roots', text: 'Keep roots 1 m from the pipe.' });

    await open('7.1.1.2', 'Apply to');
    const before = await page.getByRole('checkbox', { checked: true }).count();
    expect(before).toBeGreaterThan(1);
    await page.getByRole('checkbox', { checked: true }).first().uncheck();
    await press('Show what it does');
    expect(await alert()).toBe('Choose the reason why it ends for others.');
    await page.getByLabel('Reason why it ends for others').selectOption('obsolete');
    await press('Show what it does');
    await press('Do it');
    expect((await numbered('7.1.1.2')).appliesTo).toHaveLength(before - 1);

    await page.goto('/desk/2030/days');
    await page.getByLabel('Effective').fill('2030-07-01');
    await press('Show what it does');
    expect(await main()).toContain('Effective: no day becomes 1 July 2030');
    await press('Do it');
    expect((await draft()).header.dates.effective).toBe('2030-07-01');
    expect((await log())[0]).toMatchObject({ by: 'A. Reviewer', did: 'Set days: effective 2030-07-01' });
    expect(await page.getByRole('status').textContent()).toBe('Done: Set days: effective 2030-07-01.');
  });

  test('a day that no calendar has is refused before it makes the draft unreadable', async () => {
    const cookie = await signedIn(viewer.address, token);
    const at = `${viewer.address}desk/2030/days`;
    const form = await (await fetch(at, { headers: { Cookie: cookie } })).text();
    const csrf = /name="csrf" value="([^"]+)"/.exec(form)![1]!;
    const seen = (await whole())[0]!.commit;
    const body = new URLSearchParams({ csrf, step: 'do', seen, effective: '2030-02-31' });
    const headers = { Cookie: cookie, 'Sec-Fetch-Site': 'same-origin' };
    const answer = await fetch(at, { method: 'POST', headers, body });
    expect([answer.status, (await whole())[0]!.commit]).toEqual([400, seen]);
    expect(await answer.text()).toContain('&#34;2030-02-31&#34; is no day; write the day of &#34;effective&#34;');
  });

  test('a step that was looked at is not done where somebody else was faster; what it would do now is shown', async () => {
    await open('7.1.1', 'Retitle');
    await page.getByLabel('Title').fill('Another title');
    await press('Show what it does');
    const other = { ...testPorts('other'), author: { name: 'B. Faster', email: 'b@example.org' } };
    const operation = { op: 'retitle', id: '7.1.1', title: 'Faster' } as const;
    await operateOnDraft(other, await openForWriting(dir), { draft: '2030', operations: [operation] });
    await press('Do it');
    expect(await alert()).toMatch(/^Somebody has worked on the draft since you looked\. Nothing was done/);
    expect(await page.locator('del').first().textContent()).toContain('Faster');
    expect((await numbered('7.1.1')).title).toBe('Faster');
    await press('Do it');
    expect((await numbered('7.1.1')).title).toBe('Another title');
  });

  test('addresses that name nothing, and an edition that is published, are pages that say what to do', async () => {
    const cases = [
      ['/desk/2030/item/nothing', 404],
      ['/desk/2030/item/__proto__/reword', 404],
      [`/desk/2030/item/${(await numbered('7.1.1')).id}/constructor`, 404],
      ['/desk/2030/left/nothing', 404],
      ['/desk/2024/work', 400],
      ['/desk/none/work', 404],
    ] as const;
    for (const [path, status] of cases) {
      const response = await page.goto(path);
      expect([path, response!.status()]).toEqual([path, status]);
      expect(await page.locator('.lead').textContent()).toMatch(/[.;]/);
    }
    expect(viewer.reported).toEqual([]);
  });

  test('everything is reached by the keyboard alone and is without accessibility violations at both widths', async () => {
    const context = await browser.newContext({ baseURL: viewer.address, reducedMotion: 'reduce' });
    const judged = await context.newPage();
    await signIn(judged, token);
    const item = await numbered('5.1.1.1');
    const at = `/desk/2030/item/${item.id}`;
    await judged.goto(`${at}/retitle`);
    await tabTo(judged, '#o-title');
    await judged.keyboard.type(' by keyboard');
    await tabTo(judged, 'button[value=look]');
    await judged.keyboard.press('Enter');
    await tabTo(judged, 'button[value=do]');
    await judged.keyboard.press('Enter');
    await judged.waitForURL('**done=yes');
    expect((await idOf(item.id))!.title).toContain('by keyboard');

    const found: string[] = [];
    const judge = async (name: string) => {
      for (const width of [390, 1280]) {
        await judged.setViewportSize({ width, height: 844 });
        const rules = width === 390 ? undefined : RULES_OF_WIDTH;
        found.push(...(await violations(judged, rules)).map(v => `${name} ${width}: ${v}`));
        const wide = (await judged.evaluate('document.documentElement.scrollWidth')) as number;
        if (wide > width) found.push(`${name} is wider than ${width}`);
        await keepShot(judged, `draft-${name}-${width}`);
      }
    };
    await judge('item-done');
    for (const [name, path] of [
      ['work', '/desk/2030/work'],
      ['left', '/desk/2030/left'],
      ['split', `${at}/split`],
      ['withdraw', `${at}/withdraw`],
    ] as const) {
      await judged.goto(path);
      await judge(name);
    }
    await judged.getByLabel('Reason').selectOption('obsolete');
    await judged.getByRole('button', { name: 'Show what it does' }).click();
    await judged.getByRole('button', { name: 'Do it' }).waitFor();
    await judge('foreseen');
    expect(found).toEqual([]);
  });
});

async function tabTo(page: Page, selector: string): Promise<void> {
  for (let pressed = 0; pressed < 60; pressed++) {
    await page.keyboard.press('Tab');
    if ((await page.locator(`${selector}:focus`).count()) > 0) return;
  }
  throw new Error(`${selector} cannot be reached by the keyboard`);
}
