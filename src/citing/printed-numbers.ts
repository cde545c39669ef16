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
  /**
   * The codes of two letters and more with which the numbers of this edition begin: HT of HT-206; SB and ST of SB 1.2 and
   * ST 4.1. Little else looks like that.
   */
  isCode(letters: string): boolean;
  /** Whether a number begins with one of these codes. */
  hasCode(number: string): boolean;
  /** Whether items bear plain numbers, of one segment and no letters, as rules that are numbered through do: 204. */
  readonly plainItems: boolean;
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
  const numbers = edition.entries.map(e => e.number);
  const codes = codesOf(numbers);
  const forms = new Set(numbers.map(n => formOf(n, codes)));
  const between = [...marks].map(m => `\\${m}`).join('');
  return {
    digits: new RegExp(`\\d+(?:[${between}]\\d+)*`, 'y'),
    meant: written => lettered.get(folded(written)) ?? undefined,
    hasForm: written => forms.has(formOf(written, codes)),
    isCode: letters => codes.has(letters.toUpperCase()),
    hasCode: number => codes.has(codeOf(number) ?? ''),
    plainItems: numbers.filter(n => /^\p{N}{2,}$/u.test(n)).length > numbers.length / 2,
    most: edition.entries.reduce((most, e) => Math.max(most, e.number.split(/[.\-/]/).length), 0),
  };
}

/** Eight of ten: a catalog may print its annexes otherwise. */
const MOST = 0.8;

function codesOf(numbers: readonly string[]): ReadonlySet<string> {
  const codes = numbers.map(codeOf).filter((c): c is string => c !== undefined && !/^[IVXLC]+$/.test(c));
  return new Set(codes.length >= MOST * numbers.length ? codes : []);
}

/** The letters before the digits of a number: SB of SB 1.2, and of the heading SB alone. */
function codeOf(number: string): string | undefined {
  return /^\p{Lu}{2,}(?=[-./ ]?\p{N}|$)/u.exec(number)?.[0];
}

/** Digits as 0, letters behind the code as A or a; roman numerals are letters of any length. */
function formOf(number: string, codes: ReadonlySet<string>): string {
  const code = codeOf(number) ?? '';
  const own = codes.has(code) ? code : '';
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
