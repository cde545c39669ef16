import type { Sidecar } from '../../carryover/sidecar.ts';
import type { Files } from '../ports/ports.ts';
import { hashOfFile, markOf } from './carry-mark.ts';

/** What stands under an output's name before it is written, as its record says it. */
export interface StoodBefore {
  readonly record: Pick<Sidecar, 'before' | 'replaces'>;
  /** The name for a copy of it that is still to be made, together with the output. */
  readonly copyTo?: string;
}

/**
 * What stands under an output's name and is not ours is kept, so that `carry undo` can bring it back. What an earlier run
 * of ours wrote there can be made again; the copy that it kept is handed on.
 *
 * @param output sha256 of what will be written there
 */
export async function stoodBefore(files: Files, out: string, output: string): Promise<StoodBefore> {
  if (!(await files.exists(out))) return { record: {} };
  const [mark, hash] = [await markOf(files, out), await hashOfFile(files, out)];
  const earlier = mark?.sidecar.before;
  const handedOn = earlier && (await files.exists(earlier.kept)) ? { before: earlier } : {};
  if (mark && (mark.untouched || hash === mark.sidecar.replaces || handedOn.before?.hash === hash)) {
    return { record: { ...handedOn, ...(hash === output || hash === earlier?.hash ? {} : { replaces: hash }) } };
  }
  if (hash === output) return { record: {} };
  let kept = `${out}.before`;
  for (let n = 2; await files.exists(kept); n++) kept = `${out}.before-${n}`;
  return { record: { before: { kept, hash } }, copyTo: kept };
}
