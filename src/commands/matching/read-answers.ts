import { nameColumns } from '../../editing/columns.ts';
import { type Answer, isPairCode, type PairAt } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { counted } from '../../model/counted.ts';
import type { Finding } from '../../model/finding.ts';
import type { Table, TableRow } from '../../model/table.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';
import { rowsOfCodes } from './answer-rows.ts';
import { crosswalkJsonTable } from './crosswalk-json-table.ts';

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

export interface ReadAnswers {
  readonly answers: readonly Answer[];
  /** Lines that give no answer that can be used: what they say is kept, not followed. */
  readonly unused: readonly GivenLine[];
  /** Lines whose answers are used. */
  readonly used: number;
  readonly findings: readonly Finding[];
}

/** What stands under `why` for an answer whose rows are gone, before the rows. Read back by the next round. */
export const FITS_NO_PAIR = 'fits no pair of these tables: ';

/**
 * Reads what people filled in: `answer` is yes, no, withdrawn or new; `instead` names the right number, a new one for
 * an old row and an old one for a row that was told as new. Lines left empty are no answers.
 *
 * The code finds the rows. A code that no rows have as they stand now, two answers that contradict each other and
 * numbers that are no longer those of the rows are findings.
 */
export async function readAnswers(
  ports: Ports,
  files: readonly string[],
  from: readonly BareRow[],
  to: readonly BareRow[],
): Promise<ReadAnswers> {
  return answersIn(await readAnswerTables(ports, files), from, to);
}

/** Reads files of answers: csv, workbooks, and the json that `match` writes. */
export async function readAnswerTables(ports: Ports, files: readonly string[]): Promise<Table[]> {
  const tables: Table[] = [];
  for (const file of files) {
    const bytes = await ports.files.read(file);
    tables.push(crosswalkJsonTable(file, bytes) ?? readTable(file, bytes));
  }
  return tables;
}

/** An answer and the line that it stands in. */
interface Said {
  readonly line: GivenLine;
  readonly answer: Answer;
}

export function answersIn(tables: readonly Table[], from: readonly BareRow[], to: readonly BareRow[]): ReadAnswers {
  const findings: Finding[] = [];
  const said: Said[] = [];
  const unused: GivenLine[] = [];
  const numbers = { from: rowsByNumber(from), to: rowsByNumber(to) };
  for (const table of tables) {
    const { lines, columns } = givenLines(table, from, to);
    if (lines.length > 0 && !columns.has('pair')) {
      const message = `${table.file} has no column pair, by which answers find their rows; take it over from the crosswalk that match wrote.`;
      findings.push(finding(table, lines[0]!.row, message));
      unused.push(...lines);
      continue;
    }
    for (const line of lines) {
      const meant = answersOf(line, columns, from, to, numbers);
      if (Array.isArray(meant)) said.push(...meant.map(answer => ({ line, answer })));
      else {
        unused.push(line);
        if (meant !== undefined) findings.push(finding(table, line.row, meant as string));
      }
    }
    findings.push(...otherNumbers(table, lines, columns, from, to));
  }
  const against = contradictions(said);
  for (const [line, other] of against) {
    unused.push(line);
    const where = `${other.table.file === line.table.file ? '' : `${other.table.file}, `}line ${other.row.line}`;
    const message = `This answer and that of ${where} contradict each other, so neither is used; take one of them away.`;
    findings.push(finding(line.table, line.row, message));
  }
  const standing = said.filter(({ line }) => !against.has(line));
  return {
    answers: joined(standing.map(s => s.answer)),
    unused,
    used: new Set(standing.map(s => s.line)).size,
    findings,
  };
}

type Columns = ReturnType<typeof nameColumns<(typeof COLUMNS)[number]>>;

/** The lines of a table in which anything is filled in. */
function givenLines(table: Table, from: readonly BareRow[], to: readonly BareRow[]) {
  const columns = nameColumns(table, COLUMNS);
  const cell = (row: TableRow, column: (typeof COLUMNS)[number]) => unguarded(columns.cell(row, column) ?? '').trim();
  const rows = table.rows.filter(row =>
    (['answer', 'instead', 'instead_row', 'because'] as const).some(column => cell(row, column) !== ''),
  );
  const found = rowsOfCodes(
    rows.map(row => ({
      code: cell(row, 'pair').toLowerCase(),
      fromNumber: cell(row, 'from_number'),
      fromTitle: cell(row, 'from_title'),
      toNumber: cell(row, 'to_number'),
      toTitle: cell(row, 'to_title'),
      fromAt: Number(cell(row, 'from_row') || 0) - 1,
      toAt: Number(cell(row, 'to_row') || 0) - 1,
    })),
    from,
    to,
  );
  const lines = rows.map((row, at): GivenLine => {
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
      ends: found[at],
    };
  });
  return { lines, columns };
}

type ByNumber = (number: string) => readonly number[];

/** What a line answers; a sentence that says why it is not used; undefined where it is a remark only. */
function answersOf(
  line: GivenLine,
  columns: Columns,
  from: readonly BareRow[],
  to: readonly BareRow[],
  numbers: { readonly from: ByNumber; readonly to: ByNumber },
): Answer[] | string | undefined {
  const { answer, instead, code, ends, because, by, date } = line;
  const insteadAt = Number(columns.cell(line.row, 'instead_row') ?? 0) - 1;
  const other = instead !== '' || to[insteadAt] !== undefined;
  if (answer === '' && !other) return undefined;
  if (!ends) return lostSentence(line, from, to);
  const said = { because, ...(by === '' ? {} : { by }), ...(date === '' ? {} : { date }) };
  const [i, j] = ends;
  const same = answer === 'yes' && instead !== '' && instead === to[j]?.number;
  if (other && !same) {
    if (answer === 'yes' || answer === 'withdrawn' || answer === 'new') {
      return `This line says ${answer} and names ${instead || 'another row'} instead; leave one of the two.`;
    }
    const side = i < 0 ? 'old' : 'new';
    const rows: number[] = [];
    const byNumber = i < 0 ? numbers.from : numbers.to;
    const one = byNumber(instead).length > 0;
    for (const number of one ? [instead] : instead.split(/[;|]/).map(part => part.trim())) {
      const bearers = i >= 0 && to[insteadAt]?.number === number ? [insteadAt] : byNumber(number);
      if (bearers.length !== 1) {
        const many = bearers.length === 0 ? `No ${side} row has` : `${counted(bearers.length, `${side} row`)} have`;
        return `${many} the number ${number || '(none)'} that stands under instead; name one that exactly one ${side} row prints.`;
      }
      rows.push(bearers[0]!);
    }
    const yes = rows.map((row): Answer => ({ kind: 'yes', from: i < 0 ? row : i, to: i < 0 ? j : row, ...said }));
    const rejected = i >= 0 && j >= 0 && !rows.includes(j);
    return rejected ? [...yes, { kind: 'no', from: i, to: j, ...said }] : yes;
  }
  if ((answer === 'yes' || answer === 'no') && i >= 0 && j >= 0) return [{ kind: answer, from: i, to: j, ...said }];
  if ((answer === 'withdrawn' || (answer === 'yes' && j < 0)) && i >= 0) {
    return [{ kind: 'withdrawn', from: i, ...said }];
  }
  if ((answer === 'new' || (answer === 'yes' && i < 0)) && j >= 0) return [{ kind: 'new', to: j, ...said }];
  if (answer === 'no') {
    return i >= 0
      ? `No says that ${nameOf(from[i])} did not end, but not what it became; write the new number under instead.`
      : `No says that ${nameOf(to[j])} is not new, but not where it came from; write the old number under instead.`;
  }
  return `${answer || code} is no answer here; write yes, no, withdrawn or new, or the right number under instead.`;
}

const nameOf = (row: BareRow | undefined) => row?.number || row?.title || 'this row';

/** Why a line finds no rows. */
function lostSentence(line: GivenLine, from: readonly BareRow[], to: readonly BareRow[]): string {
  const { code, about, answer, instead } = line;
  const what = [answer, instead && `instead ${instead}`].filter(Boolean).join(', ');
  if (code === '')
    return `The answer ${what} has no code under pair; take it over from the crosswalk that match wrote.`;
  if (!isPairCode(code)) {
    return `${code} is no code of a pair, so the answer ${what} finds no rows; take the code over from the crosswalk that match wrote.`;
  }
  const rows = about === '' ? '' : ` (${about})`;
  const gone = (['from', 'to'] as const).flatMap(side => {
    const [number, title] = [line.row.cells.get(`${side}_number`) ?? '', line.row.cells.get(`${side}_title`) ?? ''];
    const list = side === 'from' ? from : to;
    if (number === '' && title === '') return [];
    if (list.some(row => (number !== '' && row.number === number) || (title !== '' && row.title === title))) return [];
    return [`the ${side === 'from' ? 'old' : 'new'} table has no row ${`${number} ${title}`.trim()}`];
  });
  const cause =
    gone.length > 0 ? gone.join(', and ') : 'the words, the number or the place of one of its rows have changed since';
  return `The answer ${what} for ${code}${rows} fits no pair of these tables: ${cause}. Answer it again.`;
}

/** Lines that cannot both be followed, each with the other one. */
function contradictions(said: readonly Said[]): Map<GivenLine, GivenLine> {
  const against = new Map<GivenLine, GivenLine>();
  const groups = new Map<string, Said[]>();
  const into = (key: string, one: Said) => {
    const known = groups.get(key);
    if (known) known.push(one);
    else groups.set(key, [one]);
  };
  for (const one of said) {
    const { answer: a } = one;
    if (a.kind === 'yes' || a.kind === 'no') into(`${a.from}>${a.to}`, one);
    if (a.kind === 'yes' || a.kind === 'withdrawn') into(`${a.from}>`, one);
    if (a.kind === 'yes' || a.kind === 'new') into(`>${a.to}`, one);
  }
  for (const group of groups.values()) {
    const yes = group.filter(s => s.answer.kind === 'yes');
    const other = group.filter(s => s.answer.kind !== 'yes');
    // Two heirs of one row are a split; only with its end do they not agree.
    if (yes.length === 0 || other.length === 0) continue;
    for (const { line } of yes) if (!against.has(line)) against.set(line, other[0]!.line);
    for (const { line } of other) if (!against.has(line)) against.set(line, yes[0]!.line);
  }
  return against;
}

/** Answers that several lines give are one, with all that was said of it. */
function joined(answers: readonly Answer[]): Answer[] {
  const byKey = new Map<string, Answer>();
  for (const answer of answers) {
    const key = JSON.stringify([answer.kind, 'from' in answer && answer.from, 'to' in answer && answer.to]);
    const known = byKey.get(key);
    const both = (a = '', b = '') => [...new Set([a, b].filter(Boolean))].join(' | ');
    byKey.set(
      key,
      known === undefined
        ? answer
        : {
            ...known,
            because: both(known.because, answer.because),
            ...(known.by || answer.by ? { by: both(known.by, answer.by) } : {}),
            ...(known.date || answer.date ? { date: both(known.date, answer.date) } : {}),
          },
    );
  }
  return [...byKey.values()];
}

const SHOWN = 3;

/** One finding a table for numbers that are not those of the rows that the codes mean: a spreadsheet changed them. */
function otherNumbers(
  table: Table,
  lines: readonly GivenLine[],
  columns: Columns,
  from: readonly BareRow[],
  to: readonly BareRow[],
): Finding[] {
  const other = lines.flatMap(({ row, ends }) =>
    (['from', 'to'] as const).flatMap(side => {
      const printed = (side === 'from' ? from[ends?.[0] ?? -1] : to[ends?.[1] ?? -1])?.number;
      const cell = unguarded(columns.cell(row, `${side}_number`) ?? '');
      return printed === undefined || cell === '' || cell === printed ? [] : [{ row, cell, printed }];
    }),
  );
  if (other.length === 0) return [];
  const named = other.slice(0, SHOWN).map(o => `${o.cell} for ${o.printed || 'none'} in line ${o.row.line}`);
  const more = other.length > SHOWN ? ' …' : '';
  return [
    {
      rule: 'answer-number',
      severity: 'warning',
      subject: table.file,
      message: `${counted(other.length, 'number')} beside answers ${other.length === 1 ? 'is' : 'are'} not what the rows print (${named.join(', ')}${more}); the codes under pair tell the rows, so the answers are used, but look at what stands under instead.`,
      place: { file: table.file, line: other[0]!.row.line },
    },
  ];
}

/** Without the apostrophe that keeps spreadsheets from taking a number such as -1.2.3 for a formula. */
const unguarded = (text: string) => text.replace(/^'(?=[=+\-@])/, '');

function rowsByNumber(rows: readonly BareRow[]): ByNumber {
  const known = new Map<string, number[]>();
  rows.forEach((row, at) => {
    const list = known.get(row.number);
    if (list) list.push(at);
    else known.set(row.number, [at]);
  });
  return number => known.get(number) ?? [];
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
