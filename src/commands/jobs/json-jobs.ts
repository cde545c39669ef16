import { type AddedLine, addedHeaders, type JobCase, policyCells } from '../../carryover/jobs/job-case.ts';
import type { CarriedLine } from '../../carryover/jobs/jobs.ts';
import { CatalogError } from '../../model/errors.ts';
import { ByteSink } from '../../tables/byte-sink.ts';
import { type JsonLine, readJsonLines } from '../../tables/read-json-lines.ts';
import type { Files } from '../ports/ports.ts';
import { sha256 } from '../ports/sha256.ts';
import { hashing, type JobRun, type JobSource, SAMPLE } from './job-source.ts';

const ENCODER = new TextEncoder();
const encode = (text: string): Uint8Array => ENCODER.encode(text);

/** Written out in pieces of this many bytes. */
const PIECE = 1 << 18;

/** JSON Lines, one object a line: its own bytes come back, with our fields put in before its closing brace. */
export async function jsonJobs(files: Files, input: string): Promise<JobSource | undefined> {
  const sample: JsonLine[] = [];
  for await (const line of readJsonLines(files.stream(input), input)) {
    if (!isBlank(line)) sample.push(line);
    if (sample.length >= SAMPLE) break;
  }
  if (sample.length === 0) return undefined;
  const header = [...new Set(sample.flatMap(l => Object.keys(l.fields)))];
  const cellsOf = (line: JsonLine) => header.map(name => cellText(own(line.fields, name)));
  // 3.10 that is written without quotes is 3.1 to whoever wrote it.
  const numericIn = ({ fields }: JsonLine, column: number): readonly string[] => {
    const value = own(fields, header[column]!);
    return typeof value === 'number' ? [String(value)] : [];
  };
  return {
    header,
    sample: sample.map(cellsOf),
    textOnly: true,
    lines: async function* () {
      for await (const line of readJsonLines(files.stream(input), input)) {
        if (isBlank(line)) continue;
        yield { cells: cellsOf(line), line: line.line, numeric: column => numericIn(line, column) };
      }
    },
    carry: async run => {
      const hash = sha256();
      const names = addedHeaders(header, run.governed);
      const fields = ourFields(names);
      const sink = new ByteSink(2 * PIECE);
      let [lines, blank] = [0, 0];
      let end: Uint8Array = encode('\n');
      let open = false;
      const close = () => {
        if (open) sink.append(end);
        open = false;
      };
      const gain = (added: readonly AddedLine[]) => {
        for (const line of added) {
          sink.append(addedObject(line, header, names, run));
          sink.append(end);
        }
      };
      for await (const line of readJsonLines(hashing(files.stream(input), hash), input)) {
        close();
        if (isBlank(line)) {
          blank++;
          sink.append(line.bytes);
          sink.append(line.lineEnd);
          continue;
        }
        refuseOurs(line, names, input);
        const carried = run.carrier.line(cellsOf(line), numericIn(line, run.columns.number.at));
        gain(carried.added);
        const brace = line.bytes.lastIndexOf(0x7d);
        sink.append(line.bytes, 0, brace);
        fields(sink, carried, hasFields(line));
        sink.append(line.bytes, brace);
        sink.append(line.lineEnd);
        open = line.lineEnd.length === 0;
        if (line.lineEnd.length > 0 && line.lineEnd.length !== end.length) end = line.lineEnd.slice();
        lines++;
        if (sink.length > PIECE) {
          await run.write(sink.take());
          run.done(lines);
        }
      }
      const rest = run.carrier.end();
      if (rest.length > 0) close();
      gain(rest);
      await run.write(sink.take());
      const message = `${blank} blank lines stand as they were and count as no lines.`;
      return {
        input: hash.digest(),
        findings: blank > 0 ? [{ rule: 'blank-line', severity: 'note', subject: input, message }] : [],
      };
    },
  };
}

/** Writes our fields behind the user's own; those of a case are the same on all of its lines and encoded once. */
function ourFields(names: readonly string[]) {
  const known = new WeakMap<
    JobCase,
    { readonly before: Uint8Array; readonly after: Uint8Array; readonly whole: Uint8Array }
  >();
  const some = (from: number, values: readonly string[]) =>
    values.map((value, at) => `${JSON.stringify(names[from + at])}:${JSON.stringify(value)}`).join(',');
  const piecesOf = (found: JobCase) => {
    const pieces = known.get(found);
    if (pieces) return pieces;
    const fold = found.before.length;
    const start = `${some(0, found.before)},${JSON.stringify(names[fold])}:`;
    const after = `,${some(fold + 1, found.after)}`;
    const made = { before: encode(start), after: encode(after), whole: encode(`${start}""${after}`) };
    known.set(found, made);
    return made;
  };
  const comma = encode(',');
  return (sink: ByteSink, { case: found, foldsInto, governing }: CarriedLine, behindOthers: boolean): void => {
    const { before, after, whole } = piecesOf(found);
    if (behindOthers) sink.append(comma);
    if (foldsInto === undefined) sink.append(whole);
    else {
      sink.append(before);
      sink.append(encode(`"${foldsInto}"`));
      sink.append(after);
    }
    if (!governing) return;
    const from = found.before.length + 1 + found.after.length;
    sink.append(encode(`,${some(from, policyCells(governing))}`));
  };
}

function hasFields(line: JsonLine): boolean {
  for (const _ in line.fields) return true;
  return false;
}

function isBlank(line: JsonLine): boolean {
  return line.bytes.every(b => b === 32 || b === 9);
}

function own(fields: Readonly<Record<string, unknown>>, name: string): unknown {
  return Object.hasOwn(fields, name) ? fields[name] : undefined;
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

function addedObject(added: AddedLine, header: readonly string[], names: readonly string[], run: JobRun): Uint8Array {
  const { job, type } = run.columns;
  const theirs = [
    ...(job ? [[header[job.at]!, added.job] as const] : []),
    ...(type ? [[header[type.at]!, added.typeCell] as const] : []),
  ];
  const values = [...added.before, '', ...added.after, ...(run.governed ? policyCells(added.governing) : [])];
  return encode(JSON.stringify(Object.fromEntries([...theirs, ...names.map((n, at) => [n, values[at]] as const)])));
}

/** Two fields of one name are one too many; the names were chosen by the first lines only. */
function refuseOurs(line: JsonLine, names: readonly string[], input: string): void {
  const twice = names.find(name => Object.hasOwn(line.fields, name));
  if (twice === undefined) return;
  throw new CatalogError(
    'BadTable',
    `Line ${line.line} of ${input} has a field ${twice}, which is one of ours; rename it and run again.`,
    { line: line.line },
  );
}
