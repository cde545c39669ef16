import type { Columns } from '../../carryover/jobs/columns.ts';
import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import type { Database, Row, TheirColumn, TheirTable } from '../../databases/database.ts';
import { literal, quoted } from '../../databases/quoted.ts';
import type { DateColumn } from '../jobs/job-days.ts';

const ROLES = ['number', 'type', 'state', 'title', 'edition'] as const;

/** Between the days of a rule: a sign that no cell has for a letter. */
const BETWEEN = '\u001f';

/** Their table as SQL over the alias `t`: the same words for finding cases, for counting them and for joining lines to them. */
export interface JobCells {
  /** `"schema"."table" t` */
  readonly from: string;
  readonly key: readonly string[];
  /** `number`, `is_number`, `type`, `state`, `title`, `edition`, in this order. */
  readonly cited: readonly string[];
  readonly job: string;
  readonly typeCell: string;
  /** The job where the policy names it, else ''. */
  readonly earlyJob: string;
  /** The cells by which the policy decides, in one text. */
  readonly days: string;
  /** Cells in their places, as a file would have them. */
  readonly ofCase: (row: Row) => string[];
  readonly ofDays: (days: string) => string[];
  readonly ofJob: (job: string) => string[];
  /** What a number cell shows and stores where it is no text. */
  readonly numeric: (row: Row) => readonly string[];
}

export const CASE_COLUMNS = ['number', 'is_number', 'type', 'state', 'title', 'edition'] as const;

export function jobCells(
  db: Database,
  theirs: TheirTable,
  columns: Columns,
  policy: JobPolicy | undefined,
  dates: readonly DateColumn[],
): JobCells {
  const { dialect } = db;
  const columnOf = (role: keyof Columns): TheirColumn | undefined => {
    const found = columns[role];
    return found && theirs.columns[found.at];
  };
  const cellOf = (role: keyof Columns) => {
    const column = columnOf(role);
    return column ? dialect.cell(column) : "''";
  };
  const job = columns.job ? dialect.trimmed(cellOf('job')) : "''";
  const early = policy?.earlyJobs ?? [];
  const days = dates.map(d => dialect.cell(theirs.columns[d.at]!));
  const blank = () => new Array<string>(theirs.columns.length).fill('');
  return {
    from: `${quoted(theirs.schema)}.${quoted(theirs.name)} t`,
    key: theirs.key.map(c => dialect.column('t', c)),
    cited: CASE_COLUMNS.map(c => (c === 'is_number' ? dialect.isNumber(columnOf('number')!) : cellOf(c))),
    job,
    typeCell: columns.type ? `substr(${cellOf('type')}, 1, 200)` : "''",
    earlyJob:
      early.length > 0 && columns.job
        ? `case when ${job} in (${early.map(literal).join(', ')}) then ${job} else '' end`
        : "''",
    days: days.length > 0 ? days.join(` || ${literal(BETWEEN)} || `) : "''",
    ofCase: row => {
      const cells = blank();
      for (const role of ROLES) {
        const found = columns[role];
        if (found) cells[found.at] = String(row[role]);
      }
      return cells;
    },
    ofDays: text => {
      const cells = blank();
      for (const [n, cell] of text.split(BETWEEN).entries()) if (dates[n]) cells[dates[n].at] = cell;
      return cells;
    },
    ofJob: text => {
      const cells = blank();
      if (columns.job) cells[columns.job.at] = text;
      return cells;
    },
    numeric: row => (Number(row.is_number) === 1 ? numbersShown(String(row.number)) : NO_NUMBER),
  };
}

const NO_NUMBER: readonly string[] = [];

/** 3.10 of a column with two decimals may have been 3.1 as well, and 3 of one that keeps none may have been 3.0. */
function numbersShown(text: string): readonly string[] {
  if (!/^-?\d+(?:\.\d+)?$/.test(text)) return [text];
  const bare = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return [...new Set([text, bare, bare.includes('.') ? bare : `${bare}.0`])];
}
