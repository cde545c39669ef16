import { parseSidecar, sidecarName } from '../carryover/sidecar.ts';
import { CatalogError } from '../model/errors.ts';
import { hashOfFile } from './carry-mark.ts';
import type { Ports } from './ports.ts';

export interface UndoReport {
  readonly removed: readonly string[];
  /** What stood there before the run and stands there again. */
  readonly restored: readonly string[];
}

/**
 * Takes a run back by its record: the output, what was written beside it and the record go, and what stood there before
 * comes back byte for byte. Nothing happens unless every file is as the run left it: somebody's later work would be gone.
 *
 * @param record the sidecar, or the output that it stands beside
 * @throws CatalogError NoSuchFile, BadArgument (no record), AlreadyCarried (edited since)
 */
export async function undoCarry({ files }: Pick<Ports, 'files'>, record: string): Promise<UndoReport> {
  const ending = sidecarName('');
  const out = record.endsWith(ending) ? record.slice(0, -ending.length) : record;
  const path = sidecarName(out);
  const sidecar = parseSidecar(new TextDecoder().decode(await files.read(path)));
  if (!sidecar) {
    throw new CatalogError(
      'BadArgument',
      `${path} is no record of a run; name the file that was written beside an output.`,
    );
  }
  const written = [[out, sidecar.output] as const, ...Object.entries(sidecar.also ?? {})];
  const { before } = sidecar;
  for (const [file, hash] of [...written, ...(before ? [[before.kept, before.hash] as const] : [])]) {
    if ((await files.exists(file)) && (await hashOfFile(files, file)) === hash) continue;
    throw new CatalogError(
      'AlreadyCarried',
      `${file} is not what the run left there, so nothing was undone; move it away, or undo by hand.`,
      { file },
    );
  }
  if (before) await files.write(out, await files.read(before.kept));
  const gone = [...written.slice(before ? 1 : 0).map(([file]) => file), ...(before ? [before.kept] : []), path];
  for (const file of gone) await files.remove(file);
  return { removed: gone, restored: before ? [out] : [] };
}
