import { citedBook } from '../citing/cited-book.ts';
import { type FindOptions, findCitations } from '../citing/find-citations.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { Citation, Outcome } from '../model/citation.ts';
import type { Edit, FixedStretch, Passage } from '../model/document.ts';
import { columnReader, type Doubt } from './column-editions.ts';
import { resolveRange } from './ranges.ts';
import { type MarksOf, resolveCitation } from './resolve.ts';

/** A citation of a document, what happens to it, and the edits that do it. */
export interface CarriedCitation {
  readonly citation: Citation;
  readonly outcome: Outcome;
  /** The text around the citation, as the passage has it. */
  readonly context: string;
  /** Where it stands, in words: "line 12", "table 2, row 3". */
  readonly place: string;
  readonly edits: readonly Edit[];
  /** What would be written were the place not fixed, and why it is; there are no edits then. */
  readonly byHand?: { readonly text: string; readonly why: string };
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
  options: FindOptions,
  fixed: readonly FixedStretch[] = [],
): readonly CarriedCitation[] {
  const book = citedBook(joint.from, joint.old);
  const editions = [...options.editions, joint.to.header.name];
  const found = findCitations(book, passages, { ...options, editions });
  const byColumn = columnReader([joint.from.header.name, ...editions]);
  return passages.flatMap((passage, at) =>
    found[at]!.map(read => {
      const { citation, doubt } = byColumn(passage, read);
      const { outcome, edits } = carryOne(joint, marks, citation, doubt ?? doubtOf(citation));
      const place = passage.place ?? `line ${citation.line}`;
      const held = fixed.find(f => edits.some(e => e.start < f.end && e.end > f.start));
      const changes = held ? { edits: [], byHand: { text: textOf(edits), why: held.why } } : { edits };
      return { citation, outcome, context: contextOf(passage, citation), place, ...changes };
    }),
  );
}

function textOf(edits: readonly Edit[]): string {
  return edits.map(e => e.text).join(' to ');
}

function doubtOf({ certain, short, why }: Citation): Doubt | undefined {
  if (!certain) {
    return {
      why: `Perhaps it is no citation: ${why}.`,
      toDo: 'Say whether the text means this item, and change the number by hand if it does.',
    };
  }
  return short ? { why: 'It is written short.', toDo: 'Write the numbers out by hand.' } : undefined;
}

/** A citation that is in doubt, or whose digits are not its whole number, is never rewritten: a person has to. */
function carryOne(
  joint: Joint,
  marks: MarksOf,
  citation: Citation,
  doubt: Doubt | undefined,
): { outcome: Outcome; edits: readonly Edit[] } {
  if (citation.evidence === 'said' && citation.edition === joint.to.header.name) {
    const already = carriedBefore(joint, citation);
    if (already) return { outcome: already, edits: [] };
  }
  const answer = answerOne(joint, marks, citation);
  const { outcome } = answer;
  if (!doubt || !['kept', 'carried'].includes(outcome.kind)) return answer;
  const { why, toDo } = doubt;
  return { outcome: { ...outcome, kind: 'choose', cause: 'reading', why: `${why} ${outcome.why}`, toDo }, edits: [] };
}

function answerOne(joint: Joint, marks: MarksOf, citation: Citation): { outcome: Outcome; edits: readonly Edit[] } {
  const { number, edition, title, through, start, end } = citation;
  const cited = { number, edition, ...(title === undefined ? {} : { title }) };
  if (!through) {
    const outcome = resolveCitation(joint, marks, cited);
    const to = outcome.heirs[0]?.number;
    return { outcome, edits: outcome.kind === 'carried' && to ? [{ start, end, text: to }] : [] };
  }
  const { outcome, first, last } = resolveRange(joint, marks, cited, through.number);
  if (outcome.kind !== 'carried' || first === undefined || last === undefined) return { outcome, edits: [] };
  // "3.2.1-4" keeps its short form: both ends stand under one parent, so the last segment says it all.
  const short = through.end - through.start < through.number.length;
  const text = short ? (last.split('.').at(-1) ?? last) : last;
  return {
    outcome,
    edits: [
      { start, end, text: first },
      { start: through.start, end: through.end, text },
    ],
  };
}

/** A number that is said to be of the newer edition stays, if that prints it. */
function carriedBefore(joint: Joint, { number, through }: Citation): Outcome | undefined {
  const [first, last] = [number, through?.number ?? number].map(n => joint.new.withNumber(n));
  if (!first?.length || !last?.length) return undefined;
  const heirs = first.map(({ id, number: own, title }) => ({ id, number: own, title }));
  const why = `${through ? `${number} to ${through.number}` : number} is said to be of ${joint.to.header.name} already.`;
  return { kind: 'kept', cause: 'other-edition', heirs, why };
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
