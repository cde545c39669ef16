import { CatalogError } from '../model/errors.ts';
import { decodeText } from './decode.ts';
import { kindOfDocument } from './kinds.ts';
import type { Reading } from './reading.ts';

/**
 * Reads a document of any kind that is known, by the end of its name. The libraries of a kind are loaded when the first
 * document of it comes.
 *
 * @param name the file's name or path; for its kind and for messages
 * @throws CatalogError BadArgument for other kinds and other encodings, BadFile where the file is damaged or encrypted
 */
export async function readDocument(name: string, bytes: Uint8Array): Promise<Reading> {
  switch (kindOfDocument(name)) {
    case 'markdown':
      return (await import('./markdown.ts')).readMarkdown(decodeText(name, bytes));
    case 'plain':
      return (await import('./plain.ts')).readPlain(decodeText(name, bytes));
    case 'html':
      return (await import('./html.ts')).readHtml(decodeText(name, bytes));
    case 'docx':
      return (await import('./docx/read-docx.ts')).readDocx(bytes, name);
    default:
      throw new CatalogError('BadArgument', `${name} cannot be read yet; save it as .html and run again.`, {
        path: name,
      });
  }
}
