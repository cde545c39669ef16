import type { Columns } from '../../carryover/jobs/columns.ts';
import type { JobCarrier } from '../../carryover/jobs/jobs.ts';
import type { Finding } from '../../model/finding.ts';
import { drained } from '../ports/drained.ts';
import type { Files, PendingFile } from '../ports/ports.ts';
import { type Sha256, sha256 } from '../ports/sha256.ts';

/** One run over a table. */
export interface JobRun {
  readonly carrier: JobCarrier;
  readonly columns: Columns;
  /** Whether a policy governs, so that two columns more are written. */
  readonly governed: boolean;
  write(bytes: Uint8Array): Promise<void>;
  /** Told how many lines are done, from time to time. */
  done(lines: number): void;
}

/** A line of a table of jobs. */
export interface JobLine {
  readonly cells: readonly string[];
  /** Where it ends in the file, from 1: a line, or a row of a sheet. */
  readonly line: number;
  /** By column: what a spreadsheet's number cell shows and stores, where it holds a number and no text. */
  numeric(column: number): readonly string[];
}

/** What a format says of its number cells that knows none. */
export const NOT_NUMERIC = (): readonly string[] => [];

/** A table of jobs in whatever format: it can be looked at, and carried. */
export interface JobSource {
  readonly header: readonly string[];
  /** The first lines, by which columns are found. */
  readonly sample: readonly (readonly string[])[];
  /** Its texts may have been numbers in the spreadsheet that wrote them. */
  readonly textOnly?: true;
  /** All lines, for what only the whole table can tell. */
  lines(): AsyncIterable<JobLine>;
  /** Writes the table with our columns; gives the sha256 of what was read, and what there is to say of it. */
  carry(run: JobRun): Promise<{ readonly input: string; readonly findings: readonly Finding[] }>;
}

/** Columns are found from this many records; the rest of the table is read once only. */
export const SAMPLE = 1000;

/** Hashes what passes through. */
export async function* hashing(source: AsyncIterable<Uint8Array>, hash: Sha256) {
  for await (const chunk of source) {
    hash.update(chunk);
    yield chunk;
  }
}

/** Writes into a pending file, no faster than the disk takes it, and counts its hash. */
export function hashedWriter(pending: PendingFile) {
  const hash = sha256();
  return {
    digest: hash.digest,
    write: async (bytes: Uint8Array): Promise<void> => {
      if (bytes.length === 0) return;
      hash.update(bytes);
      const { stream } = pending;
      if (stream.write(bytes)) return;
      // A stream that has failed emits no `drain`; settling says why it failed.
      if (!stream.errored) await drained(stream);
      if (stream.errored) await pending.settle();
    },
  };
}

/** The first bytes of a file, by which its format is told. */
export async function firstBytes(files: Files, path: string): Promise<Uint8Array> {
  for await (const chunk of files.stream(path)) return chunk;
  return new Uint8Array();
}
