import { randomBytes } from 'node:crypto';
import { constants, createReadStream, createWriteStream } from 'node:fs';
import {
  access,
  copyFile,
  link,
  lstat,
  mkdir,
  open,
  readFile,
  realpath,
  rename,
  rm,
  stat,
  unlink,
  writeFile,
} from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { CatalogError } from '../../model/errors.ts';
import { makeFolders } from '../../store/durable-fs.ts';
import { whileLocked } from '../../store/lock.ts';
import type { Files, PendingFile } from './ports.ts';

/** Larger chunks than node's own 64 KB: a table of a million lines is then read in a few hundred steps. */
const CHUNK = 256 * 1024;

/** The real file system. Outputs are written beside their place and renamed into it when they are whole. */
export const realFiles: Files = {
  read: path => saying('read', path, () => readFile(path)),
  stream: path => Readable.from(chunksOf(path), { objectMode: false, highWaterMark: CHUNK }),
  write: async (path, bytes) => {
    const pending = await create(path);
    try {
      await new Promise<void>((done, failed) => {
        pending.stream.once('error', failed);
        pending.stream.write(bytes, error => (error ? failed(error) : done()));
      });
      await pending.commit();
    } catch (error) {
      await pending.abandon();
      throw said(error, 'write', path);
    }
  },
  create,
  exists: path =>
    access(path).then(
      () => true,
      () => false,
    ),
  makeFolder: path => saying('write', path, () => makeFolders({ mkdir }, resolve(path))),
  remove: path =>
    saying('write', path, async () => {
      await rm(path, { force: true });
      await syncFolder(dirname(path));
    }),
  same: async (a, b) => (await trueName(a)) === (await trueName(b)),
  alone: async (path, work) => {
    // By the name without links, so that two names of one file have one lock.
    const full = await realpath(path).catch(() => resolve(path));
    const fs = { readFile, unlink, link: linkOrCopy };
    const write = (at: string, text: string) => saying('write', path, () => writeFile(at, text));
    return whileLocked(fs, { lock: `${full}.lock`, scratch: dirname(full), what: path, write }, work);
  },
};

/** Not every disk knows hard links; a copy that must be the first stands in, and is whole a moment later. */
async function linkOrCopy(from: string, to: string): Promise<void> {
  await link(from, to).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'EEXIST' || error.code === 'ENOENT') throw error;
    return copyFile(from, to, constants.COPYFILE_EXCL);
  });
}

async function* chunksOf(path: string): AsyncGenerator<Buffer> {
  try {
    for await (const chunk of createReadStream(path, { highWaterMark: CHUNK })) yield chunk as Buffer;
  } catch (error) {
    throw said(error, 'read', path);
  }
}

async function create(path: string): Promise<PendingFile> {
  const folder = dirname(path);
  const temporary = join(folder, `.${basename(path).slice(0, 80)}.${randomBytes(6).toString('hex')}.tmp`);
  const handle = await saying('write', path, async () => {
    if ((await stat(path).catch(() => undefined))?.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
    return open(temporary, 'wx');
  });
  // By number: a stream that is given the handle itself holds on to it, and closing the handle would wait for ever.
  const stream = createWriteStream('', { fd: handle.fd, autoClose: false });
  let failure: unknown;
  stream.on('error', error => {
    failure = error;
  });
  let closed = false;
  const close = async () => {
    if (!closed) await handle.close();
    closed = true;
  };
  const settle = async () => {
    if (closed) return;
    // Not stream.finished(): it waits for a `close` that a stream on a kept file handle never emits.
    await new Promise<void>(done => {
      stream.once('error', () => done());
      stream.end(() => done());
    });
    failure ??= stream.errored;
    if (failure) throw failure;
    await handle.sync();
    await close();
  };
  return {
    stream,
    settle: () => saying('write', path, settle),
    commit: () =>
      saying('write', path, async () => {
        await settle();
        await rename(temporary, await throughLink(path));
        await syncFolder(folder);
      }),
    abandon: async () => {
      stream.destroy();
      await close().catch(() => {});
      await unlink(temporary).catch(() => {});
    },
  };
}

/** Renaming over a symbolic link would replace the link; the file that it leads to is what the user named. */
async function throughLink(path: string): Promise<string> {
  const link = await lstat(path).then(
    s => s.isSymbolicLink(),
    () => false,
  );
  return link ? realpath(path).catch(() => path) : path;
}

/** Without this a power cut can lose the new name although the bytes are on the disk. Not every system allows it. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}

/** The name with links followed as far as it exists, so that a file still to be made can be compared as well. */
async function trueName(path: string): Promise<string> {
  const full = resolve(path);
  const known = await realpath(full).catch(() => undefined);
  if (known !== undefined) {
    const { dev, ino } = await stat(known, { bigint: true });
    return ino === 0n ? known : `${dev}:${ino}`;
  }
  const above = dirname(full);
  return above === full ? full : join(await trueFolder(above), basename(full));
}

async function trueFolder(path: string): Promise<string> {
  const known = await realpath(path).catch(() => undefined);
  if (known !== undefined) return known;
  const above = dirname(path);
  return above === path ? path : join(await trueFolder(above), basename(path));
}

async function saying<T>(doing: 'read' | 'write', path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw said(error, doing, path);
  }
}

/** Turns an error of the file system into a sentence that ends in what to do; anything else stays what it is. */
function said(error: unknown, doing: 'read' | 'write', path: string): unknown {
  const code = (error as { code?: unknown } | undefined)?.code;
  if (error instanceof CatalogError || typeof code !== 'string') return error;
  const failed = (sentence: string) =>
    new CatalogError(doing === 'write' ? 'WriteFailed' : 'NoSuchFile', sentence, { path, code });
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return new CatalogError(
        'NoSuchFile',
        doing === 'read'
          ? `There is no file ${path}; check the name.`
          : `The folder ${dirname(path)} does not exist; make it or choose another place.`,
        { path, code },
      );
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return failed(
        doing === 'read'
          ? `${path} may not be read by you; ask its owner for the right to read it.`
          : `${path} cannot be written, its place is read-only for you; choose another place.`,
      );
    case 'ENOSPC':
    case 'EDQUOT':
      return failed(`The disk is full, so ${path} was not written; free some space and run again.`);
    case 'EISDIR':
      return failed(`${path} is a folder; name a file.`);
    case 'EMFILE':
    case 'ENFILE':
      return failed(`Too many files are open to ${doing} ${path}; close other programs and run again.`);
    default:
      return failed(
        `${path} could not be ${doing === 'read' ? 'read' : 'written'} (${code}); check the disk and run again.`,
      );
  }
}
