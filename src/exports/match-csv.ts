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
  /** What else a person wrote, by column: `note` and `reason` of the crosswalk, and columns of their own. */
  readonly own: ReadonlyMap<string, string>;
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

/** Every column that a matching may be written with; any other is a person's own. */
export const MATCH_COLUMNS: ReadonlySet<string> = new Set([...CROSSWALK_COLUMNS, 'from_table', ...ANSWER_COLUMNS]);

/** Columns of the crosswalk that match leaves to people, or fills only where an answer says it. */
const ALSO_FOR_PEOPLE: readonly string[] = ['reason', 'note'];

/**
 * The last columns are for people to fill in, and behind them stand those that people added; a table with answers in
 * them is read back by `match --answers`, and all that people wrote is written out again.
 */
export function matchColumns(table: MatchTable): readonly string[] {
  const several = isOfSeveral(table.lines) ? ['from_table'] : [];
  return [...CROSSWALK_COLUMNS, ...several, ...ANSWER_COLUMNS, ...ownColumns(table)];
}

function ownColumns({ lines, kept }: MatchTable): string[] {
  const names = new Set([...lines.map(line => line.given), ...kept].flatMap(given => [...given.own.keys()]));
  return [...names].filter(name => !ALSO_FOR_PEOPLE.includes(name));
}

/** The cells of every line, in the order of the columns; answers that no line shows stand at the end. */
export function matchCells(table: MatchTable): readonly (readonly string[])[] {
  const { lines, kept } = table;
  const several = isOfSeveral(lines);
  const names = ownColumns(table);
  const own = (a: AnswerCells, name: string) => a.own.get(name) ?? '';
  const answered = (a: AnswerCells) => [
    ...[a.by, a.date, a.answer, a.instead, a.because],
    ...names.map(name => own(a, name)),
  ];
  return [
    ...lines.map(line => [
      ...crosswalkCells(withOwn(line)),
      ...(several ? [line.fromTable ?? ''] : []),
      line.band,
      line.why,
      line.pair,
      ...answered(line.given),
    ]),
    ...kept.map(k => [
      ...CROSSWALK_COLUMNS.map(name => (ALSO_FOR_PEOPLE.includes(name) ? own(k, name) : '')),
      ...(several ? [''] : []),
      '',
      k.why,
      k.pair,
      ...answered(k),
    ]),
  ];
}

/** A line with what a person wrote under reason and note. */
export function withOwn(line: MatchLine): MatchLine {
  const { own } = line.given;
  return { ...line, reason: own.get('reason') || line.reason, note: own.get('note') || line.note };
}

export function writeMatchCsv(table: MatchTable): string {
  return writeCsv([matchColumns(table), ...matchCells(table)]);
}

const isOfSeveral = (lines: readonly MatchLine[]) => lines.some(line => line.fromTable !== undefined);
