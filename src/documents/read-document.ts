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
    case 'pptx':
      return (await import('./pptx/read-pptx.ts')).readPptx(bytes, name);
    case 'pdf':
      return (await import('./pdf.ts')).readPdf(bytes, name);
  }
}
