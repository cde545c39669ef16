import type { Columns } from '../../carryover/jobs/columns.ts';
import type { Governing } from '../../carryover/jobs/governing-edition.ts';
import { type AddedLine, addedHeaders, type JobCase, policyCells } from '../../carryover/jobs/job-case.ts';
import type { JobCarrier } from '../../carryover/jobs/jobs.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { ByteSink } from '../../tables/byte-sink.ts';
import { csvCells } from '../../tables/csv-line.ts';
import type { Dialect } from '../../tables/dialect.ts';
import { joinBytes } from '../../tables/join-bytes.ts';
import type { CsvBatch, CsvRecord } from '../../tables/read-csv.ts';
import type { CsvHead } from './csv-head.ts';

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
  readonly #head: CsvHead;
  readonly #governed: boolean;
  readonly #sink = new ByteSink(1 << 20);
  #rules = new WeakMap<Governing, Uint8Array>();
  #pieces = new WeakMap<JobCase, Pieces>();
  #dialect: Dialect = { delimiter: ',', lineEnd: '\n' };
  #ofHead: number;
  #ended = true;
  #short = 0;
  #blank = 0;
  #firstShort = 0;

  /** @param governed whether a policy says which edition governs each line, in two more columns */
  constructor(carrier: JobCarrier, columns: Columns, head: CsvHead, governed = false) {
    this.#governed = governed;
    this.#carrier = carrier;
    this.#columns = columns;
    this.#header = head.names;
    this.#head = head;
    this.#ofHead = head.records;
  }

  records = 0;

  start(dialect: Dialect): void {
    this.#dialect = dialect;
  }

  /** The output for these records. */
  carry({ bytes, records }: CsvBatch): Uint8Array {
    for (const record of records) {
      if (this.#ofHead > 0) this.#headerLine(bytes, record);
      else this.#line(bytes, record);
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
    if (this.#head.records === 2) {
      const message = `The head of ${file} is read in two lines; its columns are ${this.#header.join(', ')}. If the second is a job, put a line with the names of the columns above it.`;
      note('second-head', 'note', message, 2);
    }
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

  #headerLine(bytes: Uint8Array, record: CsvRecord): void {
    if (record.cells.length > this.#header.length) throw this.#tooLong(record);
    const ours = addedHeaders(this.#header, this.#governed);
    this.#ofHead--;
    this.#startLine(bytes, record);
    // Ours are named where theirs are: in the last line of the head.
    this.#sink.append(encode(this.#separated(this.#ofHead === 0 ? ours : ours.map(() => ''))));
    this.#endLine(bytes, record);
  }

  #line(bytes: Uint8Array, record: CsvRecord): void {
    if (record.bodyEnd === record.start) {
      this.#blank++;
      this.#sink.append(bytes, record.start, record.end);
      return;
    }
    if (record.cells.length > this.#header.length) throw this.#tooLong(record);
    this.records++;
    const carried = this.#carrier.line(record.cells);
    for (const line of carried.added) this.#added(line);
    const { before, after, whole } = this.#piecesOf(carried.case);
    this.#startLine(bytes, record);
    if (carried.foldsInto === undefined) this.#sink.append(whole);
    else {
      this.#sink.append(before);
      this.#sink.append(encode(String(carried.foldsInto)));
      this.#sink.append(after);
    }
    if (carried.governing) this.#sink.append(this.#rule(carried.governing));
    this.#endLine(bytes, record);
  }

  #startLine(bytes: Uint8Array, record: CsvRecord): void {
    this.#closeLine();
    this.#sink.append(bytes, record.start, record.bodyEnd);
    const lacking = this.#header.length - record.cells.length;
    if (lacking <= 0) return;
    this.#sink.append(encode(this.#dialect.delimiter.repeat(lacking)));
    if (this.records === 0) return;
    this.#short++;
    this.#firstShort ||= record.line;
  }

  #endLine(bytes: Uint8Array, record: CsvRecord): void {
    this.#sink.append(bytes, record.bodyEnd, record.end);
    this.#ended = record.end > record.bodyEnd;
  }

  #added(line: AddedLine): void {
    const cells = new Array<string>(this.#header.length).fill('');
    const { job, type } = this.#columns;
    if (job) cells[job.at] = line.job;
    if (type) cells[type.at] = line.typeCell;
    const rule = this.#governed ? policyCells(line.governing) : [];
    const ours = this.#separated([...line.before, '', ...line.after, ...rule]);
    this.#closeLine();
    this.#sink.append(encode(`${csvCells(cells, this.#dialect, 'theirs')}${ours}${this.#dialect.lineEnd}`));
  }

  /** The input's last line may lack its end; nothing of ours may be glued to it. */
  #closeLine(): void {
    if (!this.#ended) this.#sink.append(encode(this.#dialect.lineEnd));
    this.#ended = true;
  }

  #piecesOf(found: JobCase): Pieces {
    const known = this.#pieces.get(found);
    if (known) return known;
    const before = encode(`${this.#separated(found.before)}${this.#dialect.delimiter}`);
    const after = encode(this.#separated(found.after));
    const pieces = { before, after, whole: joinBytes([before, after]) };
    this.#pieces.set(found, pieces);
    return pieces;
  }

  #rule(governing: Governing): Uint8Array {
    const known = this.#rules.get(governing);
    if (known) return known;
    const rule = encode(this.#separated(policyCells(governing)));
    this.#rules.set(governing, rule);
    return rule;
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

interface Pieces {
  readonly before: Uint8Array;
  readonly after: Uint8Array;
  /** Both together, for the many lines that fold into no other. */
  readonly whole: Uint8Array;
}

const ENCODER = new TextEncoder();

function encode(text: string): Uint8Array {
  return ENCODER.encode(text);
}
