import type { Passage } from '../../model/document.ts';
import type { FixedStretch, Reading } from '../reading.ts';
import { recordOf } from '../record.ts';
import { openDocx } from './open-docx.ts';

/**
 * Reads a Word document: a passage is a paragraph over all of its runs, in the body, tables, text boxes, footnotes,
 * endnotes, headers, footers and comments. The document property `edition` is the file's mark.
 *
 * @param name only for messages
 * @throws CatalogError BadFile
 */
export function readDocx(bytes: Uint8Array, name: string): Reading {
  const { paragraphs, edition, signed } = openDocx(bytes, name);
  const passages: Passage[] = [];
  const fixed: FixedStretch[] = [];
  let at = 0;
  for (const [n, { text, pieces, part, place, heading }] of paragraphs.entries()) {
    passages.push({
      start: at,
      end: at + text.length,
      text,
      line: n + 1,
      place,
      part,
      ...(heading === undefined ? {} : { heading }),
    });
    for (const p of pieces) {
      if (p.fixed !== undefined) fixed.push({ start: at + p.at, end: at + p.at + p.text.length, why: p.fixed });
    }
    at += text.length;
  }
  const record = signed ?? recordOf(paragraphs.map(({ text, row }) => ({ text, ...(row ? { row } : {}) })));
  return {
    passages,
    ...(edition === undefined ? {} : { edition }),
    ...(record === undefined ? {} : { record }),
    ...(fixed.length > 0 ? { fixed } : {}),
  };
}
