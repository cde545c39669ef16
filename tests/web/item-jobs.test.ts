import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { holdJobs, type JobsCiting } from '../../src/commands/finding/held-jobs.ts';
import { type CitingJobs, itemKey } from '../../src/commands/finding/jobs-citing.ts';
import { readJobsCiting } from '../../src/commands/finding/read-jobs-citing.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import { type Catalog, openCatalog } from '../../src/store/open.ts';
import { readIndex } from '../../src/store/read.ts';
import { fishplate } from '../cli/run-cli.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { violations } from './judged-page.ts';
import { chromiumPath, openBrowser, serveForTest } from './viewer.ts';

const ports = { files: realFiles, progress: () => {} };
const DEMO = join(import.meta.dirname, '../../catalog/jobs');

let dir: string;
let catalog: Catalog;
let folder: string;
beforeAll(async () => {
  dir = await demoCatalog();
  catalog = await openCatalog(dir);
  folder = mkdtempSync(join(tmpdir(), 'fishplate-jobs-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const told = (inputs: readonly string[], edition = '2018') => ({ inputs, edition, columns: {} });
const read = (inputs: readonly string[], edition?: string) => readJobsCiting(ports, catalog, told(inputs, edition));
const hold = async (inputs: readonly string[], reported: string[] = []): Promise<JobsCiting> => {
  const jobs = holdJobs(ports, catalog, told(inputs), line => reported.push(line));
  await jobs.done;
  return jobs;
};

/** What cites the one item with a number. */
async function citing(found: ReadonlyMap<string, CitingJobs>, edition: string, number: string) {
  const entry = (await readIndex(catalog, edition)).entries.find(e => e.number === number)!;
  return found.get(itemKey(edition, entry.id));
}

const LINES = `Job,Site,Item,State,Remark
J-1,54 Tanyard Row,2.1.2.1,open,seen by I. Nobody
J-1,54 Tanyard Row,2.1.2.1,inspected,
J-2,9 Mill Lane,2.1.2.1 (2018),Invoiced on Monday,
J-2,9 Mill Lane,Item 2.1.2.1,whatever that is,
J-3,9 Mill Lane,99.9,open,
J-3,9 Mill Lane,4.1.2.1 (2024),open,
J-3,9 Mill Lane,2.1.2.1 (1999),open,
`;

describe('job lines that cite an item', () => {
  it('are counted by state and job, in the edition that each line means', async () => {
    const { found, lines, unknown } = await read([file('lines.csv', LINES)]);
    const base = await citing(found, '2018', '2.1.2.1');
    expect(base).toMatchObject({ lines: 4, unsure: 0, states: { open: 1, inspected: 1, invoiced: 1, '': 1 } });
    expect(base!.jobs.size).toBe(2);
    expect(base!.first[0]).toEqual({ file: 'lines.csv', line: 2, row: false, job: 'J-1', state: 'open' });
    expect((await citing(found, '2024', '4.1.2.1'))?.lines).toBe(1);
    expect([await citing(found, '2018', '4.1.2.1'), lines, unknown]).toEqual([undefined, 7, 2]);
  });

  it('are the same from csv, a workbook and JSON Lines', async () => {
    const rows = readFileSync(join(DEMO, 'upper-vale.csv'), 'utf8')
      .replace(/^\ufeff/, '')
      .trim()
      .split(/\r?\n/);
    const plain = rows.filter(row => !row.includes('"')).map(row => row.split(','));
    const [header, ...lines] = plain;
    const objects = lines.map(cells => JSON.stringify(Object.fromEntries(cells.map((c, at) => [header![at], c]))));
    const sums = async (input: string) => {
      const { found } = await read([input]);
      return [...found].map(([key, { lines, states, jobs }]) => [key, lines, states, jobs.size]).sort();
    };
    const csv = await sums(file('plain.csv', plain.map(cells => cells.join(',')).join('\n')));
    expect(csv.length).toBeGreaterThan(50);
    expect(await sums(file('plain.jsonl', objects.join('\n')))).toEqual(csv);
    const [book, table] = [await read([join(DEMO, 'lower-vale.xlsx')]), await read([join(DEMO, 'lower-vale.csv')])];
    expect(book.lines).toBe(table.lines);
    expect([...book.found.values()][0]!.first[0]!.row).toBe(true);
    // A sheet that took 3.10 for the number 3.1 leaves a doubt that the csv does not know.
    const certain = [...table.found].filter(([key]) => book.found.get(key)?.unsure === 0);
    expect(certain.length).toBeGreaterThan(100);
  });

  it('show no cell that may be a name or an address, only ids', async () => {
    const { found } = await read([
      file('sites.csv', 'Site,Item,State\n54 Tanyard Row,2.1.2.1,open\nNobody,2.1.2.1,open\n'),
    ]);
    const base = await citing(found, '2018', '2.1.2.1');
    expect([base!.jobs.size, base!.first.map(l => l.job)]).toEqual([2, ['', '']]);
  });

  it('of a table that was carried over are read in the edition that they were read in', async () => {
    const ours = 'new_number,new_title,outcome,why,to_do,origin,folds_into,read_in,carried_to';
    const table = `Job,Item,State,${ours}\nJ-1,2.1.2.1,open,4.2.1.1,,carried,,,input,,2018,2024\nJ-1,,,4.9,,added,,,added,,2018,2024\n`;
    const { found, lines } = await read([file('carried.csv', table)], '2024');
    expect([lines, [...found.keys()].map(key => JSON.parse(key)[0])]).toEqual([1, ['2018']]);
  });

  it('take no more memory with more lines: so many are named, so many jobs are told apart', async () => {
    const many = Array.from({ length: 30_000 }, (_, n) => `J-${n},2.1.2.1,${n % 2 ? 'open' : 'signed'}`);
    const { found } = await read([file('many.csv', `Job,Item,State\n${many.join('\n')}\n`)]);
    const base = await citing(found, '2018', '2.1.2.1');
    expect([base!.lines, base!.jobs.size, base!.first.length]).toEqual([30_000, 500, 8]);
    expect(base!.first.every(l => l.state === 'open')).toBe(true);
  });
});

describe('the page of an item', () => {
  const section = (text: string) => /<h2 id="jobs">([\s\S]*?)<\/section>/.exec(text)?.[1];

  it('says how many lines of how many jobs cite it, also under the number of another edition, and what was not read', async () => {
    const reported: string[] = [];
    const jobs = await hold([file('a.csv', LINES), file('b.csv', 'no,numbers\nat,all\n')], reported);
    const viewer = await serveForTest(dir, { jobs });
    try {
      const get = async (path: string) => (await fetch(`${viewer.address}${path}`)).text();
      const page = await get('at/2018/2.1.2.1');
      const said = section(page);
      expect(said).toContain(
        '4 lines of 2 jobs cite this item: 1 open, 1 inspected, 1 invoiced and 1 without a state.',
      );
      expect(said).toContain('1 of 2 files of jobs could not be read and is not counted.');
      expect(said).toMatch(/a\.csv, line 2<\/span> <span class="n">job J-1<\/span> <span>open/);
      expect(page).not.toMatch(/Tanyard|Mill Lane|Nobody/);
      const heir = /href="(\/at\/2024\/[^"]+)"/.exec(page)![1]!;
      expect(section(await get(heir.slice(1)))).toContain('as <b class="n">2.1.2.1 of 2018</b>');
      expect(reported).toEqual([
        expect.stringMatching(/^Jobs: b\.csv is not counted\. No column .* with --jobs-column number=HEADER/),
        'Jobs: 7 lines read; 2 of them name no item.',
      ]);
      const whole = await serveForTest(dir, { jobs: await hold([join(folder, 'a.csv')]) });
      expect(section(await (await fetch(`${whole.address}at/2018/8`)).text())).toBeUndefined();
      await whole.close();
    } finally {
      await viewer.close();
    }
  });

  it('answers while jobs are being read, says so, and is not kept like that', async () => {
    const jobs = { ...(await hold([file('c.csv', LINES)])), read: () => undefined };
    const viewer = await serveForTest(dir, { jobs, offline: {} });
    try {
      const early = await fetch(`${viewer.address}at/2018/2.1.2.1`);
      expect(early.headers.get('cache-control')).toBe('no-store');
      expect(section(await early.text())).toContain('The job lines are still being read; look again in a minute.');
    } finally {
      await viewer.close();
    }
  });

  it.skipIf(chromiumPath === undefined)('unfolds the lines by keyboard alone on a phone, names escaped', async () => {
    const name = file('<img src=x onerror=alert(1)>.csv', LINES.replaceAll('J-1', '<b>J1</b>'));
    const viewer = await serveForTest(dir, { jobs: await hold([name]) });
    const browser = await openBrowser();
    try {
      const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
      await page.goto(`${viewer.address}at/2018/2.1.2.1`);
      const lines = page.locator('.cited');
      expect(await lines.isVisible()).toBe(false);
      await page.getByText('These lines').focus();
      await page.keyboard.press('Enter');
      expect(await lines.isVisible()).toBe(true);
      expect(await lines.textContent()).toContain('job <b>J1</b>');
      expect(await page.locator('.cited img, .cited li b:not(.n)').count()).toBe(0);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      expect(await violations(page)).toEqual([]);
    } finally {
      await browser.close();
      await viewer.close();
    }
  });
});

it.each([
  ['an edition that is not said', ['--jobs', 'x.csv'], /--jobs-edition with one of 2014, 2018, 2024/],
  ['a file that is not there', ['--jobs', 'none.csv', '--jobs-edition', '2018'], /There is no file none\.csv/],
])('serve refuses %s at once with one sentence', (_, args, sentence) => {
  const { status, stderr } = fishplate(folder, 'serve', '--catalog', dir, '--port', '0', ...args);
  expect([status, stderr]).toEqual([2, expect.stringMatching(sentence)]);
});
