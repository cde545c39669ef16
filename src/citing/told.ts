import type { Candidate } from './candidates.ts';
import type { CitedBook } from './cited-book.ts';
import type { Evidence, Reason } from './evidence.ts';
import { SECOND } from './weights.ts';

/** What speaks most for a citation, in words. */
export function whyOf(book: CitedBook, { group, text, cue, title, said }: Candidate, evidence: Evidence): string {
  if (group.members[0]!.short) return `it counts within ${text.slice(group.start, group.end)}`;
  const called = cue === undefined ? undefined : `it stands behind “${cue.word}”`;
  if (called !== undefined && cue!.kind !== 'pointing') return called;
  if (title) return `the title “${title.title}” stands beside it`;
  if (evidence.ourBook) return 'the catalog is named beside it';
  if (said) return `edition ${said.edition} is named beside it`;
  return called ?? `edition ${book.edition.header.name} prints this number`;
}

const DOUBTS: Partial<Record<Reason, string>> = {
  otherBeforeCue: 'the word before it may make it something else',
  labelled: 'the word before it may say that it numbers something else',
  otherWord: 'the word before it may say that it numbers something else',
  digitBefore: 'it may belong to the number before it',
  otherWordBehind: 'the word behind it may be what it counts',
  nameBehind: 'the name behind it may be what is numbered',
  goesOn: 'the number goes on',
  trap: 'the word before it may say that it numbers something else',
  otherBookBefore: 'it may stand in another book',
  otherBookBehind: 'it may stand in another book',
  bookBefore: 'it may stand in another book',
  possessed: 'it may stand in another book',
  figure: 'it may be a figure, a table or a drawing',
  datedBehind: 'a date stands behind it, as behind a release',
  ownHeading: 'the document numbers a heading of its own so',
  shortDate: 'it may be a date',
};

/** What speaks most against a candidate that is listed all the same, in words. */
export function doubtOf(evidence: Evidence): string {
  const [heaviest] = (Object.keys(DOUBTS) as Reason[])
    .map(reason => ({ reason, weight: (SECOND.weights[reason] ?? 0) * (evidence[reason] ?? 0) }))
    .filter(({ weight }) => weight < 0)
    .sort((a, b) => a.weight - b.weight);
  return heaviest ? DOUBTS[heaviest.reason]! : 'little speaks for it';
}
