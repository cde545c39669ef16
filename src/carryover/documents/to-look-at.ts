import type { Cause, OutcomeKind } from '../../model/citation.ts';
import type { Remark } from '../../model/document.ts';
import { citedNumber } from './carry-citation.ts';
import type { CarriedCitation } from './passages.ts';

/** One citation that a person has to look at. */
export interface LookAtEntry {
  readonly file: string;
  readonly line: number;
  /** Where it stands, in words: "line 12", "table 2, row 3", "slide 4, notes", "page 7". */
  readonly place: string;
  readonly number: string;
  readonly edition: string;
  readonly text: string;
  readonly outcome: OutcomeKind;
  readonly cause: Cause;
  readonly heirs: readonly { readonly number: string; readonly title: string }[];
  readonly why: string;
  readonly toDo: string;
}

/** The review list of one file: all that was not kept or carried; of a signed record, everything. */
export function toLookAt(
  file: string,
  citations: readonly CarriedCitation[],
  record: string | undefined,
): readonly LookAtEntry[] {
  return openOf(citations, record).map(one => {
    return {
      ...citedIn(file, one),
      cause: one.outcome.cause,
      toDo: record === undefined ? toDoOf(one) : `Leave it: this file is a signed or dated record (${record}).`,
    };
  });
}

/** Where a citation stands, what it cites, and what became of that. */
export function citedIn(
  file: string,
  { citation, outcome, context, place }: CarriedCitation,
): Omit<LookAtEntry, 'cause' | 'toDo'> {
  return {
    file,
    line: citation.line,
    place,
    number: citedNumber(citation),
    edition: citation.edition,
    text: context,
    outcome: outcome.kind,
    heirs: outcome.heirs.map(h => ({ number: h.number, title: h.title })),
    why: outcome.why,
  };
}

/** The same, to be told in the document itself, at the citations. */
export function remarksOf(citations: readonly CarriedCitation[]): readonly Remark[] {
  return openOf(citations, undefined).map(one => {
    const { citation, outcome } = one;
    const heirs = outcome.heirs.map(h => `Heir: ${[h.number, h.title].filter(Boolean).join(' ')}`);
    return {
      start: citation.start,
      end: (citation.through ?? citation).end,
      paragraphs: [`${citedNumber(citation)}, ${outcome.kind}: ${outcome.why}`, `To do: ${toDoOf(one)}`, ...heirs],
    };
  });
}

function openOf(citations: readonly CarriedCitation[], record: string | undefined): readonly CarriedCitation[] {
  return citations.filter(c => record !== undefined || isOpen(c));
}

/** Whether a citation is left to a person. */
export function isOpen({ byHand, outcome: { kind } }: CarriedCitation): boolean {
  return byHand !== undefined || (kind !== 'kept' && kind !== 'carried');
}

function toDoOf({ citation, outcome, byHand }: CarriedCitation): string {
  if (byHand) return `Write ${byHand.text} for ${citedNumber(citation)} by hand: it stands ${byHand.why}.`;
  return outcome.toDo ?? 'Look at it.';
}

/** The review list as a page to read; order and wording depend on the entries only. */
export function writeToLookAt(from: string, to: string, entries: readonly LookAtEntry[]): string {
  const lines = [`# To look at, from ${from} to ${to}`, ''];
  lines.push(
    entries.length === 0 ? 'Nothing: every citation was kept or carried.' : `${entries.length} citations.`,
    '',
  );
  let file: string | undefined;
  for (const e of entries) {
    if (e.file !== file) lines.push(`## ${escapeMarkdown(e.file)}`, '');
    file = e.file;
    lines.push(
      `- ${escapeMarkdown(upper(e.place))}, **${escapeMarkdown(e.number)}**, ${e.outcome}: ${escapeMarkdown(e.why)}`,
    );
    lines.push(`  - To do: ${escapeMarkdown(e.toDo)}`);
    lines.push(`  - Text: ${escapeMarkdown(e.text)}`);
    for (const h of e.heirs) lines.push(`  - Heir: ${escapeMarkdown([h.number, h.title].filter(Boolean).join(' '))}`);
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

/** With a capital, to begin a line. */
export function upper(place: string): string {
  return place.slice(0, 1).toUpperCase() + place.slice(1);
}

/** Texts of documents may hold marks of markdown and html; here they are only shown. */
export function escapeMarkdown(text: string): string {
  return text.replace(/[\r\n]+/g, ' ').replace(/[\\`*_{}[\]<>#|!]/g, '\\$&');
}
