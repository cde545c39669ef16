import type { Passage } from '../model/document.ts';
import { type Books, type Candidate, candidatesIn } from './candidates.ts';
import type { CitedBook } from './cited-book.ts';
import { cueReader } from './cues.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
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
  const topic = topicOf(own);
  const document = { own: ownNumbers(own, passages), share: topic.of(passages.map(p => p.text).join('\n')).share };
  const candidates: Candidate[] = [];
  const evidence: Evidence[] = [];
  const standing = editionsOfLists(books, passages);
  for (const passage of passages) {
    const found = candidatesIn(books, passage, standing.get(passage));
    if (found.length === 0) continue;
    const about = topic.of(`${passage.heading ?? ''} ${found[0]!.text}`);
    candidates.push(...found);
    evidence.push(...found.map(c => evidenceOf(books, document, about, c)));
  }
  return { candidates, evidence };
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
