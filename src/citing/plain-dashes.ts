/** A text in which numbers can be looked for, and the way back to the text that it was made from. */
export interface Plain {
  readonly text: string;
  /** The offset in the original text of an offset in the plain one. */
  at(offset: number): number;
  /** How many line ends stand before an offset in the plain text. */
  lines(offset: number): number;
}

/**
 * Opens what word processors put into numbers: hyphens and dashes (U+2010 to U+2013) become `-`, no-break spaces become
 * spaces, soft hyphens go. Soft hyphens alone change offsets, and few texts have any.
 */
export function plainDashes(original: string): Plain {
  const text = original.replace(/[\u2010-\u2013]/g, '-').replace(/[\u00a0\u202f]/g, ' ');
  if (!text.includes('\u00ad')) return { text, at: offset => offset, lines: lineCounter(text) };
  const kept: number[] = [];
  for (let at = 0; at < text.length; at++) if (text[at] !== '\u00ad') kept.push(at);
  const plain = text.replace(/\u00ad/g, '');
  return { text: plain, at: offset => kept[offset] ?? text.length, lines: lineCounter(plain) };
}

/** Counts on from the offset that was asked for last, since a long text is asked for thousands in order. */
function lineCounter(text: string): (offset: number) => number {
  let [at, lines] = [0, 0];
  return offset => {
    if (offset < at) [at, lines] = [0, 0];
    lines += text.slice(at, offset).match(/\r\n|\n|\r/g)?.length ?? 0;
    at = offset;
    return lines;
  };
}
