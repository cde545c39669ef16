import type { CitedBook } from './cited-book.ts';

/** How the numbers of an edition are written, and how people write them otherwise. */
export interface PrintedNumbers {
  /** A number of digits alone, with the marks that this edition sets between its segments; sticky. */
  readonly digits: RegExp;
  /**
   * The number that is meant by something with letters in it that is written in another case or with other marks: c2.4
   * for C-2.4. Undefined where none is, or several are.
   */
  meant(written: string): string | undefined;
  /** Whether something has the form of this edition's numbers with letters in them, printed or not: HT-206.1, II.4.b. */
  hasForm(written: string): boolean;
  /** The letters, two and more, with which most numbers of this edition begin: HT of HT-206. Little else looks like that. */
  readonly prefix: string | undefined;
  /** How many segments the longest number has. */
  readonly most: number;
}

const known = new WeakMap<CitedBook, PrintedNumbers>();

export function printedNumbers(book: CitedBook): PrintedNumbers {
  const numbers = known.get(book) ?? readNumbers(book);
  known.set(book, numbers);
  return numbers;
}

function readNumbers({ edition }: CitedBook): PrintedNumbers {
  const marks = new Set(['.']);
  const lettered = new Map<string, string | null>();
  for (const { number } of edition.entries) {
    if (/\p{L}/u.test(number)) {
      const key = folded(number);
      const other = lettered.get(key);
      lettered.set(key, other === undefined || other === number ? number : null);
    } else for (const [mark] of number.matchAll(/(?<=\d)[-/](?=\d)/g)) marks.add(mark);
  }
  const prefix = commonPrefix(edition.entries.map(e => e.number));
  const forms = new Set(edition.entries.map(e => formOf(e.number, prefix)));
  const between = [...marks].map(m => `\\${m}`).join('');
  return {
    digits: new RegExp(`\\d+(?:[${between}]\\d+)*`, 'y'),
    meant: written => lettered.get(folded(written)) ?? undefined,
    hasForm: written => forms.has(formOf(written, prefix)),
    prefix,
    most: edition.entries.reduce((most, e) => Math.max(most, e.number.split(/[.\-/]/).length), 0),
  };
}

/** Eight of ten: a catalog may print its annexes otherwise. */
const MOST = 0.8;

function commonPrefix(numbers: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const number of numbers) {
    const letters = /^\p{Lu}{2,}(?=[-./ ]?\p{N})/u.exec(number)?.[0];
    if (letters !== undefined) counts.set(letters, (counts.get(letters) ?? 0) + 1);
  }
  return [...counts].find(([, count]) => count >= MOST * numbers.length)?.[0];
}

/** Digits as 0, letters behind the prefix as A or a; roman numerals are letters of any length. */
function formOf(number: string, prefix: string | undefined): string {
  const own = prefix !== undefined && number.startsWith(prefix) ? prefix : '';
  const rest = number
    .slice(own.length)
    .replace(/\d+/g, '0')
    .replace(/\p{Lu}+/gu, 'A')
    .replace(/\p{Ll}+/gu, 'a');
  return own + rest;
}

function folded(number: string): string {
  return number
    .toUpperCase()
    .replace(/\(/g, '.')
    .replace(/(?<=\p{L})(?=\p{N})|(?<=\p{N})(?=\p{L})|[-./\s]+/gu, '.')
    .replace(/\)/g, '');
}
