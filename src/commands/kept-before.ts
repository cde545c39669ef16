import type { Sidecar } from '../carryover/sidecar.ts';
import { hashOfFile, markOf } from './carry-mark.ts';
import { drained } from './drained.ts';
import type { Files, PendingFile } from './ports.ts';
import { sha256 } from './sha256.ts';

/**
 * Keeps a copy of what stands under an output's name and is not ours, so that `carry undo` can bring it back. What an
 * earlier run of ours wrote there can be made again; the copy that it kept is handed on.
 *
 * @param create makes a file that is committed together with the output
 */
export async function keepBefore(
  files: Files,
  out: string,
  output: string,
  create: (path: string) => Promise<PendingFile>,
): Promise<Sidecar['before']> {
  if (!(await files.exists(out))) return undefined;
  const mark = await markOf(files, out);
  if (mark) return mark.sidecar.before;
  if ((await hashOfFile(files, out)) === output) return undefined;
  let kept = `${out}.before`;
  for (let n = 2; await files.exists(kept); n++) kept = `${out}.before-${n}`;
  const { stream } = await create(kept);
  const hash = sha256();
  for await (const chunk of files.stream(out)) {
    hash.update(chunk);
    if (!stream.write(chunk) && !stream.errored) await drained(stream);
  }
  return { kept, hash: hash.digest() };
}
