import type { Passage } from '../model/document.ts';
import { aroundEvidence } from './around-evidence.ts';
import { callEvidence } from './call-evidence.ts';
import type { Books, Candidate } from './candidates.ts';
import { numberEvidence } from './number-evidence.ts';
import { type TopicOfText, topicOf } from './topic.ts';
import { topicEvidence } from './topic-evidence.ts';

/** What a document as a whole says of the numbers in it. */
export interface Document {
  /** Numbers of its own headings and clauses; see ownNumbers. */
  readonly own: ReadonlySet<string>;
  /** The share of its words that are words of the edition's titles. */
  readonly share: number;
  /** How often each word stands before a number of it, where nothing calls the number an item. */
  readonly labels: ReadonlyMap<string, number>;
  /** The text of the whole row for each cell of a table with heads. */
  readonly rows: ReadonlyMap<Passage, string>;
}

/**
 * What speaks for a candidate, 0 to 1 each, and what against it. A weight never turns a reason round: what speaks for
 * has one of nought or more, what speaks against one of nought or less.
 */
export const SPEAKS = {
  printed3: 'for',
  printed4: 'for',
  lettered: 'for',
  ownForm: 'for',
  ownPrinted2: 'for',
  calledPlain: 'for',
  plainList: 'for',
  plainBracketed: 'for',
  short: 'for',
  wholeList: 'for',
  range: 'for',
  printedElsewhere: 'for',
  sibling: 'for',
  level: 'for',
  item: 'for',
  section: 'for',
  number: 'for',
  pointing: 'for',
  otherBeforeCue: 'against',
  title: 'for',
  edition: 'for',
  ourBook: 'for',
  lineStart: 'for',
  safeWord: 'for',
  labelled: 'against',
  otherWord: 'against',
  digitBefore: 'against',
  bracketed: 'for',
  endsThere: 'for',
  saysSomething: 'for',
  otherWordBehind: 'against',
  nameBehind: 'against',
  goesOn: 'against',
  trap: 'against',
  trapNear: 'against',
  figure: 'against',
  datedBehind: 'against',
  possessed: 'against',
  bookBefore: 'against',
  unitBehind: 'against',
  bearsLevel: 'for',
  otherBookBefore: 'against',
  otherBookBehind: 'against',
  calledShort: 'for',
  pointedShort: 'for',
  calledLong: 'for',
  calledElsewhere: 'against',
  ofSomething: 'against',
  changed: 'for',
  ownHeading: 'against',
  shortDate: 'against',
  near: 'for',
  nearSentence: 'for',
  nearText: 'for',
  nearSentenceText: 'for',
  agrees: 'for',
  strangeLine: 'against',
  headCalls: 'for',
  headOther: 'against',
  sameLabel: 'against',
  printedLeaf2: 'for',
  nearest: 'for',
  documentShare: 'for',
} as const satisfies Record<string, 'for' | 'against'>;

export type Reason = keyof typeof SPEAKS;
export type Evidence = Readonly<Record<Reason, number>>;

/**
 * Reads what speaks for and against one candidate, without regard to the other numbers of its document.
 *
 * @param passage what the candidate's passage is about, read once for all of its candidates
 */
export function evidenceOf(books: Books, document: Document, passage: TopicOfText, candidate: Candidate): Evidence {
  const found: Readonly<Record<Reason, number | boolean>> = {
    ...numberEvidence(books, candidate),
    ...callEvidence(books, candidate),
    ...aroundEvidence(books, candidate),
    ...topicEvidence(topicOf(books.own), document, passage, candidate),
  };
  return Object.fromEntries(Object.entries(found).map(([reason, value]) => [reason, Number(value)])) as Evidence;
}
