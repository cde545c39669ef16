import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import { addIntake } from '../../src/commands/intake/intake-add.ts';
import { countReports } from '../../src/commands/intake/intake-count.ts';
import { openForWriting } from '../../src/store/open.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { serveForTest, signedIn, tokenFor } from './viewer.ts';

let dir: string;
let viewer: Viewer & { readonly reported: string[] };
let cookie: string;
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  await openDraft(testPorts(), await openForWriting(dir), { name: '2030' });
  await addIntake(testPorts(), await openForWriting(dir), '2024', [
    { number: '4.2.2.1', cause: 'unclear', from: 'crew <lead>', text: 'Is <b>this</b> an outlet?' },
  ]);
  viewer = await serveForTest(dir, { writes: true });
  cookie = await signedIn(viewer.address, await tokenFor(dir, { name: 'A. Reviewer', address: 'a@example.org' }));
});
afterAll(async () => {
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

const get = async (path: string) => (await fetch(`${viewer.address}${path}`, { headers: { cookie } })).text();

test('reports name people, so nobody without a name reads them', async () => {
  for (const path of ['desk/2030/intake', 'desk/2030/intake/lines.csv']) {
    const response = await fetch(`${viewer.address}${path}`);
    expect([path, new URL(response.url).pathname]).toEqual([path, '/sign-in']);
  }
});

test('reports are counted by item and by cause as the command counts them, each line a link to its item', async () => {
  const counted = await countReports(await openForWriting(dir), { edition: '2030' });
  const page = await get('desk/2030/intake');
  expect(page).toContain(`${counted.reports} reports came in on ${counted.lines.length} items`);
  expect(page.match(/<article class="report">/g)).toHaveLength(counted.lines.length);
  const standing = counted.lines.filter(l => l.endedAfter === undefined);
  for (const { id } of standing) expect(page).toContain(`href="/desk/2030/item/${encodeURIComponent(id)}"`);
  const ended = counted.lines.filter(l => l.endedAfter !== undefined);
  expect(ended.length).toBeGreaterThan(0);
  for (const { id, endedAfter } of ended)
    expect(page).toContain(`href="/item/${encodeURIComponent(id)}?in=${endedAfter}"`);
  // Told in their own words, never as markup.
  expect(page).toContain('Is &lt;b&gt;this&lt;/b&gt; an outlet?');
  expect(page).toContain('crew &lt;lead&gt;');
});

test('a cause and a level are chosen in the address, and the csv has what is shown', async () => {
  const page = await get('desk/2030/intake?cause=unclear&level=1');
  expect(page).toContain('<option value="unclear" selected>');
  expect(page).toContain('<option value="1" selected>');
  const shown = page.match(/<article class="report">/g)!.length;
  const lines = (await get('desk/2030/intake/lines.csv?cause=unclear&level=1')).trim().split(/\r?\n/);
  expect(lines).toHaveLength(shown + 1);
  expect(lines[0]).toBe('edition,number,title,reports,shared,unclear,ended');
  expect(await get('desk/2030/intake?cause=none')).toContain('0 reports on 0 items');
  expect(await get('desk/2030/intake?level=99&page=-1&cause[]=x')).toContain('came in on');
  expect(viewer.reported).toEqual([]);
});
