import { parseSidecar, type Sidecar, sidecarName } from '../../carryover/sidecar.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Files } from '../ports/ports.ts';
import { sha256 } from '../ports/sha256.ts';

/** The mark beside a file, and whether the file still is what it was when the mark was made. */
export interface FileMark {
  readonly sidecar: Sidecar;
  readonly untouched: boolean;
}

/** Reads the mark beside a file; undefined where there is none of ours. */
export async function markOf(files: Files, path: string): Promise<FileMark | undefined> {
  const beside = sidecarName(path);
  if (!(await files.exists(beside))) return undefined;
  const sidecar = parseSidecar(new TextDecoder().decode(await files.read(beside)));
  return sidecar && { sidecar, untouched: (await hashOfFile(files, path)) === sidecar.output };
}

/**
 * Refuses to write over an output that somebody has worked on since it was made: their work would be gone.
 *
 * @throws CatalogError AlreadyCarried
 */
export async function refuseEditedOutput(files: Files, out: string): Promise<void> {
  if (!(await files.exists(out))) return;
  const mark = await markOf(files, out);
  if (mark && !mark.untouched && !(await standsBefore(files, out, mark.sidecar))) {
    throw new CatalogError(
      'AlreadyCarried',
      `${out} has been edited since it was carried to ${mark.sidecar.to}; choose another output, or move it away first.`,
      { path: out },
    );
  }
}

/** Whether a run was broken off after its record was written: under the output's name stands what stood there before. */
async function standsBefore(files: Files, out: string, { before, replaces }: Sidecar): Promise<boolean> {
  const hash = await hashOfFile(files, out);
  return hash === before?.hash || hash === replaces;
}

export function hashOf(bytes: Uint8Array | string): string {
  const hash = sha256();
  hash.update(typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes);
  return hash.digest();
}

export async function hashOfFile(files: Files, path: string): Promise<string> {
  const hash = sha256();
  for await (const chunk of files.stream(path)) hash.update(chunk);
  return hash.digest();
}
