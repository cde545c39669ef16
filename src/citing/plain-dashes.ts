/** A text in which numbers can be looked for, and the way back to the text that it was made from. */
export interface Plain {
  readonly text: string;
  /** The offset in the original text of an offset in the plain one. */
  at(offset: number): number;
}

/**
 * Opens what word processors put into numbers: hyphens and dashes (U+2010 to U+2013) become `-`, no-break spaces become
 * spaces, soft hyphens go. Soft hyphens alone change offsets, and few texts have any.
 */
export function plainDashes(original: string): Plain {
  const text = original.replace(/[\u2010-\u2013]/g, '-').replace(/[\u00a0\u202f]/g, ' ');
  if (!text.includes('\u00ad')) return { text, at: offset => offset };
  const kept: number[] = [];
  for (let at = 0; at < text.length; at++) if (text[at] !== '\u00ad') kept.push(at);
  return { text: text.replace(/\u00ad/g, ''), at: offset => kept[offset] ?? text.length };
}
