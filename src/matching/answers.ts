import type { BareRow } from './bare-row.ts';

/** What a person decided of a pair, or of an old row. Positions are those of the rows. */
export type Answer = (
  | { readonly kind: 'yes' | 'no'; readonly from: number; readonly to: number }
  | { readonly kind: 'withdrawn'; readonly from: number }
  | { readonly kind: 'new'; readonly to: number }
) & {
  readonly because: string;
  /** Who answered and on which day, where the answer says so. */
  readonly by?: string;
  readonly date?: string;
};

/**
 * A code for a pair that no spreadsheet turns into a number or a date: a letter and twelve hexadecimal digits of both
 * rows' positions and texts. A text or a place that changed gives another code, so an old answer is never taken for a
 * new question. An empty side stands for withdrawn or new.
 */
export function pairCode(from: BareRow | undefined, fromAt: number, to: BareRow | undefined, toAt: number): string {
  const code = hashed(taken(EMPTY, unitsOf(beginning(from, fromAt))), unitsOf(ending(to, toAt)));
  return `p${code.toString(16).padStart(12, '0')}`;
}

/** Whether something is written as such a code is. */
export const isPairCode = (code: string): boolean => /^p[0-9a-f]{12}$/.test(code);

/** The rows of a pair; -1 for a side that is missing. */
export type PairAt = readonly [from: number, to: number];

/**
 * The pairs that codes mean, by the codes alone: every old row with every new one, and each row by itself. Numbers are
 * no help where a spreadsheet has made dates of them.
 *
 * @param among the pairs to look through, where all of them are too many
 */
export function pairsByCode(
  codes: Iterable<string>,
  from: readonly BareRow[],
  to: readonly BareRow[],
  among?: Iterable<PairAt>,
): ReadonlyMap<string, PairAt> {
  const wanted = new Map([...codes].filter(isPairCode).map(code => [Number.parseInt(code.slice(1), 16), code]));
  const found = new Map<string, PairAt>();
  const begun = [...from, undefined].map((row, i) => taken(EMPTY, unitsOf(beginning(row, i))));
  const ends = [...to, undefined].map((row, j) => unitsOf(ending(row, j)));
  const [noOld, noNew] = [from.length, to.length];
  const look = (i: number, j: number) => {
    const code = wanted.get(hashed(begun[i]!, ends[j]!));
    if (code !== undefined) found.set(code, [i === noOld ? -1 : i, j === noNew ? -1 : j]);
  };
  for (let i = 0; i < noOld; i++) look(i, noNew);
  for (let j = 0; j < noNew; j++) look(noOld, j);
  if (among) for (const [i, j] of among) look(i, j);
  else {
    for (let i = 0; i < noOld && found.size < wanted.size; i++) for (let j = 0; j < noNew; j++) look(i, j);
  }
  return found;
}

const side = (row: BareRow | undefined, at: number) => JSON.stringify(row ? [at, row.number, row.title, row.text] : []);
const beginning = (row: BareRow | undefined, at: number) => `[${side(row, at)},`;
const ending = (row: BareRow | undefined, at: number) => `${side(row, at)}]`;

function unitsOf(text: string): Uint16Array {
  const units = new Uint16Array(text.length);
  for (let at = 0; at < text.length; at++) units[at] = text.charCodeAt(at);
  return units;
}

/** Two 32-bit multiplicative hashes, mixed at the end. Codes are compared within one table, so 48 bits are plenty. */
type Hashing = readonly [a: number, b: number];

const EMPTY: Hashing = [0xdeadbeef, 0x41c6ce57];

function taken([a, b]: Hashing, units: Uint16Array): Hashing {
  for (let at = 0; at < units.length; at++) {
    a = Math.imul(a ^ units[at]!, 2654435761);
    b = Math.imul(b ^ units[at]!, 1597334677);
  }
  return [a, b];
}

function hashed(before: Hashing, units: Uint16Array): number {
  let [a, b] = before;
  for (let at = 0; at < units.length; at++) {
    a = Math.imul(a ^ units[at]!, 2654435761);
    b = Math.imul(b ^ units[at]!, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return 4294967296 * (65535 & b) + (a >>> 0);
}
