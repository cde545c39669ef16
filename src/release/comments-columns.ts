/** The columns of the comment form of the ISO/IEC template, and the code that a secretariat gives a comment. */
export const FORM_COLUMNS = [
  'by',
  'line',
  'clause',
  'paragraph',
  'type',
  'comment',
  'proposed',
  'observation',
  'code',
] as const;
export type FormColumn = (typeof FORM_COLUMNS)[number];

/** The headers of the template, in its order; what is written where a form is made. */
export const FORM_HEADERS = [
  'MB/NC',
  'Line number',
  'Clause/Subclause',
  'Paragraph/Figure/Table',
  'Type of comment (ge/te/ed)',
  'Comments',
  'Proposed change',
  'Observations of the secretariat',
] as const;

/**
 * What a column is called, by the whole of its header: reviewers re-word the template, and translate its abbreviations.
 * Patterns are held against the header in lower case without brackets, footnote signs and hyphens inside words.
 */
const MEANINGS: readonly (readonly [FormColumn, RegExp])[] = [
  ['code', /^(?:comment )?(?:code|id|no|nr|nos|number|ref|reference)$|^#$/],
  ['type', /^(?:type|comment type|kind|category) ?(?:of comments?)?(?: ge te ed)?$|^ge te ed$/],
  ['proposed', /^(?:proposed|suggested|requested) (?:changes?|text|wording|resolution)|^proposals?$|^change proposed/],
  [
    'observation',
    /^(?:observations?|secretariat|resolution|disposition|response|decision|reply|answer)\b|observations?(?: on each comment)?$/,
  ],
  [
    'by',
    /^(?:mb|nc|mb nc|mb or nc|nb|national (?:body|committee)|member body|member|commenter|commentor|reviewer|organi[sz]ation|submitted by|submitter|name of (?:commenter|reviewer|organi[sz]ation))$/,
  ],
  ['line', /^lines?(?: (?:no|nr|number|numbers|nos))?$/],
  ['clause', /^(?:clause|subclause|section)\b(?!.*\b(?:text|title)\b)|^(?:requirement|item)(?: (?:no|nr|number))?$/],
  ['paragraph', /^(?:paragraph|para|figure|table|note)\b/],
  [
    'comment',
    /^comments?(?: (?:justification|rationale|reason|reasons|and|or|for|change|the|by|mb|nc|objection|text))*$|^objection$/,
  ],
];

/** What a header cell says in the terms of the form; undefined for a column of the reviewer's own. */
export function columnOf(header: string): FormColumn | undefined {
  const said = plain(header);
  return MEANINGS.find(([, pattern]) => pattern.test(said))?.[0];
}

/** `Type of com-ment²` and `Clause No./ Subclause (e.g. 3.1)` are read as `type of comment` and `clause no subclause`. */
function plain(header: string): string {
  return header
    .toLowerCase()
    .replace(/\((?:e\.? ?g|for example|if|enter)[^)]*\)/g, ' ')
    .replace(/\([^)]*=[^)]*\)/g, ' ')
    .replace(/\be\.g\..*$/g, ' ')
    .replace(/[\u00ad\u00b9\u00b2\u00b3\u2070-\u209f*†‡]|(?<=\p{L})\d+\b/gu, '')
    .replace(/(?<=\p{L})[-\u2010\u2011]\s?(?=\p{Ll})/gu, '')
    .replace(/[^\p{L}\p{N}#]+/gu, ' ')
    .trim();
}

/** A head: which column of a table has which meaning. */
export type FormHead = ReadonlyMap<FormColumn, number>;

/**
 * A row as the head of a form: it has the comments, and two more of the template's columns. Two columns of one meaning
 * are told, since choosing one of them would be a guess.
 */
export function headOf(
  cells: readonly string[],
): { readonly head: FormHead; readonly twice: readonly FormColumn[] } | undefined {
  // Nearly all rows are no head; reading each cell of 100,000 of them for one takes seconds.
  const hasComments = (text: string) =>
    text.length <= 200 && /com.{0,2}ment|objection/i.test(text) && columnOf(text) === 'comment';
  if (!cells.some(hasComments)) return undefined;
  const head = new Map<FormColumn, number>();
  const twice: FormColumn[] = [];
  for (const [at, cell] of cells.entries()) {
    const meaning = cell.length <= 200 ? columnOf(cell) : undefined;
    if (meaning === undefined) continue;
    if (head.has(meaning)) twice.push(meaning);
    else head.set(meaning, at);
  }
  const known = [...head.keys()].filter(c => c !== 'code' && c !== 'comment').length;
  return known >= 2 ? { head, twice } : undefined;
}
