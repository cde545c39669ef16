import { readingOf } from '../read-paragraphs.ts';
import type { Reading } from '../reading.ts';
import { openPptx } from './open-pptx.ts';

/**
 * Reads a presentation: a passage is a paragraph over all of its runs, on slides, in tables and in speaker notes.
 *
 * @param name only for messages
 * @throws CatalogError BadFile
 */
export function readPptx(bytes: Uint8Array, name: string): Reading {
  return readingOf(openPptx(bytes, name));
}
