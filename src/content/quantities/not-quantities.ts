import { isEmptyWord } from '../reading/empty-words.ts';
import type { Token } from '../reading/tokens.ts';
import type { ReadNumber } from './numbers.ts';

const BOUNDING =
  /^(over|under|above|below|beyond|past|exceed\w*|around|roughly|approximately|exactly|nearly|almost|than|equals?|scores?|reach\w*)$/;

/** Words before a number that make it a name: Section 4, Table 2, Type 1, Class 3, ISO 9001. */
export const NAMING = new Set(
  'section sections clause clauses table tables figure figures fig chapter chapters part parts annex appendix article articles rule rules item items paragraph paragraphs subsection sub-clause schedule type types class classes grade grades group category cat level tier phase stage step page pages note form version v edition rev revision regulation regulations directive standard no number nos # code title division volume exhibit drawing sheet detail option method procedure test series model unit room zone'.split(
    ' ',
  ),
);

/** A number that counts or measures nothing: part of a name, code, date, year or time of day. */
export function isNoQuantity(tokens: readonly Token[], at: number, number: ReadNumber): boolean {
  const token = tokens[at]!;
  const before = tokens[at - 1];
  const after = tokens[number.next];
  if (number.inWords) return false;
  if (token.glued && before && before.kind === 'word') return true; // M12, IP65
  if (
    before &&
    (before.low === '-' || before.low === '/' || before.low === '.' || before.low === ':') &&
    before.glued &&
    token.glued
  )
    return true; // ISO-9001, 12/2019
  if (before && (before.low === '§' || before.low === '#')) return true;
  if (before?.kind === 'word' && NAMING.has(before.low)) return true;
  if (before?.low === '.' && NAMING.has(tokens[at - 2]?.low ?? '')) return true; // No. 5, Fig. 3
  if (
    before?.kind === 'word' &&
    /^\p{Lu}{2,}$/u.test(before.text) &&
    !/^(OF|TO|AT|BY|AND|OR|THE|THAN|FOR|LEAST|MOST|MORE|LESS|MINIMUM|MAXIMUM|USE|WITH|BE|IS)$/.test(before.text)
  )
    return true; // EN 1992, NFPA 70
  if (
    after?.glued &&
    (after.kind === 'word' ||
      (after.low === '.' && tokens[number.next + 1]?.kind === 'number' && tokens[number.next + 1]!.glued))
  )
    return true; // 2nd, 4X
  if (after?.low === ':' && after.glued && tokens[number.next + 1]?.glued) return true; // 14:30
  if (after?.low === '/' && after.glued && tokens[number.next + 1]?.kind === 'number') return true;
  if (/^(am|pm|a\.m|p\.m|o'clock)$/.test(after?.low ?? '')) return true;
  if (/^(19|20)\d\d$/.test(token.text) && number.next === at + 1) return true;
  return MONTHS.has(before?.low ?? '') || (MONTHS.has(after?.low ?? '') && number.value < 32);
}

const MONTHS = new Set(
  'january february march april june july august september october november december jan feb mar apr jun jul aug sep sept oct nov dec'.split(
    ' ',
  ),
);

/** Words that, before or behind "one", make it no count: no one, one another, the one that. */
const NO_COUNT_BEFORE = new Set('no any every each the this that these which another some only with'.split(' '));
const NO_COUNT_AFTER = new Set(
  'of another who that which is are to has must shall may will should can and , . ; ) from at by'.split(' '),
);

/** Whether a number without a unit counts something, or is the bare value of a thing measured (pH of 7, score of 3). */
export function namesCount(tokens: readonly Token[], at: number, number: ReadNumber): boolean {
  const token = tokens[at]!;
  const before = tokens[at - 1];
  const after = tokens[number.next];
  if (number.inWords && number.value === 1) {
    const bounded = before?.low === 'least' || before?.low === 'most' || before?.low === 'than';
    if (after?.low === 'or' && tokens[number.next + 1]?.low === 'more') return true;
    if (!bounded && NO_COUNT_BEFORE.has(before?.low ?? '')) return false;
    return bounded || (after !== undefined && !NO_COUNT_AFTER.has(after.low));
  }
  // "lies in tray 4.", "box 233, series 4": behind a noun, with nothing behind that it could count.
  if (
    !number.inWords &&
    before?.kind === 'word' &&
    !isEmptyWord(before.low) &&
    !BOUNDING.test(before.low) &&
    (after === undefined || /^[.,;)]$/.test(after.low) || isEmptyWord(after.low))
  )
    return false;
  // A list mark: "1. Clean", "(2) Paint", "3) Dry".
  if (after?.low === ')' && (before === undefined || before.low === '(' || before.low === '.' || before.low === ';'))
    return false;
  if (before?.low === '(' && after?.low === ')') return false;
  if (
    after?.low === '.' &&
    after.glued &&
    (before === undefined || before.low === '.' || before.low === ':') &&
    !token.glued
  )
    return false;
  return true;
}
