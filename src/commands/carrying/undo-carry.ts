import { parseSidecar, sidecarName } from '../../carryover/sidecar.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Files, Ports } from '../ports/ports.ts';
import { hashOfFile } from './carry-mark.ts';

export interface UndoReport {
  readonly removed: readonly string[];
  /** What stood there before the run and stands there again. */
  readonly restored: readonly string[];
}

/**
 * Takes runs back by their records: the output, what was written beside it and the record go, and what stood there before
 * comes back byte for byte. Nothing happens unless every file is as the run left it: somebody's later work would be gone.
 * The record goes last, so that an undo or a run that was killed halfway is finished by calling undo again.
 *
 * @param records sidecars, or the outputs that they stand beside
 * @throws CatalogError NoSuchFile, BadArgument (no record), AlreadyCarried (edited since)
 */
export async function undoCarry({ files }: Pick<Ports, 'files'>, ...records: readonly string[]): Promise<UndoReport> {
  const undos: Undo[] = [];
  for (const record of records) undos.push(await undoOf(files, record));
  for (const { out, bringBack, gone } of undos) {
    if (bringBack !== undefined) await files.write(out, await files.read(bringBack));
    for (const file of gone) await files.remove(file);
  }
  return { removed: undos.flatMap(u => u.there), restored: undos.flatMap(u => (u.restores ? u.out : [])) };
}

/** What undoing one run does, once it is sure that nobody's work goes with it. */
interface Undo {
  readonly out: string;
  readonly restores: boolean;
  /** The copy that is to stand under the output's name again, if it does not yet. */
  readonly bringBack?: string;
  readonly gone: readonly string[];
  /** Those of them that are not gone already. */
  readonly there: readonly string[];
}

async function undoOf(files: Files, record: string): Promise<Undo> {
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
  const { output, replaces, before } = sidecar;
  const also = Object.entries(sidecar.also ?? {});
  const stands = await hashIfThere(files, out);
  const isRestored = before !== undefined && stands === before.hash;
  const expected = [
    [out, [output, replaces, before?.hash]] as const,
    ...also.map(([file, hash]) => [file, [hash]] as const),
    ...(before ? [[before.kept, [before.hash]] as const] : []),
  ];
  for (const [file, known] of expected) {
    const hash = file === out ? stands : await hashIfThere(files, file);
    // What is gone already, nobody can have worked on; but what is to come back must be there.
    if (hash === undefined ? file !== before?.kept || isRestored : known.includes(hash)) continue;
    throw new CatalogError(
      'AlreadyCarried',
      `${file} is not what the run left there, so nothing was undone; move it away, or undo by hand.`,
      { file },
    );
  }
  const gone = [...(before ? [] : [out]), ...also.map(([file]) => file), ...(before ? [before.kept] : []), path];
  const exist = await Promise.all(gone.map(file => files.exists(file)));
  const there = gone.filter((_, at) => exist[at]);
  return { out, restores: before !== undefined, gone, there, ...(before && !isRestored && { bringBack: before.kept }) };
}

async function hashIfThere(files: Files, file: string): Promise<string | undefined> {
  return (await files.exists(file)) ? hashOfFile(files, file) : undefined;
}
