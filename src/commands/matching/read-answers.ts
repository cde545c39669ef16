import type { Answer } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { counted } from '../../model/counted.ts';
import type { Finding } from '../../model/finding.ts';
import type { Table, TableRow } from '../../model/table.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';
import { type FindRows, findsRows } from './answer-rows.ts';
import { answersOf, rowsByNumber } from './answers-of-line.ts';
import { crosswalkJsonTable, placedInFile } from './crosswalk-json-table.ts';
import { type AnswerColumns, type GivenLine, givenLines, unguarded } from './given-lines.ts';

export interface ReadAnswers {
  readonly answers: readonly Answer[];
  /** Lines that give no answer that can be used: what they say is kept, not followed. */
  readonly unused: readonly GivenLine[];
  /** Lines whose answers are used. */
  readonly used: number;
  /** What else people wrote in those lines, each by the answer that it stands beside. */
  readonly beside: readonly { readonly answer: Answer; readonly own: GivenLine['own'] }[];
  readonly findings: readonly Finding[];
}

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
  return answersIn(await readAnswerTables(ports, files), from, to, findsRows(from, to));
}

/** Reads files of answers: csv, workbooks, and the json that `match` writes. */
export async function readAnswerTables(ports: Ports, files: readonly string[]): Promise<Table[]> {
  const tables: Table[] = [];
  for (const file of files) {
    const bytes = await ports.files.read(file);
    tables.push(crosswalkJsonTable(file, bytes) ?? placedInFile(readTable(file, bytes), bytes));
  }
  return tables;
}

/** An answer and the line that it stands in. */
interface Said {
  readonly line: GivenLine;
  readonly answer: Answer;
}

/** @param find finds the rows of codes; whoever reads anew at each request keeps one, for it remembers */
export function answersIn(
  tables: readonly Table[],
  from: readonly BareRow[],
  to: readonly BareRow[],
  find: FindRows,
): ReadAnswers {
  const findings: Finding[] = [];
  const said: Said[] = [];
  const unused: GivenLine[] = [];
  const numbers = { from: rowsByNumber(from), to: rowsByNumber(to) };
  for (const { table, lines, columns } of givenLines(tables, find)) {
    if (table.rows.length > 0 && !columns.has('pair')) {
      const message = `${table.file} has no column pair, by which answers find their rows; take it over from the crosswalk that match wrote.`;
      findings.push(finding(table, (lines[0]?.row ?? table.rows[0])!, message));
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
    const place = isCrowded(other.table, other.row) ? other.code : `line ${other.row.line}`;
    const where = `${other.table.file === line.table.file ? '' : `${other.table.file}, `}${place}`;
    const message = `This answer and that of ${where} contradict each other, so neither is used; take one of them away.`;
    findings.push(finding(line.table, line.row, message));
  }
  const standing = said.filter(({ line }) => !against.has(line));
  return {
    answers: joined(standing.map(s => s.answer)),
    unused,
    used: new Set(standing.map(s => s.line)).size,
    beside: [...new Map(standing.toReversed().map(s => [s.line, s.answer]))]
      .toReversed()
      .flatMap(([{ own }, answer]) => (own.size === 0 ? [] : [{ answer, own }])),
    findings,
  };
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
  for (const [line, other] of otherInsteads(said)) if (!against.has(line)) against.set(line, other);
  return against;
}

/**
 * Lines that name other numbers instead for one row: of the same pair, or by two people. One line that names two, or
 * one person's lines for two pairs of a row, mean a split.
 */
function otherInsteads(said: readonly Said[]): [GivenLine, GivenLine][] {
  const named = new Map<GivenLine, Set<string>>();
  for (const { line, answer } of said) {
    if (line.answer === 'yes' || answer.kind !== 'yes') continue;
    const pairs = named.get(line) ?? new Set();
    named.set(line, pairs.add(`${answer.from}>${answer.to}`));
  }
  const ofRow = new Map<string, GivenLine[]>();
  for (const line of named.keys()) {
    const [from, to] = line.ends!;
    const row = from >= 0 ? `${from}>` : `>${to}`;
    ofRow.set(row, [...(ofRow.get(row) ?? []), line]);
  }
  const allOf = (line: GivenLine) => [...named.get(line)!].sort().join();
  const differ = (a: GivenLine, b: GivenLine) => (a.code === b.code || byOthers(a, b)) && allOf(a) !== allOf(b);
  return [...ofRow.values()].flatMap(lines =>
    lines.flatMap((line): [GivenLine, GivenLine][] => {
      const other = lines.find(l => differ(line, l));
      return other ? [[line, other]] : [];
    }),
  );
}

/** Whether two people wrote two lines: they are named, or each has a file. */
function byOthers(a: GivenLine, b: GivenLine): boolean {
  return a.by !== '' && b.by !== '' ? a.by !== b.by : a.table !== b.table;
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
            ...(known.date || answer.date ? { date: [known.date ?? '', answer.date ?? ''].sort()[1]! } : {}),
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
  columns: AnswerColumns,
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

function finding(table: Table, row: TableRow, message: string): Finding {
  const code = row.cells.get('pair') ?? '';
  const named = isCrowded(table, row) && code !== '' && !message.includes(code);
  return {
    rule: 'answer',
    severity: 'warning',
    subject: table.file,
    message: named ? `${code}: ${message}` : message,
    place: { file: table.file, line: row.line },
  };
}

/** Whether other rows stand on the same line, as in json without line ends: there the pair tells which one is meant. */
const isCrowded = (table: Table, row: TableRow) => table.rows.some(other => other !== row && other.line === row.line);
