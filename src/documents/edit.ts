import type { Edit } from '../model/document.ts';

/**
 * Replaces the edits' stretches and nothing else. Law: `edit(x, []) = x`, and what lies between two edits comes out
 * unit by unit as it went in. Edits may be given in any order.
 *
 * @throws Error where edits overlap or lie outside the text: whoever made them is defective, so no file is to blame.
 */
export function edit(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const e of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    if (e.start < at || e.end < e.start || e.end > text.length) {
      throw new Error(`edit ${e.start}-${e.end} overlaps another or lies outside the text`);
    }
    pieces.push(text.slice(at, e.start), e.text);
    at = e.end;
  }
  pieces.push(text.slice(at));
  return pieces.join('');
}
