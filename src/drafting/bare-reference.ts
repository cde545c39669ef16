import { hasNumber } from './measures.ts';
import { lowerFirst } from './plain-text.ts';
import type { ReadText, Sentence, Word } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/**
 * "Install in accordance with the standard", and nothing else to install by. What stands between the work and the
 * reference decides:
 *
 *   All joints shall be made │in accordance with the code│          bare
 *   Lap the sheet 100 mm     │in accordance with the code│          a measure: not bare
 *   Fix the sheet with stainless screws at the edges │as per ...│   detail: not bare
 */
export const bareReference: Rule = {
  name: 'bare-reference',
  bad: [
    { text: 'All joints shall be made in accordance with EN 12345.' },
    { text: 'Pipework must comply with the local plumbing code.' },
    { text: "Install the fan as per the manufacturer's instructions." },
    { text: 'Comply with EN 1090-2.' },
    { text: 'Follow all local regulations.' },
    { text: 'See ISO 4210-2.' },
    { text: 'Conform to the Building Code.' },
  ],
  good: [
    { text: 'Lap the membrane by 100 mm, in accordance with EN 12345.' },
    { text: 'Fix the sheet with stainless screws along both edges, according to the code.' },
    { text: 'See-through lids shall be of glass 6 mm thick.' },
    { text: 'Follow spots shall be of 800 W.' },
    { text: "Prime the joint with the maker's primer." },
  ],
  find: text => {
    const found = text.sentences.map(s => bareIn(text, s));
    const others = text.sentences.filter((_, i) => found[i] === undefined);
    // Another sentence that says what to do, by a number or at some length, is something to install by.
    if (others.some(s => hasNumber(text.plain.slice(s.start, s.end)) || s.segments.flatMap(g => g.words).length > 8))
      return [];
    return found.filter(spot => spot !== undefined);
  },
};

/** What a reference calls itself. "Turn the switch to Manual" refers to none, so only some are read with a capital. */
const KINDS =
  '(?:[Cc]odes?|[Cc]odex|[Ss]tandards?|[Rr]egulations?|[Rr]ules|[Ll]egislation|[Ll]aws?|[Aa]cts?|[Oo]rdinances?|[Bb]y-?[Ll]aws|[Dd]irectives?|[Gg]uidelines?|[Gg]uidance|guides?|instructions?|[Ss]pecifications?|requirements?|recommendations?|manuals?|[Hh]andbooks?|data ?sheets?|norms?|[Ss]tatutes?|polic(?:y|ies)|procedures?|protocols?|literature|details|documentation|practice)';

const NAMED = `(?:[A-Z][\\w-]{1,12} ?(?:[A-Z/.-]{0,6} ?)?\\d[\\w.:/-]{0,20}|(?:[\\p{L}'-]{1,24} ){0,6}?${KINDS}(?![\\p{L}-])|(?:[\\p{L}'-]{1,24} ){0,2}?[A-Z]{2,8}(?![\\p{L}]))`;

const POINTS = new RegExp(
  `(?<![\\p{L}])(?:(?:strictly |fully |full |all |in )?(?:(?:in )?(?:accordance|compliance|conformity|conformance|line|agreement|keeping) with|accord(?:ing)? to|as per|per|to|(?:as )?(?:required|specified|described|prescribed|set out|laid down|stated|given|detailed|directed|recommended|stipulated) (?:by|in|under)|compl(?:y|ies|iant|ying) (?:fully |at all times |strictly )?with|conform(?:s|ing)? (?:fully |in all respects )?(?:to|with)|meet(?:s|ing)?|satisf(?:y|ies)|follow(?:s|ing)?|observe|pursuant to|under|governed by|consult|refer to|see|as(?= (?:[A-Z]{2,6} ?\\d))|adhere to|abide by|fulfil(?:l|s)?) )(?:all |the |any |current |latest |applicable |relevant |with )*${NAMED}`,
  'gu',
);

const ISSUER =
  "(?:(?:the |its |their |any )?(?:[\\p{L}'-]{1,24} ){0,3}?(?:makers?|manufacturers?|suppliers?|producers?|vendors?|authority|authorities|inspectorate|utility|insurer|ministry|department|council|codes?|standards?|law|regulations?|[A-Z]{2,6} ?\\d[\\w.:-]{0,20}))";

const MAKERS = "(?:maker|manufacturer|supplier)'?s'?";

/** "as the maker advises", "EN 12345 applies", "see the register", "built to code". */
const SAYS = new RegExp(
  `(?<![\\p{L}])(?:(?:as|how|what|whatever|the way|in the way) ${ISSUER} (?:advises?|recommends?|directs?|specif(?:y|ies)|says?|instructs?|requires?|prescribes?|demands?|states?|lays? down|tells?|wants?|asks?)(?: for)?|${ISSUER} (?:shall |must |will )?(?:appl(?:y|ies)|governs?|prevails?|(?:shall|must|is to|are to) be (?:followed|observed|complied with|met|adhered to|applied|satisfied))|see (?:the )?(?:[\\p{L}'-]{1,24} ){0,3}?(?:register|catalogue|catalog|website|file|folder|schedule|sheet)|(?:to|up to) (?:local |current |building |the )?code(?![\\p{L}])|code[- ]compliant|(?:to|per|compl(?:y|ies|iant|ying) with) (?:the )?${MAKERS} [\\p{L}-]{3,24}|(?:with|by) (?:the )?${MAKERS} (?:advice|directions|terms|drawings?|data|tables?|limits|${KINDS}))`,
  'giu',
);

function bareIn({ plain }: ReadText, sentence: Sentence): Spot | undefined {
  const said = plain.slice(sentence.start, sentence.end);
  // "Comply with EN 1090-2.": at a sentence's beginning the words that point have a capital, like the name behind them.
  const match = [...lowerFirst(said).matchAll(POINTS), ...said.matchAll(SAYS)].find(m => isOutside(m[0]));
  if (!match) return undefined;
  const start = sentence.start + match.index;
  const end = start + match[0].length;
  const words = sentence.segments.flatMap(g => g.words);
  const before = words.filter(w => w.end <= start);
  const after = words.filter(w => w.start >= referenceEnd(plain, end, sentence.end));
  if (hasNumber(plain.slice(sentence.start, start)) || detail(predicate(before)) + detail(after) > 1) return undefined;
  return {
    start,
    end,
    message: `"${plain.slice(start, end)}" is all there is to work by; state what the reference asks, or withdraw.`,
  };
}

/** A reference to the same catalog, to a drawing or to a table beside the text is no outside standard. */
function isOutside(words: string): boolean {
  return !/\b(?:clause|section|paragraph|table|figure|drawings?|item|step|annex|above|below|this)\b/i.test(words);
}

/** What belongs to the reference's name: "and NFPA 70", "Part 7", "(latest edition)", "of the authority". */
function referenceEnd(plain: string, end: number, sentenceEnd: number): number {
  const rest = plain.slice(end, sentenceEnd);
  const more =
    /^(?:[^.;]{0,12}\d[\w.:-]{0,20}|,? ?(?:and|or|of|for|from|issued|published|in force|latest|current|edition|clause|section|part|chapter|article|table|supplied|provided|with)\b[^,.;]{0,80}|\s?\([^)]{0,60}\))*/u.exec(
      rest,
    );
  return end + (more?.[0].length ?? 0);
}

/** Words behind the modal verb and its main verb; of an order those behind the verb's object. */
function predicate(words: readonly Word[]): readonly Word[] {
  const modal = words.findIndex(w => /^(?:shall|must|should|is|are|will)$/.test(w.lower));
  if (modal >= 0) return words.slice(modal + 1).filter(w => !(w.tag === 'VERB' || w.tag === 'AUX' || w.tag === 'ADV'));
  const object = words.findIndex((w, i) => i > 0 && (w.tag === 'ADP' || w.lower === ','));
  return object < 0 ? [] : words.slice(object).filter(w => w.tag !== 'ADV');
}

/** Nouns, numbers and qualities: what a reader can work by. Words of mere doing count for nothing. */
function detail(words: readonly Word[]): number {
  return words.filter(w => /NOUN|NUM|PROPN|ADJ|VERB/.test(w.tag) && !EMPTY.has(w.lower)).length;
}

const EMPTY = new Set(
  'accordance compliance conformity line full strict all work works installation times respects time done carried out manner way edition latest current version applicable relevant requirements provisions amended amendments'.split(
    ' ',
  ),
);
