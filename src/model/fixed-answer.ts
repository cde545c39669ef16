import type { ItemId } from './item.ts';

/** The fixed questions of an edition review, after the qualities of a requirement in ISO/IEC/IEEE 29148; own wording. */
export const QUESTION_CODES = ['singular', 'verifiable', 'conforming', 'necessary', 'together', 'enough'] as const;
export type QuestionCode = (typeof QUESTION_CODES)[number];

/** A person's answer to one fixed question about one item, given on the texts that `texts` is the hash of. */
export interface FixedAnswer {
  readonly question: QuestionCode;
  /** `no` calls for a revision, a split, a move or a withdrawal. */
  readonly answer: 'yes' | 'no';
  readonly because: string;
  /** `Name <address>`. */
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  readonly texts: string;
}

/** All answers about one item of one edition. Kept under `answers/review/<edition>/<item>.json` on `main`. */
export interface FixedAnswers {
  readonly edition: string;
  readonly item: ItemId;
  readonly answers: readonly FixedAnswer[];
}
