import { lately } from './lately.ts';

/** A word, a number or a single mark of a text, with its place in it. */
export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  readonly text: string;
  /** Folded: lower case, dashes and quotes in one form. */
  readonly low: string;
  readonly start: number;
  readonly end: number;
  /** Whether nothing stands between this token and the one before. */
  readonly glued: boolean;
}

const PIECES = /\d+(?:[.,]\d+)*|[\p{L}\p{M}]+(?:['’]\p{L}+)*|[^\s\p{L}\p{M}]/gu;

/**
 * The tokens of a text. A number keeps the points and commas between its digits (1,000.5); everything that joins or
 * divides numbers (hyphen, stroke, colon) is a mark, since `1-1/2`, `50-75` and `R-8` are told apart only by grammar.
 */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let before = -1;
  for (const match of text.matchAll(PIECES)) {
    const piece = match[0];
    const start = match.index;
    const end = start + piece.length;
    const kind = /^\d/.test(piece) ? 'number' : /^\p{L}/u.test(piece) ? 'word' : 'mark';
    tokens.push({ kind, text: piece, low: fold(piece), start, end, glued: start === before });
    before = end;
  }
  return tokens;
}

/** The same, of texts that are read for several purposes. What it gives is shared, and not to be changed. */
export const tokensLately = lately(1_000, (text: string): readonly Token[] => tokensOf(text));

const FOLDED = new Map(
  Object.entries({
    '–': '-',
    '—': '-',
    '‐': '-',
    '‑': '-',
    '‒': '-',
    '−': '-',
    '″': '"',
    '“': '"',
    '”': '"',
    '′': "'",
    '’': "'",
    '‘': "'",
    '⁄': '/',
    '∶': ':',
    µ: 'μ',
    º: '°',
  }),
);

function fold(piece: string): string {
  return FOLDED.get(piece) ?? piece.toLowerCase().replace('’', "'");
}
