import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { serveForTest } from './viewer.ts';

let viewer: Viewer & { readonly reported: string[] };
beforeAll(async () => {
  viewer = await serveForTest(await demoCatalog());
});
afterAll(() => viewer.close());

interface Got {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

/** Sends a path as it is: fetch would tidy it up, and choose the Host header itself. */
function get(path: string, options: { host?: string; method?: string } = {}): Promise<Got> {
  const { hostname, port, host } = new URL(viewer.address);
  return new Promise((resolve, reject) => {
    const sent = request(
      { hostname, port, path, method: options.method ?? 'GET', headers: { host: options.host ?? host } },
      response => {
        let body = '';
        response.setEncoding('utf8').on('data', chunk => {
          body += chunk;
        });
        response.on('end', () => resolve({ status: response.statusCode!, headers: response.headers, body }));
      },
    );
    sent.on('error', reject).end();
  });
}

test('a Host that is not the address it listens on is refused', async () => {
  for (const host of ['evil.example', '127.0.0.1', 'localhost:1', `evil.example:${new URL(viewer.address).port}`]) {
    const { status, body } = await get('/', { host });
    expect([status, body.includes('only under its own address')]).toEqual([421, true]);
  }
  expect((await get('/', { host: `localhost:${new URL(viewer.address).port}` })).status).toBe(200);
});

test('nothing but reading is possible', async () => {
  for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS']) {
    const { status, headers } = await get('/', { method });
    expect([status, headers.allow]).toEqual([405, 'GET, HEAD']);
  }
  expect((await get('/', { method: 'HEAD' })).status).toBe(200);
});

test('only scripts that are files of the viewer may run on a page, and none stands in it', async () => {
  for (const path of [
    '/',
    '/search?q=overflow',
    '/at/2018/4.2.3.1',
    '/edition/2024',
    '/crosswalk/2018/2024',
    '/nowhere',
  ]) {
    const { headers, body } = await get(path);
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['content-security-policy']).toMatch(/script-src 'self'(;|$)/);
    expect(headers['content-security-policy']).not.toMatch(/unsafe/);
    const scripts = [...body.matchAll(/<script[^>]*>[^<]*/g)].map(m => m[0]);
    expect(scripts).toEqual(['<script src="/suggest.js" defer>']);
    expect(body).not.toMatch(/\sstyle=|\son\w+=|javascript:/i);
  }
});

test('query values of any shape are answered and never a defect', async () => {
  const shapes = [
    'q=a&q=b',
    'q[]=a',
    'q[x]=a',
    '__proto__=x&q=y',
    '__proto__[settings]=x',
    'settings[view%20options][client]=1',
    'q=%00',
    'q=%',
    'q=%ff%fe',
    'constructor=1&toString=2&hasOwnProperty=3',
    'page=-1',
    'page=99999999999',
    'page[]=2&fate[]=kept',
    'fate=nonsense&mark=nonsense&part=nonsense&reason=nonsense',
    'escapeFunction=1&cache=0&filename=x&delimiter=x&client=1',
    'with=2018&in=2018&type=house',
  ];
  for (const path of ['/', '/search', '/at/2018/4.2.3.1', '/crosswalk/2018/2024', '/crosswalk/2018/2024/lines.csv']) {
    for (const shape of shapes) {
      const { status, body } = await get(`${path}?${shape}`);
      expect([status < 500, path, shape]).toEqual([true, path, shape]);
      expect(body).not.toContain('node_modules');
    }
  }
  expect(viewer.reported).toEqual([]);
});

test('an address with anything in it is a page that ends in a next step', async () => {
  const paths = [
    '/item/__proto__',
    '/item/constructor',
    '/at/2018/..%2f..',
    '/edition/%2e%2e',
    '/at/__proto__/1',
    '/*',
    '/:id?',
  ];
  for (const path of paths) {
    const { status, body } = await get(path);
    expect([path, status]).toEqual([path, 404]);
    expect(body).toContain('Start from the first page');
  }
  expect((await get('/item/%E0%A4%A')).status).toBe(400);
  expect((await get(`/search?q=${'x'.repeat(5000)}`)).status).toBe(414);
});

test('an unknown edition lists the known ones', async () => {
  const { status, body } = await get('/edition/2099');
  expect(status).toBe(404);
  for (const known of ['2014', '2018', '2024']) expect(body).toContain(`href="/edition/${known}"`);
});

test('an unknown number offers the nearest ones', async () => {
  const { status, body } = await get('/at/2018/4.2.3.99');
  expect(status).toBe(404);
  expect(body).toMatch(/href="\/at\/2018\/4\.2\.3\.\d"/);
});

test('the csv holds the lines that are shown and no others', async () => {
  const { headers, body } = await get('/crosswalk/2018/2024/lines.csv?fate=withdrawn&kind=requirements');
  expect(headers['content-type']).toContain('text/csv');
  expect(headers['content-disposition']).toBe('attachment; filename=crosswalk-2018-2024.csv');
  const lines = body.trim().split(/\r?\n/);
  expect(lines).toHaveLength(70);
  expect(lines.slice(1).every(line => line.includes(',withdrawn,'))).toBe(true);
});

test('page weight stays under 100 kB without the text, the stylesheet under 20 kB', async () => {
  expect((await get('/style.css')).body.length).toBeLessThan(20_000);
  for (const path of ['/', '/at/2018/4.2.3.1', '/edition/2024'])
    expect((await get(path)).body.length).toBeLessThan(100_000);
});

describe('a port', () => {
  test('that is in use is one clear sentence', async () => {
    const port = Number(new URL(viewer.address).port);
    await expect(listen({ port, host: '127.0.0.1' }, () => () => {})).rejects.toThrow(
      `Port ${port} is in use; choose another with --port N, or any free one with --port 0.`,
    );
  });

  test('on an address that is not of this machine is refused in words', async () => {
    await expect(listen({ port: 0, host: '203.0.113.9' }, () => () => {})).rejects.toThrow('leave --host out');
  });
});
