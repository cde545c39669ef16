import { pairCode } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Table, TableRow } from '../../model/table.ts';
import { readTable } from '../../tables/read-table.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import type { Files } from '../ports/ports.ts';

/**
 * The file of a review: what `match --answers` reads, and titles for people who look into it. `asked` is the code of
 * the question: one answer may take two rows (no to this pair, yes to another), and both are taken back together.
 */
export const MATCH_ANSWER_COLUMNS = [
  'pair',
  'from_number',
  'from_title',
  'to_number',
  'to_title',
  'answer',
  'instead',
  'because',
  'by',
  'date',
  'from_row',
  'to_row',
  'instead_row',
  'asked',
] as const;

export type MatchAnswerRow = Readonly<Record<(typeof MATCH_ANSWER_COLUMNS)[number], string>>;

export interface MatchAnswersFile {
  readonly rows: readonly MatchAnswerRow[];
  readonly table: Table | undefined;
}

/** Reads a review's file; a file that is not there yet has no rows. Throws BadArgument for a table of another kind. */
export async function readMatchAnswers(files: Files, path: string): Promise<MatchAnswersFile> {
  if (!/\.csv$/i.test(path)) {
    throw new CatalogError('BadArgument', `A review writes csv; name a file that ends in .csv instead of ${path}.`);
  }
  if (!(await files.exists(path))) return { rows: [], table: undefined };
  const table = readTable(path, await files.read(path));
  const lacking = MATCH_ANSWER_COLUMNS.filter(column => !table.columns.includes(column));
  if (lacking.length > 0 || table.columns.length > MATCH_ANSWER_COLUMNS.length) {
    throw new CatalogError(
      'BadArgument',
      `${path} was not begun by a review, so nothing is written into it; name a new file last: --answers ${path} review.csv`,
      { path, lacking },
    );
  }
  return { rows: table.rows.map(rowOf), table };
}

/** Writes the whole file by rename: whoever is stopped while answering has every answer but the one being given. */
export async function writeMatchAnswers(files: Files, path: string, rows: readonly MatchAnswerRow[]): Promise<void> {
  await files.write(path, writeCsv([MATCH_ANSWER_COLUMNS, ...rows.map(row => MATCH_ANSWER_COLUMNS.map(c => row[c]))]));
}

function rowOf({ cells }: TableRow): MatchAnswerRow {
  return Object.fromEntries(
    MATCH_ANSWER_COLUMNS.map(column => [column, cells.get(column) ?? '']),
  ) as unknown as MatchAnswerRow;
}

/** The rows of a link; null for the side that is missing. */
export interface Ends {
  readonly from: number | null;
  readonly to: number | null;
}

/** The rows of the editions, old and new. */
export interface BothRows {
  readonly from: readonly BareRow[];
  readonly to: readonly BareRow[];
}

export const codeOf = ({ from, to }: BothRows, { from: i, to: j }: Ends): string =>
  pairCode(from[i ?? -1], i ?? -1, to[j ?? -1], j ?? -1);

/** What a person says to one question. */
export type Given =
  | { readonly kind: 'yes' | 'no' | 'withdrawn' | 'new' }
  /** Not this row, or not only this row: another one, of the old side where a new row is asked about. */
  | { readonly kind: 'instead' | 'also'; readonly row: number };

type AnswerRow = Omit<MatchAnswerRow, 'because' | 'by' | 'date' | 'asked'>;

/** The rows that an answer takes. Throws BadArgument where it does not fit the question. */
export function rowsFor(both: BothRows, { from: i, to: j }: Ends, given: Given): AnswerRow[] {
  const line = (from: number | null, to: number | null, answer: string) => lineOf(both, { from, to }, answer);
  if (given.kind === 'yes') return [line(i, j, j === null ? 'withdrawn' : i === null ? 'new' : 'yes')];
  if (given.kind === 'withdrawn' && i !== null) return [line(i, null, 'withdrawn')];
  if (given.kind === 'new' && j !== null) return [line(null, j, 'new')];
  if (given.kind === 'no' && i !== null && j !== null) return [line(i, j, 'no')];
  if ((given.kind === 'instead' || given.kind === 'also') && both[i === null ? 'from' : 'to'][given.row]) {
    if (i === null) return [line(given.row, j, 'yes')];
    if (j === null || j === given.row) return [line(i, given.row, 'yes')];
    if (given.kind === 'also') return [line(i, j, 'yes'), line(i, given.row, 'yes')];
    const other = endOf(both.to, given.row);
    return [{ ...line(i, j, ''), instead: other.number, instead_row: other.row }];
  }
  throw new CatalogError('BadArgument', 'This answer does not fit the question; choose one of those that are offered.');
}

function lineOf(both: BothRows, ends: Ends, answer: string): AnswerRow {
  const [old, heir] = [endOf(both.from, ends.from), endOf(both.to, ends.to)];
  return {
    pair: codeOf(both, ends),
    from_number: old.number,
    from_title: old.title,
    to_number: heir.number,
    to_title: heir.title,
    answer,
    instead: '',
    from_row: old.row,
    to_row: heir.row,
    instead_row: '',
  };
}

function endOf(rows: readonly BareRow[], at: number | null) {
  const { number = '', title = '' } = rows[at ?? -1] ?? {};
  return { number, title, row: at === null ? '' : String(at + 1) };
}

/** The question that rows of the file answer: the pair that stands there, or one of its ends alone. */
export function askedIn(both: BothRows, code: string, rows: readonly MatchAnswerRow[]): Ends | undefined {
  const at = (list: readonly BareRow[], cell: string) => (list[Number(cell) - 1] ? Number(cell) - 1 : null);
  for (const row of rows) {
    const [from, to] = [at(both.from, row.from_row), at(both.to, row.to_row)];
    // `It came from that one` is kept as a pair, but was asked of the new row alone; and the reverse.
    const ends = [
      { from, to },
      { from: null, to },
      { from, to: null },
    ].find(e => codeOf(both, e) === code);
    if (ends) return ends;
  }
  return undefined;
}
