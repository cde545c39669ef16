import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { type Columns, findColumns, type ToldColumns } from '../carryover/columns.ts';
import { ADDED_COLUMNS } from '../carryover/job-case.ts';
import { type CaseCount, type JobTotals, jobCarrier } from '../carryover/jobs.ts';
import type { MarksOf } from '../carryover/resolve.ts';
import { type Sidecar, sidecarName, writeSidecar } from '../carryover/sidecar.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { type CsvRecord, readCsv } from '../tables/read-csv.ts';
import { markOf, refuseEditedOutput } from './carry-mark.ts';
import { commitAll } from './commit-all.ts';
import { JobTable } from './job-table.ts';
import type { Files, PendingFile, Ports } from './ports.ts';

export interface CarryJobsOptions {
  readonly input: string;
  readonly out: string;
  /** Columns by header, or by 1-based position; what is not told is found. */
  readonly columns?: ToldColumns;
}

export interface JobsReport {
  readonly input: string;
  readonly out: string;
  readonly from: string;
  readonly to: string;
  /** The input was an output of an earlier run and untouched since: nothing was written. */
  readonly leftAlone: boolean;
  readonly columns: Partial<Columns>;
  readonly totals: JobTotals;
  readonly cases: readonly CaseCount[];
  readonly findings: readonly Finding[];
}

/** Columns are found from this many records; the rest of the table is read once only. */
const SAMPLE = 1000;

/**
 * Carries a table of jobs from `joint.from` to `joint.to`: the user's bytes come back line by line with our columns at
 * the right. Nothing stands under `out` until all of it is written, and a sidecar beside it says what it is.
 *
 * @throws CatalogError OutputIsInput, AlreadyCarried, BadTable, BadArgument, and what the files say.
 */
export async function carryJobs(
  ports: Pick<Ports, 'files' | 'progress'>,
  joint: Joint,
  marks: MarksOf,
  options: CarryJobsOptions,
): Promise<JobsReport> {
  const { files, progress } = ports;
  const { input, out } = options;
  await refuseInputAsOutput(files, input, out);
  const [header, ...sample] = await firstRecords(files, input);
  if (!header) throw new CatalogError('BadTable', `${input} is empty; give a table with a header line.`, { input });

  const edition = { input, out, from: joint.from.header.name, to: joint.to.header.name };
  if (hasOurColumns(header.cells)) {
    const { to } = await refuseUnlessUntouched(files, input);
    return { ...edition, ...nothingDone(), to, leftAlone: true };
  }
  await refuseEditedOutput(files, out);
  const columns = findColumns(
    joint,
    header.cells,
    sample.map(r => r.cells),
    options.columns ?? {},
  );

  const carrier = jobCarrier(joint, marks, columns);
  const table = new JobTable(carrier, columns, header.cells);
  const hashes = { input: createHash('sha256'), output: createHash('sha256') };
  const pending = await files.create(out);
  let beside: PendingFile | undefined;
  try {
    const { dialect, batches } = await readCsv(hashing(files.stream(input), hashes.input));
    table.start(dialect);
    let told = 0;
    for await (const batch of batches) {
      await write(pending, hashes.output, table.carry(batch));
      if (table.records - told >= 250_000) {
        told = table.records;
        progress(`${told.toLocaleString('en')} lines carried`);
      }
    }
    await write(pending, hashes.output, table.finish());
    const totals = carrier.totals();
    const counts = { lines: totals.lines, ...totals.outcomes, folded: totals.folded, added: totals.added };
    const sidecar: Sidecar = {
      tool: 'fishplate',
      from: edition.from,
      to: edition.to,
      input: hashes.input.digest('hex'),
      output: hashes.output.digest('hex'),
      counts,
    };
    beside = await files.create(sidecarName(out));
    beside.stream.write(writeSidecar(sidecar));
    await commitAll([pending, beside]);
    const findings = [...table.findings(input), ...carrier.findings()];
    return { ...edition, leftAlone: false, columns, totals, cases: carrier.cases(), findings };
  } catch (error) {
    await pending.abandon();
    await beside?.abandon();
    throw error;
  }
}

async function refuseInputAsOutput(files: Files, input: string, out: string): Promise<void> {
  for (const path of [out, sidecarName(out)]) {
    if (!(await files.same(path, input))) continue;
    throw new CatalogError('OutputIsInput', `${path} is the input itself; choose another name for the output.`, {
      out,
    });
  }
}

async function firstRecords(files: Files, input: string): Promise<readonly CsvRecord[]> {
  const { batches } = await readCsv(files.stream(input));
  const records: CsvRecord[] = [];
  for await (const batch of batches) {
    records.push(...batch.records.slice(0, SAMPLE + 1 - records.length));
    if (records.length > SAMPLE) break;
  }
  return records;
}

function hasOurColumns(header: readonly string[]): boolean {
  const last = header.slice(-ADDED_COLUMNS.length);
  return ADDED_COLUMNS.every((name, at) => last[at]?.replace(/_\d+$/, '') === name);
}

async function refuseUnlessUntouched(files: Files, input: string): Promise<Sidecar> {
  const mark = await markOf(files, input);
  if (mark?.untouched) return mark.sidecar;
  const seen = mark ? 'has been edited since' : 'has no sidecar that says from what it was made';
  throw new CatalogError(
    'AlreadyCarried',
    `${input} has been carried over before and ${seen}; run on the original table instead.`,
    { input },
  );
}

function nothingDone(): Pick<JobsReport, 'columns' | 'totals' | 'cases' | 'findings'> {
  const outcomes = { kept: 0, carried: 0, choose: 0, withdrawn: 0, unknown: 0 };
  const totals = { lines: 0, outcomes, folded: 0, closed: 0, added: 0, agree: true };
  return { columns: {}, totals, cases: [], findings: [] };
}

async function* hashing(source: AsyncIterable<Uint8Array>, hash: ReturnType<typeof createHash>) {
  for await (const chunk of source) {
    hash.update(chunk);
    yield chunk;
  }
}

async function write(pending: PendingFile, hash: ReturnType<typeof createHash>, bytes: Uint8Array): Promise<void> {
  if (bytes.length === 0) return;
  hash.update(bytes);
  const { stream } = pending;
  if (stream.write(bytes)) return;
  // A stream that has failed emits no `drain`; settling says why it failed.
  if (!stream.errored) await once(stream, 'drain').catch(() => {});
  if (stream.errored) await pending.settle();
}
