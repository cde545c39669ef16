import type { DateOrder } from '../carryover/jobs/calendar-date.ts';
import type { ToldColumns } from '../carryover/jobs/columns.ts';

/** A file that the person chose. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a page asks for. Plain, so that it can be sent to a worker. */
export interface CarryRequest {
  readonly file: GivenFile;
  /** The edition that the file cites where it does not say; absent takes the nearest. */
  readonly from?: string;
  /** Of tables. */
  readonly columns?: ToldColumns;
  readonly sheet?: string;
  readonly policy?: GivenFile;
  readonly dates?: DateOrder;
  /** Answers given at an earlier time, as this page hands them out. */
  readonly earlier?: GivenFile;
  /** Rows of a questionnaire, as `CarriedJobs.questions` has them, with the last four cells filled in. */
  readonly answers?: readonly (readonly string[])[];
}

/** One file of the result. */
export interface MadeFile {
  readonly name: string;
  readonly what: 'carried' | 'decisions' | 'prices' | 'review' | 'review-data' | 'mark';
  readonly bytes: Uint8Array;
}

/** Something to say about the file. */
export interface Note {
  readonly severity: string;
  readonly message: string;
}

/** How many have an outcome. */
export interface OutcomeLine {
  readonly kind: string;
  readonly count: number;
  readonly meaning: string;
}

interface Told {
  /** What the file was found to be. */
  readonly found: string;
  /** What becomes of it, counted. */
  readonly said: string;
  readonly outcomes: readonly OutcomeLine[];
  readonly notes: readonly Note[];
  readonly files: readonly MadeFile[];
}

/** One case that a person has to decide. */
export interface Question {
  /** As the questionnaire has them. */
  readonly cells: readonly string[];
  readonly typeName: string;
  /** Of the old item, where the number names one. */
  readonly title: string;
  readonly heirs: readonly { readonly number: string; readonly title: string }[];
}

export interface CarriedJobs extends Told {
  readonly kind: 'jobs';
  readonly header: readonly string[];
  /** Role to 0-based position. */
  readonly columns: Readonly<Record<string, number>>;
  readonly questionColumns: readonly string[];
  /** With the most lines first. */
  readonly questions: readonly Question[];
  readonly cases: readonly {
    readonly lines: number;
    readonly number: string;
    readonly typeName: string;
    readonly outcome: string;
    readonly heirs: readonly string[];
    readonly why: string;
  }[];
}

export interface CarriedLesson extends Told {
  readonly kind: 'lesson';
  readonly review: readonly {
    readonly place: string;
    readonly number: string;
    readonly outcome: string;
    readonly why: string;
    readonly toDo: string;
    readonly text: string;
    readonly heirs: readonly string[];
  }[];
  /** What it tells of the older edition that is no longer asked. */
  readonly stale: readonly {
    readonly place: string;
    readonly number: string;
    readonly says: string;
    readonly was: string;
    readonly now: readonly string[];
    readonly why: string;
    readonly toDo: string;
  }[];
}

/** It could not be done; the sentence ends in what to do. `header` where a table was read that far. */
export interface Refused {
  readonly kind: 'refused';
  readonly sentence: string;
  readonly header?: readonly string[];
}

export type CarryAnswer = CarriedJobs | CarriedLesson | Refused;
