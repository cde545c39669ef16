import type { Passage } from '../model/document.ts';
import { type Books, type Candidate, candidatesIn } from './candidates.ts';
import type { CitedBook } from './cited-book.ts';
import { cueReader } from './cues.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { labelBefore } from './left-word.ts';
import { meantEditions } from './meant-edition.ts';
import { ownNumbers } from './own-numbers.ts';
import { topicOf } from './topic.ts';

/** The numbers of a document that may be citations, each with its evidence. */
export interface ReadCandidates {
  readonly candidates: readonly Candidate[];
  readonly evidence: readonly Evidence[];
}

/** @param editions names that a text may mean, whether or not their numbers are known */
export function readCandidates(
  own: CitedBook,
  others: readonly CitedBook[],
  editions: readonly string[],
  passages: readonly Passage[],
): ReadCandidates {
  const books: Books = {
    own,
    others,
    cues: cueReader(
      own.edition.settings,
      own.edition.entries.some(e => e.level === 1 && /^\p{L}/u.test(e.number)),
    ),
    editions: meantEditions(own, others, editions),
  };
  const standing = editionsOfLists(books, passages);
  const found = passages.map(passage => candidatesIn(books, passage, standing.get(passage)));
  const candidates = found.flat();
  const topic = topicOf(own);
  const document = {
    own: ownNumbers(own, passages),
    share: topic.of(passages.map(p => p.text).join('\n')).share,
    labels: countLabels(candidates),
    rows: rowsOf(passages),
  };
  const evidence = found.flatMap((list, at) => {
    if (list.length === 0) return [];
    const passage = passages[at]!;
    const about = topic.of(`${passage.heading ?? ''} ${document.rows.get(passage) ?? list[0]!.text}`);
    return list.map(candidate => evidenceOf(books, document, about, candidate));
  });
  return { candidates, evidence };
}

/** What the whole row says in which a cell of a table stands. */
function rowsOf(passages: readonly Passage[]): ReadonlyMap<Passage, string> {
  const rows = new Map<string, Passage[]>();
  for (const passage of passages) {
    if (passage.columnHead === undefined) continue;
    const key = passage.place ?? `line ${passage.line}`;
    const row = rows.get(key);
    if (row) row.push(passage);
    else rows.set(key, [passage]);
  }
  return new Map([...rows.values()].flatMap(row => row.map(cell => [cell, row.map(c => c.text).join(' ')] as const)));
}

/** How often each word stands before a number and calls it nothing that this edition knows: shelf 3.2, shelf 4.1. */
function countLabels(candidates: readonly Candidate[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { cue, before } of candidates) {
    const label = cue === undefined ? labelBefore(before) : undefined;
    if (label !== undefined) counts.set(label, (counts.get(label) ?? 0) + 1);
  }
  return counts;
}

/** Members of a list are short; what is longer is text again, of which nothing was said. */
const MEMBER = 200;

/** The edition that is named once above a list, for each of its members. */
function editionsOfLists({ editions }: Books, passages: readonly Passage[]): ReadonlyMap<Passage, string> {
  const standing = new Map<Passage, string>();
  let edition: string | undefined;
  for (const passage of passages) {
    if (passage.text.length > MEMBER) edition = undefined;
    else if (edition !== undefined) standing.set(passage, edition);
    if (/:\s*$/.test(passage.text)) edition = editions.forList(passage.text);
  }
  return standing;
}
