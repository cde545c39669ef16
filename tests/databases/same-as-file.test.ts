import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePolicy } from '../../src/carryover/jobs/job-policy.ts';
import type { Way } from '../../src/carryover/jobs/job-reader.ts';
import type { Question } from '../../src/carryover/questions.ts';
import { readCrosswalkRows } from '../../src/commands/databases/database-crosswalk.ts';
import { openJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import { readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { waysTo } from '../../src/commands/reading/ways-to.ts';
import type { JobAnswer } from '../../src/model/job-answer.ts';
import { type Catalog, openCatalog } from '../../src/store/open.ts';
import { memoryFiles } from '../carryover/memory-files.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { carryIn, saidIn, saidOfFile } from './carry.ts';
import { ENGINES, type TestDatabase } from './engines.ts';

const CATALOG = join(import.meta.dirname, '..', '..', 'catalog');
const TABLES = ['lower-vale.csv', 'lower-vale.xlsx', 'upper-vale.csv', 'upper-vale.xlsx'];

let catalog: Catalog;
let main: Way;
let others: () => Promise<ReadonlyMap<string, Way>>;

/** Read once: the texts of three editions take longer than all the jobs. */
function once<K, V>(read: (key: K) => Promise<V>): (key: K) => Promise<V> {
  const known = new Map<K, Promise<V>>();
  return key => {
    if (!known.has(key)) known.set(key, read(key));
    return known.get(key)!;
  };
}

const crosswalk = once((way: Way) => readCrosswalkRows(catalog, way));

beforeAll(async () => {
  catalog = await openCatalog(await demoCatalog());
  main = await readCrosswalk(catalog, '2018', '2024');
  const older = once(() => waysTo(catalog, '2024', '2018'));
  others = () => older('2024');
});

/** All that a table of the demo says, as texts. */
async function linesOf(file: string) {
  const source = await openJobs(realFiles, { input: join(CATALOG, 'jobs', file) });
  const rows: (readonly string[])[] = [];
  for await (const { cells } of source.lines()) if (cells.some(c => c !== '')) rows.push(cells);
  const width = source.header.length;
  return { header: source.header, rows: rows.map(r => Array.from({ length: width }, (_, at) => r[at] ?? '')) };
}

/** Of cases with as many lines the first one met stands first, which is another one in a database. */
const sorted = (values: readonly unknown[]) => values.map(v => JSON.stringify(v)).sort();

/** Every question that Ana is asked she answers in her turn: carried where it can be, left, or taken out. */
function answered(question: Question, at: number): JobAnswer {
  const { outcome, lines: _, type, title, ...asked } = question;
  const verdict = at % 3 === 0 && outcome.heirs.length > 0 ? 'carry' : at % 3 === 1 ? 'stay' : 'drop';
  const heirs = verdict === 'carry' ? [outcome.heirs[0]!.number] : [];
  const about = { from: '2018', to: '2024', ...(type ? { type } : {}), ...(title ? { title } : {}) };
  return { ...asked, ...about, verdict, heirs, because: '', by: 'Ana', date: '2024-02-01' };
}

describe.each(ENGINES)('the jobs of the demo in $name', engine => {
  let test: TestDatabase;
  beforeAll(async () => {
    if (engine.absent) return;
    await engine.start();
    test = await engine.fresh();
  });
  afterAll(() => engine.stop());

  it.skipIf(engine.absent).each(TABLES)('%s says the same as the file, line for line', async file => {
    const { header, rows } = await linesOf(file);
    const policy = parsePolicy(readFileSync(join(CATALOG, 'policies', file.replace(/\.\w+$/, '.json')), 'utf8'), file);
    await test.table(file, header, rows);
    let kept: readonly JobAnswer[] = [];
    for (const more of [{}, { policy }]) {
      const options = { others, kept, decisionsOut: 'ask.csv', priceChanges: 'dearer.csv', ...more };
      const ofFile = await saidOfFile(header, rows, options, main);
      const held = memoryFiles({});
      const report = await test.with(db => carryIn(db, { table: file, crosswalk, ...options }, main, held));
      const inside = await saidIn(test, file, 'policy' in more);
      expect(held.text('dearer.csv')!.split('\n').length).toBeGreaterThan(2);
      expect(held.text('dearer.csv')).toBe(ofFile.text('dearer.csv'));
      expect(held.text('ask.csv')).toBe(ofFile.text('ask.csv'));
      expect(inside.lines.some(line => line.includes('Decided by Ana'))).toBe(kept.length > 0);
      expect(inside.lines).toEqual(ofFile.lines);
      expect(inside.added).toEqual(ofFile.added);
      expect(report.totals).toEqual(ofFile.report.totals);
      expect(sorted(report.cases)).toEqual(sorted(ofFile.report.cases));
      const returns = (f: { rule: string }) => f.rule !== 'job-returns';
      expect(sorted(report.findings)).toEqual(sorted(ofFile.report.findings.filter(returns)));
      kept = report.questions.filter((_, at) => at % 2 === 0).map(answered);
    }
  });
});
