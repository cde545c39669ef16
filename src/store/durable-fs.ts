import * as node from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { saidFailure } from './said-failures.ts';
import { scratchName } from './scratch-names.ts';

/** The file system calls that the store makes. Tests hand over one that fails at a chosen call. */
export type RawFs = Pick<
  typeof node,
  | 'open'
  | 'readFile'
  | 'rename'
  | 'mkdir'
  | 'rmdir'
  | 'unlink'
  | 'stat'
  | 'lstat'
  | 'readdir'
  | 'readlink'
  | 'symlink'
  | 'link'
>;

export const realFs: RawFs = node;

/** Where half-written files wait; outside refs/ and objects/, where native git would stumble over them. */
export const scratchFolder = (gitdir: string) => join(gitdir, 'fishplate', 'tmp');

/**
 * Writes a file so that it is there whole or not at all: temporary file, fsync, rename. A plain writeFile that is
 * killed half-way leaves an empty ref (and git then commits without parents) or a truncated object.
 */
export async function writeDurably(fs: RawFs, gitdir: string, path: string, data: Uint8Array | string): Promise<void> {
  const temporary = join(scratchFolder(gitdir), scratchName());
  const file = await openMakingFolder(fs, temporary);
  try {
    try {
      await file.writeFile(data);
      await file.sync();
    } finally {
      await file.close();
    }
    await renameMakingFolder(fs, temporary, path);
  } catch (error) {
    // On a full disk the half-written file is what fills it.
    await fs.unlink(temporary).catch(() => {});
    throw saidFailure(error, gitdir);
  }
}

async function renameMakingFolder(fs: RawFs, from: string, to: string): Promise<void> {
  try {
    await fs.rename(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    await makeFolders(fs, dirname(to));
    await fs.rename(from, to);
  }
}

async function openMakingFolder(fs: RawFs, path: string) {
  try {
    return await fs.open(path, 'wx');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    await makeFolders(fs, dirname(path));
    return fs.open(path, 'wx');
  }
}

/** Makes a folder and those above it. Node's own `recursive` says of a read-only disk that the folder above is missing. */
export async function makeFolders(fs: Pick<RawFs, 'mkdir'>, path: string): Promise<void> {
  const make = () =>
    fs.mkdir(path).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'EEXIST') throw error;
    });
  try {
    await make();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT' || dirname(path) === path) throw error;
    await makeFolders(fs, dirname(path));
    await make();
  }
}

const LOOSE_OBJECT = /[\\/]objects[\\/][0-9a-f]{2}[\\/][0-9a-f]{38}$/;

/**
 * The file system as isomorphic-git takes it, with durable writes. A loose object that is there but does not inflate
 * counts as absent: otherwise git's own "already there" would keep a truncated object for ever.
 */
export function gitFs(fs: RawFs, gitdir: string) {
  const statWhole = (call: 'stat' | 'lstat') => async (path: string) => {
    const stats = await fs[call](path);
    if (LOOSE_OBJECT.test(path)) {
      try {
        inflateSync(await fs.readFile(path));
      } catch {
        throw Object.assign(new Error(`ENOENT: ${path} is truncated`), { code: 'ENOENT' });
      }
    }
    return stats;
  };
  return {
    promises: {
      readFile: (path: string, options?: unknown) => fs.readFile(path, options as never),
      writeFile: (path: string, data: Uint8Array | string) => writeDurably(fs, gitdir, path, data),
      mkdir: (path: string, options?: unknown) => fs.mkdir(path, options as never),
      rmdir: (path: string) => fs.rmdir(path),
      unlink: (path: string) => fs.unlink(path),
      stat: statWhole('stat'),
      lstat: statWhole('lstat'),
      readdir: (path: string, options?: unknown) => fs.readdir(path, options as never),
      readlink: (path: string, options?: unknown) => fs.readlink(path, options as never),
      symlink: (target: string, path: string) => fs.symlink(target, path),
    },
  };
}
