import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PACKAGE_ROOT } from '../package-root.ts';

const TEMPLATE = join(PACKAGE_ROOT, 'views', 'letters', 'letter.docx');

/** The letter to the holder of a local rule or variance that ships; an office edits a copy of it. */
export async function letterTemplate(): Promise<Uint8Array> {
  return readFile(TEMPLATE);
}
