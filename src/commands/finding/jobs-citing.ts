import type { ToldColumns } from '../../carryover/jobs/columns.ts';
import type { ItemId } from '../../model/item.ts';

export interface JobsToRead {
  readonly inputs: readonly string[];
  /** The edition that lines mean which do not say. */
  readonly edition: string;
  /** Columns by header, or by 1-based position; what is not told is found. */
  readonly columns: ToldColumns;
}

/** What job lines cite an item in one edition. Of a line nothing is kept but its place, its job's id and its state. */
export interface CitingJobs {
  readonly lines: number;
  /** `open`, `inspected`, `signed` …; lines without a known state are counted under the empty word. */
  readonly states: Readonly<Record<string, number>>;
  /** Lines that may mean another item with the same number as well. */
  readonly unsure: number;
  /** Keys of the different jobs, as many as are counted. */
  readonly jobs: ReadonlySet<string>;
  /** Open ones before others, each in the order of the files. */
  readonly first: readonly CitingLine[];
}

export interface CitingLine {
  /** Without the folders of the server. */
  readonly file: string;
  readonly line: number;
  /** Whether the line is a row of a sheet. */
  readonly row: boolean;
  /** The id of its job; empty where the table has none, or one that may be a name or an address. */
  readonly job: string;
  readonly state: string;
}

/** All that was read, as plain values. */
export interface ReadJobs {
  /** By `itemKey`. */
  readonly found: ReadonlyMap<string, CitingJobs>;
  readonly files: number;
  readonly lines: number;
  /** Lines whose number names no item of the edition that they mean, or that mean no edition of the catalog. */
  readonly unknown: number;
  /** Files that could not be read, each with a sentence. */
  readonly unread: readonly { readonly file: string; readonly why: string }[];
}

/** The most jobs of an item that are counted, and the most of its lines that are named. */
export const MOST_JOBS = 500;
export const MOST_LINES = 8;

export const itemKey = (edition: string, item: ItemId): string => JSON.stringify([edition, item]);
