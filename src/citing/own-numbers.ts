import type { Passage } from '../model/document.ts';
import type { CitedBook } from './cited-book.ts';
import { plainDashes } from './plain-dashes.ts';

const CALLED = '(?:(?:[Ii]tem|[Ss]ection|[Cc]lause|[Pp]oint|[Nn]o\\.|§)[ \\t]*)?';
const SAID = '[.):]?[ \\t]+(\\p{L}[^\\r\\n]*)';
const HEADING = new RegExp(`^[\\s#*_>-]*${CALLED}(\\d+(?:\\.\\d+)*|[A-Z](?:[.-]\\d+)+)${SAID}`, 'u');
const LINE = new RegExp(`(?:^|[\\r\\n])[ \\t>*#-]*${CALLED}(\\d+(?:\\.\\d+)+)${SAID}`, 'gu');

/**
 * The numbers that a document gives to its own headings and clauses: "## 3.2.1 Laying the pipe", "2.1 The sum is …".
 * They look like the catalog's and mean the document itself. A list of the catalog's own items has words of their titles
 * beside the numbers; what hardly ever has is the document's own.
 */
export function ownNumbers(book: CitedBook, passages: readonly Passage[]): ReadonlySet<string> {
  const headings = passages.filter(isHeading).flatMap(p => matches(p, HEADING));
  const clauses = passages.filter(p => !isHeading(p)).flatMap(p => matches(p, LINE));
  return new Set([...ownOf(book, headings, 2), ...(rises(clauses) ? ownOf(book, clauses, 3) : [])]);
}

type Numbered = readonly [number: string, text: string];

function matches({ text }: Passage, pattern: RegExp): Numbered[] {
  const plain = plainDashes(text).text;
  const found = pattern.global ? [...plain.matchAll(pattern)] : [pattern.exec(plain)].filter(m => m !== null);
  return found.map(m => [m[1]!, m[2]!]);
}

function ownOf(book: CitedBook, numbered: readonly Numbered[], least: number): string[] {
  const strange = numbered.filter(([number, text]) => isHeadline(text) && !isItem(book, number, text));
  return strange.length >= least && strange.length * 2 > numbered.length ? numbered.map(([number]) => number) : [];
}

/** "3.1.2 ok" ticks something off; a heading or a clause begins with a capital or goes on. */
function isHeadline(text: string): boolean {
  return /^\p{Lu}/u.test(text) || text.trim().split(/\s+/).length > 3;
}

/** Whether the words beside a number are words of the title of the item that bears it. */
function isItem({ places }: CitedBook, number: string, text: string): boolean {
  const words = new Set(text.toLowerCase().match(/\p{L}{3,}/gu) ?? []);
  return places
    .withNumber(number)
    .some(i => (i.title.toLowerCase().match(/\p{L}{3,}/gu) ?? []).some(w => words.has(w)));
}

/** Clauses are numbered in order; a list of cited items need not be. */
function rises(numbered: readonly Numbered[]): boolean {
  const keys = numbered.map(([number]) => number.split('.').map(Number));
  return keys.every((key, at) => at === 0 || compare(keys[at - 1]!, key) < 0);
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (let at = 0; at < Math.max(a.length, b.length); at++) {
    const difference = (a[at] ?? -1) - (b[at] ?? -1);
    if (difference !== 0) return difference;
  }
  return 0;
}

function isHeading(passage: Passage): boolean {
  return passage.heading !== undefined && passage.text.replace(/^#+|#+\s*$/g, '').trim() === passage.heading;
}
