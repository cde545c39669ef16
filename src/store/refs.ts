import { dirname, join } from 'node:path';
import { CatalogError } from '../model/errors.ts';
import { makeFolders, type RawFs, scratchFolder, writeDurably } from './durable-fs.ts';
import { isAbandoned, whileLocked } from './lock.ts';
import { parsePackedRefs, withoutRef } from './packed-refs.ts';

/** What a ref points to now: its loose file, else packed-refs; null where it does not exist. */
export async function readRef(fs: RawFs, gitdir: string, ref: string): Promise<string | null> {
  const loose = await readOrNull(fs, join(gitdir, ref));
  if (loose !== null) {
    const oid = loose.trim();
    if (/^[0-9a-f]{40}$/.test(oid)) return oid;
    throw new CatalogError(
      'BadCatalog',
      `The ref ${ref} is damaged (it holds ${oid === '' ? 'nothing' : 'no object name'}); restore it with git fetch from a clone of the catalog.`,
      { ref },
    );
  }
  return (await readPackedRefs(fs, gitdir)).get(ref) ?? null;
}

/** The packed refs, name → object. Throws BadCatalog where their file is damaged. */
export async function readPackedRefs(fs: RawFs, gitdir: string): Promise<ReadonlyMap<string, string>> {
  return parsePackedRefs((await readOrNull(fs, join(gitdir, 'packed-refs'))) ?? '');
}

async function readOrNull(fs: RawFs, path: string): Promise<string | null> {
  try {
    return await fs.readFile(path, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'EISDIR' || code === 'ENOTDIR') return null;
    throw error;
  }
}

/**
 * Moves a ref from one commit to another, or creates (`from: null`) or deletes (`to: null`) it, under git's own lock:
 * native git and we keep out of each other's way. Two writers: one wins, the other gets `Changed` and loses nothing,
 * since its objects are written and only the ref is not.
 */
export async function moveRef(
  fs: RawFs,
  gitdir: string,
  ref: string,
  from: string | null,
  to: string | null,
): Promise<void> {
  await underLock(fs, gitdir, ref, async () => {
    const now = await readRef(fs, gitdir, ref);
    if (now !== from) {
      throw new CatalogError(
        'Changed',
        `Someone else has changed ${ref} since it was read; nothing was written - run the command again to work on what is there now.`,
        { ref, expected: from, found: now },
      );
    }
    if (to !== null) {
      await writeDurably(fs, gitdir, join(gitdir, ref), `${to}\n`);
      await syncFolder(fs, dirname(join(gitdir, ref)));
    } else if (from !== null) {
      await deleteRef(fs, gitdir, ref);
    }
  });
}

/** Does work under a lock file beside a file of the repository, as git locks its refs. */
export async function underLock(fs: RawFs, gitdir: string, ref: string, work: () => Promise<void>): Promise<void> {
  const lock = join(gitdir, `${ref}.lock`);
  await makeFolders(fs, dirname(lock));
  const write = (path: string, owner: string) => writeDurably(fs, gitdir, path, owner);
  await whileLocked(fs, { lock, scratch: scratchFolder(gitdir), what: ref, write }, work);
}

async function deleteRef(fs: RawFs, gitdir: string, ref: string): Promise<void> {
  if ((await readPackedRefs(fs, gitdir)).has(ref)) {
    const path = join(gitdir, 'packed-refs');
    // Native git packs refs under this lock; without it, what it packs between our reading and writing is lost.
    await underLock(fs, gitdir, 'packed-refs', async () =>
      writeDurably(fs, gitdir, path, withoutRef((await readOrNull(fs, path)) ?? '', ref)),
    );
  }
  await fs.unlink(join(gitdir, ref)).catch(error => {
    if (error.code !== 'ENOENT') throw error;
  });
}

/**
 * Removes the locks that killed processes of ours left on any ref. One on a ref that no writer of ours needs just now
 * would otherwise keep native git from pushing to it for ever.
 */
export async function sweepLocks(fs: RawFs, gitdir: string): Promise<void> {
  const names = await fs.readdir(join(gitdir, 'refs'), { recursive: true }).catch(() => []);
  for (const name of names.map(String)) {
    const lock = join(gitdir, 'refs', name);
    if (name.endsWith('.lock') && (await isAbandoned(fs, lock))) await fs.unlink(lock).catch(() => {});
  }
}

async function syncFolder(fs: RawFs, folder: string): Promise<void> {
  // Windows cannot open a folder; its rename is durable without.
  const handle = await fs.open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}
