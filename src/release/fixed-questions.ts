import type { QuestionCode } from '../model/fixed-answer.ts';

export interface FixedQuestion {
  readonly code: QuestionCode;
  readonly of: 'requirement' | 'work item';
  readonly asks: string;
  /** Drafting rules whose remarks speak against a yes. */
  readonly rules: readonly string[];
}

/** What is asked of every requirement and of every work item before an edition is published; own wording. */
export const REVIEW_QUESTIONS: readonly FixedQuestion[] = [
  {
    code: 'singular',
    of: 'requirement',
    asks: 'Is it one thing to do or to reach?',
    rules: ['more-than-one-thing', 'long-sentence'],
  },
  {
    code: 'verifiable',
    of: 'requirement',
    asks: 'Can someone see, measure or read it: before covering, at completion, or in a document?',
    rules: [
      'not-verifiable',
      'vague-word',
      'passive-without-actor',
      'mixed-modals',
      'undefined-term',
      'deprecated-term',
      'hard-to-read',
    ],
  },
  { code: 'conforming', of: 'requirement', asks: 'Does it belong under this title?', rules: ['chooses-work'] },
  {
    code: 'necessary',
    of: 'requirement',
    asks: "Does it serve the work item's outcome, and is it said once only?",
    rules: ['near-duplicate', 'purpose-twice', 'bare-reference', 'worker-safety'],
  },
  {
    code: 'together',
    of: 'work item',
    asks: 'Whenever this work is ordered, does every one of its requirements apply?',
    rules: ['applies-sometimes'],
  },
  {
    code: 'enough',
    of: 'work item',
    asks: 'Is it the least that makes the work do its job, last and harm nobody?',
    rules: [],
  },
];
