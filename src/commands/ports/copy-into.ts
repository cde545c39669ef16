import { drained } from './drained.ts';
import type { Files, PendingFile } from './ports.ts';

/** Copies a file into one that is still to be put in place. */
export async function copyInto(files: Pick<Files, 'stream'>, from: string, { stream }: PendingFile): Promise<void> {
  for await (const chunk of files.stream(from)) {
    if (!stream.write(chunk) && !stream.errored) await drained(stream);
  }
}
