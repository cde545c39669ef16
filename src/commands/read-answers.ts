import { nameColumns } from '../editing/columns.ts';
import { type Answer, pairCode } from '../matching/answers.ts';
import type { BareRow } from '../matching/bare-row.ts';
import type { Finding } from '../model/finding.ts';
import type { Table, TableRow } from '../model/table.ts';
import { readTable } from '../tables/read-table.ts';
import type { Ports } from './ports.ts';

const COLUMNS = ['pair', 'from_number', 'to_number', 'answer', 'instead', 'because'] as const;

/**
 * Reads what people filled in: `answer` is yes, no, withdrawn or new; `instead` names the new number that it is. Rows
 * left empty are no answers. A code that fits no row as they stand now is a finding: a text has changed since.
 */
export async function readAnswers(
  ports: Ports,
  files: readonly string[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): Promise<{ readonly answers: Answer[]; readonly findings: Finding[] }> {
  const answers: Answer[] = [];
  const findings: Finding[] = [];
  if (files.length === 0) return { answers, findings };
  const [old, next] = [byNumber(from), byNumber(to)];
  for (const file of files) {
    const table = readTable(file, await ports.files.read(file));
    const { cell } = nameColumns(table, COLUMNS);
    for (const row of table.rows) {
      const wrong = (message: string) => findings.push(finding(table, row, message));
      const answer = (cell(row, 'answer') ?? '').toLowerCase();
      const instead = cell(row, 'instead');
      if (answer === '' && instead === undefined) continue;
      const because = cell(row, 'because') ?? '';
      const code = cell(row, 'pair') ?? '';
      const ends = endsOf(code, old(cell(row, 'from_number')), next(cell(row, 'to_number')), from, to);
      if (!ends) {
        wrong(
          `The answer for ${code || 'a pair without a code'} fits no pair of these tables; ask again, a text or a place has changed.`,
        );
        continue;
      }
      const [i, j] = ends;
      if (instead !== undefined) {
        const heirs = next(instead);
        if (heirs.length !== 1 || i < 0) {
          wrong(`${instead} is not the number of exactly one new row; name one that is.`);
          continue;
        }
        answers.push({ kind: 'yes', from: i, to: heirs[0]!, because });
        if (j >= 0 && j !== heirs[0]) answers.push({ kind: 'no', from: i, to: j, because });
      } else if ((answer === 'yes' || answer === 'no') && i >= 0 && j >= 0) {
        answers.push({ kind: answer, from: i, to: j, because });
      } else if ((answer === 'withdrawn' || (answer === 'yes' && j < 0)) && i >= 0) {
        answers.push({ kind: 'withdrawn', from: i, because });
      } else if ((answer === 'new' || (answer === 'yes' && i < 0)) && j >= 0) {
        answers.push({ kind: 'new', to: j, because });
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
  for (const i of olds.length > 0 ? olds : [-1]) {
    for (const j of news.length > 0 ? news : [-1]) {
      if (pairCode(from[i], i, to[j], j) === code) return [i, j];
    }
  }
  return undefined;
}

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
