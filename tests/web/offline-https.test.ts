import { rmSync } from 'node:fs';
import { request } from 'node:http';
import { dirname } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { deskOf } from '../../src/commands/desk.ts';
import { publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { viewerApp } from '../../src/web/app.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { tokenFor } from './viewer.ts';

const OUTSIDE = 'https://catalog.example';

let dir: string;
let viewer: Viewer;
let port: number;
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  const catalog = await openCatalog(dir);
  const now = () => new Date('2024-08-01T09:00:00Z');
  const desk = deskOf({ ...testPorts(), now }, catalog, () => openForWriting(dir));
  viewer = await listen({ port: 0, host: '127.0.0.1', address: OUTSIDE }, address => {
    return viewerApp({ published: publishedCatalog(catalog), address, now, report: () => {}, offline: {}, desk });
  });
  port = Number(new URL(viewer.address).port);
});
afterAll(async () => {
  await viewer.close();
  rmSync(dirname(dir), { recursive: true, force: true });
});

interface Sent {
  readonly path: string;
  readonly headers: Record<string, string>;
  readonly form?: Record<string, string>;
}

/** What a proxy sends on: the name that was asked for, over http. */
function ask({ path, headers, form }: Sent) {
  const body = form && new URLSearchParams(form).toString();
  const type = body === undefined ? {} : { 'content-type': 'application/x-www-form-urlencoded' };
  const options = { hostname: '127.0.0.1', port, path, method: body === undefined ? 'GET' : 'POST' };
  return new Promise<{ status: number; cookie: string; text: string }>((resolve, reject) => {
    const sent = request({ ...options, headers: { ...type, ...headers } }, response => {
      let text = '';
      response.setEncoding('utf8').on('data', chunk => {
        text += chunk;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode!, cookie: response.headers['set-cookie']?.[0] ?? '', text }),
      );
    });
    sent.on('error', reject).end(body);
  });
}

test('a viewer that is reached over https answers under that name, and no other stranger', async () => {
  const { status, text } = await ask({ path: '/', headers: { host: 'catalog.example' } });
  expect([status, text.includes(`${OUTSIDE}/</span>`)]).toEqual([200, true]);
  expect((await ask({ path: '/', headers: { host: 'evil.example' } })).status).toBe(421);
});

test('people sign in through it, from its own pages only, and their cookie is sent over https only', async () => {
  const token = await tokenFor(dir, { name: 'A. Reviewer', address: 'reviewer@example.org' });
  const headers = { host: 'catalog.example', 'sec-fetch-site': 'same-origin' };
  const page = await ask({ path: '/sign-in', headers });
  const csrf = /name="csrf" value="([^"]+)"/.exec(page.text)![1]!;
  const cookie = page.cookie.split(';')[0]!;
  const send = (origin: string) =>
    ask({ path: '/sign-in', headers: { ...headers, cookie, origin }, form: { csrf, token, back: '/' } });
  expect((await send('https://evil.example')).status).toBe(403);
  const signed = await send(OUTSIDE);
  expect([signed.status, /; Secure/i.test(signed.cookie)]).toEqual([303, true]);
});

test('an address that is none is refused in words', async () => {
  for (const address of ['catalog.example', 'https://catalog.example/lookup', 'ftp://catalog.example', '']) {
    await expect(listen({ port: 0, host: '127.0.0.1', address }, () => () => {})).rejects.toThrow(
      'write it with its scheme and without a path: https://catalog.example',
    );
  }
});
