import { CsvError, parse } from 'csv-parse/sync';
import { counted } from '../model/counted.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Table, TableRow } from '../model/table.ts';
import { type ReadTable, readXlsx } from './read-xlsx.ts';

/**
 * Reads a whole table: csv (comma, semicolon or tab, with a header line), the first filled sheet of a workbook, JSON (a
 * list of objects, or an object whose `items` or `rows` is one) or JSON Lines. What it is shows in its first bytes; a
 * name that ends in .json or .jsonl says so outright. Lists inside JSON cells are joined by ` | `.
 *
 * @throws CatalogError BadTable with line and column; BadFile for a workbook that cannot be read
 */
export function readTable(file: string, bytes: Uint8Array): ReadTable {
  if (isWorkbook(bytes)) return readXlsx(file, bytes);
  const text = decode(file, bytes);
  const json = /\.json$/i.test(file) || /^\ufeff?\s*\[\s*[\]{]/.test(text);
  const lines = /\.(?:jsonl|ndjson)$/i.test(file) || /^\ufeff?\s*\{\s*["}]/.test(text);
  if (json || lines) return { ...(json ? readJsonTable(file, text) : readJsonLines(file, text)), findings: [] };
  return readCsvTable(file, text);
}

/** Whether bytes are a zip, as every xlsx file is, or the older format, in which encrypted workbooks are wrapped. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return [ZIP, OLE].some(magic => magic.every((b, at) => bytes[at] === b));
}

const ZIP = [0x50, 0x4b, 0x03, 0x04];
const OLE = [0xd0, 0xcf, 0x11, 0xe0];

function decode(file: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw bad(file, 'is not UTF-8 text; save it as "CSV UTF-8" and try again');
  }
}

function readCsvTable(file: string, text: string): ReadTable {
  const records = parseCsv(file, text);
  const above = linesAboveHead(records);
  const [head, ...body] = records.slice(above);
  if (!head) throw bad(file, 'is empty; it needs a header line and at least one row');
  const columns = head.record.map(name => name.trim());
  const wide = body.find(
    ({ record }) => record.length > columns.length && record.slice(columns.length).some(cell => cell.trim() !== ''),
  );
  if (wide) {
    const at = { line: wide.line, column: columns.length + 1 };
    throw bad(
      file,
      `is not well-formed csv at line ${at.line}, column ${at.column}: the row has more cells than the header line; mend that line and try again`,
      at,
    );
  }
  const twice = columns.find((name, at) => name !== '' && columns.indexOf(name) !== at);
  if (twice !== undefined) throw bad(file, `has two columns named ${twice}; rename one of them`);
  const rows = body
    .filter(({ record }) => record.some(cell => cell.trim() !== ''))
    .map(({ record, line }) => ({
      file,
      line,
      cells: new Map(columns.map((name, at) => [name, (record[at] ?? '').trim()])),
    }));
  const message = `${counted(above, 'line stands', 'lines stand')} above the head of ${file} and ${above === 1 ? 'is' : 'are'} left out.`;
  const findings: Finding[] =
    above === 0 ? [] : [{ rule: 'lines-above', severity: 'note', subject: file, message, place: { file, line: 1 } }];
  return { file, columns, rows, findings };
}

/** How far down a head is looked for. */
const LOOKED = 40;

/**
 * How many records stand above the head: a title, a date, a blank line, each in one cell, before a record of three or
 * more. A spreadsheet saves what stands above its table with it.
 */
function linesAboveHead(records: readonly { readonly record: readonly string[] }[]): number {
  const filled = records.slice(0, LOOKED).map(({ record }) => record.filter(cell => cell.trim() !== '').length);
  const head = filled.findIndex(n => n > 1);
  return head > 0 && filled[head]! >= 3 ? head : 0;
}

function parseCsv(file: string, text: string): { record: string[]; line: number }[] {
  const first = text.slice(0, 64 * 1024).split(/\r\n|\r|\n/, LOOKED);
  // A title above the table holds none of them; one that holds a comma is not told from a head of two columns.
  const telling = /[,;\t]/.test(first[0]!) ? first[0]! : (first.find(l => /([,;\t]).*\1/.test(l)) ?? first[0]!);
  const delimiter = [',', ';', '\t'].reduce((a, b) => (telling.split(b).length > telling.split(a).length ? b : a));
  let line = 1;
  try {
    const parsed: unknown = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      record_delimiter: ['\r\n', '\n', '\r'],
      skip_empty_lines: false,
    });
    return (parsed as { record: string[]; info: { lines: number } }[]).map(({ record, info }) => {
      // `info.lines` counts up to the end of the record; people look for its beginning.
      const begins = line;
      line = info.lines + 1;
      return { record, line: begins };
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const at = { line: Number(error.lines ?? 1), column: Number(error.column ?? 0) + 1 };
    throw bad(
      file,
      `is not well-formed csv at line ${at.line}, column ${at.column}: ${plain(error)}; mend that line and try again`,
      at,
    );
  }
}

function plain(error: CsvError): string {
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') return 'a quoted cell is never closed';
  if (error.code === 'CSV_INVALID_CLOSING_QUOTE') return 'something follows a closing quote';
  if (error.code === 'INVALID_OPENING_QUOTE') return 'a quote stands in the middle of a cell';
  return error.message.replace(/\s+/g, ' ');
}

function readJsonTable(file: string, text: string): Table {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const at = Number(/at position (\d+)/.exec((error as Error).message)?.[1] ?? text.length);
    const before = text.slice(0, at).split('\n');
    const place = { line: before.length, column: before.at(-1)!.length + 1 };
    throw bad(file, `is not valid JSON at line ${place.line}, column ${place.column}; mend it and try again`, place);
  }
  const list = Array.isArray(value) ? value : listInside(value);
  if (!list?.every(row => typeof row === 'object' && row !== null && !Array.isArray(row))) {
    throw bad(file, 'is not a list of objects; give one object for each row');
  }
  const columns = new Set<string>();
  const rows = list.map((row, at) => objectRow(file, at + 1, row as object, columns));
  return { file, columns: [...columns], rows };
}

/** One object a line. A whole file that is one object with a list inside is read as that. */
function readJsonLines(file: string, text: string): Table {
  const rows: TableRow[] = [];
  const columns = new Set<string>();
  let line = 0;
  for (const written of text.replace(/^\ufeff/, '').split('\n')) {
    line++;
    if (written.trim() === '') continue;
    let row: unknown;
    try {
      row = JSON.parse(written);
    } catch {
      if (line === 1 || !/\.(?:jsonl|ndjson)$/i.test(file)) return readJsonTable(file, text);
      throw bad(file, `is not valid JSON at line ${line}; mend that line and try again`, { line });
    }
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      throw bad(file, `has no object on line ${line}; give one object a line`, { line });
    }
    if (line === 1 && listInside(row)) return readJsonTable(file, text);
    rows.push(objectRow(file, line, row, columns));
  }
  return { file, columns: [...columns], rows };
}

function objectRow(file: string, line: number, row: object, columns: Set<string>): TableRow {
  const cells = new Map<string, string>();
  for (const [name, cell] of Object.entries(row)) {
    columns.add(name);
    if (cell !== null && cell !== undefined) cells.set(name, cellText(cell));
  }
  return { file, line, cells };
}

function listInside(value: unknown): unknown[] | undefined {
  const { items, rows } = (value ?? {}) as { items?: unknown; rows?: unknown };
  return Array.isArray(items) ? items : Array.isArray(rows) ? rows : undefined;
}

function cellText(cell: unknown): string {
  if (Array.isArray(cell)) return cell.map(cellText).join(' | ');
  if (typeof cell === 'object' && cell !== null) return Object.values(cell).map(cellText).join(': ');
  return String(cell).trim();
}

function bad(file: string, what: string, data: Record<string, unknown> = {}): CatalogError {
  return new CatalogError('BadTable', `${file} ${what}.`, { file, ...data });
}
