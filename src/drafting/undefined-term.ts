import type { ReadText } from './read-text.ts';
import type { Rule, Spot, Term } from './rule.ts';

/** A name or abbreviation that the glossary does not explain. Asked only where a glossary is given. */
export const undefinedTerm: Rule = {
  name: 'undefined-term',
  bad: [
    { text: 'Notify the Works Steward.', context: { terms: [{ term: 'drain slot', deprecated: false }] } },
    { text: 'Fit the RCBO.', context: { terms: [{ term: 'drain slot', deprecated: false }] } },
  ],
  good: [
    { text: 'Notify the Works Steward.', context: { terms: [{ term: 'works steward', deprecated: false }] } },
    {
      text: 'Fit the residual current breaker (RCBO); label the RCBO.',
      context: { terms: [{ term: 'x', deprecated: false }] },
    },
    { text: 'Test at 500 MPa to EN 12345.', context: { terms: [{ term: 'drain slot', deprecated: false }] } },
    { text: 'Test to ASTM E119, class II.', context: { terms: [{ term: 'drain slot', deprecated: false }] } },
  ],
  find: (text, { terms }) => (terms === undefined ? [] : [...names(text, terms), ...abbreviations(text, terms)]),
};

const message = (words: string) => `"${words}" is not in the glossary; define it there or use plain words.`;

/** Two or more capitalised words in the middle of a sentence are written as a name. */
function names({ plain, sentences }: ReadText, terms: readonly Term[]): Spot[] {
  const spots: Spot[] = [];
  const begins = new Set(sentences.map(s => s.start));
  for (const match of plain.matchAll(
    /(?<![\p{L}\p{N}-])\p{Lu}\p{Ll}{2,24}(?: \p{Lu}\p{Ll}{2,24}){1,3}(?![\p{L}\p{N}])/gu,
  )) {
    const start = match.index;
    const end = start + match[0].length;
    if (begins.has(start) || defined(match[0], terms)) continue;
    spots.push({ start, end, message: message(match[0]) });
  }
  return spots;
}

/** Capitals that are neither a unit, nor a standard with its number, nor explained in brackets or by brackets. */
function abbreviations({ plain }: ReadText, terms: readonly Term[]): Spot[] {
  const spots: Spot[] = [];
  const seen = new Set<string>();
  for (const match of plain.matchAll(/(?<![\p{L}\p{N}.-])\p{Lu}{2,8}(?![\p{L}\p{N}])/gu)) {
    const [word, start] = [match[0], match.index];
    const end = start + word.length;
    if (seen.has(word) || isNumbered(word, plain.slice(end, end + 4))) continue;
    seen.add(word);
    const explained = plain.includes(`(${word})`) || plain.includes(`${word} (`);
    if (!explained && !defined(word, terms)) spots.push({ start, end, message: message(word) });
  }
  return spots;
}

/** "EN 12345", "ASTM E119", and a numeral such as "class II", which is a number itself. */
function isNumbered(word: string, behind: string): boolean {
  if (/^(?:I{2,3}|IV|VI{1,3}|IX|XI{0,3})$/.test(word)) return true;
  return /^[ -]?\d/.test(behind) || (LETTERED.has(word) && /^ [A-Z] ?\d/.test(behind));
}

/** Issuers whose numbers begin with a letter. */
const LETTERED = new Set(['ASTM', 'AWS', 'ANSI', 'ASME', 'AATCC']);

function defined(words: string, terms: readonly Term[]): boolean {
  const lower = words.toLowerCase();
  return terms.some(t => {
    const term = t.term.toLowerCase();
    return term === lower || `${term}s` === lower || term.includes(`(${lower})`);
  });
}
