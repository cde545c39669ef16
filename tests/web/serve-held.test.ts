import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { Command } from 'commander';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { heldMatches, matchOptions } from '../../src/cli/serve-matches.ts';
import { holdJobs } from '../../src/commands/finding/held-jobs.ts';
import { holdReview } from '../../src/commands/matching/held-review.ts';
import { openCatalog } from '../../src/store/open.ts';
import { MAIN } from '../cli/run-cli.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { signedIn, tokenFor } from './viewer.ts';

const OLD =
  'number,title,text\n1,Gutter,Fix the gutter at 600 mm centres.\n2,Pipe,Clip the downpipe to the wall.\n3,Duck,Greet it.\n';
const NEW =
  'number,title,text\n1,Downpipe,The pipe shall be clipped to walls.\n2,Gutters,Gutters are fixed at 600 mm.\n';

let dir: string;
let folder: string;
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  folder = mkdtempSync(join(tmpdir(), 'fishplate-held-'));
  writeFileSync(join(folder, 'old.csv'), OLD);
  writeFileSync(join(folder, 'new.csv'), NEW);
  writeFileSync(join(folder, 'jobs.csv'), 'Job,Item,State\nJ-1,2.1.2.1,open\n');
  writeFileSync(join(folder, 'other.csv'), 'pair,answer\np1,yes\n');
});
afterAll(() => {
  rmSync(dirname(dir), { recursive: true, force: true });
  rmSync(folder, { recursive: true, force: true });
});

test('serve holds reviews and reads jobs in threads, and answers meanwhile', async () => {
  const args = ['--quiet', '--catalog', dir, 'serve', '--port', '0', '--jobs', 'jobs.csv', '--jobs-edition', '2018'];
  const matches = [
    '--match',
    'old.csv',
    'new.csv',
    '--answers',
    'a.csv',
    '--match',
    '2018',
    '2024',
    '--answers',
    'b.csv',
  ];
  const serve = spawn(process.execPath, [MAIN, ...args, ...matches], { cwd: folder });
  try {
    const address = await new Promise<string>((resolve, reject) => {
      serve.stdout.on('data', text => resolve(/http:\S+/.exec(String(text))![0]));
      serve.on('exit', code => reject(new Error(`serve ended with ${code}`)));
    });
    const cookie = await signedIn(address, await tokenFor(dir, { name: 'A. One', address: 'one@example.org' }));
    const ask = (path: string, fields?: Record<string, string>) =>
      fetch(`${address}${path}`, {
        headers: { cookie, 'sec-fetch-site': 'same-origin' },
        ...(fields ? { method: 'POST', body: new URLSearchParams(fields) } : {}),
      });
    const read = async (path: string) => (await ask(path)).text();
    // The two editions take longer than the first page.
    const early = await read('desk/match/2');
    if (!early.includes('class="review"')) expect(early).toContain('2018 and 2024 are being matched.');
    await expect.poll(() => read('desk'), { timeout: 100_000 }).toMatch(/2024<\/a><div><p>Nothing answered yet/);
    const body = await read('desk/match/1');
    const action = /<form class="review" action="\/([^"]+)"/.exec(body)![1]!;
    const csrf = /name="csrf" value="([^"]+)"/.exec(body)![1]!;
    const refused = await ask(action, { csrf, seen: '', answer: 'instead', number: '77' });
    expect([refused.status, await refused.text()]).toEqual([400, expect.stringContaining('has no number 77')]);
    expect((await ask(action, { csrf, seen: '', answer: 'yes' })).status).toBe(200);
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toContain('A. One <one@example.org>');
    expect((await ask('desk/match/1/rematch', { csrf })).status).toBe(200);
    expect(await read('desk/match/1/crosswalk.csv')).toContain('answered');
    await expect.poll(() => read('at/2018/2.1.2.1'), { timeout: 100_000 }).toContain('1 line of 1 job cites this item');
  } finally {
    serve.kill();
  }
});

test('serve ends at once where its port is taken, whatever threads it has begun', async () => {
  const taken = createServer().listen(0, '127.0.0.1');
  await new Promise(resolve => taken.once('listening', resolve));
  const port = String((taken.address() as AddressInfo).port);
  const args = ['--catalog', dir, 'serve', '--port', port, '--jobs', 'jobs.csv', '--jobs-edition', '2018'];
  const serve = spawn(process.execPath, [MAIN, '--quiet', ...args], { cwd: folder, timeout: 100_000 });
  try {
    expect(await new Promise(resolve => serve.once('exit', resolve))).toBe(2);
  } finally {
    taken.close();
  }
});

test.each([
  ['a review without answers', ['--match', 'old.csv', 'new.csv'], /where the answers go: --match OLD\.csv/],
  ['one table alone', ['--match', 'old.csv', '--answers', 'a.csv'], /Name the old table, the new one/],
  ['answers before a table', ['--answers', 'a.csv'], /Name the tables first/],
  ['a table that is not there', ['--match', 'old.csv', 'none.csv', '--answers', 'a.csv'], /no file .*none\.csv/],
  [
    'answers in the place of a table',
    ['--match', 'old.csv', 'new.csv', '--answers', 'new.csv'],
    /new\.csv is an input/,
  ],
  [
    'answers in somebody else’s table',
    ['--match', 'old.csv', 'new.csv', '--answers', 'other.csv'],
    /not begun by a review/,
  ],
  [
    'one file for two reviews',
    ['--match', 'old.csv', 'new.csv', '--answers', 'c.csv', '--match', '2014', '2018', '--answers', 'c.csv'],
    /c\.csv is named for two reviews/,
  ],
])('serve refuses %s with one sentence', async (_, args, sentence) => {
  const command = new Command().exitOverride();
  const told = async () => {
    const matches = matchOptions(command);
    command.parse(
      args.map(word => (word.endsWith('.csv') ? join(folder, word) : word)),
      { from: 'user' },
    );
    const desk = { writing: () => Promise.reject(new Error('nothing is written')), report: () => {} };
    return heldMatches(testPorts(), await openCatalog(dir), matches, desk);
  };
  await expect(told()).rejects.toThrow(sentence);
});

test('a thread that ends is told where somebody waits for it, and nothing hangs', async () => {
  const dying = join(folder, 'dying.mjs');
  writeFileSync(dying, `import 'node:worker_threads';\nthrow new Error('out of memory');\n`);
  const held = holdReview(testPorts(), { tables: ['old.csv', 'new.csv'], answers: ['a.csv'] }, dying);
  await expect(held.review.progress()).rejects.toThrow('out of memory');
  await expect(held.opened).rejects.toThrow('out of memory');
  expect(held.state()).toEqual({ failed: 'The matching has ended: out of memory. Start the viewer again.' });
  const reported: string[] = [];
  const told = { inputs: ['jobs.csv'], edition: '2018', columns: {} };
  const jobs = holdJobs(testPorts(), await openCatalog(dir), told, line => reported.push(line), dying);
  await jobs.done;
  expect([reported[0], jobs.read()?.unread.length]).toEqual(['Jobs: jobs.csv is not counted. out of memory', 1]);
});
