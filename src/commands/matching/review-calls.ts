import type { Given, MatchAnswerRow } from './match-answers.ts';
import type { MatchedRecord } from './match-editions.ts';
import type { ShownQuestion } from './review-question.ts';

export interface Progress {
  readonly answered: number;
  readonly left: number;
  /** How many of the links left are wrong by the matcher's own belief. */
  readonly likelyWrong: number;
  /** Answers given or taken back since the last matching. */
  readonly sinceMatching: number;
  readonly matchingSeconds: number;
}

export interface AskedQuestion extends ShownQuestion {
  readonly code: string;
  readonly confidence: number;
  /** Other links in doubt that an answer moves too. */
  readonly hanging: number;
  /** The rows of the answers file that answer it; none while it is open. */
  readonly answered: readonly MatchAnswerRow[];
  /** Tells an answer from the next one to the same question; empty while it is open. */
  readonly seen: string;
  /** Neighbours in the order of asking, answered or not. */
  readonly previous?: string;
  readonly next?: string;
}

/** What a review can be asked. Every answer is on the disk before it returns. */
export interface ReviewCalls {
  progress(): Promise<Progress>;
  /**
   * The most valuable question that is open; of those behind another one, if that is named and any is left there. What
   * was handed to somebody else a moment ago comes last.
   */
  nextOpen(after?: string, by?: string): Promise<string | undefined>;
  question(code: string): Promise<AskedQuestion | undefined>;
  /** The rows of the answer that this person gave last. */
  last(by: string): Promise<readonly MatchAnswerRow[]>;
  /**
   * Throws BadArgument where the answer does not fit the question, and Changed where somebody else has answered it.
   *
   * @param seen of the question as it was shown; absent takes the place of whatever stands there
   */
  answer(code: string, given: Given, because: string, by: string, seen?: string): Promise<void>;
  /** Takes the last answer of a person back, or the one to a question, and gives the code of the question. */
  undo(by: string, code?: string): Promise<string | undefined>;
  /** Matches anew with all answers as fixed points. */
  rematch(): Promise<void>;
  /** The rows of a side that print a number. Throws UnknownNumber with the nearest ones. */
  rowsWithNumber(side: 'old' | 'new', number: string): Promise<readonly number[]>;
  /** The crosswalk with all answers, as `match` writes it. Matches anew where an answer is not known yet. */
  crosswalk(): Promise<string>;
  /** What can become lineage, with all answers; empty where the tables are no editions of a catalog. */
  lineage(): Promise<readonly MatchedRecord[]>;
}

/** What a review offers, by name: a thread is asked for it in these words. */
export const REVIEW_METHODS = [
  'progress',
  'nextOpen',
  'question',
  'last',
  'answer',
  'undo',
  'rematch',
  'rowsWithNumber',
  'crosswalk',
  'lineage',
] as const satisfies readonly (keyof ReviewCalls)[];
