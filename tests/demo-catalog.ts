import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeDemo } from '../src/commands/importing/make-demo.ts';
import { realFiles } from '../src/commands/ports/files.ts';
import type { Ports } from '../src/commands/ports/ports.ts';
import { type PublishedCatalog, publishedCatalog } from '../src/commands/reading/published-catalog.ts';
import { openCatalog } from '../src/store/open.ts';

const ROOT = join(import.meta.dirname, '..');

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

let read: Promise<() => Promise<PublishedCatalog>> | undefined;

/** What the demo catalog has published, read once for all test files of a process, since nobody may write there. */
export function publishedDemo(): Promise<() => Promise<PublishedCatalog>> {
  read ??= (async () => publishedCatalog(await openCatalog(await demoCatalog())))();
  return read;
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
  await makeDemo(testPorts(), made);
  try {
    renameSync(made, goal);
  } catch (error) {
    // Another test file was faster; its catalog is the same.
    if (!existsSync(goal)) throw error;
  }
  rmSync(folder, { recursive: true, force: true });
  return goal;
}

function fingerprint(): string {
  const hash = createHash('sha256');
  for (const folder of ['src', 'catalog', 'tests/demo-catalog.ts']) {
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
