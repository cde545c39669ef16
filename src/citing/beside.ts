import type { Titles } from './titles.ts';

/** A title found beside a number, and where it ends (or begins, when it stands before the number). */
export interface Beside {
  readonly title: string;
  readonly at: number;
}

/** The longest title of the edition that follows a number: "3.2.1 Overflow capacity", "3.2.1: Overflow capacity". */
export function titleAfter(text: string, end: number, titles: Titles): Beside | undefined {
  const lead = /^\s*(?:[:,(-]\s*)?["“'*]?\s*/.exec(text.slice(end, end + 20))![0].length;
  const rest = text.slice(end + lead, end + lead + 300);
  const ends = [...rest.matchAll(/[\p{L}\p{N}\])%]+/gu)].slice(0, titles.longest + 4).map(m => m.index + m[0].length);
  for (const stop of ends.reverse()) {
    const title = rest.slice(0, stop);
    if (isTitle(title, titles, rest.slice(stop))) return { title: withoutStrayBracket(title), at: end + lead + stop };
  }
  return undefined;
}

/** The longest title before a number in brackets: "Overflow capacity (3.2.1)". */
export function titleBefore(text: string, start: number, titles: Titles): Beside | undefined {
  const bracket = /["”'*]?\s*[([]\s*(?:[\p{L}§]+\.?\s+)?$/u.exec(text.slice(Math.max(0, start - 40), start));
  if (!bracket) return undefined;
  const opens = Math.max(0, start - 40) + bracket.index;
  const from = Math.max(0, opens - 300);
  const rest = text.slice(from, opens);
  const starts = [...rest.matchAll(/[\p{L}\p{N}%]+/gu)].slice(-titles.longest).map(m => m.index);
  for (const begin of starts) {
    const title = rest.slice(begin);
    if (isTitle(title, titles, '')) return { title, at: from + begin };
  }
  return undefined;
}

/**
 * A title begins as it is printed, with its capital; one of a single word must also end a phrase: in "3.2.1 Storage
 * tanks leak", Storage is no title.
 */
function isTitle(text: string, titles: Titles, after: string): boolean {
  const named = titles.named(text);
  if (!named.some(n => n.title[0] === text[0])) return false;
  // A bracket set off by a space is a part of the title only where the title has one: "Overflow capacity (2018)".
  if (/\s\(/.test(text) && !named.some(n => n.title.includes('('))) return false;
  return /[\s.]/.test(text) || !/^\s*[\p{L}\p{N}]/u.test(after);
}

/** "3.2.1 (Overflow capacity)": the bracket was opened before the title. */
function withoutStrayBracket(title: string): string {
  return title.includes('(') ? title : title.replace(/[)\]]+$/, '');
}
