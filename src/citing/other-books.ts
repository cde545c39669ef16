import { initialsOf } from './cues.ts';

/**
 * Tells a place in another book from a place in this catalog: "section 4.2.3 of the Valley Drainage Code", "the maker's
 * manual, clause 3.2.1", "contract clause 4.2", "STM 4, 3.2.1", "Part 3 of this course".
 */
const BOOKS =
  'codes?|standards?|methods?|regulations?|acts?|by-?laws?|ordinances?|statutes?|decrees?|handbooks?|manuals?|guides?|guidelines?|guidance|specifications?|specs?|rules|rulebooks?|directives?|contracts?|agreements?|instructions|booklets?|brochures?|leaflets?|course|textbooks?|books?|forms?|reports?|policy|policies|protocols?|charters?|permits?|licences?|licenses?|leases?|tenders?|bids?|quotations?|drawings?|datasheets?|data sheets?|series|modules?|exams?|worksheets?|videos?|syllabus|procedures?|memos?|minutes|letters?|annex(?:es)?|appendix|appendices|prospectus|catalogues?|catalogs?|treaty|treaties|framework|programme|checklists?|terms|conditions|almanac|compendium|paper|article|statutes|constitution|scheme|charter|notice|offer|statement|confession|tract|note|thesis|dissertation|novel|opinion|norms?|articles|deed|lecture|script|diary|bible|encyclop(?:a)?edia|lexicon|agendas?|defen[cs]e|claims?|pleadings?|lists?|terms of \\p{L}+|printout|app|website|wiki';
const MODIFIER =
  "(?!(?:the|this|that|these|those|a|an|our|your|my|his|her|its|their|of|in|to|and|or|but|with|for|by|on|at|from|under|as|if|not|is|are|was|were|be|must|shall|should|will|can|may|asks?|says?|has|have|had|it|we|you|they|he|she|who|which|what|don|no)\\b)[\\p{L}\\p{N}][\\p{L}\\p{N}'’/-]*";
const OWNER = "(?:the|this|that|these|those|their|its|our|your|my|his|her|a|an|each|any|another|[\\p{L}-]+['’]s?)";
// The name of a book: its determiner, what modifies it, and the word that says that it is a book.
const BOOK = `(?:(?<owner>${OWNER})\\s+)?(?<name>(?:${MODIFIER}\\s+){0,5}?(?<![\\p{L}-])(?:${BOOKS}))(?![\\p{L}-])`;
const BOOK_AFTER = new RegExp(
  `^(?:\\s*\\([\\p{L}\\p{N}]{1,3}\\))?\\s*,?\\s*(?:of|in|to|from|under|within)\\s+${BOOK}(?<more>(?:\\s+(?:for|on|of)\\s+[\\p{L} -]+)?)`,
  'iu',
);
const CODE_AFTER =
  /^\s*,?\s*(?:of|in|to|from|under)\s+(?:the\s+)?(?<name>\p{Lu}[\p{Lu}\p{N}/-]*\p{Lu}[\p{Lu}\p{N}/-]*)(?![\p{L}])(?:[ -]?\d[\d:.-]*)?/u;
const CUE =
  '(?:sections?|sects?\\.?|secs?\\.?|clauses?|cl\\.|articles?|art\\.|paragraphs?|paras?\\.?|items?|parts?|rules?|points?|chapters?|nos?\\.|§+|¶+)';
const ITS_OWN = new RegExp(`(?<![\\p{L}])(?:its|their|his|her|your|my)\\s+(?:own\\s+)?${CUE}\\s*$`, 'iu');
const VERB =
  '(?:in|at|under|by|and|that|also|its|an?|the|new|own|has|have|had|as|says?|said|asks?|requires?|states?|gives?|reads?|cites?|lists?|covers?|adds?|allows?|forbids?|calls for|edition|\\(?(?:19|20)\\d\\d\\)?)';
const BOOK_BEFORE = new RegExp(
  `(?:(?<owner>${OWNER})\\s+)?(?<name>(?:${MODIFIER}\\s+){0,4}(?<![\\p{L}-])(?:${BOOKS}))(?:['’]s?)?[,;:]?\\s*\\(?(?:${VERB}[,:]?\\s+){0,4}(?:${CUE}\\s*(?:[\\p{N}.]+,?\\s+)?){0,2}[(\\[]?\\s*$`,
  'iu',
);
// "Inspector's note: item 3.1.2": who checks the work speaks of this book behind the colon; an insurer's report need not.
const SPOKEN = new RegExp(
  `(?<![\\p{L}])(?:(?:inspect(?:or|ion)|supervisor|foreman|surveyor|crew|site|snag)s?(?:['’]s?)?\\s+(?:notes?|reports?|lists?|remarks?)|(?:defects?|deviations?)(?:\\s+(?:notes?|reports?|lists?))?)\\s*:\\s*(?:(?:the|see|under)\\s+)?(?:${CUE}\\s*)?[(\\[]?\\s*$`,
  'iu',
);
const CODE_BEFORE = new RegExp(
  `(?<![\\p{L}\\p{N}])(?<name>\\p{Lu}[\\p{Lu}/-]*\\p{Lu}(?:[ -]?\\d+(?:[:.-]\\d+)*)?)[,;:]?\\s*(?:${CUE}\\s*)?$`,
  'u',
);
const SHOUTED =
  /^(?:SEE|NOTE|NOTES|ITEMS?|PARTS?|SECTIONS?|SHALL|MUST|AND|OR|TO|OF|IN|AS|PER|THE|BY|FOR|WITH|WORK|GROUPS?|REQUIREMENTS?|CLAUSES?|NO|JOB|TODO|NB|OK|REF|RE|QA|QC|NOT|WI|FAIL|PASS|CHECK|DO|READ|WAS|NOW|NEW|OLD|CAUTION|WARNING|IMPORTANT)$/;
// 4.1 of "The Patient Baker" · Vennick's "Air and Fire", 2.3.1
const QUOTED_AFTER = /^\s*,?\s*(?:of|in|to|from|under)\s+["“](\p{Lu}[^"”]{2,60})["”]/u;
const QUOTED_BEFORE = new RegExp(`["“](\\p{Lu}[^"“”]{2,60}),?["”],?\\s*(?:${CUE}\\s*)?$`, 'u');
const HERE_AFTER =
  /^\s*(?:thereof|hereof|hereunder|ibid)\b|^\s*there(?=[.,;]|\s*$)|^\s*(?:,\s*)?(?:\((?:above|below|overleaf)\)|above\b|below\b|overleaf\b|(?:earlier|later|further on)\s+in\s+(?:this|these|our)\b|of\s+(?:this|these)\s+(?:document|notes?|page|handout|lesson|course|manual|guide|handbook|leaflet|report)\b)/i;
// What may stand between a catalog's own name and what people call it.
const OWN_WORDS =
  /^(?:the|this|these|our|current|present|new|old|latest|previous|former|workmanship|catalog(?:ue)?|book|requirements?|edition|\d{4}|of|for|and|by|in|under|per|at|to|from|with|as|today|s|said|valid)$/i;

const OF_THIS =
  /^(?:\s*\([\p{L}\p{N}]{1,3}\))?\s*,?\s*of\s+(?:this|these|our|their|his|her|its|my|your)\s+(?<name>[\p{L}-]+)/iu;

/** Another book in which a number may stand, and which side of the number says so. */
export interface OtherBook {
  readonly name: string;
  readonly where: 'before' | 'behind';
}

/** The other book in which a number stands, if it does. What stands behind the number is nearer than what stands before. */
export function otherBook(before: string, after: string, catalog: string): OtherBook | undefined {
  const name = bookBehind(after, catalog);
  if (name !== undefined) return name === '' ? undefined : { name, where: 'behind' };
  const ahead = isNamedBefore(before, catalog) ? undefined : bookBefore(before, catalog);
  return ahead === undefined ? undefined : { name: ahead, where: 'before' };
}

/** Empty where the catalog itself is named. */
function bookBehind(after: string, catalog: string): string | undefined {
  if (HERE_AFTER.test(after)) return 'this document itself';
  if (isNamedBehind(after, catalog)) return '';
  const behind = BOOK_AFTER.exec(after)?.groups;
  if (behind) return isOurs(`${behind.name!} ${behind.more ?? ''}`, catalog) ? '' : behind.name!.trim();
  const here = OF_THIS.exec(after)?.groups?.name;
  if (here !== undefined && !/^(?:edition|catalog(?:ue)?|requirements?)$/i.test(here) && !isOurs(here, catalog))
    return here;
  const quoted = QUOTED_AFTER.exec(after)?.[1];
  if (quoted !== undefined) return isOurs(quoted, catalog) ? '' : quoted;
  const code = CODE_AFTER.exec(after)?.groups?.name;
  return code !== undefined && !SHOUTED.test(code) && !isInitials(code, catalog) ? code : undefined;
}

/** "7-2-2 of the Workmanship of Climbing Walls": the whole title, though no word of it says that it is a book. */
function isNamedBehind(after: string, catalog: string): boolean {
  const name = /^(?:\s*\([\p{L}\p{N}]{1,3}\))?\s*,?\s*(?:of|in|to|from|under|within)\s+(?:the\s+)?(.*)/isu.exec(
    after,
  )?.[1];
  return name !== undefined && wordsOf(name).join(' ').startsWith(wordsOf(catalog).join(' '));
}

function bookBefore(before: string, catalog: string): string | undefined {
  const sentence = sentenceOf(before, catalog);
  if (ITS_OWN.test(sentence)) return 'the book just named';
  const quoted = QUOTED_BEFORE.exec(before)?.[1];
  if (quoted !== undefined && !isOurs(quoted, catalog)) return quoted;
  const ahead = SPOKEN.test(sentence) ? undefined : BOOK_BEFORE.exec(sentence)?.groups;
  if (ahead && !isOurs(ahead.name!, catalog)) return ahead.name!.trim();
  const short = CODE_BEFORE.exec(before)?.groups?.name;
  return short !== undefined && !SHOUTED.test(short) && !isInitials(short, catalog) ? short : undefined;
}

const OF_SOMETHING =
  /^\s*,?\s*(?:of|from)\s+(?:the|this|that|these|those|a|an|our|your|my|his|her|their|its)\s+((?:[\p{L}'’-]+\s+){0,2}[\p{L}'’-]+)/iu;

/** "item 2.3 of the agenda", "rule 1.2 of the Court's own practice": of a thing that is not the catalog, whatever it is. */
export function isOfSomething(after: string, catalog: string): boolean {
  const name = OF_SOMETHING.exec(after)?.[1];
  if (name === undefined || bookBehind(after, catalog) === '') return false;
  return !/^(?:\p{L}+ )?(?:edition|catalog|issue|version|text|numbering)/iu.test(name) && !isOurs(name, catalog);
}

/** "its 3.1.1", "her own 2.4": of somebody's or something's own book. */
export function isPossessed(before: string): boolean {
  return /(?<![\p{L}])(?:its|their|his|her|your|my)\s+(?:own\s+)?$/iu.test(before);
}

/** "Vennick, Doors and Docks, 4.3.1": words in capitals between commas right before a number, as titles of books are set. */
export function titleBefore(before: string, catalog: string): boolean {
  const name =
    /(?:^|[,;("“]\s*)((?:\p{Lu}[\p{L}’'-]+\s+)(?:(?:and|of|the|for|in|on|to|with|&)\s+|\p{Lu}[\p{L}’'-]+\s+)*\p{Lu}[\p{L}’'-]+),\s+$/u.exec(
      before,
    )?.[1];
  return name !== undefined && !isOurs(name, catalog);
}

/** Whether the catalog itself is named right beside a number: "4.2 of the Rules", "the Book's 5.2.1". */
export function ourBook(before: string, after: string, catalog: string): boolean {
  if (/(?<![\p{L}])ours?\s+(?:own\s+)?(?:\p{L}+\s+)?\(?$/iu.test(before) || /^\s+of\s+ours\b/i.test(after)) return true;
  if (isNamedBehind(after, catalog) || isNamedBefore(before, catalog)) return true;
  const behind = BOOK_AFTER.exec(after)?.groups;
  if (behind) return isOurs(`${behind.name!} ${behind.more ?? ''}`, catalog);
  const ahead = BOOK_BEFORE.exec(sentenceOf(before, catalog))?.groups;
  return ahead !== undefined && isOurs(ahead.name!, catalog);
}

/**
 * Whether the whole title stands right before the number, in words or as one name: "Debian Policy 7.1", "debian-policy
 * 7.1". A name before it makes it another book: "Crane Rigging Rules 2.1.2", where this one is called Rigging Rules.
 */
function isNamedBefore(before: string, catalog: string): boolean {
  const title = catalog.match(/[\p{L}\p{N}]+/gu) ?? [];
  if (title.length < 2) return false;
  const named = new RegExp(
    `(?:(?<name>\\p{L}[\\p{L}'’-]*)[ \\t]+)?(?<![\\p{L}\\p{N}-])${title.join('[\\s_-]+')}[,:]?\\s+(?:${CUE}\\s*)?$`,
    'iu',
  ).exec(before);
  const name = named?.groups?.name;
  return named !== null && (name === undefined || /^\p{Ll}/u.test(name) || OWN_WORDS.test(name) || /^see$/i.test(name));
}

/**
 * The sentence before a number. A word of the catalog's own title right before the number ("as rules 3.B.3") goes, unless
 * a name stands before it: then it is another book's ("Wharf Wiring Rules 5.2.1").
 */
function sentenceOf(before: string, catalog: string): string {
  const sentence = before.replace(/^.*[.!?]\s+(?=\p{Lu})/su, '');
  const last = /(?:^|([\p{L}-]+)\s+)([\p{L}]+)\s*$/u.exec(sentence);
  if (!last || /^\p{Lu}/u.test(last[1] ?? '') || !new RegExp(`^(?:${BOOKS})$`, 'iu').test(last[2]!)) return sentence;
  return catalog.toLowerCase().includes(last[2]!.toLowerCase().replace(/s$/, ''))
    ? sentence.slice(0, sentence.length - last[2]!.length).trimEnd()
    : sentence;
}

/** A book is the catalog itself where every word of its name is one of the catalog's title. */
function isOurs(name: string, catalog: string): boolean {
  if (wordsOf(name).join(' ').startsWith(wordsOf(catalog).join(' '))) return true;
  const title = new Set(wordsOf(catalog).flatMap(w => [w, w.replace(/s$/, '')]));
  // A mark of a footnote, a place in a list: "³ Rules for Ovens".
  const own = wordsOf(name).filter(w => !OWN_WORDS.test(w) && !/^\p{No}+$/u.test(w));
  return own.length === 0
    ? /catalog|requirement|book/i.test(name)
    : own.every(w => title.has(w) || title.has(w.replace(/s$/, '')));
}

function isInitials(code: string, catalog: string): boolean {
  return initialsOf(catalog).includes(code.replace(/[^\p{Lu}]/gu, ''));
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
