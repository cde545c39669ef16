import type { ReadText } from './read-text.ts';
import type { Spot } from './rule.ts';

/**
 * One expression for a list of phrases, tried at word beginnings only. A phrase is literal text; `a|b` inside brackets
 * and a trailing `?` on a word in brackets are all that it may use, so nothing in it can repeat and none can be slow.
 */
export function phraseList(...phrases: readonly string[]): RegExp {
  const sorted = [...phrases].sort((a, b) => b.length - a.length);
  return new RegExp(`(?<![\\p{L}\\p{N}-])(?:${sorted.join('|')})(?![\\p{L}\\p{N}])`, 'giu');
}

/** A spot for each match of `pattern` that `keep` lets through. */
export function spotsOf(
  { plain, text }: ReadText,
  pattern: RegExp,
  message: (words: string) => string,
  keep: (match: RegExpExecArray) => boolean = () => true,
): Spot[] {
  const spots: Spot[] = [];
  for (const match of plain.matchAll(pattern)) {
    if (!keep(match)) continue;
    const [start, end] = [match.index, match.index + match[0].length];
    spots.push({ start, end, message: message(text.slice(start, end)) });
  }
  return spots;
}

/** The rest of the sentence behind a place, up to a semicolon or the sentence's end, at most `most` characters. */
export function clauseBehind(plain: string, at: number, most = 160): string {
  const rest = plain.slice(at, at + most);
  return rest.slice(0, rest.search(/;|[.!?](?=\s|$)|\n|$/));
}

/** The beginning of the sentence before a place, at most `most` characters. */
export function clauseBefore(plain: string, at: number, most = 160): string {
  const before = plain.slice(Math.max(0, at - most), at);
  let from = 0;
  for (const stop of before.matchAll(/;|[.!?]\s|\n/g)) from = stop.index + stop[0].length;
  return before.slice(from);
}
