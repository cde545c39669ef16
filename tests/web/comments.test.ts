import { readFileSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answerComment } from '../../src/commands/comments/comments-answer.ts';
import { readComments } from '../../src/commands/comments/comments-store.ts';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { RULES_OF_WIDTH, violations } from './judged-page.ts';
import { chromiumPath, openBrowser, phoneWithoutScripts, serveForTest, signIn, tokenFor } from './viewer.ts';

const HEAD =
  'MB/NC,Line number,Clause/Subclause,Paragraph,Type of comment (ge/te/ed),Comments,Proposed change,Observations';
const FORM = `${HEAD}
NOR,,1.1.1.1,,te,The fence is too high.,Take 1.0 m.,
NOR,,1.1.1.2,,ed,"<b>Clad</b> & ""board"" <script>alert(1)</script>",,
SUD,,77.7,,ge,Nobody knows this number.,,
`;

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

const recorded = async (edition: string, code: string) =>
  (await readComments(await openCatalog(dir), edition)).records.find(r => r.code === code);

test('comments name people, so nobody without a name reads them, and no form of theirs is held', async () => {
  for (const path of ['desk/2024/comments', 'desk/2024/comments/reply/csv?by=UVA']) {
    const response = await fetch(`${viewer.address}${path}`);
    expect([path, new URL(response.url).pathname]).toEqual([path, '/sign-in']);
  }
  const own = { 'Sec-Fetch-Site': 'same-origin', Origin: viewer.address.replace(/\/$/, '') };
  const body = new FormData();
  body.append('form', new Blob([FORM]), 'form.csv');
  const answers = [
    await fetch(`${viewer.address}desk/2030/comments/forms`, { method: 'POST', body, headers: own }),
    await fetch(`${viewer.address}desk/2030/comments/forms`, { method: 'POST', body }),
    await fetch(`${viewer.address}sign-in`, { method: 'POST', body, headers: own }),
  ];
  expect(answers.map(a => a.status)).toEqual([403, 403, 415]);
  expect(await answers[0]!.text()).toContain('Nobody is signed in');
});

describe.skipIf(chromiumPath === undefined)('in a browser without scripts', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    page = await phoneWithoutScripts(browser, viewer, token);
  });
  afterAll(() => browser.close());

  const send = async (name: string, content: string | Uint8Array, button = 'Read it') => {
    await page.getByLabel('The form, up to 2 MB').setInputFiles({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(content),
    });
    await page.getByRole('button', { name: button }).click();
  };
  const sentence = () => page.locator('.lead').textContent();

  test('a form is read, its comments are answered one by one, and the form goes back with the answers', async () => {
    await page.goto('/desk');
    await page.getByRole('link', { name: 'Comments of draft 2030' }).click();
    expect(await sentence()).toBe('Nobody has commented on 2030 yet.');
    await send('../odd <name>.csv', FORM);
    const told = (await page.getByRole('status').textContent())!.replace(/\s+/g, ' ');
    expect(told).toMatch(/^ *3 comments read and kept\.\s*Row 4 .*77\.7/);
    expect(await sentence()).toBe('0 of 3 comments on 2030 are answered.');

    const first = page.getByRole('article').filter({ hasText: 'NOR-001' });
    expect(await first.textContent()).toMatch(/The clause as it stands now\s+1\.1\.1\.1 /);
    // What a reviewer wrote is shown as written, and is no markup.
    expect(await page.getByText('<b>Clad</b> & "board" <script>alert(1)</script>').count()).toBe(1);

    // From the clause to its item in the draft, and from there to what was said about it alone.
    await first.getByRole('link', { name: /^1\.1\.1\.1 / }).click();
    await page.getByRole('link', { name: 'Comments on it' }).click();
    expect(await page.getByRole('article').count()).toBe(1);
    await page.getByRole('link', { name: 'About any item' }).click();
    await page.getByRole('link', { name: 'What is to do' }).click();

    await first.getByLabel('Not accepted').check();
    await first.getByLabel(/^Number of the item/).fill('1.1.1.1');
    await first.getByRole('button', { name: 'Answer NOR-001' }).click();
    expect(await page.getByRole('alert').textContent()).toBe('Give the reason why NOR-001 is not accepted.');
    expect(await first.getByLabel('Not accepted').isChecked()).toBe(true);
    expect(await first.getByLabel(/^Number of the item/).inputValue()).toBe('1.1.1.1');
    expect((await recorded('2030', 'NOR-001'))?.answer).toBeUndefined();
    await first.getByLabel(/^Because/).fill('Deer jump 1.0 m.');
    await first.getByLabel(/^Number of the item/).fill('1.1.1.111');
    await first.getByRole('button', { name: 'Answer NOR-001' }).click();
    expect(await page.getByRole('alert').textContent()).toMatch(
      /^There is no item 1\.1\.1\.111 and no such commit; the nearest numbers are 1\.1\.1\.1/,
    );
    await first.getByLabel(/^Number of the item/).fill('');
    await first.getByRole('button', { name: 'Answer NOR-001' }).click();
    expect(await sentence()).toBe('1 of 3 comments on 2030 is answered.');
    expect((await recorded('2030', 'NOR-001'))?.answer).toMatchObject({
      disposition: 'not-accepted',
      because: 'Deer jump 1.0 m.',
      by: 'A. Reviewer <reviewer@example.org>',
    });
    expect(await first.count()).toBe(0);

    // A clause that was not found is placed with the answer.
    const lost = page.getByRole('article').filter({ hasText: 'SUD-001' });
    await lost.getByLabel('Number of the item that it is about').fill('1.1.1.3');
    await lost.getByLabel('Noted').check();
    await lost.getByLabel(/^Because/).fill('Meant 1.1.1.3.');
    await lost.getByRole('button', { name: 'Answer SUD-001' }).click();
    const placed = await recorded('2030', 'SUD-001');
    expect([placed?.unplaced, placed?.items[0]?.number]).toEqual([undefined, '1.1.1.3']);

    const [filled] = await Promise.all([
      page.waitForEvent('download'),
      send('odd <name>.csv', FORM, 'Give it back with the answers'),
    ]);
    expect(filled.suggestedFilename()).toBe('odd__name_-answered.csv');
    expect(readFileSync((await filled.path())!, 'utf8')).toContain('[NOR-001] Not accepted. Deer jump 1.0 m.');

    const [reply] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'csv for NOR' }).click(),
    ]);
    const lines = readFileSync((await reply.path())!, 'utf8');
    expect([lines.includes('Deer jump'), lines.includes('SUD-001')]).toEqual([true, false]);
  });

  test('a choice of state, type and commenter stands in the address and outlives an answer', async () => {
    await page.goto('/desk/2024/comments');
    expect(await sentence()).toBe('14 of 25 comments on 2024 are answered.');
    await page.getByLabel('Type', { exact: true }).selectOption('te');
    await page.getByLabel('Who', { exact: true }).selectOption('CAS');
    await page.getByRole('button', { name: 'Show' }).click();
    expect(new URL(page.url()).search).toBe('?state=todo&type=te&by=CAS');
    const shown = await page.getByRole('article').allInnerTexts();
    expect(shown.every(text => text.includes('CAS, technical'))).toBe(true);
    const article = page.getByRole('article').first();
    await article.getByLabel('Noted').check();
    await article.getByLabel(/^Because/).fill('For the next edition.');
    await article.getByRole('button', { name: /^Answer/ }).click();
    expect(new URL(page.url()).search).toBe('?state=todo&type=te&by=CAS');
    expect(await page.getByRole('article').count()).toBe(shown.length - 1);
    await page.goto('/desk/2024/comments?state=answered&by=CAS');
    expect(await page.getByRole('article').first().textContent()).toContain('For the next edition.');
  });

  test('an answer that somebody else gave meanwhile is shown, and not replaced', async () => {
    await page.goto('/desk/2024/comments?state=open&by=HOL');
    const article = page.getByRole('article').first();
    const code = (await article.getByRole('heading', { level: 3 }).locator('b').textContent())!;
    await answerComment(testPorts('other'), await openForWriting(dir), {
      edition: '2024',
      code,
      disposition: 'noted',
      because: 'Taken up elsewhere.',
    });
    await article.getByLabel('Accepted', { exact: true }).check();
    await article.getByRole('button', { name: /^Answer/ }).click();
    const answered = await recorded('2024', code);
    expect(answered?.answer?.because).toBe('Taken up elsewhere.');
    await page.goto(`/desk/2024/comments?state=answered&by=HOL`);
    expect(await page.getByRole('article').filter({ hasText: code }).textContent()).toContain('Taken up elsewhere.');
  });

  test('files that are too large, that unpack to too much, or that are none are refused in one sentence', async () => {
    const bomb = zipSync({ 'word/document.xml': new Uint8Array(20 * 1024 * 1024) });
    const cases = [
      ['empty.csv', '', 'No file was sent, or an empty one; choose a form first.'],
      ['bomb.docx', bomb, 'is too large to be read here'],
      ['long.csv', `${HEAD}\n${'NOR,,1.1.1.1,,te,c,,\n'.repeat(5001)}`, 'a page reads 5,000 rows at most; split it'],
      ['form.pdf', '%PDF-1.7', 'is no form that can be read'],
      ['cut.docx', 'PK\u0003\u0004 and no more', 'was cut off'],
      ['none.csv', 'a,b\n1,2\n', 'none.csv has no table with the columns'],
    ] as const;
    for (const [name, content, expected] of cases) {
      await page.goto('/desk/2030/comments');
      await send(name, content);
      expect(await page.getByRole('alert').textContent()).toContain(expected);
    }
    await page.goto('/desk/2030/comments');
    await send('large.csv', 'x'.repeat(3 * 1024 * 1024));
    expect((await page.locator('body').textContent())?.trim()).toBe(
      'The file is larger than 2 MB. Leave out its pictures, or split it.',
    );
    expect(viewer.reported).toEqual([]);
  });

  test('the draft is downloaded for its reviewers as one zip, and what its lines mean is put on record once', async () => {
    await page.goto('/desk/2030/comments');
    const section = page.getByRole('region', { name: 'For the reviewers' });
    expect(await section.textContent()).toContain('Downloading them puts round 1 on record');
    const download = async () => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        section.getByRole('button', { name: 'Download them (zip)' }).click(),
      ]);
      return { name: file.suggestedFilename(), parts: unzipSync(readFileSync(await file.path())) };
    };
    const first = await download();
    expect([first.name, Object.keys(first.parts)]).toEqual(['2030-round-1.zip', ['2030.docx', '2030.xlsx']]);
    const rounds = async () =>
      (await readComments(await openCatalog(dir), '2030')).circulations.map(c => [c.round, c.date]);
    expect(await rounds()).toEqual([[1, '2024-08-01']]);

    await page.reload();
    expect(await section.textContent()).toContain('2030 was sent out as it stands in round 1, on 1 August 2024');
    await page.getByLabel('for each part as well').check();
    const { parts } = await download();
    expect(Object.keys(parts).slice(0, 4)).toEqual(['2030.docx', '2030.xlsx', '2030-part-1.docx', '2030-part-1.xlsx']);
    const same = (name: string) => Buffer.compare(parts[name]!, first.parts[name]!) === 0;
    expect([same('2030.docx'), same('2030.xlsx')]).toEqual([true, true]);
    expect(await rounds()).toEqual([[1, '2024-08-01']]);
  });

  test('is without accessibility violations on phone and desk, with and without trouble', async () => {
    const context = await browser.newContext({ baseURL: viewer.address });
    const judged = await context.newPage();
    await signIn(judged, token);
    const found: string[] = [];
    const judge = async (name: string) => {
      for (const width of [390, 1280]) {
        await judged.setViewportSize({ width, height: 844 });
        // What can change with the width is judged again.
        const rules = width === 390 ? undefined : RULES_OF_WIDTH;
        found.push(...(await violations(judged, rules)).map(v => `${name} ${width}: ${v}`));
        const wide = (await judged.evaluate('document.documentElement.scrollWidth')) as number;
        if (wide > width) found.push(`${name} is wider than ${width}`);
      }
    };
    await judged.goto('/desk/2024/comments?state=answered&type=te');
    await judged.getByText('Answer it otherwise').first().click();
    await judge('answered');
    await judged.goto('/desk/2024/comments?by=CAS');
    await judged
      .getByRole('button', { name: /^Answer/ })
      .first()
      .click();
    await judged.getByRole('alert').waitFor();
    await judge('refused');
    expect(found).toEqual([]);
  });
});
