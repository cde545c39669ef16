import type { Files, PendingFile } from '../../src/commands/ports/ports.ts';

/**
 * Files that die at one call that changes something, and stay dead, as a process does that is killed there. Each file is
 * renamed into place whole or not at all; that the real ones do so, files.test.ts shows.
 */
export function filesDyingAt(call: number, files: Files): { files: Files; calls: () => number } {
  let made = 0;
  const step = async <T>(work: () => Promise<T>): Promise<T> => {
    made++;
    if (made >= call) throw Object.assign(new Error(`killed at call ${call}`), { code: 'EIO' });
    return work();
  };
  const pending = (file: PendingFile): PendingFile => ({
    stream: file.stream,
    settle: () => step(() => file.settle()),
    commit: () => step(() => file.commit()),
    abandon: () => step(() => file.abandon()),
  });
  return {
    calls: () => made,
    files: {
      ...files,
      write: (path, bytes) => step(() => files.write(path, bytes)),
      create: path => step(async () => pending(await files.create(path))),
      makeFolder: path => step(() => files.makeFolder(path)),
      remove: path => step(() => files.remove(path)),
    },
  };
}
