import { dirname } from 'node:path';
import { commitAll } from './commit-pending.ts';
import type { Files, PendingFile } from './ports.ts';

/**
 * Writes texts or bytes to their paths, folders made where they lack; where the bytes of one cannot be written, all stay
 * as they were. A name that cannot be changed then leaves those before it changed.
 */
export async function writeTogether(
  files: Files,
  outputs: readonly (readonly [path: string, content: string | Uint8Array])[],
): Promise<void> {
  const pending: PendingFile[] = [];
  try {
    for (const [path, content] of outputs) {
      await files.makeFolder(dirname(path));
      const file = await files.create(path);
      pending.push(file);
      file.stream.write(content);
      // Settled one by one, so that no more than one file is open at a time.
      await file.settle();
    }
    await commitAll(pending);
  } catch (error) {
    for (const file of pending) await file.abandon();
    throw error;
  }
}
