import { createHash } from 'node:crypto';
import { type AddedLine, addedHeaders } from '../carryover/job-case.ts';
import { CatalogError } from '../model/errors.ts';
import { type JsonLine, readJsonLines } from '../tables/read-json-lines.ts';
import { hashing, type JobRun, type JobSource, SAMPLE } from './job-source.ts';
import type { Files } from './ports.ts';

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
  return {
    header,
    sample: sample.map(cellsOf),
    lines: async function* () {
      for await (const line of readJsonLines(files.stream(input), input)) if (!isBlank(line)) yield cellsOf(line);
    },
    carry: async run => {
      const hash = createHash('sha256');
      const names = addedHeaders(header, run.governed);
      let pieces: Uint8Array[] = [];
      let [held, lines, blank] = [0, 0, 0];
      let end: Uint8Array = Buffer.from('\n');
      const put = (...some: readonly Uint8Array[]) => {
        for (const piece of some) held += piece.length;
        pieces.push(...some);
      };
      const flush = async () => {
        await run.write(Buffer.concat(pieces));
        [pieces, held] = [[], 0];
      };
      let open = false;
      const close = () => {
        if (open) put(end);
        open = false;
      };
      for await (const line of readJsonLines(hashing(files.stream(input), hash), input)) {
        close();
        if (isBlank(line)) {
          blank++;
          put(line.bytes, line.lineEnd);
          continue;
        }
        refuseOurs(line, names, input);
        const carried = run.carrier.line(cellsOf(line));
        for (const added of carried.added) put(addedObject(added, header, names, run), end);
        const { before, after } = carried.case;
        const fold = carried.foldsInto === undefined ? '' : String(carried.foldsInto);
        const rule = carried.governing ? [carried.governing.edition ?? 'ask', carried.governing.why] : [];
        put(withFields(line, names, [...before, fold, ...after, ...rule]), line.lineEnd);
        open = line.lineEnd.length === 0;
        if (line.lineEnd.length > 0) end = Buffer.from(line.lineEnd);
        lines++;
        if (held > PIECE) {
          await flush();
          run.done(lines);
        }
      }
      const rest = run.carrier.end();
      if (rest.length > 0) close();
      for (const added of rest) put(addedObject(added, header, names, run), end);
      await flush();
      const message = `${blank} blank lines stand as they were and count as no lines.`;
      return {
        input: hash.digest('hex'),
        findings: blank > 0 ? [{ rule: 'blank-line', severity: 'note', subject: input, message }] : [],
      };
    },
  };
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

/** The user's object as it was written, with ours behind its last field. */
function withFields(line: JsonLine, names: readonly string[], values: readonly string[]): Buffer {
  const brace = line.bytes.lastIndexOf(0x7d);
  const ours = JSON.stringify(Object.fromEntries(names.map((name, at) => [name, values[at]]))).slice(1);
  const comma = Object.keys(line.fields).length > 0 ? ',' : '';
  return Buffer.concat([line.bytes.subarray(0, brace), Buffer.from(comma + ours), line.bytes.subarray(brace + 1)]);
}

function addedObject(added: AddedLine, header: readonly string[], names: readonly string[], run: JobRun): Buffer {
  const { job, type } = run.columns;
  const theirs = [
    ...(job ? [[header[job.at]!, added.job] as const] : []),
    ...(type ? [[header[type.at]!, added.typeCell] as const] : []),
  ];
  const values = [...added.before, '', ...added.after, ...(run.governed ? ['', ''] : [])];
  return Buffer.from(
    JSON.stringify(Object.fromEntries([...theirs, ...names.map((n, at) => [n, values[at]] as const)])),
  );
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
