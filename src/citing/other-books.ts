/**
 * Tells a place in another book from a place in this catalog: "section 4.2.3 of the Valley Drainage Code", "the maker's
 * manual, clause 3.2.1", "contract clause 4.2", "STM 4, 3.2.1", "Part 3 of this course".
 */
const BOOKS =
  'codes?|standards?|methods?|regulations?|acts?|by-?laws?|ordinances?|statutes?|decrees?|handbooks?|manuals?|guides?|guidelines?|guidance|specifications?|specs?|rules|rulebooks?|directives?|contracts?|agreements?|instructions|booklets?|brochures?|leaflets?|course|textbooks?|books?|forms?|reports?|policy|policies|protocols?|charters?|permits?|licences?|licenses?|leases?|tenders?|bids?|quotations?|plans?|drawings?|datasheets?|data sheets?|series|modules?|exams?|quiz|survey|worksheets?|videos?|syllabus|procedures?|memos?|minutes|letters?|annex(?:es)?|appendix|appendices|prospectus|catalogues?|catalogs?|treaty|treaties|framework|programme|checklists?|terms|conditions';
const MODIFIER =
  "(?!(?:the|of|in|to|and|or|is|are|was|were|must|shall|should|asks?|says?|has|have)\\b)[\\p{L}\\p{N}][\\p{L}\\p{N}'’/-]*";
const OWNER = "(?:the|this|that|these|those|their|its|our|your|my|his|her|a|an|each|any|another|[\\p{L}-]+['’]s?)";
// The name of a book: its determiner, what modifies it, and the word that says that it is a book.
const BOOK = `(?:(?<owner>${OWNER})\\s+)?(?<name>(?:${MODIFIER}\\s+){0,5}?(?:${BOOKS}))(?![\\p{L}-])`;
const BOOK_AFTER = new RegExp(
  `^(?:\\s*\\([\\p{L}\\p{N}]{1,3}\\))?\\s*,?\\s*(?:of|in|to|from|under|within)\\s+${BOOK}(?<more>(?:\\s+(?:for|on|of)\\s+[\\p{L} -]+)?)`,
  'iu',
);
const CODE_AFTER =
  /^\s*,?\s*(?:of|in|to|from|under)\s+(?:the\s+)?(?<name>\p{Lu}[\p{Lu}\p{N}/-]*\p{Lu}[\p{Lu}\p{N}/-]*)(?![\p{L}])(?:[ -]?\d[\d:.-]*)?/u;
const CUE =
  '(?:sections?|sects?\\.?|secs?\\.?|clauses?|cl\\.|articles?|art\\.|paragraphs?|paras?\\.?|items?|parts?|rules?|points?|chapters?|nos?\\.|§+|¶+)';
const VERB =
  '(?:in|at|under|by|and|that|also|its|has|as|says?|said|asks?|requires?|states?|gives?|reads?|cites?|lists?|covers?|adds?|allows?|forbids?|calls for|edition|\\(?(?:19|20)\\d\\d\\)?)';
const BOOK_BEFORE = new RegExp(
  `(?:(?<owner>${OWNER})\\s+)?(?<name>(?:${MODIFIER}\\s+){0,4}(?:${BOOKS}))(?:['’]s?)?[,;:]?\\s*\\(?(?:${VERB}[,:]?\\s+){0,4}(?:${CUE}\\s*)?[(\\[]?\\s*$`,
  'iu',
);
const CODE_BEFORE = new RegExp(
  `(?<![\\p{L}\\p{N}])(?<name>\\p{Lu}[\\p{Lu}/-]*\\p{Lu}(?:[ -]?\\d+(?:[:.-]\\d+)*)?)[,;:]?\\s*(?:${CUE}\\s*)?$`,
  'u',
);
const SHOUTED =
  /^(?:SEE|NOTE|NOTES|ITEMS?|PARTS?|SECTIONS?|SHALL|MUST|AND|OR|TO|OF|IN|AS|PER|THE|BY|FOR|WITH|WORK|GROUPS?|REQUIREMENTS?|CLAUSES?|NO|JOB|TODO|NB|OK|REF|RE|QA|QC|NOT|WI|FAIL|PASS|CHECK|DO|READ|WAS|NOW|NEW|OLD|CAUTION|WARNING|IMPORTANT)$/;
const HERE_AFTER =
  /^\s*(?:,\s*)?(?:\((?:above|below|overleaf)\)|above\b|below\b|overleaf\b|(?:earlier|later|further on)\s+in\s+(?:this|these|our)\b|of\s+(?:this|these)\s+(?:document|notes?|page|handout|lesson|course|manual|guide|handbook|leaflet|report)\b)/i;
// What may stand between a catalog's own name and what people call it.
const OWN_WORDS =
  /^(?:the|this|these|our|current|present|new|old|latest|previous|former|workmanship|catalog(?:ue)?|requirements?|edition|\d{4}|of|for|and)$/i;

/** The name of the other book in which a number stands, if it does. */
export function otherBook(before: string, after: string, catalog: string): string | undefined {
  if (HERE_AFTER.test(after)) return 'this document itself';
  const behind = BOOK_AFTER.exec(after)?.groups;
  if (behind && !isOurs(`${behind.name!} ${behind.more ?? ''}`, catalog)) return behind.name!.trim();
  const code = CODE_AFTER.exec(after)?.groups?.name;
  if (code !== undefined && !SHOUTED.test(code) && !isInitials(code, catalog)) return code;
  const sentence = before.replace(/^.*[.!?]\s+(?=\p{Lu})/su, '');
  const ahead = BOOK_BEFORE.exec(sentence)?.groups;
  if (ahead && !isOurs(ahead.name!, catalog)) return ahead.name!.trim();
  const short = CODE_BEFORE.exec(before)?.groups?.name;
  return short !== undefined && !SHOUTED.test(short) && !isInitials(short, catalog) ? short : undefined;
}

/** A book is the catalog itself where every word of its name is one of the catalog's title. */
function isOurs(name: string, catalog: string): boolean {
  const title = new Set(wordsOf(catalog).flatMap(w => [w, w.replace(/s$/, '')]));
  const own = wordsOf(name).filter(w => !OWN_WORDS.test(w));
  return own.length === 0
    ? /catalog|requirement/i.test(name)
    : own.every(w => title.has(w) || title.has(w.replace(/s$/, '')));
}

function isInitials(code: string, catalog: string): boolean {
  const initials = (words: readonly string[]) =>
    words
      .map(w => w[0])
      .join('')
      .toUpperCase();
  const words = wordsOf(catalog);
  const letters = code.replace(/[^\p{Lu}]/gu, '');
  return letters === initials(words) || letters === initials(words.filter(w => !/^(?:of|for|the|and|in|to)$/.test(w)));
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
