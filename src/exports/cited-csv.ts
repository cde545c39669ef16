import { writeCsv } from '../tables/write-csv.ts';

export const CITED_COLUMNS = ['file', 'place', 'start', 'end', 'text', 'numbers', 'edition', 'certain', 'why'] as const;

/** One citation of a file. A range, and "items 2 and 5 of 4.1", is one; a list is one for each of its members. */
export interface CitedLine {
  readonly file: string;
  /** `line 12`, or where it stands in a file without lines. */
  readonly place: string;
  /** UTF-16 units into the decoded file; in office files into the texts of its passages, one after another. */
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** All numbers that are meant; a range is written out as far as its edition prints a row of them. */
  readonly numbers: readonly string[];
  readonly edition: string;
  readonly certain: boolean;
  readonly why: string;
}

/** What documents cite, a line each; several numbers of one line are joined by a space. */
export function writeCitedCsv(lines: readonly CitedLine[]): string {
  return writeCsv([
    CITED_COLUMNS,
    ...lines.map(l => [
      l.file,
      l.place,
      String(l.start),
      String(l.end),
      l.text,
      l.numbers.join(' '),
      l.edition,
      l.certain ? 'yes' : 'no',
      l.why,
    ]),
  ]);
}
