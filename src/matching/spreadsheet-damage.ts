import type { Finding } from '../model/finding.ts';

interface NumberedRow {
  readonly number: string;
  readonly file: string;
  readonly line: number;
}

/** A spreadsheet's own way of writing a date: 4-May, 2005-04-05, 04/05/2005, 38477. */
const DATE =
  /^(?:\d{1,2}[-. ]\p{L}{3,9}|\p{L}{3,9}[-. ]\d{1,4}|\d{4}-\d{2}-\d{2}(?:[ T].*)?|\d{1,2}\/\d{1,2}\/\d{2,4})$/u;

/**
 * Numbers that look like what a spreadsheet makes of them: dates, and numbers that stand twice where the row between
 * them is missing (3.1 for 3.10). They are reported and used as they stand; what they were is never guessed.
 */
export function spreadsheetDamage(rows: readonly NumberedRow[]): Finding[] {
  const findings: Finding[] = [];
  const seen = new Map<string, NumberedRow>();
  const finding = (rule: string, row: NumberedRow, message: string): Finding => ({
    rule,
    severity: 'warning',
    subject: row.file,
    message,
    place: { file: row.file, line: row.line },
  });
  for (const row of rows) {
    if (row.number === '') continue;
    if (DATE.test(row.number)) {
      findings.push(
        finding(
          'number-is-date',
          row,
          `${row.number} looks like a date; if a spreadsheet made it one, export the column as text.`,
        ),
      );
    }
    const key = `${row.file}\n${row.number}`;
    const before = seen.get(key);
    if (before) {
      const cut = /^\d+(?:\.\d+)+$/.test(row.number) && [before, row].some(r => follows(rows, r));
      findings.push(
        finding(
          'number-twice',
          row,
          cut
            ? `${row.number} stands here and in line ${before.line}; a spreadsheet may have cut ${row.number}0 - export the column as text.`
            : `${row.number} stands here and in line ${before.line}; both rows are matched, each by its words.`,
        ),
      );
    } else seen.set(key, row);
  }
  return findings;
}

/** Whether the row before this one ends in 9: 3.9, 3.1 was 3.10 before it was cut. */
function follows(rows: readonly NumberedRow[], row: NumberedRow): boolean {
  return /9$/.test(rows[rows.indexOf(row) - 1]?.number ?? '') && /1$/.test(row.number);
}
