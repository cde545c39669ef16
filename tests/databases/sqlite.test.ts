import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { undoDatabaseRun } from '../../src/commands/databases/undo-database.ts';
import { openDatabase } from '../../src/databases/open-database.ts';
import { carryIn, saidIn, saidOfFile } from './carry.ts';
import { ENGINES, type TestDatabase } from './engines.ts';

const engine = ENGINES[0]!;
const hasPython = spawnSync('python3', ['-c', 'import sqlite3']).status === 0;
let folder = '';

beforeAll(async () => {
  await engine.start();
  folder = mkdtempSync(join(tmpdir(), 'fishplate-sqlite-'));
});
afterAll(async () => {
  await engine.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function withJobs(): Promise<TestDatabase> {
  const test = await engine.fresh();
  await test.table(
    'jobs',
    ['job', 'item', 'type', 'state'],
    [
      ['A', '3.1.1', 'house', 'open'],
      ['A', '3.2.1', 'house', 'open'],
    ],
  );
  return test;
}

const refusal = (work: Promise<unknown>) =>
  work.then(
    () => 'nothing',
    e => `${e.code}: ${e.message}`,
  );

describe('an embedded database', () => {
  it('says the same as the file for any table, and its keys hold', async () => {
    const job = fc.constantFrom('A', 'B', ' B ', 'b', '');
    const item = fc.oneof(
      fc.constantFrom('3.1.1', '3.2.1', '3.2.2', '3.3.1', '3.4.5', '3.4.8', '3.1', 'Item 3.4.1', '3.1.1 Lid', ' 3.5.1'),
      fc.string({ maxLength: 6 }),
    );
    const type = fc.constantFrom('house', 'House lot', 'terrace row', 'court', '', 'castle');
    const state = fc.constantFrom('open', 'signed', 'Invoiced', '', 'who knows');
    const lines = fc.array(fc.tuple(job, item, type, state, fc.string({ maxLength: 8 })), {
      minLength: 3,
      maxLength: 25,
    });
    await fc.assert(
      fc.asyncProperty(lines, fc.option(fc.integer({ min: 1, max: 9 })), async (drawn, batch) => {
        // A job's lines stand together: a file folds the parts of a job apart where others come between.
        const rows = [['Z', '3.1.1', 'house', 'open', ''], ...drawn];
        rows.sort((a, b) => (a[0]!.trim() < b[0]!.trim() ? -1 : a[0]!.trim() > b[0]!.trim() ? 1 : 0));
        const header = ['job', 'item', 'type', 'state', 'note'];
        const columns = { job: 'job', number: 'item', type: 'type', state: 'state' };
        const test = await engine.fresh();
        await test.table(
          'jobs',
          header,
          rows.map(r => r.map(c => (c === '' ? null : c))),
        );
        const report = await test.with(db => carryIn(db, { columns, ...(batch === null ? {} : { batch }) }));
        const ofFile = await saidOfFile(header, rows, { columns });
        const inside = await saidIn(test, 'jobs');
        expect(inside).toEqual({ lines: ofFile.lines, added: ofFile.added });
        expect(report.totals).toEqual(ofFile.report.totals);
        expect(await test.sql('pragma foreign_key_check')).toEqual([]);
      }),
      { numRuns: 25, seed: 5 },
    );
  });

  it('goes by its row ids where the table declares no key, but not where it has none', async () => {
    const test = await engine.fresh();
    await test.sql(
      'create table loose (item, type text)',
      "insert into loose values ('3.1.1', 'house'), (null, 'house'), (3.2, 'house'), (x'00ff', 'house')",
      'create table tight (item text primary key) without rowid',
      "insert into tight values ('3.1.1')",
    );
    await test.with(db => carryIn(db, { table: 'loose', columns: { number: 'item' } }));
    const rows = await test.sql('select typeof(item) as kind, outcome from loose_annotated order by 1');
    expect(rows.map(r => `${r.kind} ${r.outcome}`)).toEqual([
      'blob unknown',
      'null unknown',
      'real choose',
      'text carried',
    ]);
    await test.with(db => carryIn(db, { table: 'tight' }));
    expect(await test.sql('select new_number from tight_annotated')).toEqual([{ new_number: '3.1.2' }]);
  });

  it('is opened after a run that was killed, which left its lock', async () => {
    const test = await withJobs();
    const dead = spawnSync(process.execPath, ['-e', '']).pid;
    writeFileSync(`${test.address}.fishplate-run`, JSON.stringify({ process: dead, host: hostname() }));
    mkdirSync(`${test.address}.lock`);
    const { totals } = await test.with(db => carryIn(db));
    expect(totals.lines).toBe(2);
    expect(existsSync(`${test.address}.lock`) || existsSync(`${test.address}.fishplate-run`)).toBe(false);
  });

  it('is refused while another run works on it, and while a lock stands that nobody owns', async () => {
    const test = await withJobs();
    await test.with(async () => {
      expect(await refusal(openDatabase(test.address, { readOnly: false }))).toMatch(
        /^Busy: .*another run of fishplate/,
      );
    });
    mkdirSync(`${test.address}.lock`);
    expect(await refusal(openDatabase(test.address, { readOnly: false }))).toMatch(
      /^Busy: .* If none is running, remove .*\.lock\.$/,
    );
  });

  it('is refused where the file is absent, a folder or something else, and nothing is made', async () => {
    const path = join(folder, 'absent.db');
    expect(await refusal(openDatabase(path, { readOnly: false }))).toMatch(/^NoSuchFile: There is no file/);
    expect(existsSync(path)).toBe(false);
    expect(await refusal(openDatabase(`sqlite:${folder}`, { readOnly: false }))).toMatch(/is a folder/);
    writeFileSync(path, 'job,item\n');
    expect(await refusal(openDatabase(path, { readOnly: false }))).toMatch(/^BadFile: .* is no SQLite database/);
    writeFileSync(path, Buffer.concat([Buffer.from('SQLite format 3\0'), Buffer.alloc(4096, 7)]));
    expect(await refusal(openDatabase(path, { readOnly: false }))).toMatch(/^BadFile: .* is damaged/);
  });

  it.skipIf(!hasPython)(
    'is refused while a program with the usual locks writes to it, and reads what that wrote in WAL mode',
    async () => {
      const path = join(folder, 'theirs.db');
      const make = `import sqlite3; c = sqlite3.connect(${JSON.stringify(path)}); c.execute('pragma journal_mode = wal')
c.execute('create table jobs (id integer primary key, job text, item text, type text)')
c.execute("insert into jobs values (1, 'A', '3.1.1', 'house')"); c.commit(); c.close()`;
      expect(spawnSync('python3', ['-c', make]).status).toBe(0);
      const hold = `import sqlite3, sys; c = sqlite3.connect(${JSON.stringify(path)}, isolation_level=None)
c.execute('begin immediate'); c.execute("insert into jobs values (2, 'A', '3.1.2', 'house')"); print('held', flush=True)
sys.stdin.readline(); c.execute('commit')`;
      const program = spawn('python3', ['-c', hold], { stdio: ['pipe', 'pipe', 'inherit'] });
      const ended = new Promise(done => program.once('exit', done));
      await new Promise(done => program.stdout.once('data', done));
      if (process.platform === 'linux') {
        expect(await refusal(openDatabase(path, { readOnly: false }))).toMatch(
          new RegExp(`^Busy: .* is in use by another program \\(process ${program.pid}\\)`),
        );
      }
      program.stdin.write('\n');
      await ended;
      const db = await openDatabase(path, { readOnly: false });
      const { totals, run } = await carryIn(db);
      expect(totals.lines).toBe(2);
      await undoDatabaseRun(db, run);
      await db.close();
      const check = `import sqlite3; c = sqlite3.connect(${JSON.stringify(path)}); print(c.execute('pragma integrity_check').fetchall(), c.execute('select count(*) from jobs').fetchall())`;
      expect(spawnSync('python3', ['-c', check], { encoding: 'utf8' }).stdout.trim()).toBe("[('ok',)] [(2,)]");
    },
  );

  it('stands in our tables for a reader of another make', { skip: !hasPython }, async () => {
    const test = await withJobs();
    await test.with(db => carryIn(db));
    const read = `import sqlite3; c = sqlite3.connect(${JSON.stringify(test.address)}); print(c.execute('pragma integrity_check').fetchall(), c.execute('pragma foreign_key_check').fetchall(), c.execute('select id, new_number from jobs_annotated').fetchall())`;
    const { stdout } = spawnSync('python3', ['-c', read], { encoding: 'utf8' });
    expect(stdout.trim()).toBe("[('ok',)] [] [(1, '3.1.2'), (2, '3.2.1')]");
  });
});
