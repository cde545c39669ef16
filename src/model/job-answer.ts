import type { TypeId } from './item.ts';

/** What a person can say of a case of jobs: cite an heir, leave the line under its edition, take it out of the job. */
export const JOB_VERDICTS = ['carry', 'stay', 'drop'] as const;
export type JobVerdict = (typeof JOB_VERDICTS)[number];

/** A person's answer for all lines of a case, kept for an agency between two editions. */
export interface JobAnswer {
  readonly from: string;
  readonly to: string;
  readonly number: string;
  readonly type?: TypeId;
  readonly state: string;
  readonly edition: string;
  /** The title that stands beside the number, where it names an item. */
  readonly title?: string;
  readonly verdict: JobVerdict;
  /** Numbers of the newer edition, for `carry`. */
  readonly heirs: readonly string[];
  readonly because: string;
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  /** Mark of the texts and heirs that the question was asked on: a changed text asks again. */
  readonly askedOn: string;
}
