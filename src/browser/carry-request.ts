import type { DateOrder } from '../carryover/jobs/calendar-date.ts';
import type { ToldColumns } from '../carryover/jobs/columns.ts';

/** A file that the person chose. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a page asks for. Plain, so that it can be sent to a worker. */
export interface CarryRequest {
  /** One table of jobs, one questionnaire, or any number of lessons, which are carried together. */
  readonly files: readonly GivenFile[];
  /** The edition that the files cite where they do not say; absent takes the nearest. */
  readonly from?: string;
  /** Of tables. */
  readonly columns?: ToldColumns;
  readonly sheet?: string;
  readonly policy?: GivenFile;
  readonly dates?: DateOrder;
  /** Words of the table for a state or a type, to words that are known. */
  readonly stateNames?: Readonly<Record<string, string>>;
  readonly typeNames?: Readonly<Record<string, string>>;
  /** Rows of a questionnaire with the last four cells filled in, of these files or of others; those that fit are applied. */
  readonly answers?: readonly (readonly string[])[];
}

/** One file of the result. */
export interface MadeFile {
  readonly name: string;
  readonly what: 'carried' | 'decisions' | 'prices' | 'review' | 'review-data' | 'mark' | 'all';
  readonly bytes: Uint8Array;
}

/** Something to say about the file. */
export interface Note {
  /** What kind of remark it is: of many of one kind the first is shown at once. */
  readonly rule: string;
  readonly message: string;
}

/** How many have an outcome. */
export interface OutcomeLine {
  readonly kind: string;
  readonly count: number;
  readonly meaning: string;
}

/** Something about how a table was read that the table leaves open, and what a person can say to it. */
export interface Ask {
  /** The field of the request that settles it. */
  readonly field: 'columns' | 'sheet' | 'dates' | 'from' | 'stateNames' | 'typeNames' | 'file';
  /** The role of a column, or the word of the table; empty for fields that hold one value. */
  readonly key: string;
  /** What was assumed, and why it is not sure. */
  readonly sentence: string;
  readonly label: string;
  /** What is assumed comes first; an empty value leaves it so. None where only another file can settle it. */
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

interface Told {
  /** What the file was found to be. */
  readonly found: string;
  /** What becomes of it, counted. */
  readonly said: string;
  readonly outcomes: readonly OutcomeLine[];
  readonly notes: readonly Note[];
  readonly questionColumns: readonly string[];
  /** With the most lines or places first. */
  readonly questions: readonly AskedQuestion[];
  readonly files: readonly MadeFile[];
}

/** One case that a person has to decide. */
export interface AskedQuestion {
  /** As the questionnaire has them. */
  readonly cells: readonly string[];
  readonly typeName: string;
  /** The old item, where the number names one; the page knows the texts by edition and id. */
  readonly from?: { readonly id: string; readonly title: string };
  readonly heirs: readonly { readonly id: string; readonly number: string; readonly title: string }[];
  /** Whether it asks which edition the texts say that they follow: no item is asked about. */
  readonly isMark?: true;
}

export interface CarriedJobs extends Told {
  readonly kind: 'jobs';
  readonly header: readonly string[];
  /** Role to 0-based position. */
  readonly columns: Readonly<Record<string, number>>;
  readonly asks: readonly Ask[];
  readonly cases: readonly {
    readonly lines: number;
    readonly number: string;
    readonly typeName: string;
    readonly outcome: string;
    readonly heirs: readonly string[];
    readonly why: string;
  }[];
}

/** A place of a lesson that a person has to look at. */
export interface OpenPlace {
  readonly file: string;
  readonly place: string;
  readonly number: string;
  readonly outcome: string;
  readonly why: string;
  readonly toDo: string;
  readonly text: string;
  readonly heirs: readonly string[];
  /** No question is asked about its case, or no answer would change it. */
  readonly byItself: boolean;
}

/** A stretch of a lesson that tells what is no longer asked. */
export interface StalePlace {
  readonly file: string;
  readonly place: string;
  readonly number: string;
  readonly title: string;
  /** The stretch, and the text around it. */
  readonly says: string;
  readonly text: string;
  readonly was: string;
  readonly now: readonly { readonly number: string; readonly title: string; readonly text: string }[];
  readonly why: string;
  readonly toDo: string;
}

export interface CarriedLessons extends Told {
  readonly kind: 'lessons';
  readonly review: readonly OpenPlace[];
  readonly stale: readonly StalePlace[];
}

/** A questionnaire that came back: its rows with an answer, to be kept and applied. */
export interface ReadAnswers {
  readonly kind: 'answers';
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly Note[];
}

/** It could not be done; the sentence ends in what to do. `header` where a table was read that far. */
export interface Refused {
  readonly kind: 'refused';
  readonly sentence: string;
  readonly header?: readonly string[];
  readonly asks?: readonly Ask[];
}

export type CarryAnswer = CarriedJobs | CarriedLessons | ReadAnswers | Refused;
