import { randomBytes } from 'node:crypto';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { threadId } from 'node:worker_threads';
import { CatalogError } from '../model/errors.ts';
import { scratchName } from './scratch-names.ts';

export interface Lock {
  /** The file that stands as long as the lock is held. */
  readonly lock: string;
  /** A folder on the same disk, for the moment before the lock stands. */
  readonly scratch: string;
  /** What is locked, for people. */
  readonly what: string;
  /** Writes a small file. */
  readonly write: (path: string, text: string) => Promise<void>;
}

interface LockFs {
  readFile(path: string, encoding: 'utf8'): Promise<string>;
  link(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
}

/**
 * Marks of the locks that this thread took; one with our name that is not among them was left by an operation that died.
 * A mark stays when its lock is let go: whoever has read it a moment before would take it for a dead one, and remove
 * the lock of the next holder.
 */
const taken = new Set<string>();

const RETRIES = 40;
const PAUSE_MS = 50;

/** Does work while a lock is held. Throws Busy where somebody else holds it for two seconds. */
export async function whileLocked<T>(
  fs: LockFs,
  { lock, scratch, what, write }: Lock,
  work: () => Promise<T>,
): Promise<T> {
  const mark = await take(fs, { lock, scratch, what, write });
  try {
    return await work();
  } finally {
    // One that cannot be removed counts as left behind, so that it is tried again.
    await fs.unlink(lock).catch(() => taken.delete(mark));
  }
}

/**
 * The lock file appears with its owner inside in one step (a hard link), so that a lock left by a killed process can
 * be told from one that is held. Creating it first and filling it afterwards leaves an empty lock nobody dares remove.
 */
async function take(fs: LockFs, { lock, scratch, what, write }: Lock): Promise<string> {
  const mine = join(scratch, scratchName('.lock-'));
  const mark = randomBytes(8).toString('hex');
  await write(mine, `fishplate ${process.pid}.${threadId}.${mark} ${hostname()}\n`);
  // Before the lock stands: whoever meets it between the link and what follows here would take it for a dead one.
  taken.add(mark);
  try {
    for (let attempt = 0; ; attempt++) {
      try {
        await fs.link(mine, lock);
        return mark;
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      }
      if (await isAbandoned(fs, lock)) {
        await fs.unlink(lock).catch(() => {});
        continue;
      }
      if (attempt >= RETRIES) {
        throw new CatalogError(
          'Busy',
          `Another program is writing to ${what} (${lock} exists); try again, or remove that file if no program is running.`,
          { ref: what, lock },
        );
      }
      await new Promise(done => setTimeout(done, PAUSE_MS));
    }
  } catch (error) {
    taken.delete(mark);
    throw error;
  } finally {
    await fs.unlink(mine).catch(() => {});
  }
}

/** Whether whoever made a lock of ours is gone; another thread of this process is not. */
export async function isAbandoned(fs: Pick<LockFs, 'readFile'>, lock: string): Promise<boolean> {
  const text = await fs.readFile(lock, 'utf8').catch(() => '');
  const [, pid, thread = '0', mark = '', host] =
    /^fishplate (\d+)(?:\.(\d+))?(?:\.([0-9a-f]+))? (.+)\n$/.exec(text) ?? [];
  if (pid === undefined || host !== hostname()) return false;
  if (Number(pid) === process.pid) return Number(thread) === threadId && !taken.has(mark);
  try {
    process.kill(Number(pid), 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}
