import { type CitedBook, citedBook } from '../../citing/cited-book.ts';
import { type FindOptions, findCitations } from '../../citing/find-citations.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Citation, Outcome } from '../../model/citation.ts';
import type { Edit, FixedStretch, Passage } from '../../model/document.ts';
import type { MarksOf } from '../resolve.ts';
import { carryCitation, doubtOf } from './carry-citation.ts';
import { columnReader } from './column-editions.ts';
import { rowsOf } from './passage-rows.ts';
import { withSaidEdition } from './said-edition.ts';
import type { DecideText } from './text-decisions.ts';

/** A citation of a document, what happens to it, and the edits that do it. */
export interface CarriedCitation {
  readonly citation: Citation;
  readonly outcome: Outcome;
  /** The text around the citation, as the passage has it. */
  readonly context: string;
  /** Where it stands, in words: "line 12", "table 2, row 3". */
  readonly place: string;
  readonly edits: readonly Edit[];
  /** What people are asked about its case, before anybody decides; absent where nobody is, or of each place by itself. */
  readonly undecided?: Outcome;
  /** What would be written were the place not fixed, and why it is; there are no edits then. */
  readonly byHand?: { readonly text: string; readonly why: string };
}

/** What is known beside the passages of a document. */
export interface PassageOptions extends FindOptions {
  /** The edition that is cited, with what its items say; absent: its numbers and titles alone. */
  readonly book?: CitedBook;
}

/** How much of a passage is shown beside a citation, to each side. */
const AROUND = 60;

/**
 * Finds and answers all citations of a document's passages. Only what is carried has edits, and an edit covers the
 * digits of its number and nothing beside them; the rest is for a person.
 */
export function carryPassages(
  joint: Joint,
  marks: MarksOf,
  passages: readonly Passage[],
  { book = citedBook(joint.from, { places: joint.old }), ...options }: PassageOptions,
  fixed: readonly FixedStretch[] = [],
  decide: DecideText = (_, outcome) => outcome,
): readonly CarriedCitation[] {
  const editions = [...options.editions, joint.to.header.name];
  const found = findCitations(book, passages, { ...options, editions });
  const byColumn = columnReader([joint.from.header.name, ...editions]);
  const rows = rowsOf(passages);
  return passages.flatMap((passage, at) => {
    const read = found[at]!.map(citation => byColumn(passage, citation));
    const row = rows(passage);
    return read.map(({ citation, doubt }, n) => {
      const answer = carryCitation(joint, marks, citation, doubt ?? doubtOf(citation), decide);
      const neighbours = [read[n - 1], read[n + 1]].flatMap(r => r?.citation ?? []);
      const { name, ...said } = withSaidEdition(joint, citation, answer, { passage, neighbours, row, editions });
      const edits = name ? [...said.edits, name] : said.edits;
      const place = passage.place ?? `line ${citation.line}`;
      const held = fixed.find(f => edits.some(e => e.start < f.end && e.end > f.start));
      const changes = held ? { edits: [], byHand: { text: textOf(said.edits, name), why: held.why } } : { edits };
      return { citation, ...said, context: contextOf(passage, citation), place, ...changes };
    });
  });
}

function textOf(numbers: readonly Edit[], edition: Edit | undefined): string {
  return `${numbers.map(e => e.text).join(' to ')}${edition ? ` of ${edition.text}` : ''}`;
}

function contextOf(passage: Passage, citation: Citation): string {
  const from = Math.max(0, citation.start - passage.start - AROUND);
  const to = Math.min(passage.text.length, (citation.through ?? citation).end - passage.start + AROUND);
  const text = passage.text
    .slice(from, to)
    .replace(/\u00ad/g, '')
    .replace(/\ufffc+/g, '…');
  return `${from > 0 ? '…' : ''}${text.replace(/\s+/g, ' ').trim()}${to < passage.text.length ? '…' : ''}`;
}
