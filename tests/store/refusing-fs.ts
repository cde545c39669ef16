import type { FileHandle } from 'node:fs/promises';
import { type RawFs, realFs } from '../../src/store/durable-fs.ts';

/** Calls that take room on the disk. Removing works on a full one. */
const ROOM = new Set(['open', 'mkdir', 'rename', 'link', 'symlink', 'writeFile', 'sync']);
/** Calls that a place that is read-only refuses besides. */
const CHANGE = new Set([...ROOM, 'unlink', 'rmdir']);

/** A file system on which the disk is full from its nth call on that takes room; a write that finds no room gets half in. */
export function fsFullFrom(call: number): { fs: RawFs; calls: () => number } {
  return refusing(call, ROOM, 'ENOSPC');
}

/** A file system that lets itself be read only. */
export function readOnlyFs(): RawFs {
  return refusing(1, CHANGE, 'EROFS').fs;
}

function refusing(call: number, calls: ReadonlySet<string>, code: string): { fs: RawFs; calls: () => number } {
  let made = 0;
  const step = (name: string, args: unknown[]) => {
    // Opening a folder or a file for reading takes no room.
    if (!calls.has(name) || (name === 'open' && args[1] === 'r')) return;
    if (++made >= call) throw Object.assign(new Error(`${code}: refused at call ${made}`), { code });
  };
  const fs = Object.fromEntries(
    Object.entries(realFs)
      .filter(([, value]) => typeof value === 'function')
      .map(([name, value]) => [
        name,
        async (...args: unknown[]) => {
          step(name, args);
          const result = await (value as (...a: unknown[]) => Promise<unknown>)(...args);
          return name === 'open' && args[1] !== 'r' ? refusingHandle(result as FileHandle, step) : result;
        },
      ]),
  ) as unknown as RawFs;
  return { fs, calls: () => made };
}

function refusingHandle(handle: FileHandle, step: (name: string, args: unknown[]) => void): FileHandle {
  return new Proxy(handle, {
    get(target, name) {
      const value = Reflect.get(target, name);
      if (typeof value !== 'function') return value;
      return async (...args: unknown[]) => {
        try {
          step(String(name), args);
        } catch (error) {
          if (name === 'writeFile') {
            const data = Buffer.from(args[0] as string);
            await target.writeFile(data.subarray(0, data.length >> 1));
          }
          throw error;
        }
        return value.apply(target, args);
      };
    },
  });
}
