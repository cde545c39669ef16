import { type RawFs, realFs } from '../../src/store/durable-fs.ts';

/**
 * A file system that lets somebody else in: the work that was handed over is done, whole, before the nth reading of a
 * file from then on. Where two writers are merely started together, which of them is faster is luck.
 */
export function fsWithSecondWriter() {
  let [left, ending] = [0, ''];
  let work: (() => Promise<unknown>) | undefined;
  const fs = {
    ...realFs,
    readFile: async (...args: [string]) => {
      if (work && args[0].endsWith(ending) && --left === 0) {
        const other = work;
        work = undefined;
        await other();
      }
      return realFs.readFile(...args);
    },
  } as unknown as RawFs;
  const before = (nth: number, of: string, other: () => Promise<unknown>) => {
    [left, ending, work] = [nth, of, other];
  };
  return { fs, before };
}
