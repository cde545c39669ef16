import { CatalogError } from '../model/errors.ts';

/**
 * The text of a file. A byte order mark stays a part of it, so that it comes out again.
 *
 * @param name only for messages
 * @throws CatalogError BadArgument where the bytes are no UTF-8
 */
export function decodeText(name: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CatalogError('BadArgument', `${name} is not UTF-8 text; save it as UTF-8 and run again.`, { path: name });
  }
}
