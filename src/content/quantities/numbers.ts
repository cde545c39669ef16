import type { Token } from '../reading/tokens.ts';

/** A number as a text writes it, and the token after it. */
export interface ReadNumber {
  readonly value: number;
  readonly next: number;
  /** Written as a word (three) rather than in digits. */
  readonly inWords: boolean;
  /** Written as a part of one: 1/2, ¾, half, two thirds. */
  readonly fraction: boolean;
}

const SMALL = new Map(
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value]),
);
const TENS = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, at) => [word, (at + 2) * 10]),
);
const SCALES = new Map([
  ['dozen', 12],
  ['hundred', 100],
  ['thousand', 1000],
  ['million', 1e6],
]);
const PARTS = new Map([
  ['half', 1 / 2],
  ['halves', 1 / 2],
  ['third', 1 / 3],
  ['thirds', 1 / 3],
  ['quarter', 1 / 4],
  ['quarters', 1 / 4],
  ['fifth', 1 / 5],
  ['fifths', 1 / 5],
  ['tenth', 1 / 10],
  ['tenths', 1 / 10],
]);
const GLYPHS = new Map(
  Object.entries({
    '½': 1 / 2,
    '⅓': 1 / 3,
    '⅔': 2 / 3,
    '¼': 1 / 4,
    '¾': 3 / 4,
    '⅕': 1 / 5,
    '⅖': 2 / 5,
    '⅗': 3 / 5,
    '⅘': 4 / 5,
    '⅙': 1 / 6,
    '⅚': 5 / 6,
    '⅛': 1 / 8,
    '⅜': 3 / 8,
    '⅝': 5 / 8,
    '⅞': 7 / 8,
  }),
);

const BEGINNINGS = new Set([...SMALL.keys(), ...TENS.keys(), 'half', 'a', 'an']);

/** The number that begins at a token: 1,000 · 2,5 · 1 000 · 1/2 · 1-1/2 · 1½ · twenty-four · one and a half · two thirds. */
export function numberAt(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const token = tokens[at];
  if (token?.kind === 'number') return digitsAt(tokens, at);
  if (token && GLYPHS.has(token.text)) {
    return { value: GLYPHS.get(token.text)!, next: at + 1, inWords: false, fraction: true };
  }
  return token && BEGINNINGS.has(token.low) ? wordsAt(tokens, at) : undefined;
}

function digitsAt(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const whole = plainDigits(tokens, at);
  if (whole === undefined) return undefined;
  const part = fractionAt(tokens, at);
  if (part) return { ...part, inWords: false, fraction: true };
  // 1-1/2, 1 1/2 and 1½ are one number; 1-2 is a range and read elsewhere.
  let rest = whole.next;
  if (tokens[rest]?.low === '-' && tokens[rest]!.glued) rest++;
  if (Number.isInteger(whole.value)) {
    const mixed = GLYPHS.get(tokens[rest]?.text ?? '');
    if (mixed !== undefined) return { value: whole.value + mixed, next: rest + 1, inWords: false, fraction: false };
    const behind = fractionAt(tokens, rest);
    if (behind && behind.value < 1) {
      return { value: whole.value + behind.value, next: behind.next, inWords: false, fraction: false };
    }
  }
  const scale = SCALES.get(tokens[whole.next]?.low ?? '');
  if (scale && !tokens[whole.next]!.glued)
    return { value: whole.value * scale, next: whole.next + 1, inWords: false, fraction: false };
  return { ...whole, inWords: false, fraction: false };
}

function plainDigits(tokens: readonly Token[], at: number): { value: number; next: number } | undefined {
  const text = tokens[at]!.text;
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) return { value: Number(text.replaceAll(',', '')), next: at + 1 };
  if (/^\d+,\d+$/.test(text)) return { value: Number(text.replace(',', '.')), next: at + 1 };
  if (!/^\d+(\.\d+)?$/.test(text)) return undefined; // 4.2.1 is a clause
  let [digits, next] = [text, at + 1];
  // 25 000: groups of three after a single space, in the first of which stand at most three digits and no zero.
  while (
    /^[1-9]\d{0,2}( \d{3})*$/.test(digits) &&
    /^\d{3}$/.test(tokens[next]?.text ?? '') &&
    tokens[next]!.start === tokens[next - 1]!.end + 1
  ) {
    digits += ` ${tokens[next++]!.text}`;
  }
  return { value: Number(digits.replaceAll(' ', '')), next };
}

function fractionAt(tokens: readonly Token[], at: number): { value: number; next: number } | undefined {
  const [above, stroke, below, after] = [tokens[at], tokens[at + 1], tokens[at + 2], tokens[at + 3]];
  if (above?.kind !== 'number' || stroke?.low !== '/' || !stroke.glued || below?.kind !== 'number' || !below.glued) {
    return undefined;
  }
  if (after?.low === '/' && after.glued && tokens[at + 4]?.kind === 'number') return undefined; // a date
  const value = Number(above.text) / Number(below.text);
  return Number.isFinite(value) ? { value, next: at + 3 } : undefined;
}

function wordsAt(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const low = (i: number) => tokens[i]?.low ?? '';
  let next = at;
  let value = SMALL.get(low(at));
  if (value !== undefined) next++;
  const tens = TENS.get(low(at));
  if (tens !== undefined) {
    value = tens;
    next++;
    const joined = low(next) === '-' ? next + 1 : next;
    const ones = SMALL.get(low(joined));
    if (ones !== undefined && ones > 0 && ones < 10) {
      value += ones;
      next = joined + 1;
    }
  }
  if (value === undefined) {
    // half · half a · a dozen; a third or a quarter alone may be an ordinal or a part of the year.
    if (low(at) === 'half') {
      const measured = low(at + 1) === 'a' || low(at + 1) === 'an' ? 2 : 1;
      return { value: 0.5, next: at + measured, inWords: true, fraction: true };
    }
    if ((low(at) === 'a' || low(at) === 'an') && low(at + 1) === 'dozen')
      return { value: 12, next: at + 2, inWords: true, fraction: false };
    if (low(at) === 'a' && (low(at + 1) === 'half' || (PARTS.has(low(at + 1)) && low(at + 2) === 'of')))
      return { value: PARTS.get(low(at + 1))!, next: at + 2, inWords: true, fraction: true };
    return undefined;
  }
  for (let scale = SCALES.get(low(next)); scale !== undefined; scale = SCALES.get(low(next))) {
    value *= scale;
    next++;
    const joined = low(next) === 'and' ? next + 1 : next;
    const more = TENS.has(low(joined)) || SMALL.has(low(joined)) ? wordsAt(tokens, joined) : undefined;
    if (more && more.value < scale && scale > 12) {
      value += more.value;
      next = more.next;
    }
  }
  const part = PARTS.get(low(low(next) === '-' ? next + 1 : next));
  if (part !== undefined && value < 10) {
    return { value: value * part, next: low(next) === '-' ? next + 2 : next + 1, inWords: true, fraction: true };
  }
  if (low(next) === 'and' && low(next + 1) === 'a' && low(next + 2) === 'half') {
    return { value: value + 0.5, next: next + 3, inWords: true, fraction: false };
  }
  return { value, next, inWords: true, fraction: false };
}
