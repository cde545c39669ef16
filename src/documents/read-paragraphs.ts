import type { FixedStretch, Passage } from '../model/document.ts';
import type { Reading } from './reading.ts';
import { recordOf } from './record.ts';

/** A paragraph of an office file, as far as a reading tells of it. */
export interface OfficeParagraph {
  readonly part: string;
  readonly text: string;
  readonly place: string;
  readonly heading?: string;
  readonly level?: number;
  readonly row?: unknown;
  readonly columnHead?: string;
  readonly pieces: readonly { readonly at: number; readonly text: string; readonly fixed?: string }[];
}

/** An office file as a reading: a passage is a paragraph, and offsets count their texts one after another. */
export function readingOf(file: {
  readonly paragraphs: readonly OfficeParagraph[];
  readonly edition: string | undefined;
  readonly signed: string | undefined;
}): Reading {
  const passages: Passage[] = [];
  const fixed: FixedStretch[] = [];
  let at = 0;
  for (const [n, { text, pieces, part, place, heading, level, columnHead }] of file.paragraphs.entries()) {
    const end = at + text.length;
    const around = {
      ...(heading === undefined ? {} : { heading }),
      ...(level === undefined ? {} : { level }),
      ...(columnHead === undefined ? {} : { columnHead }),
    };
    passages.push({ start: at, end, text, line: n + 1, place, part, ...around });
    for (const p of pieces) {
      if (p.fixed !== undefined) fixed.push({ start: at + p.at, end: at + p.at + p.text.length, why: p.fixed });
    }
    at = end;
  }
  const record = file.signed ?? recordOf(file.paragraphs);
  return {
    passages,
    ...(file.edition === undefined ? {} : { edition: file.edition }),
    ...(record === undefined ? {} : { record }),
    ...(fixed.length > 0 ? { fixed } : {}),
  };
}

/** Finds the paragraph of an offset of a reading, and where that begins. */
export function addressOf<T extends { readonly text: string }>(
  paragraphs: readonly T[],
): (offset: number) => { readonly paragraph: T; readonly at: number } {
  const starts: number[] = [];
  let end = 0;
  for (const { text } of paragraphs) {
    starts.push(end);
    end += text.length;
  }
  return offset => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { paragraph: paragraphs[low]!, at: starts[low]! };
  };
}
