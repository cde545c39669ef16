import type { BareRow } from './bare-row.ts';

/** What a person decided of a pair, or of an old row. Positions are those of the rows. */
export type Answer = (
  | { readonly kind: 'yes' | 'no'; readonly from: number; readonly to: number }
  | { readonly kind: 'withdrawn'; readonly from: number }
  | { readonly kind: 'new'; readonly to: number }
) & {
  readonly because: string;
  /** Who answered, where the answer says so. */
  readonly by?: string;
};

/**
 * A code for a pair that no spreadsheet turns into a number or a date: a letter and twelve hexadecimal digits of both
 * rows' positions and texts. A text or a place that changed gives another code, so an old answer is never taken for a
 * new question. An empty side stands for withdrawn or new.
 */
export function pairCode(from: BareRow | undefined, fromAt: number, to: BareRow | undefined, toAt: number): string {
  const side = (row: BareRow | undefined, at: number) => (row ? [at, row.number, row.title, row.text] : []);
  return `p${hash53(JSON.stringify([side(from, fromAt), side(to, toAt)]))
    .toString(16)
    .padStart(14, '0')
    .slice(-12)}`;
}

/** A 53-bit mixing of two 32-bit multiplicative hashes. Codes are compared within one table, so that is plenty. */
function hash53(text: string): number {
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    a = Math.imul(a ^ unit, 2654435761);
    b = Math.imul(b ^ unit, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return 4294967296 * (2097151 & b) + (a >>> 0);
}
