import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type SearchThread, searchThread } from '../../src/commands/finding/search-thread.ts';
import { publishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import type { Found } from '../../src/search/search-index.ts';
import { openCatalog } from '../../src/store/open.ts';
import { viewerApp } from '../../src/web/app.ts';
import { listen, type Viewer } from '../../src/web/listen.ts';
import { MAIN } from '../cli/run-cli.ts';
import { copyOfDemoCatalog, demoCatalog, publishedDemo } from '../demo-catalog.ts';

/** Serves the demo catalog with words that are looked up elsewhere. */
async function serveWith(find: SearchThread['find']): Promise<{ viewer: Viewer; reported: string[] }> {
  const reported: string[] = [];
  const published = publishedCatalog(await openCatalog(await demoCatalog()), find);
  const now = () => new Date('2024-08-01T09:00:00Z');
  const viewer = await listen({ port: 0, host: '127.0.0.1' }, address =>
    viewerApp({ published, address, now, report: line => reported.push(line) }),
  );
  return { viewer, reported };
}

const read = async (viewer: Viewer, path: string) => (await fetch(`${viewer.address}${path}`)).text();

describe('a viewer whose index is not built yet', () => {
  let ready = false;
  let viewer: Viewer;
  let reported: string[];
  beforeAll(async () => {
    const here = await (await publishedDemo())();
    ({ viewer, reported } = await serveWith(async (...asked) => (ready ? here.findWords(...asked) : undefined)));
  });
  afterAll(() => viewer.close());

  test('answers for numbers, and says when words can be looked for; then it finds them', async () => {
    const number = await read(viewer, 'search?q=4.2.3.1');
    expect(number).toContain('4.2.3.1 of 2018 became 5.3.1.1 in 2024.');
    expect(number).toContain('still being prepared, which takes a minute or two');
    expect(await read(viewer, 'suggest?q=4.2.3.1')).toContain('became 5.3.1.1 in 2024');
    expect(await read(viewer, 'at/2018/4.2.3.1')).toContain('5.3.1.1');
    const words = await read(viewer, 'search?q=overflow+terrace');
    expect(words).toContain('“overflow terrace” cannot be looked for in the texts yet.');
    expect(words).not.toContain('Nothing fits');
    const early = await fetch(`${viewer.address}search?q=overflow`);
    expect(early.headers.get('cache-control')).toBe('no-store');
    ready = true;
    const found = await read(viewer, 'search?q=overflow+terrace');
    expect(found).toContain('Items that fit “overflow terrace”');
    expect(found).not.toContain('still being prepared');
    expect(reported).toEqual([]);
  });
});

test('a thread that fails costs nobody an answer', async () => {
  const { viewer } = await serveWith(async () => {
    throw new Error('ended');
  });
  expect(await read(viewer, 'search?q=overflow+terrace')).toContain('Items that fit “overflow terrace”');
  await viewer.close();
});

test('serve listens before the index is built, answers for numbers, and finds words when it is', async () => {
  const dir = await copyOfDemoCatalog();
  const indexes = join(dir, 'fishplate', 'search');
  rmSync(indexes, { recursive: true, force: true });
  const serve = spawn(process.execPath, [MAIN, '--quiet', '--catalog', dir, 'serve', '--port', '0']);
  try {
    const address = await new Promise<string>((resolve, reject) => {
      serve.stdout.on('data', text => resolve(/http:\S+/.exec(String(text))![0]));
      serve.on('exit', code => reject(new Error(`serve ended with ${code}`)));
    });
    expect(existsSync(indexes) ? readdirSync(indexes).length : 0).toBeLessThan(3);
    const read = async (path: string) => (await fetch(`${address}${path}`)).text();
    expect(await read('search?q=4.2.3.1')).toContain('4.2.3.1 of 2018 became 5.3.1.1 in 2024.');
    await expect
      .poll(() => read('search?q=overflow+terrace'), { timeout: 100_000, interval: 200 })
      .toContain('Items that fit “overflow terrace”');
    expect(readdirSync(indexes)).toHaveLength(3);
  } finally {
    serve.kill();
    rmSync(dirname(dir), { recursive: true, force: true });
  }
});

describe('the thread', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-thread-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const start = (code: string, reported: string[] = []) => {
    const file = join(folder, `${Math.abs(code.length * 31)}.mjs`);
    writeFileSync(file, `import { parentPort as port } from 'node:worker_threads';\n${code}`);
    return searchThread(
      'nowhere',
      { progress: line => reported.push(line), report: line => reported.push(line) },
      file,
    )!;
  };
  const found: Found = { ids: ['a'], total: 1, matched: 'all' };
  const settle = async (thread: SearchThread, until: (found: Found | undefined) => boolean) => {
    for (;;) {
      const answer = await thread.find('2024', 'overflow', 5);
      if (until(answer)) return answer;
      await new Promise(resolve => setTimeout(resolve, 10));
    }
  };

  test('finds nothing before it is ready, then answers each question by its own', async () => {
    const thread = start(`
      port.on('message', ({ id, text, most }) => port.postMessage({ id, found: { ids: ['a'], total: most, matched: 'all' } }));
      setTimeout(() => port.postMessage({ ready: true }), 100);`);
    expect(await thread.find('2024', 'overflow', 5)).toBeUndefined();
    expect(await settle(thread, answer => answer !== undefined)).toEqual({ ...found, total: 5 });
    const many = await Promise.all([1, 2, 3].map(most => thread.find('2024', 'overflow', most)));
    expect(many.map(answer => answer?.total)).toEqual([1, 2, 3]);
    await thread.close();
  });

  test('that ends is reported, and every question that waits is rejected', async () => {
    const reported: string[] = [];
    const thread = start(
      `port.on('message', () => { throw new Error('out of memory'); });
       port.postMessage({ ready: true });`,
      reported,
    );
    await expect(settle(thread, answer => answer !== undefined)).rejects.toThrow('out of memory');
    expect(reported.at(-1)).toContain('Words are looked up without it.');
    await expect(thread.find('2024', 'overflow', 5)).rejects.toThrow();
  });

  test('that is not built is none', () => {
    expect(searchThread('nowhere', { progress: () => {}, report: () => {} }, join(folder, 'none.mjs'))).toBeUndefined();
  });
});
