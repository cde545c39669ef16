import { nameColumns } from '../../editing/columns.ts';
import type { PairAt } from '../../matching/answers.ts';
import type { Table, TableRow } from '../../model/table.ts';
import type { AskedPair, FindRows } from './answer-rows.ts';

const COLUMNS = [
  'pair',
  'from_number',
  'from_title',
  'to_number',
  'to_title',
  'why',
  'answer',
  'instead',
  'because',
  'by',
  'date',
  'from_row',
  'to_row',
  'instead_row',
] as const;

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
  /** Numbers and titles of the rows as they stand there. */
  readonly about: string;
  /** The rows that it is about; absent where the tables have no such rows. */
  readonly ends: PairAt | undefined;
}

/** What stands under `why` for an answer whose rows are gone, before the rows. Read back by the next round. */
export const FITS_NO_PAIR = 'fits no pair of these tables: ';

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
  const rows = table.rows.filter(row =>
    (['answer', 'instead', 'instead_row', 'because'] as const).some(column => cell(row, column) !== ''),
  );
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
      about: sides.some(side => side !== '')
        ? sides.map(side => side || '-').join(' → ')
        : why.startsWith(FITS_NO_PAIR)
          ? why.slice(FITS_NO_PAIR.length)
          : '',
    };
  });
  return { table, columns, asked, lines };
}

/** Without the apostrophe that keeps spreadsheets from taking a number such as -1.2.3 for a formula. */
export const unguarded = (text: string) => text.replace(/^'(?=[=+\-@])/, '');
