const MOST = 16;
/** A piece with fewer words than this goes with the next one: "a.", "Note:", "and". */
const FEWEST = 3;

/**
 * The sentences and list items of a text. A row that was taken into a larger one becomes one of its pieces: it is far
 * more like that piece than like the whole.
 */
export function segmentsOf(text: string): readonly string[] {
  const pieces: string[] = [];
  let depth = 0;
  let start = 0;
  // Counted on the way: asking each piece anew would read a cell of a megabyte once for each of its semicolons.
  let words = 0;
  let inWord = false;
  for (let at = 0; at < text.length && pieces.length < MOST - 1; at++) {
    const sign = text[at]!;
    const isWord = /[\p{L}\p{N}]/u.test(sign);
    if (isWord && !inWord) words++;
    inWord = isWord;
    if (sign === '[') depth++;
    else if (sign === ']') depth = Math.max(0, depth - 1);
    // A list inside brackets is a blank to be filled in, not a list of things to do.
    else if (depth === 0 && (sign === '\n' || sign === ';' || (/[.!?]/.test(sign) && /\s/.test(text[at + 1] ?? ' ')))) {
      if (words < FEWEST) continue;
      pieces.push(text.slice(start, at + 1));
      start = at + 1;
      words = 0;
    }
  }
  const rest = text.slice(start);
  if (/[\p{L}\p{N}]/u.test(rest)) pieces.push(rest);
  return pieces;
}
