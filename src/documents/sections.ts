/**
 * Cuts markdown before headings, so that each piece can be parsed for itself: the parser's time grows with the square
 * of the number of separate lists in a piece (100 KB of them take 17 s).
 *
 * A cut is made only where it cannot change what the text means: before a heading at the very left, after a blank
 * line, outside fences, comments and raw html. A fence inside a list ends with the list, which cannot be seen line by
 * line; once one ends in doubt, the rest of the text is left in one piece.
 */
export function cutSections(text: string): readonly string[] {
  const pieces: string[] = [];
  let start = 0;
  let at = 0;
  let fence: { readonly mark: string; readonly nested: boolean } | undefined;
  let closer: RegExp | undefined;
  let blankBefore = true;
  for (const line of text.split(/(?<=\n|\r(?!\n))/)) {
    const bare = line.replace(/[\r\n]+$/, '');
    if (closer) {
      if (closer.test(bare)) closer = undefined;
    } else if (fence) {
      const ends = new RegExp(`^\\s*${fence.mark[0]}{${fence.mark.length},}\\s*$`).test(bare);
      if (ends) fence = undefined;
      else if (fence.nested && /^\S/.test(bare)) return [...pieces, text.slice(start)];
    } else {
      if (blankBefore && /^#{1,6}[ \t]/.test(bare) && at > start) {
        pieces.push(text.slice(start, at));
        start = at;
      }
      const opened = /^(\s*(?:[-+*>]|\d+[.)])*\s*)(`{3,}|~{3,})/.exec(bare);
      if (opened) fence = { mark: opened[2]!, nested: opened[1] !== '' };
      else closer = rawHtml(bare);
    }
    blankBefore = bare.trim() === '';
    at += line.length;
  }
  return [...pieces, text.slice(start)];
}

/** What ends a stretch of raw html that goes on behind this line. */
function rawHtml(line: string): RegExp | undefined {
  const opened = /^\s*<(!--|\?|!\[CDATA\[|pre|script|style|textarea)/i.exec(line)?.[1]?.toLowerCase();
  if (opened === undefined) return undefined;
  const end =
    opened === '!--'
      ? /-->/
      : opened === '?'
        ? /\?>/
        : opened === '![cdata['
          ? /\]\]>/
          : /<\/(?:pre|script|style|textarea)>/i;
  return end.test(line) ? undefined : end;
}
