import type { Columns } from '../carryover/columns.ts';
import { ADDED_COLUMNS, type AddedLine, type JobCase } from '../carryover/job-case.ts';
import type { JobCarrier } from '../carryover/jobs.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { ByteSink } from '../tables/byte-sink.ts';
import { csvCells, splitLineEnd } from '../tables/csv-line.ts';
import type { Dialect } from '../tables/dialect.ts';
import type { CsvRecord } from '../tables/read-csv.ts';

/**
 * Puts what the carrier says beside the user's bytes.
 *
 *   user's bytes, as they were │ , 4.1.2.1,Base,carried,… │ folds_into │ ,2018,2024 │ user's line end
 *
 * The pieces left and right of `folds_into` are the same for all lines of a case and are encoded once.
 */
export class JobTable {
  readonly #carrier: JobCarrier;
  readonly #columns: Columns;
  readonly #header: readonly string[];
  readonly #sink = new ByteSink(1 << 20);
  #pieces = new WeakMap<JobCase, readonly [Uint8Array, Uint8Array]>();
  #dialect: Dialect = { delimiter: ',', lineEnd: '\n' };
  #headerDone = false;
  #ended = true;
  #short = 0;
  #blank = 0;
  #firstShort = 0;

  constructor(carrier: JobCarrier, columns: Columns, header: readonly string[]) {
    this.#carrier = carrier;
    this.#columns = columns;
    this.#header = header;
  }

  records = 0;

  start(dialect: Dialect): void {
    this.#dialect = dialect;
  }

  /** The output for these records. */
  carry(batch: readonly CsvRecord[]): Uint8Array {
    for (const record of batch) {
      if (!this.#headerDone) this.#headerLine(record);
      else this.#line(record);
    }
    return this.#sink.take();
  }

  /** The output that only the end of the table brings. */
  finish(): Uint8Array {
    for (const line of this.#carrier.end()) this.#added(line);
    return this.#sink.take();
  }

  findings(file: string): readonly Finding[] {
    const findings: Finding[] = [];
    const note = (rule: string, severity: Finding['severity'], message: string, line: number) =>
      findings.push({ rule, severity, subject: file, message, place: { file, line } });
    const twice = this.#header.filter((name, at) => this.#header.indexOf(name) !== at);
    for (const name of new Set(twice)) {
      const message = `More than one column is called "${name}"; they are told apart by position.`;
      note('duplicate-header', 'warning', message, 1);
    }
    if (this.#short > 0) {
      const message = `${this.#short} lines have fewer cells than the header; the cells that lack were taken for empty.`;
      note('short-line', 'warning', message, this.#firstShort);
    }
    if (this.#blank > 0) {
      note('blank-line', 'note', `${this.#blank} blank lines stand as they were and count as no lines.`, 1);
    }
    return findings;
  }

  #headerLine(record: CsvRecord): void {
    this.#headerDone = true;
    this.#write(record, this.#header.length, [encode(`${this.#separated(addedHeaders(this.#header))}`)]);
  }

  #line(record: CsvRecord): void {
    const [body, end] = splitLineEnd(record.bytes);
    if (body.length === 0) {
      this.#blank++;
      this.#sink.append(end);
      return;
    }
    if (record.cells.length > this.#header.length) throw this.#tooLong(record);
    this.records++;
    const carried = this.#carrier.line(record.cells);
    for (const line of carried.added) this.#added(line);
    const [before, after] = this.#piecesOf(carried.case);
    const folds = carried.foldsInto === undefined ? [] : [encode(String(carried.foldsInto))];
    this.#write(record, record.cells.length, [before, ...folds, after]);
  }

  #write(record: CsvRecord, cells: number, pieces: readonly Uint8Array[]): void {
    const [body, end] = splitLineEnd(record.bytes);
    this.#endLine();
    this.#sink.append(body);
    if (cells < this.#header.length) {
      this.#short++;
      this.#firstShort ||= record.line;
      this.#sink.append(encode(this.#dialect.delimiter.repeat(this.#header.length - cells)));
    }
    for (const piece of pieces) this.#sink.append(piece);
    this.#sink.append(end);
    this.#ended = end.length > 0;
  }

  #added(line: AddedLine): void {
    const cells = new Array<string>(this.#header.length).fill('');
    const { job, type } = this.#columns;
    if (job) cells[job.at] = line.job;
    if (type) cells[type.at] = line.typeCell;
    const ours = this.#separated([...line.before, '', ...line.after]);
    this.#endLine();
    this.#sink.append(encode(`${csvCells(cells, this.#dialect, 'theirs')}${ours}${this.#dialect.lineEnd}`));
  }

  /** The input's last line may lack its end; nothing of ours may be glued to it. */
  #endLine(): void {
    if (!this.#ended) this.#sink.append(encode(this.#dialect.lineEnd));
    this.#ended = true;
  }

  #piecesOf(found: JobCase): readonly [Uint8Array, Uint8Array] {
    const known = this.#pieces.get(found);
    if (known) return known;
    const pieces = [
      encode(`${this.#separated(found.before)}${this.#dialect.delimiter}`),
      encode(this.#separated(found.after)),
    ] as const;
    this.#pieces.set(found, pieces);
    return pieces;
  }

  /** Cells of ours, with a separator before the first. */
  #separated(cells: readonly string[]): string {
    return `${this.#dialect.delimiter}${csvCells(cells, this.#dialect, 'ours')}`;
  }

  #tooLong(record: CsvRecord): CatalogError {
    const [line, column] = [record.line, this.#header.length + 1];
    return new CatalogError(
      'BadTable',
      `Line ${line}, column ${column} of the table has no header; our columns cannot stand beside it. Give that column a name or put the cell in quotes.`,
      { line, column },
    );
  }
}

/** Our headers; where the user has one of that name already, ours gets a number behind. */
function addedHeaders(header: readonly string[]): readonly string[] {
  return ADDED_COLUMNS.map(name => {
    let free: string = name;
    for (let n = 2; header.includes(free); n++) free = `${name}_${n}`;
    return free;
  });
}

function encode(text: string): Uint8Array {
  return Buffer.from(text);
}
