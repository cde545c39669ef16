import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { realFiles } from '../src/commands/files.ts';
import { importTables } from '../src/commands/import-tables.ts';
import type { Ports } from '../src/commands/ports.ts';

const ROOT = join(import.meta.dirname, '..');
const SOURCE = join(ROOT, 'catalog');

/** The outside world of a test: real files, a clock that stands still, and random bytes that are the same every time. */
export function testPorts(seed = 'demo'): Ports {
  let drawn = 0;
  return {
    files: realFiles,
    now: () => new Date('2024-02-01T09:00:00Z'),
    author: { name: 'Steward', email: 'steward@example.org' },
    random: bytes => createHash('sha512').update(`${seed} ${drawn++}`).digest().subarray(0, bytes),
    progress: () => {},
  };
}

let built: Promise<string> | undefined;

/**
 * The demo catalog with its three editions, for reading. It is made once and shared by all test files: the folder is
 * named for what it is made from, so a change to the tables or to the program makes another one.
 */
export function demoCatalog(): Promise<string> {
  built ??= makeOnce();
  return built;
}

/** A copy of the demo catalog that a test may write to; remove it afterwards. */
export async function copyOfDemoCatalog(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-copy-'));
  const copy = join(folder, 'demo.git');
  cpSync(await demoCatalog(), copy, { recursive: true });
  return copy;
}

async function makeOnce(): Promise<string> {
  const goal = join(tmpdir(), `fishplate-demo-${fingerprint()}.git`);
  if (existsSync(goal)) return goal;
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-demo-'));
  const made = join(folder, 'demo.git');
  await importEditions(made);
  try {
    renameSync(made, goal);
  } catch (error) {
    // Another test file was faster; its catalog is the same.
    if (!existsSync(goal)) throw error;
  }
  rmSync(folder, { recursive: true, force: true });
  return goal;
}

async function importEditions(catalog: string): Promise<void> {
  const ports = testPorts();
  const tables = (...folder: string[]) =>
    readdirSync(join(SOURCE, ...folder))
      .filter(name => name.endsWith('.csv'))
      .sort()
      .map(name => join(SOURCE, ...folder, name));
  const table = (name: string) => join(SOURCE, '2014', name);
  await importTables(ports, {
    catalog,
    edition: '2014',
    tables: ['houses.csv', 'rows.csv', 'streets.csv'].map(table),
    settings: table('settings.json'),
    appliesTo: new Map([
      [table('houses.csv'), ['house']],
      [table('rows.csv'), ['terrace', 'court']],
      [table('streets.csv'), ['street']],
    ]),
    dates: { published: '2014-05-01', effective: '2014-09-01' },
  });
  await importTables(ports, {
    catalog,
    edition: '2018',
    tables: tables('2018'),
    settings: join(SOURCE, '2018', 'settings.json'),
    lineage: tables('2018', 'from-2014'),
    dates: { published: '2018-03-01', effective: '2018-07-01', transitionEnds: '2018-12-31' },
  });
  await importTables(ports, {
    catalog,
    edition: '2024',
    tables: tables('2024'),
    settings: join(SOURCE, '2024', 'settings.json'),
    lineage: tables('2024', 'from-2018'),
    decisions: [join(SOURCE, '2024', 'decisions', 'worker-safety.json')],
    dates: { published: '2024-02-01', effective: '2024-07-01', transitionEnds: '2025-06-30' },
  });
}

function fingerprint(): string {
  const hash = createHash('sha256');
  for (const folder of ['src', 'catalog/2014', 'catalog/2018', 'catalog/2024', 'tests/demo-catalog.ts']) {
    const path = join(ROOT, folder);
    const files = folder.endsWith('.ts')
      ? [path]
      : readdirSync(path, { recursive: true, withFileTypes: true })
          .filter(e => e.isFile())
          .map(e => join(e.parentPath, e.name))
          .sort();
    for (const file of files) hash.update(file).update(readFileSync(file));
  }
  return hash.digest('hex').slice(0, 16);
}
