import { COMMENT_TYPES, type CommentType } from '../model/comment.ts';
import type { Finding } from '../model/finding.ts';
import { capital, counted } from '../model/said-words.ts';
import { columnOf, type FormColumn, type FormHead, headOf } from './comments-columns.ts';

/** A table of a form, of whatever file: a sheet, a table of a document, a csv file. */
export interface FormGrid {
  /** For messages: `table 2`, `sheet Comments`; empty where a file is one table. */
  readonly place: string;
  readonly rows: readonly FormGridRow[];
}

export interface FormGridRow {
  /** As people count it in the file. */
  readonly line: number;
  /** The text of each column; a merged cell stands in the first column, and in each row, that it covers. */
  readonly cells: readonly string[];
  /** Columns whose text begins in this row, and is not only carried down by a merged cell. */
  readonly own: ReadonlySet<number>;
  /** Columns whose cell is stored as a number or a date, so that a program may have altered what was typed. */
  readonly stored?: ReadonlySet<number>;
  /** The text of a single cell that covers at least half of the table: a heading inside it. */
  readonly across?: string;
}

/** One comment as its form says it. */
export interface FormComment {
  readonly file: string;
  /** Index of the grid, and of the row in it. */
  readonly grid: number;
  readonly row: number;
  readonly line: number;
  /** For messages: `Table 2, row 5 (UVA)`. */
  readonly where: string;
  readonly by: string;
  readonly lineNumber: string;
  readonly clause: string;
  /** The clause's cell is stored as a number or a date. */
  readonly clauseStored: boolean;
  readonly paragraph: string;
  readonly type: CommentType | undefined;
  readonly comment: string;
  readonly proposed: string;
  readonly observation: string;
}

/** A table's head, and the rows from it to the next head. */
export interface FormPart {
  readonly grid: number;
  readonly head: FormHead;
  /** Index of the head's row. */
  readonly at: number;
  readonly rows: readonly number[];
}

export interface ReadForm {
  readonly comments: readonly FormComment[];
  readonly parts: readonly FormPart[];
  readonly findings: readonly Finding[];
}

const SAID = ['by', 'line', 'clause', 'paragraph', 'type', 'comment', 'proposed'] as const;

/**
 * Reads the comments of a form. The head is found by what it says, in any row of any table; a head repeated on the next
 * page, headings across the table and rows without a comment are passed over.
 *
 * @param by who comments where the form does not say so
 */
export function readForm(file: string, grids: readonly FormGrid[], by?: string): ReadForm {
  const findings: Finding[] = [];
  const say = (rule: string, severity: Finding['severity'], grid: FormGrid | undefined, line: number, told: string) => {
    const place = line > 0 ? { file, line } : { file };
    findings.push({ rule, severity, subject: file, message: grid?.place ? `${grid.place}: ${told}` : told, place });
  };
  const parts = grids.flatMap((grid, at) => partsOf(grid, at, say));
  if (parts.length === 0 && findings.length === 0) {
    say(
      'form-no-head',
      'error',
      undefined,
      0,
      `${file} has no table with the columns of the comment form (MB/NC, Clause, Type of comment, Comments …); nothing of it was read.`,
    );
  }
  const rows = parts.flatMap(part => part.rows.map(row => ({ part, row })));
  const named = new Set(rows.map(({ part, row }) => cell(grids[part.grid]!.rows[row]!, part.head, 'by')));
  named.delete('');
  const only = named.size === 1 ? [...named][0]! : undefined;
  const comments: FormComment[] = [];
  const untyped: string[] = [];
  let empty = 0;
  for (const { part, row } of rows) {
    const grid = grids[part.grid]!;
    const read = grid.rows[row]!;
    if (read.across !== undefined) {
      say(
        'form-heading',
        'note',
        grid,
        read.line,
        `"${short(read.across)}" stands across the table and is no comment.`,
      );
      continue;
    }
    if (isNumbering(read) || !SAID.some(c => part.head.has(c) && read.own.has(part.head.get(c)!))) continue;
    const of = (column: FormColumn) => cell(read, part.head, column);
    if (of('comment') === '' && of('proposed') === '') {
      empty++;
      continue;
    }
    const who = of('by') || by || only;
    if (who === undefined) {
      const told = `row ${read.line} does not say under MB/NC who comments; fill it in or give --by NAME. It was not read.`;
      say('commenter-missing', 'error', grid, 0, told);
      continue;
    }
    const type = typeOf(of('type'));
    if (type === undefined && of('type') !== '') {
      const told = `row ${read.line} (${who}) gives "${short(of('type'))}" as the type of comment`;
      say('type-unknown', 'warning', grid, 0, `${told}; write ge, te or ed and read it again.`);
    } else if (type === undefined) untyped.push(`${grid.place === '' ? '' : `${grid.place}, `}row ${read.line}`);
    comments.push({
      file,
      grid: part.grid,
      row,
      line: read.line,
      where: `${grid.place === '' ? 'Row' : `${capital(grid.place)}, row`} ${read.line} (${who})`,
      by: who,
      lineNumber: of('line'),
      clause: of('clause'),
      clauseStored: part.head.has('clause') && (read.stored?.has(part.head.get('clause')!) ?? false),
      paragraph: of('paragraph'),
      type,
      comment: of('comment'),
      proposed: of('proposed'),
      observation: of('observation'),
    });
  }
  if (untyped.length > 0) {
    // Once for the form: a reviewer who has left out the column would be told so for each row.
    const rows =
      untyped.length > 6 ? `${untyped.slice(0, 5).join('; ')} and ${untyped.length - 5} more` : untyped.join('; ');
    const told = `${counted(untyped.length, 'comment gives', 'comments give')} no type (${rows})`;
    say(
      'type-missing',
      'warning',
      undefined,
      0,
      `${told}; write ge (general), te (technical) or ed (editorial) and read the form again.`,
    );
  }
  if (parts.length > 0 && comments.length === 0 && !findings.some(f => f.severity !== 'note')) {
    say('form-empty', 'warning', undefined, 0, `${file} is a comment form without any comment.`);
  } else if (empty > 0) {
    say(
      'rows-without-comment',
      'note',
      undefined,
      0,
      `${counted(empty, 'row says', 'rows say')} nothing under Comments.`,
    );
  }
  return { comments, parts, findings };
}

type Say = (rule: string, severity: Finding['severity'], grid: FormGrid, line: number, told: string) => void;

/**
 * The heads of a table, each with its rows. A head over two rows is read as one; two heads on top of each other that
 * contradict one another are refused, since choosing one would be a guess.
 */
function partsOf(grid: FormGrid, at: number, say: Say): FormPart[] {
  const parts: (FormPart & { rows: number[] })[] = [];
  let refused = false;
  for (const [row, read] of grid.rows.entries()) {
    const found = headOf(read.cells);
    const before = parts.at(-1);
    // Directly below a head, with nothing between.
    const below = before && before.rows.length === 0 && before.at === row - 1 ? before : undefined;
    if (!found) {
      const more = below && moreOfHead(read, below.head);
      if (more) parts.splice(-1, 1, { ...below, at: row, head: new Map([...below.head, ...more]) });
      else if (!refused) before?.rows.push(row);
    } else if (found.twice.length > 0) {
      const names = found.twice.map(c => read.cells.filter(text => columnOf(text) === c).join('" and "'));
      const told = `the head in row ${read.line} has two columns for one thing ("${names.join('", "')}"); rename one of them. The table was not read.`;
      say('form-column-twice', 'error', grid, read.line, told);
      refused = true;
    } else if (below && agrees(below.head, found.head)) {
      parts.splice(-1, 1, { ...below, at: row, head: new Map([...below.head, ...found.head]) });
    } else if (below) {
      const told = `rows ${grid.rows[below.at]!.line} and ${read.line} both look like the head of the table and differ; delete one. The table was not read.`;
      say('form-two-heads', 'error', grid, read.line, told);
      parts.pop();
      refused = true;
    } else if (!before || refused || !sameHead(before.head, found.head)) {
      refused = false;
      parts.push({ grid: at, head: found.head, at: row, rows: [] });
    }
  }
  for (const { head, at: row } of parts) {
    if (head.has('clause') || head.has('line')) continue;
    const { line } = grid.rows[row]!;
    const told = `the head in row ${line} has no column for the clause; its comments count for the whole draft.`;
    say('form-no-clause', 'warning', grid, line, told);
  }
  return parts;
}

/** The second row of a head whose first row names the groups: every cell is a column of the template, none known yet. */
function moreOfHead({ cells, own }: FormGridRow, head: FormHead): [FormColumn, number][] | undefined {
  const more = cells.flatMap((text, at): [FormColumn | undefined, number][] =>
    own.has(at) && text.trim() !== '' ? [[columnOf(text), at]] : [],
  );
  const isMore = more.length > 0 && more.every(([column]) => column !== undefined && !head.has(column));
  return isMore ? (more as [FormColumn, number][]) : undefined;
}

/** Whether what both heads know stands in the same columns. */
function agrees(above: FormHead, below: FormHead): boolean {
  return [...above].every(([column, at]) => (below.get(column) ?? at) === at);
}

function sameHead(a: FormHead, b: FormHead): boolean {
  return a.size === b.size && [...a].every(([column, at]) => b.get(column) === at);
}

function cell(row: FormGridRow, head: FormHead, column: FormColumn): string {
  const at = head.get(column);
  return at === undefined ? '' : (row.cells[at] ?? '').trim();
}

/** `1 | 2 | (3) | 4`: the template numbers its columns in a row below or above the head. */
function isNumbering({ cells, own }: FormGridRow): boolean {
  const filled = cells.filter((text, at) => own.has(at) && text.trim() !== '');
  return filled.length >= 3 && filled.every(text => /^\(?\d{1,2}\)?$/.test(text.trim()));
}

const SPELLED: Readonly<Record<string, CommentType>> = { general: 'ge', technical: 'te', editorial: 'ed' };

/** One of the three types by its code or its whole word, in any case; nothing else is taken for one. */
export function typeOf(said: string): CommentType | undefined {
  const word = said.trim().toLowerCase().replace(/\.$/, '');
  return COMMENT_TYPES.find(t => t === word) ?? (Object.hasOwn(SPELLED, word) ? SPELLED[word] : undefined);
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 57).trimEnd()}…` : line;
}
