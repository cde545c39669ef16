import { CatalogError } from '../../model/errors.ts';
import { partSizes } from '../../office/open-zip.ts';
import { isWorkbook } from '../../tables/read-table.ts';

/** A file that somebody sent with a form of a page. */
export interface Upload {
  /** As their machine calls it: anything may stand here. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

export const LARGEST_UPLOAD = 2 * 1024 * 1024;
const LARGEST_UNPACKED = 8 * 1024 * 1024;

/**
 * A sent file that may be read: no larger than is read in a moment, also where it unpacks, since everybody else who
 * reads the catalog waits for it; and under a name that can stand in a sentence.
 *
 * @throws CatalogError BadFile
 */
export function boundUpload({ name, bytes }: Upload): Upload {
  const plain = (name.split(/[\\/]/).at(-1) ?? '').replace(/\p{C}/gu, '').trim().slice(-100) || 'form';
  if (bytes.length === 0) throw new CatalogError('BadFile', 'No file was sent, or an empty one; choose a form first.');
  const unpacked =
    isWorkbook(bytes) && bytes[0] === 0x50 ? [...partSizes(bytes, plain).values()].reduce((a, b) => a + b, 0) : 0;
  if (bytes.length > LARGEST_UPLOAD || unpacked > LARGEST_UNPACKED) {
    throw new CatalogError(
      'BadFile',
      `${plain} is too large to be read here (more than ${megabytes(LARGEST_UPLOAD)} MB, or ${megabytes(LARGEST_UNPACKED)} MB when it is unpacked); leave out its pictures, or split it.`,
      { path: plain },
    );
  }
  return { name: plain, bytes };
}

const megabytes = (bytes: number) => bytes / 1024 / 1024;
