import { CsvError, Parser } from 'csv-parse';
import { CatalogError } from '../model/errors.ts';
import { type Dialect, detectDialect } from './dialect.ts';
import { joinBytes } from './join-bytes.ts';

/** One record of a table, and where its own bytes stand in the batch that it came with. */
export interface CsvRecord {
  readonly cells: readonly string[];
  /** Offset of its first byte. The first record of a table begins with the byte order mark, if there is one. */
  readonly start: number;
  /** Offset behind its last cell. */
  readonly bodyEnd: number;
  /** Offset behind its line end, which the last record of a table may lack. */
  readonly end: number;
  /** 1-based line on which the record ends. */
  readonly line: number;
}

/** Records that were read together. The bytes are one block: a million small ones take longer than the parsing. */
export interface CsvBatch {
  readonly bytes: Uint8Array;
  readonly records: readonly CsvRecord[];
}

export interface CsvReading {
  readonly dialect: Dialect;
  /** The records in order, as many at a time as one chunk of the source holds. A blank line is one empty cell. */
  readonly batches: AsyncGenerator<CsvBatch, void, undefined>;
}

/** Bytes from which the dialect is read. */
const ENOUGH = 64 * 1024;

/** A longer record is taken for a quote that was never closed, before it fills the memory. Bytes. */
const LONGEST_RECORD = 32 * 1024 * 1024;

/**
 * Reads a table as a stream: at any time one chunk of the source and one unfinished record are held.
 *
 * Bytes come from the offsets that the parser counts, not from its `raw` option: that one loses the second byte of a
 * CRLF. They are read off as the parser pushes a record, since its `on_record` option copies all of the parser's counts
 * for each record and so takes three times as long.
 *
 * @throws CatalogError BadTable, with line and column, for quotes out of place, UTF-16 and bytes that are not UTF-8.
 */
export async function readCsv(source: AsyncIterable<Uint8Array>): Promise<CsvReading> {
  const chunks = source[Symbol.asyncIterator]();
  const head = await firstBytes(chunks);
  const dialect = detectDialect(head);
  return { dialect, batches: records(head, chunks, dialect) };
}

/** A source may hand out a few bytes at a time; the dialect is read off a whole first line. */
async function firstBytes(chunks: AsyncIterator<Uint8Array>): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for (let length = 0; length < ENOUGH; ) {
    const next: IteratorResult<Uint8Array> = await chunks.next();
    if (next.done) break;
    pieces.push(next.value);
    length += next.value.length;
  }
  return pieces.length === 1 ? pieces[0]! : joinBytes(pieces);
}

async function* records(
  head: Uint8Array,
  rest: AsyncIterator<Uint8Array>,
  dialect: Dialect,
): AsyncGenerator<CsvBatch, void, undefined> {
  let ends: { cells: string[]; end: number; line: number }[] = [];
  const parser = new Parser({
    bom: true,
    delimiter: dialect.delimiter,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    max_record_size: LONGEST_RECORD,
  });
  parser.push = (cells: string[] | null) => {
    if (cells !== null) ends.push({ cells, end: parser.info.bytes, line: parser.info.lines });
    return true;
  };
  parser.on('error', () => {}); // the same error reaches the callbacks below

  let held: Uint8Array = new Uint8Array();
  let base = 0; // where `held` begins in the source
  let line = 0;
  const batch = (): CsvBatch => {
    let start = 0;
    const done = ends.map(({ cells, end: at, line: on }): CsvRecord => {
      const end = at - base;
      const record = { cells, start, bodyEnd: bodyEnd(held, start, end), end, line: on };
      start = end;
      line = on;
      return record;
    });
    ends = [];
    const bytes = held.subarray(0, start);
    if (!isUtf8(bytes)) throw notUtf8(bytes, done);
    held = held.subarray(start);
    base += start;
    return { bytes, records: done };
  };

  try {
    for (let chunk: Uint8Array | undefined = head; chunk !== undefined; ) {
      held = held.length === 0 ? chunk : joinBytes([held, chunk]);
      await feed(parser, chunk).catch(e => Promise.reject(malformed(e, line)));
      const done = batch();
      if (done.records.length > 0) yield done;
      const next: IteratorResult<Uint8Array> = await rest.next();
      chunk = next.done ? undefined : next.value;
    }
    await finish(parser).catch(e => Promise.reject(malformed(e, line)));
    const done = batch();
    if (done.records.length > 0) yield done;
  } finally {
    parser.destroy();
    await rest.return?.();
  }
}

function bodyEnd(bytes: Uint8Array, start: number, end: number): number {
  let at = end;
  if (at > start && bytes[at - 1] === 10) at--;
  if (at > start && bytes[at - 1] === 13) at--;
  return at;
}

function feed(parser: Parser, chunk: Uint8Array): Promise<void> {
  return new Promise((resolve, reject) => {
    parser.write(chunk, error => (error ? reject(error) : resolve()));
  });
}

function finish(parser: Parser): Promise<void> {
  return new Promise((resolve, reject) => {
    parser.once('error', reject);
    parser.end(() => resolve());
  });
}

function malformed(error: unknown, lastGoodLine: number): unknown {
  if (!(error instanceof CsvError)) return error;
  const details = error as CsvError & { readonly lines?: number; readonly index?: number };
  const notClosed = error.code === 'CSV_QUOTE_NOT_CLOSED' || error.code === 'CSV_MAX_RECORD_SIZE';
  const line = notClosed ? lastGoodLine + 1 : (details.lines ?? lastGoodLine + 1);
  const column = (details.index ?? 0) + 1;
  const what = notClosed ? 'a quote is opened and never closed' : 'a quote stands where none may stand';
  return new CatalogError(
    'BadTable',
    `Line ${line}, column ${column} of the table: ${what}. Correct that cell, or save the table as CSV again.`,
    { line, column },
  );
}

const UTF8 = new TextDecoder('utf-8', { fatal: true });

function isUtf8(bytes: Uint8Array): boolean {
  try {
    UTF8.decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function notUtf8(bytes: Uint8Array, records: readonly CsvRecord[]): CatalogError {
  const bad = records.find(r => !isUtf8(bytes.subarray(r.start, r.end)));
  const line = bad?.line ?? 1;
  const column = (bad?.cells.findIndex(c => c.includes('\ufffd')) ?? 0) + 1;
  return new CatalogError(
    'BadTable',
    `Line ${line}, column ${column} of the table is not UTF-8; save it as CSV in UTF-8 and run again.`,
    { line, column },
  );
}
