import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

const TEMPLATE = join(import.meta.dirname, '..', '..', 'views', 'letters', 'letter.docx');

/** The letter to the holder of a local rule or variance that ships; an office edits a copy of it. */
export async function letterTemplate(): Promise<Uint8Array> {
  return readFile(TEMPLATE);
}
