import type { Passage } from '../model/document.ts';
import type { Reading } from './reading.ts';
import { recordLine } from './record.ts';

/** Reads plain text: a passage is what stands between two blank lines. */
export function readPlain(text: string): Reading {
  const passages: Passage[] = [];
  const block = /(?:[^\r\n]*\S[^\r\n]*(?:\r\n|\n|\r|$))+/g;
  let line = 1;
  let counted = 0;
  for (const found of text.matchAll(block)) {
    line += lineEnds(text.slice(counted, found.index));
    counted = found.index;
    passages.push({ start: found.index, end: found.index + found[0].length, text: found[0], line });
  }
  const record = recordLine(text);
  return { passages, ...(record === undefined ? {} : { record }) };
}

/** How many lines end in a text, whatever its line ends are. */
export function lineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
