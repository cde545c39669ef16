import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import { holdReview } from '../../src/commands/matching/held-review.ts';
import { type DeskReview, matchDesk } from '../../src/commands/matching/match-desk.ts';
import { matchTables } from '../../src/commands/matching/match-tables.ts';
import { readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { writeMatchCsv } from '../../src/exports/match-csv.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { testPorts } from '../demo-catalog.ts';
import { keepShot, violations } from './judged-page.ts';
import { chromiumPath, openBrowser, phoneWithoutScripts, serveForTest, signedIn, tokenFor } from './viewer.ts';

const OLD = `number,parent,title,text
1,,Gutters,
1.1,1,Brackets <b>,The gutter shall be fixed with brackets at 600 mm centres.
1.2,1,Downpipes,Downpipes shall be clipped to the wall at every joint.
2,,Conduct,
2.1,2,Greeting,The inspector shall be greeted politely on arrival.
3,,Overflow of house tanks,Overflow pipes of house tanks shall discharge away from the foundation.
4,,Overflow of terrace tanks,Overflow pipes of terrace tanks shall discharge away from the foundation wall.
`;
const NEW = `number,parent,title,text
1,,Roof drainage,
1.1,1,Pipe clips,Clip downpipes to the wall at each joint.
1.2,1,Gutter brackets,Fix gutters with brackets at centres of 600 mm.
2,,Overflow,Discharge every tank overflow away from the foundation.
3,,Labels,Label each valve with its number.
`;

let dir: string;
let catalog: string;
let viewer: Awaited<ReturnType<typeof serveForTest>>;
const at = (name: string) => join(dir, name);
const reviews: DeskReview[] = [];
beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-match-desk-'));
  catalog = at('works.git');
  writeFileSync(at('old.csv'), OLD);
  writeFileSync(at('new.csv'), NEW);
  const ports = testPorts();
  for (const [edition, table] of [
    ['2018', 'old.csv'],
    ['2024', 'new.csv'],
  ] as const) {
    await importTables(ports, { catalog, edition, tables: [at(table)] });
  }
  // A draft with the word that reviews have in their addresses.
  await openDraft(ports, await openForWriting(catalog), { name: 'match' });
  const tables = holdReview(ports, { tables: [at('old.csv'), at('new.csv')], answers: [at('tables.csv')] });
  const editions = holdReview(ports, { tables: ['2018', '2024'], catalog, answers: [at('editions.csv')] });
  const broken = holdReview(ports, { tables: [at('old.csv'), at('works.git')], answers: [at('broken.csv')] });
  [tables, editions, broken].forEach((held, i) => {
    reviews.push({ ...held, key: String(i + 1), command: `fishplate match <${i}>` });
  });
  await Promise.allSettled(reviews.map(r => r.opened));
  viewer = await serveForTest(catalog, {
    writes: true,
    // A busy machine is no reason for another page.
    matches: matchDesk(ports, reviews, () => openForWriting(catalog), 60_000),
  });
});
afterAll(async () => {
  await viewer?.close();
  rmSync(dir, { recursive: true, force: true });
});

const given = (file: string) => parse(readFileSync(at(file), 'utf8'), { columns: true }) as Record<string, string>[];

/** Somebody signed in, with what a browser of few words can do. */
async function person(name: string) {
  const address = viewer.address.slice(0, -1);
  const cookie = await signedIn(
    viewer.address,
    await tokenFor(catalog, { name, address: `${name.slice(-3).toLowerCase()}@example.org` }),
  );
  const ask = async (path: string, fields?: Record<string, string>): Promise<Response> => {
    const init = fields ? { method: 'POST', body: new URLSearchParams(fields) } : {};
    const got = await fetch(address + path, { ...init, headers: { cookie, origin: address }, redirect: 'manual' });
    return got.status === 303 ? ask(got.headers.get('location')!) : got;
  };
  const field = (body: string, name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(body)![1]!;
  return {
    ask,
    get: async (path: string) => (await ask(path)).text(),
    field,
    answer: async (body: string, fields: Record<string, string>) =>
      ask(/<form class="review" action="([^"]+)"/.exec(body)![1]!, {
        csrf: field(body, 'csrf'),
        seen: field(body, 'seen'),
        ...fields,
      }),
  };
}

const heading = (body: string) => /<h1>([^<]*)/.exec(body)![1];

test('a review is on the desk of people with a name only, also for writing', async () => {
  for (const path of ['desk/match/1', 'desk/match/1/done', 'desk/match/1/crosswalk.csv', 'desk/match/2/record']) {
    const got = await fetch(`${viewer.address}${path}`);
    expect([path, new URL(got.url).pathname, /Gutter|Brackets/.test(await got.text())]).toEqual([
      path,
      '/sign-in',
      false,
    ]);
  }
  const one = await person('A. One');
  const body = await one.get('/desk/match/1');
  const without = await one.ask('/desk/match/1/rematch', {});
  expect(without.status).toBe(403);
  const [, code] = /action="\/desk\/match\/1\/q\/([^"]+)"/.exec(body)!;
  expect((await one.ask(`/desk/match/1/q/${code}`, { answer: 'yes' })).status).toBe(403);
});

test('the desk says how far each review is, which cannot be shown and why, and a draft called match stays its own', async () => {
  const one = await person('A. One');
  const desk = await one.get('/desk');
  expect(desk).toMatch(/old <span class="quiet">to<\/span> new<\/a><div><p>Nothing answered yet, \d+ left to look at/);
  expect(desk).toContain('works.git is a folder; name a file.');
  expect((await one.ask('/desk/match/3')).status).toBe(503);
  const missing = await one.ask('/desk/match/9');
  expect([missing.status, await missing.text()]).toEqual([404, expect.stringContaining('There is no such review.')]);
  expect(heading(await one.get('/desk/match'))).toContain('What stops match');
  expect(heading(await one.get('/desk/match/work'))).toBe('Work on match');
});

test('two people get different questions, overwrite no answer unseen, and take back their own', async () => {
  const [one, two] = [await person('A. One'), await person('B. Two')];
  const [first, other] = [await one.get('/desk/match/1'), await two.get('/desk/match/1')];
  expect(heading(first)).not.toBe(heading(other));
  const address = /<form class="review" action="([^"]+)"/.exec(first)![1]!;
  const same = await two.get(address);
  expect((await one.answer(first, { answer: 'yes', because: 'seen by one' })).status).toBe(200);
  const late = await two.answer(same, { answer: 'yes', because: 'seen by two' });
  const told = await late.text();
  expect([late.status, told]).toEqual([400, expect.stringContaining('A. One has answered this since')]);
  expect([told.includes('seen by one'), told.includes('value="seen by two"')]).toEqual([true, true]);
  await two.answer(other, { answer: 'yes' });
  const undone = await one.get('/desk/match/1');
  expect(undone).toContain('seen by one (A. One');
  await one.ask('/desk/match/1/undo', { csrf: one.field(undone, 'csrf'), asked: one.field(undone, 'asked') });
  expect(given('tables.csv').map(r => r.by)).toEqual(['B. Two <two@example.org>']);
  // Having seen it, the answer is given anew.
  await two.answer(await two.get(address), { answer: 'yes', because: 'seen by two' });
  expect(new Set(given('tables.csv').map(r => r.by))).toEqual(new Set(['B. Two <two@example.org>']));
});

test('the crosswalk of a review is the one that the command writes with its answers', async () => {
  const one = await person('A. One');
  const got = await one.ask('/desk/match/1/crosswalk.csv');
  expect(got.headers.get('content-disposition')).toContain('crosswalk-old-new.csv');
  const report = await matchTables(testPorts(), {
    from: [at('old.csv')],
    to: [at('new.csv')],
    answers: [at('tables.csv')],
  });
  expect(report.answered).toBeGreaterThan(0);
  expect(await got.text()).toBe(writeMatchCsv(report));
});

test('a matching that takes long has a page that says so, and is there when one looks again', async () => {
  let done: (text: string) => void = () => {};
  const slow = { ...reviews[0]!, review: { ...reviews[0]!.review } };
  slow.review.crosswalk = () => new Promise(resolve => (done = resolve));
  slow.review.rematch = () => Promise.reject(new Error('it fails'));
  const matches = matchDesk(testPorts(), [slow], undefined, 50);
  const other = await serveForTest(catalog, { writes: true, matches });
  const [before, own] = [viewer, other];
  viewer = other;
  try {
    const one = await person('A. One');
    const body = await one.get('/desk/match/1/crosswalk.csv');
    expect(heading(body)).toBe('old and new are being matched.');
    expect(body).toContain('href="/desk/match/1/crosswalk.csv">Look again');
    done('a,b');
    slow.review.crosswalk = async () => 'a,b';
    expect(await one.get('/desk/match/1/crosswalk.csv')).toBe('a,b');
    const csrf = one.field(await one.get('/desk/match/1'), 'csrf');
    expect((await one.ask('/desk/match/1/rematch', { csrf })).status).toBe(200);
  } finally {
    viewer = before;
    await own.close();
  }
});

describe.skipIf(chromiumPath === undefined)('in a browser', () => {
  test('a review of two editions goes from the desk to an erratum by a phone without scripts, every page sound', async () => {
    const browser = await openBrowser();
    try {
      const token = await tokenFor(catalog, { name: 'C. Steward', address: 'c@example.org' });
      const page = await phoneWithoutScripts(browser, viewer, token);
      // The judge is a script, so it looks at the same page in a browser that runs them.
      const judging = await browser.newContext({ viewport: { width: 390, height: 844 }, colorScheme: 'dark' });
      await judging.addCookies(await page.context().cookies());
      const judged = await judging.newPage();
      const sound = async (name: string) => {
        await judged.goto(page.url());
        await keepShot(judged, `match-desk-${name}`, true);
        expect([name, await violations(judged)]).toEqual([name, []]);
        expect(await judged.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      };
      await page.getByRole('link', { name: 'Desk' }).click();
      await sound('desk');
      await page.locator('.reviews').getByRole('link', { name: '2018 to 2024', exact: true }).click();
      await sound('question');
      while ((await page.locator('.review').count()) > 0) {
        await page.locator('.buttons').getByRole('button', { name: /^Yes/ }).click();
      }
      await page.getByRole('link', { name: 'What of it becomes lineage of 2024' }).click();
      expect(await page.locator('.recorded').textContent()).toContain('Brackets <b>');
      expect(await page.locator('main').textContent()).toContain('fishplate match <1>');
      await sound('record');
      await page.getByRole('button', { name: 'Publish the erratum' }).click();
      expect(await page.getByRole('status').last().textContent()).toContain('Erratum 2024.1 is published');
      const { joint } = await readCrosswalk(await openCatalog(catalog), '2018', '2024');
      const known = joint.crosswalk.links.filter(l => l.basis === 'confirmed');
      expect([known.length > 1, new Set(known.map(l => l.by))]).toEqual([
        true,
        new Set(['C. Steward <c@example.org>']),
      ]);
      await page.goto('/desk/match/2/record');
      expect(await page.locator('.lead').textContent()).toContain('Nothing is to be recorded');
      expect(viewer.reported).toEqual([]);
    } finally {
      await browser.close();
    }
  });
});
