import type { FileHandle } from 'node:fs/promises';
import { type RawFs, realFs } from '../../src/store/durable-fs.ts';

const READS = new Set(['readFile', 'stat', 'lstat', 'readdir', 'readlink', 'sync']);

/**
 * A file system that dies at one call that changes something, and stays dead, as a process does that is killed there;
 * before it, everything is real. Dying at a read leaves what dying at the next change leaves, so reads are not counted.
 * A write that dies leaves half of its bytes behind.
 */
export function fsDyingAt(call: number): { fs: RawFs; calls: () => number } {
  let made = 0;
  const step = (name: string) => {
    if (!READS.has(name)) made++;
    if (made >= call) throw Object.assign(new Error(`EIO: killed at call ${call}`), { code: 'EIO' });
  };
  const fs = Object.fromEntries(
    Object.entries(realFs)
      .filter(([, value]) => typeof value === 'function')
      .map(([name, value]) => [
        name,
        async (...args: unknown[]) => {
          step(name);
          const result = await (value as (...a: unknown[]) => Promise<unknown>)(...args);
          return name === 'open' ? dyingHandle(result as FileHandle, step) : result;
        },
      ]),
  ) as unknown as RawFs;
  return { fs, calls: () => made };
}

function dyingHandle(handle: FileHandle, step: (name: string) => void): FileHandle {
  return new Proxy(handle, {
    get(target, name) {
      const value = Reflect.get(target, name);
      if (typeof value !== 'function') return value;
      return async (...args: unknown[]) => {
        if (name === 'close') return target.close();
        try {
          step(String(name));
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
