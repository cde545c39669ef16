import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fishplate, MAIN } from './run-cli.ts';

const OLD = `number,parent,title,text
1,,Gutters,
1.1,1,Brackets,The gutter shall be fixed with brackets at 600 mm centres.
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
const AT = ['--catalog', 'works.git'];
const EDITIONS = ['match', '--from', '2018', '--to', '2024', ...AT];

let dir: string;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-review-cli-'));
  writeFileSync(join(dir, 'old.csv'), OLD);
  writeFileSync(join(dir, 'new.csv'), NEW);
  fishplate(dir, 'import', 'old.csv', '--edition', '2018', ...AT);
  fishplate(dir, 'import', 'new.csv', '--edition', '2024', ...AT);
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const lines = (file: string) =>
  parse(readFileSync(join(dir, file), 'utf8'), { columns: true }) as Record<string, string>[];

interface Running {
  readonly address: string;
  readonly token: string;
  readonly printed: string;
  stop(): Promise<number | null>;
}

function review(...args: string[]): Promise<Running> {
  const child: ChildProcess = spawn(process.execPath, [MAIN, '--quiet', ...args, '--review', '--port', '0'], {
    cwd: dir,
  });
  return new Promise((resolve, reject) => {
    let printed = '';
    child.stderr!.on('data', chunk => {
      printed += chunk;
    });
    child.stdout!.on('data', chunk => {
      printed += chunk;
      const [address] = /http:\/\/127\.0\.0\.1:\d+/.exec(printed) ?? [];
      const [token] = /fp-[\w-]{43}/.exec(printed) ?? [];
      if (!address || !token || !printed.includes('Ctrl+C')) return;
      const stop = () =>
        new Promise<number | null>(done => {
          child.once('exit', done);
          child.kill('SIGTERM');
        });
      resolve({ address, token, printed, stop });
    });
    child.once('exit', code => reject(new Error(`ended with ${code}: ${printed}`)));
  });
}

/** Signs in and gives what a browser without scripts can do: read a page, send its form. */
async function signIn({ address }: Running, token: string) {
  let cookie = '';
  const ask = async (path: string, fields?: Record<string, string>): Promise<string> => {
    const init = fields ? { method: 'POST', body: new URLSearchParams(fields) } : {};
    const got = await fetch(address + path, { ...init, headers: { cookie, origin: address }, redirect: 'manual' });
    cookie = got.headers.get('set-cookie')?.split(';')[0] ?? cookie;
    return got.status === 303 ? ask(got.headers.get('location')!) : got.text();
  };
  const csrf = (body: string) => /name="csrf" value="([^"]+)"/.exec(body)![1]!;
  const first = await ask('/sign-in', { csrf: csrf(await ask('/sign-in')), token, back: '/' });
  const answer = (body: string, fields: Record<string, string>) =>
    ask(/<form class="review" action="([^"]+)"/.exec(body)![1]!, { csrf: csrf(body), ...fields });
  return { first, answer };
}

test('what people answered of two editions becomes lineage under the name of each', async () => {
  const added = fishplate(dir, 'people', 'add', 'B. Second <b@example.org>', '--json', ...AT);
  const second = JSON.parse(added.stdout).token as string;
  const running = await review(...EDITIONS, '--answers', 'answers.csv', '--author', 'A. First <a@example.org>');
  const one = await signIn(running, running.token);
  // The first question by whoever runs the command, all others by somebody with a token of the catalog.
  await one.answer(one.first, { answer: 'yes', because: 'seen by the first' });
  const other = await signIn(running, second);
  let page = other.first;
  while (page.includes('class="review"')) page = await other.answer(page, { answer: 'yes' });
  expect(page).toContain('fishplate match 2018 2024 --answers answers.csv --catalog works.git --record');
  expect(await running.stop()).toBe(0);
  const given = lines('answers.csv');
  expect([given[0]!.by, given[1]!.by]).toEqual(['A. First <a@example.org>', 'B. Second <b@example.org>']);

  const { status, stdout } = fishplate(dir, ...EDITIONS, '--answers', 'answers.csv', '--record', '--author', 'Steward');
  expect([status, stdout]).toEqual([0, expect.stringMatching(/^Erratum 2024\.1: \d+ records added/)]);
  fishplate(dir, 'crosswalk', '2018', '2024', '--out', 'crosswalk.csv', ...AT);
  const confirmed = lines('crosswalk.csv').filter(l => l.basis === 'confirmed');
  expect(confirmed.length).toBeGreaterThan(1);
});

test.each([
  ['a review that does not say where the answers go', ['old.csv', 'new.csv'], /--review --answers answers\.csv/],
  ['answers that are no csv', ['old.csv', 'new.csv', '--answers', 'a.xlsx'], /name a file that ends in \.csv/],
  ['answers in the place of a table', ['old.csv', 'new.csv', '--answers', 'new.csv'], /new\.csv is an input/],
  ['answers in somebody else’s table', ['old.csv', 'new.csv', '--answers', 'other.csv'], /not begun by a review/],
  ['editions without a catalog', ['--from', '2018', '--to', '2024', '--answers', 'a.csv'], /name it: fishplate match/],
])('refuses %s with one sentence', (_, args, sentence) => {
  writeFileSync(join(dir, 'other.csv'), 'pair,answer\np1,yes\n');
  const { status, stderr } = fishplate(dir, 'match', ...args, '--review', '--port', '0');
  expect([status, stderr]).toEqual([2, expect.stringMatching(sentence)]);
  expect(readFileSync(join(dir, 'new.csv'), 'utf8')).toBe(NEW);
});
