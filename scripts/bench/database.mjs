// One million job lines carried inside a database, with the same lines as a csv file beside it. Needs a built dist/.
// node scripts/bench/database.mjs [postgres://…]: the embedded engine always, a server where one is named.
import { createWriteStream, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { carryDatabaseJobs } from '../../dist/commands/databases/db-jobs.js';
import { undoDatabaseRun } from '../../dist/commands/databases/undo-database.js';
import { carryJobs } from '../../dist/commands/jobs/carry-jobs.js';
import { realFiles } from '../../dist/commands/ports/files.js';
import { openDatabase } from '../../dist/databases/open-database.js';
import { dataRows } from '../../dist/exports/data-package.js';
import { editions, jobLines } from './jobs.mjs';

const { joint, marks } = await editions();
const ports = { files: realFiles, progress: () => {} };
const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-'));
try {
  const input = join(folder, 'jobs.csv');
  await pipeline(jobLines(joint), createWriteStream(input));
  let report;
  const csv = await seconds(async () => {
    report = await carryJobs(ports, joint, marks, { input, out: join(folder, 'out.csv') });
  });
  say('csv file', csv, report);
  const file = join(folder, 'jobs.db');
  writeFileSync(file, '');
  for (const address of [file, ...process.argv.slice(2)]) await one(address);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function one(address) {
  if (!address.startsWith('postgres')) await emptySqlite(address);
  const db = await openDatabase(address, { readOnly: false });
  try {
    await load(db);
    const noTexts = new Map();
    const crosswalk = async way => dataRows({ ...way, oldItems: noTexts, newItems: noTexts, decisions: [] });
    for (const batch of [undefined, 100_000]) {
      let report;
      const options = { table: 'bench_jobs', crosswalk, ...(batch ? { batch } : {}) };
      const took = await seconds(async () => {
        report = await carryDatabaseJobs(ports, db, { joint, marks }, options);
      });
      say(`${db.kind}, ${batch ? `batches of ${batch}` : 'one transaction'}`, took, report);
      await undoDatabaseRun(db, report.run);
    }
    await db.run('drop table bench_jobs');
  } finally {
    await db.close();
  }
}

async function load(db) {
  const names = ['id', 'job', 'number', 'type', 'state', 'date', 'remark'];
  const types = ['bigint', ...names.slice(1).map(() => 'text')];
  await db.run(`create table bench_jobs (id integer primary key, ${names.slice(1).join(' text, ')} text)`);
  let [rest, id, header] = ['', 0, true];
  for (const block of jobLines(joint)) {
    const lines = (rest + block).split('\n');
    rest = lines.pop();
    const rows = lines
      .slice(header ? 1 : 0)
      .map(line => [++id, ...line.replace(/"([^"]*), ([^"]*)"/, '$1 $2').split(',')]);
    header = false;
    await db.together(() => db.insert('bench_jobs', names, types, rows));
  }
  await db.measured('bench_jobs');
}

async function emptySqlite(path) {
  const { default: sqlite } = await import('node-sqlite3-wasm');
  const db = new sqlite.Database(path);
  db.exec('create table empty (a); drop table empty');
  db.close();
}

/** By the clock, and of this process's own work: beside others on a busy machine only the latter compares. */
async function seconds(work) {
  const [start, cpu] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(cpu);
  return { clock: (performance.now() - start) / 1000, own: (user + system) / 1e6 };
}

function say(name, took, { totals: { lines, added, folded } }) {
  const own = took.own.toFixed(2);
  process.stdout.write(
    `${name}: ${took.clock.toFixed(2)} s, own ${own} s (${lines} lines, ${added} added, ${folded} folded)\n`,
  );
}
