import { writeCsv } from '../tables/write-csv.ts';
import { CROSSWALK_COLUMNS, crosswalkCells } from './crosswalk-csv.ts';
import type { CrosswalkLine } from './crosswalk-lines.ts';

/** What a person said, as it stands in the columns that people fill in. */
export interface AnswerCells {
  readonly by: string;
  readonly date: string;
  readonly answer: string;
  readonly instead: string;
  readonly because: string;
}

/** A crosswalk line that was found by matching, and what a person needs to judge it. */
export interface MatchLine extends CrosswalkLine {
  /** The table that the old row comes from, where several make the old edition. */
  readonly fromTable?: string;
  readonly band: string;
  readonly why: string;
  /** The pair's code, by which an answer finds it again. */
  readonly pair: string;
  readonly given: AnswerCells;
}

/** An answer that no line shows: a no, or one whose rows are gone. It has a code and no rows, so nobody counts it as a link. */
export interface KeptAnswer extends AnswerCells {
  readonly pair: string;
  readonly why: string;
}

/** What a matching is written from. */
export interface MatchTable {
  readonly lines: readonly MatchLine[];
  readonly kept: readonly KeptAnswer[];
}

const ANSWER_COLUMNS = ['band', 'why', 'pair', 'by', 'date', 'answer', 'instead', 'because'] as const;

/**
 * The last columns are for people to fill in; a table with answers in them is read back by `match --answers`, and its
 * answers are written out again.
 */
export function matchColumns({ lines }: MatchTable): readonly string[] {
  return [...CROSSWALK_COLUMNS, ...(isOfSeveral(lines) ? ['from_table'] : []), ...ANSWER_COLUMNS];
}

/** The cells of every line, in the order of the columns; answers that no line shows stand at the end. */
export function matchCells({ lines, kept }: MatchTable): readonly (readonly string[])[] {
  const several = isOfSeveral(lines);
  const answered = (a: AnswerCells) => [a.by, a.date, a.answer, a.instead, a.because];
  return [
    ...lines.map(line => [
      ...crosswalkCells(line),
      ...(several ? [line.fromTable ?? ''] : []),
      line.band,
      line.why,
      line.pair,
      ...answered(line.given),
    ]),
    ...kept.map(k => [...CROSSWALK_COLUMNS.map(() => ''), ...(several ? [''] : []), '', k.why, k.pair, ...answered(k)]),
  ];
}

export function writeMatchCsv(table: MatchTable): string {
  return writeCsv([matchColumns(table), ...matchCells(table)]);
}

const isOfSeveral = (lines: readonly MatchLine[]) => lines.some(line => line.fromTable !== undefined);
