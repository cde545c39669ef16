import { writeCsv } from '../tables/write-csv.ts';
import { CROSSWALK_COLUMNS, crosswalkCells } from './crosswalk-csv.ts';
import type { CrosswalkLine } from './crosswalk-lines.ts';

/** A crosswalk line that was found by matching, and what a person needs to judge it. */
export interface MatchLine extends CrosswalkLine {
  readonly band: string;
  readonly why: string;
  /** The pair's code, by which an answer finds it again. */
  readonly pair: string;
}

/** The last three columns are for people to fill in; a table with answers in them is read back by `match --answers`. */
export const MATCH_COLUMNS = [...CROSSWALK_COLUMNS, 'band', 'why', 'pair', 'answer', 'instead', 'because'] as const;

/** A line's cells, in the order of the columns. */
export function matchCells(line: MatchLine): readonly string[] {
  return [...crosswalkCells(line), line.band, line.why, line.pair, '', '', ''];
}

export function writeMatchCsv(lines: readonly MatchLine[]): string {
  return writeCsv([MATCH_COLUMNS, ...lines.map(matchCells)]);
}
