import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import * as node from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder } from '../../src/store/durable-fs.ts';
import { whileLocked } from '../../src/store/lock.ts';
import { openForWriting, openOrCreate } from '../../src/store/open.ts';
import { temporaryFolder } from './temp-catalog.ts';

it('a lock that is taken while another of this thread is let go is not taken for an abandoned one', async () => {
  const folder = temporaryFolder();
  // The file of the first lock is gone before whoever removed it hears of that.
  let slow = true;
  const unlink = async (path: string) => {
    await node.unlink(path);
    if (!path.endsWith('one.lock') || !slow) return;
    slow = false;
    await new Promise(done => setTimeout(done, 120));
  };
  const lock = {
    lock: join(folder, 'one.lock'),
    scratch: folder,
    what: 'one',
    write: (path: string, text: string) => node.writeFile(path, text),
  };
  let [now, most] = [0, 0];
  const work = async () => {
    most = Math.max(most, ++now);
    await new Promise(done => setTimeout(done, 400));
    now--;
  };
  const fs = { readFile: node.readFile, link: node.link, unlink };
  await Promise.all([1, 2, 3].map(() => whileLocked(fs as never, lock, work)));
  expect(most).toBe(1);
});

it('what another machine on the same disk has half written is left alone, what a dead process left here is not', async () => {
  const dir = join(temporaryFolder(), 'c.git');
  await openOrCreate(dir);
  const scratch = scratchFolder(dir);
  mkdirSync(scratch, { recursive: true });
  // No process has this number: numbers end far below.
  const dead = 999_999_999;
  const host = hostname().replace(/[^A-Za-z0-9.-]/g, '_');
  const files = {
    theirs: `${dead}-ab@another-machine`,
    theirLock: `.lock-${dead}-ab@another-machine`,
    ours: `${dead}-ab@${host}`,
    ofBefore: `${dead}-ab`,
    running: `${process.ppid}-ab@${host}`,
  };
  for (const name of Object.values(files)) writeFileSync(join(scratch, name), 'half');
  await openForWriting(dir);
  const left = Object.entries(files).flatMap(([name, file]) => (existsSync(join(scratch, file)) ? [name] : []));
  expect(left).toEqual(['theirs', 'theirLock', 'running']);
});
