import type { DateOrder } from '../../carryover/jobs/calendar-date.ts';
import type { Columns, ToldColumns } from '../../carryover/jobs/columns.ts';
import type { CaseOptions } from '../../carryover/jobs/job-cases.ts';
import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import type { Way } from '../../carryover/jobs/job-reader.ts';
import type { CaseCount, JobTotals } from '../../carryover/jobs/jobs.ts';
import type { Question } from '../../carryover/questions.ts';
import type { Finding } from '../../model/finding.ts';
import type { JobAnswer } from '../../model/job-answer.ts';
import type { GivenDecisions } from '../carrying/read-decisions.ts';
import type { BesideOptions } from '../carrying/tables-beside.ts';

/** How jobs are to be read and answered, in a file and in a database alike. */
export interface JobOptions extends GivenDecisions, BesideOptions {
  /** Columns by header, or by 1-based position; what is not told is found. */
  readonly columns?: ToldColumns;
  /** Other editions that lines may cite; asked for only where the table names editions. */
  readonly others?: () => Promise<ReadonlyMap<string, Way>>;
  readonly policy?: JobPolicy;
  /** The order of day, month and year in the table's dates; absent is inferred where it can be proven. */
  readonly dates?: DateOrder;
  readonly typeNames?: Readonly<Record<string, string>>;
  readonly stateNames?: Readonly<Record<string, string>>;
}

/** What came of the lines. */
export interface CarriedJobs {
  readonly columns: Partial<Columns>;
  readonly totals: JobTotals;
  readonly cases: readonly CaseCount[];
  /** Each once, those with the most lines first, answered ones among them; asked for with `decisionsOut` only. */
  readonly questions: readonly Question[];
  /** How many lines cite which edition, where more than one is cited. */
  readonly editions: Readonly<Record<string, number>>;
  readonly findings: readonly Finding[];
  /** Answers of the questionnaire that were of use, to be kept for later runs. */
  readonly answered: readonly Omit<JobAnswer, 'date'>[];
}

/** The options that answering a case takes, without those that are absent. */
export function caseOptions({ policy, typeNames, stateNames }: JobOptions): CaseOptions {
  return {
    ...(policy ? { policy } : {}),
    ...(typeNames ? { typeNames } : {}),
    ...(stateNames ? { stateNames } : {}),
  };
}

/** Editions by how often they are cited, where that is worth telling: where it is more than one. */
export function severalEditions(cited: ReadonlyMap<string, number>): Readonly<Record<string, number>> {
  return cited.size > 1 ? Object.fromEntries(cited) : {};
}
