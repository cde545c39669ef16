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
  const between = [...marks].map(m => `\\${m}`).join('');
  return {
    digits: new RegExp(`\\d+(?:[${between}]\\d+)*`, 'y'),
    meant: written => lettered.get(folded(written)) ?? undefined,
  };
}

function folded(number: string): string {
  return number
    .toUpperCase()
    .replace(/(?<=\p{L})(?=\p{N})|(?<=\p{N})(?=\p{L})|[-./\s]+/gu, '.')
    .replace(/[()]/g, '');
}
