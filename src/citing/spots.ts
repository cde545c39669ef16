import type { CitedBook } from './cited-book.ts';
import { prints } from './cited-book.ts';
import { type Cue, isNamed } from './cues.ts';
import { printedNumbers } from './printed-numbers.ts';

/** A number in the plain text, before it is known whether it is cited. */
export interface Spot {
  readonly number: string;
  readonly start: number;
  readonly end: number;
}

const SHORT = /([.-])(\d+)(?![\p{L}\p{N}])(?![.-]\d)/uy;
const WORDS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const ROMAN = [
  '',
  'i',
  'ii',
  'iii',
  'iv',
  'v',
  'vi',
  'vii',
  'viii',
  'ix',
  'x',
  'xi',
  'xii',
  'xiii',
  'xiv',
  'xv',
  'xvi',
];

/**
 * The number that stands at an offset: one that the edition prints with letters in it (B-3.2), or decimal segments.
 * A number that is glued to something else (v3.2.1, pump-3.2.1, 3.2.1a, 12:30) is none.
 */
export function spotAt(book: CitedBook, text: string, start: number): Spot | undefined {
  return isGlued(text.slice(Math.max(0, start - 40), start)) ? undefined : memberSpotAt(book, text, start);
}

/** The same behind the link of a list or a range, to which a number may be glued: 3.2.1/3.2.2, 3.2.1-4. */
export function memberSpotAt(book: CitedBook, text: string, start: number): Spot | undefined {
  const lettered = letteredAt(book, text, start);
  if (lettered) return lettered;
  const { digits } = printedNumbers(book);
  digits.lastIndex = start;
  const number = digits.exec(text)?.[0];
  if (number === undefined || /^(?:[\p{L}\p{N}_@]|:\d|,\d+(?![\d.]))/u.test(text.slice(start + number.length))) {
    return undefined;
  }
  return { number, start, end: start + number.length };
}

/**
 * A number that a scanner or a line's end has broken: "12 .A. 1", "3.2.\n1". Only what the edition prints counts, and
 * only where the unbroken part alone is not printed at full length.
 */
export function brokenSpotAt(book: CitedBook, text: string, start: number): Spot | undefined {
  if (isGlued(text.slice(Math.max(0, start - 40), start))) return undefined;
  const run = /^[\p{L}\p{N}]{1,3}(?:\s?[.-]\s?[\p{L}\p{N}]{1,3}(?![\p{L}\p{N}]))+/u.exec(
    text.slice(start, start + 40),
  )?.[0];
  if (run === undefined || !/\s/.test(run) || !/\p{N}/u.test(run)) return undefined;
  const number = run.replace(/\s/g, '');
  return segments(number) >= 3 && prints(book, number) ? { number, start, end: start + run.length } : undefined;
}

/**
 * The longest run of letters, digits and marks here that the edition prints as a number, whatever the case of its letters
 * and the marks beside them. What goes on behind a printed number is another number, that the edition lacks: A.1.3.
 */
function letteredAt(book: CitedBook, text: string, start: number): Spot | undefined {
  const { meant, hasForm, isCode } = printedNumbers(book);
  const letters = /^\p{L}+(?= \p{N})/u.exec(text.slice(start, start + 8))?.[0] ?? '';
  const called = letters !== '' && isCode(letters);
  const spaced = called || /^\p{Lu}$/u.test(letters) ? letters.length + 1 : 0;
  const whole = /^[\p{L}\p{N}]+(?:[./-][\p{L}\p{N}]+)*(?:\([\p{L}\p{N}]{1,3}\))?/u.exec(
    text.slice(start + spaced, start + 40),
  )?.[0];
  const longest = whole === undefined ? undefined : text.slice(start, start + spaced) + whole;
  let run = longest;
  while (run !== undefined && /\p{L}/u.test(run) && /\p{N}/u.test(run)) {
    const number = prints(book, run) ? run : meant(run);
    const end = start + run.length;
    if (number !== undefined) {
      const more = /^(?:\.\p{N}+)+(?![\p{L}\p{N}])/u.exec(text.slice(end, end + 20));
      return more ? { number: number + more[0], start, end: end + more[0].length } : { number, start, end };
    }
    // An answer of a quiz, "A 1.2.1", is no A 1.2.
    if (spaced && !called) return undefined;
    const cut = run.search(/[./(-][^./(-]*$/);
    run = cut > spaced ? run.slice(0, cut) : undefined;
  }
  // A number of another edition, or one that was mistyped.
  return longest !== undefined && /\p{L}.*\p{N}/u.test(longest) && hasForm(longest)
    ? { number: longest, start, end: start + longest.length }
    : undefined;
}

/** "Part III", "part three", "Part B": a word that counts, behind the name of the level of the item that it numbers. */
export function namedSpotAt(book: CitedBook, text: string, start: number, cue: Cue): Spot | undefined {
  const word = /^\p{L}+/u.exec(text.slice(start, start + 20))?.[0];
  if (word === undefined || /^(?:[\p{N}_]|[.-]\p{N})/u.test(text.slice(start + word.length))) return undefined;
  const lower = word.toLowerCase();
  const counted = [WORDS.indexOf(lower), /^[IVX]+$/.test(word) ? ROMAN.indexOf(lower) : -1].find(n => n > 0);
  const number = [/^[A-Z]+$/.test(word) ? word : undefined, counted?.toString()].find(
    n => n !== undefined && bearsLevel(book, n, cue),
  );
  return number === undefined ? undefined : { number, start, end: start + word.length };
}

/** Whether the edition prints the number on an item of the level that the cue names. */
export function bearsLevel(book: CitedBook, number: string, cue: Cue): boolean {
  const { levels } = book.edition.settings;
  if (/^(?:annex|append)/.test(cue.word)) return /^\p{L}$/u.test(number) && prints(book, number);
  return (
    cue.kind === 'level' && book.places.withNumber(number).some(e => isNamed(cue, levels[e.level - 1]?.name ?? 'part'))
  );
}

/** ".4" behind "3.2.1 and": the sibling of the number before it. */
export function shortSpotAt(book: CitedBook, text: string, start: number, previous: string): Spot | undefined {
  SHORT.lastIndex = start;
  const segment = SHORT.exec(text);
  const at = segment ? previous.lastIndexOf(segment[1]!) : -1;
  const number = at < 0 ? undefined : previous.slice(0, at + 1) + segment![2]!;
  return segment && number && prints(book, number) ? { number, start, end: start + segment[0].length } : undefined;
}

/** How far a run of digits, letters and marks goes on that was looked at as one: 192.168.3.1.2 holds no 3.1.2. */
export function runLength(text: string, start: number): number {
  return /^[\p{L}\p{N}]+(?:[.:/@_-][\p{L}\p{N}]+)*/u.exec(text.slice(start, start + 200))?.[0].length ?? 1;
}

/** How many segments a number has: 3.2.1 and B-3.2 have three. */
export function segments(number: string): number {
  return number.split(/[.\-/]/).length;
}

function isGlued(before: string): boolean {
  const bare = before.replace(/(?:^|[\s(*])[*-]+$/, '');
  return /[\p{L}\p{N}_@=~^<>\\+$.-]$|[\p{L}\p{N}]#$/u.test(bare) || /\d[:/,]$|[^\s\d]\/$/.test(before);
}

/** Whether the edition prints numbers right beside one that it lacks. */
export function hasSiblings(book: CitedBook, number: string): boolean {
  const parent = number.replace(/[.-][^.-]+$/, '');
  return book.places.withNumber(parent).some(item => book.places.children(item.id).length > 0);
}
