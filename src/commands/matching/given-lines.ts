import { nameColumns, plainName } from '../../editing/columns.ts';
import { MATCH_COLUMNS } from '../../exports/match-csv.ts';
import type { PairAt } from '../../matching/answers.ts';
import type { Table, TableRow } from '../../model/table.ts';
import type { AskedPair, FindRows } from './answer-rows.ts';
import { MATCH_ANSWER_COLUMNS } from './match-answers.ts';

/** Those of a review's file, and what else stands in what `match` wrote. */
const COLUMNS = [...MATCH_ANSWER_COLUMNS, 'why', 'reason', 'note'] as const;

/** Where a person fills in something. A reason that match itself wrote is told from one of theirs in `ownCells`. */
const FILLED = ['answer', 'instead', 'instead_row', 'because', 'by', 'date'] as const;

/** A line of a file of answers in which a person wrote something. */
export interface GivenLine {
  readonly table: Table;
  readonly row: TableRow;
  readonly code: string;
  readonly answer: string;
  readonly instead: string;
  readonly because: string;
  readonly by: string;
  readonly date: string;
  /** What else a person wrote in it: reason, note, and columns of their own. */
  readonly own: ReadonlyMap<string, string>;
  /** Numbers and titles of the rows as they stand there. */
  readonly about: string;
  /** The rows that it is about; absent where the tables have no such rows. */
  readonly ends: PairAt | undefined;
}

/** What stands under `why` of a kept answer, before its rows. Read back by the next round, whichever it is. */
export const KEPT_WHY = {
  answered: (answer: string) => `answered ${answer}: `,
  notUsed: 'not used: ',
  fitsNoPair: 'fits no pair of these tables: ',
} as const;
const KEPT = /^(?:answered \w+: |not used: |fits no pair of these tables: )(?=.* → )/s;

export type AnswerColumns = ReturnType<typeof nameColumns<(typeof COLUMNS)[number]>>;

/** The lines of a table in which anything is filled in, and how its cells are read. */
export interface GivenLines {
  readonly table: Table;
  readonly columns: AnswerColumns;
  readonly lines: readonly GivenLine[];
}

/** The filled lines of tables, whose rows are looked for all together. */
export function givenLines(tables: readonly Table[], find: FindRows): GivenLines[] {
  const filled = tables.map(filledLines);
  const ends = find(filled.flatMap(f => f.asked));
  let at = 0;
  return filled.map(({ table, columns, lines }) => ({
    table,
    columns,
    lines: lines.map(line => ({ ...line, ends: ends[at++] })),
  }));
}

function filledLines(table: Table) {
  const columns = nameColumns(table, COLUMNS);
  const cell = (row: TableRow, column: (typeof COLUMNS)[number]) => unguarded(columns.cell(row, column) ?? '').trim();
  // A table that has no codes is none that match wrote, and what stands in its other columns is no remark on a pair.
  const names = columns.has('pair') ? ownColumns(table) : [];
  const own = (row: TableRow) => ownCells(row, names, cell);
  const rows = table.rows.filter(row => FILLED.some(column => cell(row, column) !== '') || own(row).size > 0);
  const asked = rows.map(
    (row): AskedPair => ({
      code: cell(row, 'pair').toLowerCase(),
      fromNumber: cell(row, 'from_number'),
      fromTitle: cell(row, 'from_title'),
      toNumber: cell(row, 'to_number'),
      toTitle: cell(row, 'to_title'),
      fromAt: Number(cell(row, 'from_row') || 0) - 1,
      toAt: Number(cell(row, 'to_row') || 0) - 1,
    }),
  );
  const lines = rows.map((row): Omit<GivenLine, 'ends'> => {
    const sides = (['from', 'to'] as const).map(side =>
      `${cell(row, `${side}_number`)} ${cell(row, `${side}_title`)}`.trim(),
    );
    const why = cell(row, 'why');
    return {
      table,
      row,
      code: cell(row, 'pair').toLowerCase(),
      answer: cell(row, 'answer').toLowerCase(),
      instead: cell(row, 'instead'),
      because: cell(row, 'because'),
      by: cell(row, 'by'),
      date: cell(row, 'date'),
      own: own(row),
      about: sides.some(side => side !== '')
        ? sides.map(side => side || '-').join(' → ')
        : KEPT.test(why)
          ? why.replace(KEPT, '')
          : '',
    };
  });
  return { table, columns, asked, lines };
}

/** Columns that neither a matching nor a review is written with; a second one of a known name is one too. */
function ownColumns(table: Table): string[] {
  const taken = new Set<string>();
  return table.columns.filter(column => {
    const name = plainName(column);
    const known = MATCH_COLUMNS.has(name) || (MATCH_ANSWER_COLUMNS as readonly string[]).includes(name);
    if (!known || taken.has(name)) return true;
    taken.add(name);
    return false;
  });
}

/** What a person wrote besides an answer, with the empty cells of their columns; none where all of it is empty. */
function ownCells(
  row: TableRow,
  names: readonly string[],
  cell: (row: TableRow, column: 'reason' | 'note' | 'why') => string,
): ReadonlyMap<string, string> {
  const reason = cell(row, 'reason');
  const cells = new Map([
    // Match writes the reason of an end that was answered, and says so under why; it follows the answer.
    ['reason', cell(row, 'why') === `answered: ${reason}` ? '' : reason],
    ['note', cell(row, 'note')],
    ...names.map(name => [name, unguarded(row.cells.get(name) ?? '')] as const),
  ]);
  return [...cells.values()].some(text => text !== '') ? cells : new Map();
}

/** Without the apostrophe that keeps spreadsheets from taking a number such as -1.2.3 for a formula. */
export const unguarded = (text: string) => text.replace(/^'(?=[=+\-@])/, '');
