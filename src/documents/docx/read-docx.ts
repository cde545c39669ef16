import { readingOf } from '../read-paragraphs.ts';
import type { Reading } from '../reading.ts';
import { openDocx } from './open-docx.ts';

/**
 * Reads a Word document: a passage is a paragraph over all of its runs, in the body, tables, text boxes, footnotes,
 * endnotes, headers, footers and comments. The document property `edition` is the file's mark.
 *
 * @param name only for messages
 * @throws CatalogError BadFile
 */
export function readDocx(bytes: Uint8Array, name: string): Reading {
  return readingOf(openDocx(bytes, name));
}
