import { request as send } from 'node:http';
import express from 'express';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { keyOf, onePerson, type PeopleSource } from '../../src/commands/people.ts';
import { guards } from '../../src/web/guard.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { askToSignIn, signIn } from '../../src/web/sign-in.ts';
import { csrfField, personOf, requirePerson } from '../../src/web/signed-in.ts';

const TOKEN = `fp-${'t'.repeat(43)}`;
const WRITER = { name: 'Writer', address: 'writer@example.org' };

let viewer: Viewer;
let revoked: boolean;
let now: Date;
beforeEach(() => {
  revoked = false;
  now = new Date('2024-08-01T09:00:00Z');
});
const one = onePerson(WRITER, TOKEN);
const source: PeopleSource = {
  find: async token => (revoked ? undefined : one.find(token)),
  holds: async key => !revoked && one.holds(key),
};

beforeAll(async () => {
  viewer = await listen({ port: 0, host: '127.0.0.1' }, address => {
    const app = express();
    app.use(guards(address, { forms: true }));
    app.use(
      signIn({
        address,
        source,
        now: () => now,
        showSignIn: async (_, response, page, status) => {
          response.status(status).json(page);
        },
      }),
    );
    app.get('/read', (request, response) => response.json(personOf(request) ?? null));
    app.get('/form', (request, response) => response.json(csrfField(request)));
    app.post('/write', (request, response) => response.json({ by: requirePerson(request), said: request.body.said }));
    app.use(askToSignIn);
    return app;
  });
});
afterAll(() => viewer.close());

interface Got {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

interface Sent {
  readonly fields?: Record<string, string>;
  readonly body?: string;
  readonly headers?: Record<string, string>;
  readonly method?: string;
}

function ask(path: string, cookie = '', { fields, body, headers = {}, method }: Sent = {}): Promise<Got> {
  const { hostname, port, host } = new URL(viewer.address);
  const posted = body ?? (fields && new URLSearchParams(fields).toString());
  const own =
    posted === undefined
      ? {}
      : {
          'content-type': 'application/x-www-form-urlencoded',
          'sec-fetch-site': 'same-origin',
          origin: `http://${host}`,
        };
  const all = Object.fromEntries(
    Object.entries({ host, ...(cookie ? { cookie } : {}), ...own, ...headers }).filter(([, value]) => value !== ''),
  );
  return new Promise((resolve, reject) => {
    const sent = send(
      { hostname, port, path, method: method ?? (posted === undefined ? 'GET' : 'POST'), headers: all },
      response => {
        let text = '';
        response.setEncoding('utf8').on('data', chunk => {
          text += chunk;
        });
        response.on('end', () => resolve({ status: response.statusCode!, headers: response.headers, body: text }));
      },
    );
    sent.on('error', reject).end(posted);
  });
}

const cookieOf = ({ headers }: Got) => String(headers['set-cookie']?.[0] ?? '').split(';')[0]!;

/** A fresh page with a form: its cookie and its csrf value. */
async function formOf(cookie = '', path = '/form') {
  const got = await ask(path, cookie);
  const parsed = JSON.parse(got.body);
  return { cookie: cookie || cookieOf(got), csrf: (parsed.csrf ?? parsed).value as string };
}

async function signedIn(): Promise<{ cookie: string; csrf: string }> {
  const { cookie, csrf } = await formOf('', '/sign-in');
  const got = await ask('/sign-in', cookie, { fields: { csrf, token: TOKEN, back: '/read' } });
  return formOf(cookieOf(got));
}

test('a person signs in with a token, once, and is known by a cookie that no script can read', async () => {
  const { cookie, csrf } = await formOf('', '/sign-in');
  const got = await ask('/sign-in', cookie, { fields: { csrf, token: ` ${TOKEN} `, back: '/read?a=1' } });
  expect([got.status, got.headers.location]).toEqual([303, '/read?a=1']);
  expect(got.headers['set-cookie']![0]).toMatch(/^fishplate-\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
  expect(got.headers['set-cookie']![0]).not.toContain(TOKEN);
  expect(JSON.parse((await ask('/read', cookieOf(got))).body)).toEqual(WRITER);
});

test('signing in begins a new session: an id that was planted beforehand stays a reader', async () => {
  const planted = await formOf('', '/sign-in');
  await ask('/sign-in', planted.cookie, { fields: { csrf: planted.csrf, token: TOKEN, back: '/' } });
  expect((await ask('/read', planted.cookie)).body).toBe('null');
});

test('a wrong token lets nobody in and says what to do', async () => {
  const { cookie, csrf } = await formOf('', '/sign-in');
  for (const token of ['', 'fp-wrong', TOKEN.slice(0, -1), `${TOKEN}x`, keyOf(TOKEN)]) {
    const got = await ask('/sign-in', cookie, { fields: { csrf, token, back: '/' } });
    expect([token, got.status, JSON.parse(got.body).trouble]).toEqual([
      token,
      403,
      'Nobody has this token, or it was revoked.',
    ]);
  }
  expect((await ask('/read', cookie)).body).toBe('null');
});

test('a reader who writes is led to the form and back to the page where it was', async () => {
  const { cookie, csrf } = await formOf();
  const got = await ask('/write', cookie, {
    fields: { csrf, said: 'x' },
    headers: { referer: `${viewer.address}form?x=1` },
  });
  expect([got.status, got.headers.location]).toEqual([303, '/sign-in?back=%2Fform%3Fx%3D1']);
});

test('what is written stands under the name of whoever signed in', async () => {
  const { cookie, csrf } = await signedIn();
  const got = await ask('/write', cookie, { fields: { csrf, said: 'stays' } });
  expect([got.status, JSON.parse(got.body)]).toEqual([200, { by: WRITER, said: 'stays' }]);
});

test('a form without the field of this very session is refused', async () => {
  const [mine, other] = [await signedIn(), await formOf()];
  for (const csrf of ['', 'x', other.csrf, `${mine.csrf}x`]) {
    const got = await ask('/write', mine.cookie, { fields: { csrf, said: 'x' } });
    expect([csrf, got.status]).toEqual([csrf, 403]);
    expect(got.body).toContain('out of date');
  }
  expect((await ask('/write', '', { fields: { csrf: mine.csrf, said: 'x' } })).status).toBe(403);
});

test('a form of a page from elsewhere is refused, even from another port of this machine', async () => {
  const { cookie, csrf } = await signedIn();
  const host = new URL(viewer.address).host;
  const from = async (headers: Record<string, string>) =>
    (await ask('/write', cookie, { fields: { csrf, said: 'x' }, headers })).status;
  expect(await from({ 'sec-fetch-site': 'cross-site', origin: 'https://evil.example' })).toBe(403);
  expect(await from({ 'sec-fetch-site': 'same-site', origin: 'http://127.0.0.1:1' })).toBe(403);
  expect(await from({ 'sec-fetch-site': 'none', origin: '' })).toBe(403);
  expect(await from({ 'sec-fetch-site': '', origin: 'http://127.0.0.1:1' })).toBe(403);
  expect(await from({ 'sec-fetch-site': '', origin: 'null' })).toBe(403);
  expect(await from({ 'sec-fetch-site': '', origin: '' })).toBe(403);
  expect(await from({ 'sec-fetch-site': '', origin: `http://${host}` })).toBe(200);
  expect(await from({ 'sec-fetch-site': 'same-origin', origin: 'null' })).toBe(200);
});

test('a form that is too large, or none, is one clear sentence', async () => {
  const { cookie, csrf } = await signedIn();
  const large = await ask('/write', cookie, { fields: { csrf, said: 'x'.repeat(70_000) } });
  expect([large.status, large.body]).toEqual([413, 'More than 64 kB were sent. Write less at a time.\n']);
  const json = await ask('/write', cookie, { body: '{}', headers: { 'content-type': 'application/json' } });
  expect(json.status).toBe(415);
  expect((await ask('/write', cookie, { method: 'DELETE' })).status).toBe(405);
});

test('a token that is revoked ends the session at its next request', async () => {
  const { cookie } = await signedIn();
  expect(JSON.parse((await ask('/read', cookie)).body)).toEqual(WRITER);
  revoked = true;
  expect((await ask('/read', cookie)).body).toBe('null');
  revoked = false;
  expect((await ask('/read', cookie)).body).toBe('null');
});

test('a session ends after twelve hours, and when the person signs out', async () => {
  const [first, second] = [await signedIn(), await signedIn()];
  await ask('/sign-out', first.cookie, { fields: { csrf: first.csrf } });
  expect((await ask('/read', first.cookie)).body).toBe('null');
  now = new Date('2024-08-01T20:59:59Z');
  expect(JSON.parse((await ask('/read', second.cookie)).body)).toEqual(WRITER);
  now = new Date('2024-08-01T21:00:00Z');
  expect((await ask('/read', second.cookie)).body).toBe('null');
});

describe('the way back', () => {
  test.each(['//evil.example', '/\\evil.example', 'https://evil.example', '/\t/evil.example', 'x', ''])(
    'never leads elsewhere: %s',
    async back => {
      const { body } = await ask(`/sign-in?back=${encodeURIComponent(back)}`);
      expect(JSON.parse(body).back).toBe('/');
    },
  );
});

test('a page that holds a field is not kept by the browser, and forms are sent with their origin', async () => {
  const { headers } = await ask('/form');
  expect([headers['cache-control'], headers['referrer-policy']]).toEqual(['no-store', 'same-origin']);
});
