import type { Finding } from '../model/finding.ts';

interface NumberedRow {
  readonly number: string;
  readonly file: string;
  readonly line: number;
  /** Position of the row that it stands under; -1 or absent where none is known. */
  readonly parent?: number;
}

/** Months as spreadsheets write them: English, German and French, in full and cut short. */
const MONTHS =
  'january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|' +
  'januar|februar|märz|mai|juni|juli|oktober|dezember|jän|mär|mrz|okt|dez|' +
  'janvier|février|mars|avril|juin|juillet|août|septembre|octobre|novembre|décembre|janv|févr|avr|juil|déc';
const MONTH = new RegExp(`^(?:${MONTHS})$`, 'iu');
/** 4-May, 04. Mai, 4-May-2005; a month's name may end in a point. */
const DAY_MONTH = /^\d{1,2}(?:[-. ]|\. )(\p{L}{3,9})\.?(?:[-. ](?:\d{2}|\d{4}))?$/u;
/** May-04, Mai 2004: a year has two digits or four. */
const MONTH_YEAR = /^(\p{L}{3,9})(?:[-. ]|\. )(?:\d{2}|\d{4})$/u;
/** 2005-04-05, 04/05/2005, 04.05.2005; 04.05.06 may as well be a number of three parts. */
const DIGITS =
  /^(?:\d{4}-\d{2}-\d{2}(?:[ T].*)?|\d{1,2}\/\d{1,2}\/(?:\d{2}|\d{4})|(?:0?[1-9]|[12]\d|3[01])\.(?:0?[1-9]|1[0-2])\.(?:19|20)\d{2})$/;

/**
 * Numbers that look like what a spreadsheet makes of them: dates, and cut ones (3.1 for 3.10), which stand twice or
 * where another one is due. They are reported and used as they stand; what they were is never guessed.
 */
export function spreadsheetDamage(rows: readonly NumberedRow[]): Finding[] {
  const findings: Finding[] = [];
  const times = new Map<string, number>();
  const keyOf = (row: NumberedRow) => `${row.file}\n${row.number}`;
  for (const row of rows) times.set(keyOf(row), (times.get(keyOf(row)) ?? 0) + 1);
  const last = new Map<string, NumberedRow>();
  const cuts = cutNumbers(rows);
  for (const row of rows) {
    if (row.number === '') continue;
    const finding = (rule: string, message: string) =>
      findings.push({
        rule,
        severity: 'warning',
        subject: row.file,
        message,
        place: { file: row.file, line: row.line },
      });
    if (isDate(row.number)) {
      finding(
        'number-is-date',
        `${row.number} looks like a date; if a spreadsheet made it one, export the column as text.`,
      );
    }
    const before = last.get(keyOf(row));
    last.set(keyOf(row), row);
    if (before) {
      const cut = cuts.get(before) ?? cuts.get(row);
      finding(
        'number-twice',
        cut
          ? `${row.number} stands here and in line ${before.line}; a spreadsheet may have cut ${cut.due} - export the column as text.`
          : `${row.number} stands here and in line ${before.line}; both rows are matched, each by its words.`,
      );
    } else if (times.get(keyOf(row)) === 1 && cuts.get(row)?.goesOn) {
      const { due, after } = cuts.get(row)!;
      finding(
        'number-cut',
        `${row.number} stands behind ${after}, where ${due} is due; a spreadsheet may have cut it - export the column as text.`,
      );
    }
  }
  return findings;
}

interface Cut {
  /** What is due by the row before: 3.10 behind 3.9. */
  readonly due: string;
  readonly after: string;
  /** Whether the rows around leave no doubt: 3.11 follows, or 3.7, 3.8, 3.9 went before. */
  readonly goesOn: boolean;
}

/**
 * Rows whose number is that which is due without its last zeros, in the order of the rows of one parent.
 *
 *   3.8, 3.9, 3.1, 3.11, … 3.19, 3.2, 3.21     cut: 3.9 before 3.1 is the order of counting
 *   616.08, 616.09, 616.1, 616.11              a decimal classification: all stand in the order of their digits
 */
function cutNumbers(rows: readonly NumberedRow[]): ReadonlyMap<NumberedRow, Cut> {
  const series = new Map<string, { readonly row: NumberedRow; readonly last: string }[]>();
  for (const row of rows) {
    const [, parent, last] = /^(\d+(?:\.\d+)*)\.(\d{1,6})$/.exec(row.number) ?? [];
    if (last === undefined) continue;
    const key = `${row.file}\n${parent}`;
    const known = series.get(key);
    if (known) known.push({ row, last });
    else series.set(key, [{ row, last }]);
  }
  const cuts = new Map<NumberedRow, Cut>();
  for (const list of series.values()) {
    if (!countsOverDigits(list.map(one => one.last))) continue;
    list.forEach(({ row, last }, at) => {
      const behind = Number(list[at - 1]?.last ?? -1);
      const due = String(behind + 1);
      if (!isCutOf(last, due)) return;
      // What stands below a row is no sign that the rows beside it go on.
      if (list.slice(at + 1).some(later => rows[later.row.parent ?? -1] === row)) return;
      const counting = [2, 3].every(back => Number(list[at - back]?.last) === behind + 1 - back);
      const parent = row.number.slice(0, -last.length);
      cuts.set(row, {
        due: parent + due,
        after: list[at - 1]!.row.number,
        goesOn: Number(list[at + 1]?.last) === behind + 2 || (counting && at === list.length - 1),
      });
    });
  }
  return cuts;
}

const isCutOf = (last: string, due: string) => /0$/.test(due) && due !== last && due.replace(/0+$/, '') === last;

/** Whether numbers count on somewhere against the order of their digits: 9, 10; 9, 11; or 9 and a cut 10. */
function countsOverDigits(lasts: readonly string[]): boolean {
  return lasts.some((last, at) => {
    const before = lasts[at - 1];
    if (before === undefined || before <= last) return false;
    const step = Number(last) - Number(before);
    return step === 1 || step === 2 || isCutOf(last, String(Number(before) + 1));
  });
}

function isDate(number: string): boolean {
  if (DIGITS.test(number)) return true;
  const month = (DAY_MONTH.exec(number) ?? MONTH_YEAR.exec(number))?.[1];
  // MAR-10 is an office's own code: no spreadsheet writes a month in capitals alone.
  return month !== undefined && MONTH.test(month) && month !== month.toUpperCase();
}
