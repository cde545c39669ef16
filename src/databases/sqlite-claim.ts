import {
  closeSync,
  existsSync,
  openSync,
  readFileSync,
  readSync,
  rmdirSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { CatalogError } from '../model/errors.ts';

/** A file that only this process works on. */
export interface Claim {
  /** @throws CatalogError Busy if a program has begun to use the file meanwhile */
  check(): void;
  release(): void;
}

/**
 * Claims an embedded database.
 *
 * The engine locks by a folder `FILE.lock`, which programs with the engine's usual locks neither see nor make, and which
 * a killed process leaves behind. So a file of ours says who works here, a lock whose process is dead is taken away, and
 * the locks of other programs are read from the system where it shows them.
 *
 * @throws CatalogError NoSuchFile, BadFile, Busy, WriteFailed
 */
export function claimFile(path: string): Claim {
  refuseUnlessDatabase(path);
  const [claim, lock] = [`${path}.fishplate-run`, `${path}.lock`];
  const wasOurs = clearDead(claim, lock);
  try {
    const file = openSync(claim, 'wx');
    writeSync(file, JSON.stringify({ process: process.pid, host: hostname() }));
    closeSync(file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw busy(path, 'another run of fishplate');
    throw new CatalogError(
      'WriteFailed',
      `The folder of ${path} cannot be written, and a database is locked there; copy the file to a folder of your own and run again.`,
      { path },
    );
  }
  const release = () => rmSync(claim, { force: true });
  const check = () => {
    const user = userOf(path);
    if (user !== undefined) throw busy(path, user);
  };
  try {
    if (existsSync(lock)) throw busy(path, 'another program', ` If none is running, remove ${lock}.`);
    check();
    // Where locks cannot be seen, a journal may belong to a program that is writing now; taking it back would spoil that.
    const unseen = process.platform !== 'linux' && !wasOurs;
    const journal = ['-journal', '-wal'].map(end => path + end).find(p => sizeOf(p) > 0);
    if (unseen && journal) throw busy(path, 'another program', ` It wrote ${journal}.`);
  } catch (error) {
    release();
    throw error;
  }
  return { check, release };
}

function refuseUnlessDatabase(path: string): void {
  const start = Buffer.alloc(16);
  try {
    if (statSync(path).isDirectory()) throw new CatalogError('NoSuchFile', `${path} is a folder; name a file.`);
    const file = openSync(path, 'r');
    readSync(file, start, 0, 16, 0);
    closeSync(file);
  } catch (error) {
    if (error instanceof CatalogError) throw error;
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    const sentence = missing ? `There is no file ${path}; check the name.` : `${path} may not be read by you.`;
    throw new CatalogError('NoSuchFile', sentence, { path });
  }
  if (start.toString('latin1') === 'SQLite format 3\0') return;
  throw new CatalogError('BadFile', `${path} is no SQLite database; check the name.`, { path });
}

/** Takes the traces of a killed run of ours away. Whether there were any. */
function clearDead(claim: string, lock: string): boolean {
  try {
    const { process: id, host } = JSON.parse(readFileSync(claim, 'utf8')) as { process: number; host: string };
    if (host !== hostname() || isAlive(id)) return false;
    rmSync(claim, { force: true });
    if (existsSync(lock)) rmdirSync(lock);
    return true;
  } catch {
    return false;
  }
}

function isAlive(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** The program that holds the usual lock on a file; Linux lists them all. */
function userOf(path: string): string | undefined {
  if (process.platform !== 'linux') return undefined;
  try {
    const inode = String(statSync(path).ino);
    const held = readFileSync('/proc/locks', 'utf8')
      .split('\n')
      .map(line => line.trim().split(/\s+/))
      .find(words => words.some(w => w.split(':').length === 3 && w.endsWith(`:${inode}`)));
    const id = held?.find((word, at) => at > 3 && /^\d+$/.test(word));
    return held && `another program (process ${id})`;
  } catch {
    return undefined;
  }
}

function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0;
}

function busy(path: string, who: string, more = ''): CatalogError {
  return new CatalogError('Busy', `${path} is in use by ${who}; close it and run again.${more}`, { path });
}
