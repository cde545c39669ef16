import { CsvError, parse } from 'csv-parse/sync';
import { CatalogError } from '../model/errors.ts';
import type { Table } from '../model/table.ts';

/**
 * Reads a whole table from csv (comma, semicolon or tab, with a header line) or JSON (a list of objects, or an object
 * whose `items` or `rows` is one). Lists inside JSON cells are joined by ` | `. Throws BadTable with line and column.
 */
export function readTable(file: string, bytes: Uint8Array): Table {
  const text = decode(file, bytes);
  return /\.json$/i.test(file) ? readJsonTable(file, text) : readCsvTable(file, text);
}

function decode(file: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw bad(file, 'is not UTF-8 text; save it as "CSV UTF-8" and try again');
  }
}

function readCsvTable(file: string, text: string): Table {
  const records = parseCsv(file, text);
  const [head, ...body] = records;
  if (!head) throw bad(file, 'is empty; it needs a header line and at least one row');
  const columns = head.record.map(name => name.trim());
  const twice = columns.find((name, at) => name !== '' && columns.indexOf(name) !== at);
  if (twice !== undefined) throw bad(file, `has two columns named ${twice}; rename one of them`);
  const rows = body
    .filter(({ record }) => record.some(cell => cell.trim() !== ''))
    .map(({ record, line }) => ({
      file,
      line,
      cells: new Map(columns.map((name, at) => [name, (record[at] ?? '').trim()])),
    }));
  return { file, columns, rows };
}

function parseCsv(file: string, text: string): { record: string[]; line: number }[] {
  const firstLine = text.slice(0, text.search(/[\r\n]|$/));
  const delimiter = [',', ';', '\t'].reduce((a, b) => (firstLine.split(b).length > firstLine.split(a).length ? b : a));
  let line = 1;
  try {
    const parsed: unknown = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count_less: true,
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
  if (/COLUMN|RECORD/.test(error.code)) return 'the row has more cells than the header line';
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
  const rows = list.map((row, at) => {
    const cells = new Map<string, string>();
    for (const [name, cell] of Object.entries(row as object)) {
      columns.add(name);
      if (cell !== null && cell !== undefined) cells.set(name, cellText(cell));
    }
    return { file, line: at + 1, cells };
  });
  return { file, columns: [...columns], rows };
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
