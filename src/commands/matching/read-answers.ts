import { nameColumns } from '../../editing/columns.ts';
import { type Answer, pairCode } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import type { Finding } from '../../model/finding.ts';
import type { Table, TableRow } from '../../model/table.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';

const COLUMNS = [
  'pair',
  'from_number',
  'to_number',
  'answer',
  'instead',
  'because',
  'by',
  'from_row',
  'to_row',
  'instead_row',
] as const;

/**
 * Reads what people filled in: `answer` is yes, no, withdrawn or new; `instead` names the new number that it is. Rows
 * left empty are no answers. A code that fits no row as they stand now is a finding: a text has changed since.
 *
 * A review writes the rows' positions as well (`from_row`, `to_row`, `instead_row`, from 1): rows without a number, or
 * with one that others print too, are found by them at once. The code still decides.
 */
export async function readAnswers(
  ports: Ports,
  files: readonly string[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): Promise<{ readonly answers: Answer[]; readonly findings: Finding[] }> {
  const tables = [];
  for (const file of files) tables.push(readTable(file, await ports.files.read(file)));
  return answersIn(tables, from, to);
}

export function answersIn(
  tables: readonly Table[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): { readonly answers: Answer[]; readonly findings: Finding[] } {
  const answers: Answer[] = [];
  const findings: Finding[] = [];
  if (tables.length === 0) return { answers, findings };
  const [old, next] = [byNumber(from), byNumber(to)];
  for (const table of tables) {
    const { cell } = nameColumns(table, COLUMNS);
    for (const row of table.rows) {
      const number = (column: 'from_number' | 'to_number' | 'instead') => unguarded(cell(row, column));
      const at = (rows: readonly BareRow[], column: 'from_row' | 'to_row' | 'instead_row') => {
        const position = Number(cell(row, column) ?? 0) - 1;
        return rows[position] === undefined ? -1 : position;
      };
      const wrong = (message: string) => findings.push(finding(table, row, message));
      const answer = (cell(row, 'answer') ?? '').toLowerCase();
      const insteadAt = at(to, 'instead_row');
      const instead = number('instead') ?? (to[insteadAt]?.number === '' ? '' : undefined);
      if (answer === '' && instead === undefined) continue;
      const by = cell(row, 'by');
      const said = { because: cell(row, 'because') ?? '', ...(by === undefined ? {} : { by }) };
      const code = cell(row, 'pair') ?? '';
      const [i0, j0] = [at(from, 'from_row'), at(to, 'to_row')];
      const ends =
        pairCode(from[i0], i0, to[j0], j0) === code
          ? ([i0, j0] as const)
          : endsOf(code, old(number('from_number')), next(number('to_number')), from, to);
      if (!ends) {
        wrong(
          `The answer for ${code || 'a pair without a code'} fits no pair of these tables; ask again, a text or a place has changed.`,
        );
        continue;
      }
      const [i, j] = ends;
      if (instead !== undefined) {
        const heirs = to[insteadAt]?.number === instead ? [insteadAt] : next(instead);
        if (heirs.length !== 1 || i < 0) {
          wrong(`${instead} is not the number of exactly one new row; name one that is.`);
          continue;
        }
        answers.push({ kind: 'yes', from: i, to: heirs[0]!, ...said });
        if (j >= 0 && j !== heirs[0]) answers.push({ kind: 'no', from: i, to: j, ...said });
      } else if ((answer === 'yes' || answer === 'no') && i >= 0 && j >= 0) {
        answers.push({ kind: answer, from: i, to: j, ...said });
      } else if ((answer === 'withdrawn' || (answer === 'yes' && j < 0)) && i >= 0) {
        answers.push({ kind: 'withdrawn', from: i, ...said });
      } else if ((answer === 'new' || (answer === 'yes' && i < 0)) && j >= 0) {
        answers.push({ kind: 'new', to: j, ...said });
      } else if (answer !== 'no') {
        wrong(`${answer} is no answer here; write yes, no, withdrawn or new, or the right number under instead.`);
      }
    }
  }
  return { answers, findings };
}

/** Which rows a code means. Numbers may stand twice, so the code decides among those that print them. */
function endsOf(
  code: string,
  olds: readonly number[],
  news: readonly number[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): readonly [number, number] | undefined {
  // An empty number may mean rows that print none, or no row at all: the end of an old row, a new one.
  for (const i of [...olds, -1]) {
    for (const j of [...news, -1]) {
      if (pairCode(from[i], i, to[j], j) === code) return [i, j];
    }
  }
  return undefined;
}

/** Without the apostrophe that keeps spreadsheets from taking a number such as -1.2.3 for a formula. */
const unguarded = (number: string | undefined) => number?.replace(/^'(?=[=+\-@])/, '');

function byNumber(rows: readonly BareRow[]): (number: string | undefined) => readonly number[] {
  const known = new Map<string, number[]>();
  rows.forEach((row, at) => {
    known.set(row.number, [...(known.get(row.number) ?? []), at]);
  });
  return number => known.get(number ?? '') ?? [];
}

function finding(table: Table, row: TableRow, message: string): Finding {
  return {
    rule: 'answer',
    severity: 'warning',
    subject: table.file,
    message,
    place: { file: table.file, line: row.line },
  };
}
