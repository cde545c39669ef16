import type { Cause, OutcomeKind } from '../model/citation.ts';
import type { CarriedCitation } from './passages.ts';

/** One citation that a person has to look at. */
export interface ReviewEntry {
  readonly file: string;
  readonly line: number;
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
export function reviewOf(
  file: string,
  citations: readonly CarriedCitation[],
  record: string | undefined,
): readonly ReviewEntry[] {
  const open = citations.filter(
    c => record !== undefined || (c.outcome.kind !== 'kept' && c.outcome.kind !== 'carried'),
  );
  return open.map(({ citation, outcome, context }) => ({
    file,
    line: citation.line,
    number: citation.through ? `${citation.number} to ${citation.through.number}` : citation.number,
    edition: citation.edition,
    text: context,
    outcome: outcome.kind,
    cause: outcome.cause,
    heirs: outcome.heirs.map(h => ({ number: h.number, title: h.title })),
    why: outcome.why,
    toDo:
      record !== undefined
        ? `Leave it: this file is a signed or dated record (${record}).`
        : (outcome.toDo ?? 'Look at it.'),
  }));
}

/** The review list as a page to read; order and wording depend on the entries only. */
export function writeReview(from: string, to: string, entries: readonly ReviewEntry[]): string {
  const lines = [`# To look at, from ${from} to ${to}`, ''];
  lines.push(
    entries.length === 0 ? 'Nothing: every citation was kept or carried.' : `${entries.length} citations.`,
    '',
  );
  let file: string | undefined;
  for (const e of entries) {
    if (e.file !== file) lines.push(`## ${plain(e.file)}`, '');
    file = e.file;
    lines.push(`- Line ${e.line}, **${plain(e.number)}**, ${e.outcome}: ${plain(e.why)}`);
    lines.push(`  - To do: ${plain(e.toDo)}`);
    lines.push(`  - Text: ${plain(e.text)}`);
    for (const h of e.heirs) lines.push(`  - Heir: ${plain([h.number, h.title].filter(Boolean).join(' '))}`);
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

/** Texts of documents may hold marks of markdown and html; here they are only shown. */
function plain(text: string): string {
  return text.replace(/[\r\n]+/g, ' ').replace(/[\\`*_{}[\]<>#|!]/g, '\\$&');
}
