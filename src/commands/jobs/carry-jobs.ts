import { type Columns, findColumns, namesEditions } from '../../carryover/jobs/columns.ts';
import { countCut, cutFindings } from '../../carryover/jobs/cut-numbers.ts';
import { hasOurColumns } from '../../carryover/jobs/job-case.ts';
import { type CarrierOptions, jobCarrier } from '../../carryover/jobs/jobs.ts';
import type { MarksOf } from '../../carryover/resolve.ts';
import { type Sidecar, sidecarName, writeSidecar } from '../../carryover/sidecar.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { CatalogError } from '../../model/errors.ts';
import { isWorkbook } from '../../tables/read-table.ts';
import { hashOf, markOf, refuseEditedOutput } from '../carrying/carry-mark.ts';
import { stoodBefore } from '../carrying/kept-before.ts';
import { readDecisions } from '../carrying/read-decisions.ts';
import { tablesBeside } from '../carrying/tables-beside.ts';
import { commitAll } from '../ports/commit-pending.ts';
import { copyInto } from '../ports/copy-into.ts';
import type { Files, PendingFile, Ports } from '../ports/ports.ts';
import { csvJobs } from './csv-jobs.ts';
import { jobDays } from './job-days.ts';
import { type CarriedJobs, caseOptions, type JobOptions, severalEditions } from './job-options.ts';
import { firstBytes, hashedWriter, type JobSource } from './job-source.ts';
import { jsonJobs } from './json-jobs.ts';
import { priceChanges } from './price-changes.ts';
import { sheetJobs } from './sheet-jobs.ts';

export { WORKBOOK_LIMITS } from '../../tables/open-workbook.ts';

export interface CarryJobsOptions extends JobOptions {
  readonly input: string;
  readonly out: string;
  /** The sheet of a workbook; absent takes the first visible one that is filled. */
  readonly sheet?: string;
}

export interface JobsReport extends CarriedJobs {
  readonly input: string;
  readonly out: string;
  readonly from: string;
  readonly to: string;
  /** The input was an output of an earlier run and untouched since: nothing was written. */
  readonly leftAlone: boolean;
}

/**
 * Carries a table of jobs from `joint.from` to `joint.to`: the user's lines come back as they were with our columns at
 * the right. csv and JSON Lines pass as a stream; a workbook is held whole and so bounded. Nothing stands under `out`
 * until all of it is written, and a sidecar beside it says what it is.
 *
 * @throws CatalogError OutputIsInput, AlreadyCarried, BadTable, BadFile, BadArgument, and what the files say.
 */
export async function carryJobs(
  ports: Pick<Ports, 'files' | 'progress'>,
  joint: Joint,
  marks: MarksOf,
  options: CarryJobsOptions,
): Promise<JobsReport> {
  const { files, progress } = ports;
  const { input, out, policy } = options;
  for (const path of [out, options.decisionsOut, options.priceChanges]) {
    if (path !== undefined) await refuseInputAsOutput(files, input, path);
  }
  const source = await openJobs(files, options);
  const edition = { input, out, from: joint.from.header.name, to: joint.to.header.name };
  if (hasOurColumns(source.header)) {
    const { to } = await refuseUnlessUntouched(files, input);
    return { ...edition, ...nothingDone(), to, leftAlone: true };
  }
  await refuseEditedOutput(files, out);
  const columns = findColumns(joint, source.header, source.sample, options.columns ?? {});
  const days = policy ? await jobDays(source, columns, policy, options.dates) : undefined;
  const { decisions } = await readDecisions(files, options);
  const cut = source.textOnly ? await countCut(joint, numberCells(source, columns)) : new Map<string, number>();
  const prices = priceChanges(joint, columns);
  const carrierOptions: CarrierOptions = {
    ...(namesEditions(source.sample, columns) && options.others ? { others: await options.others() } : {}),
    ...caseOptions(options),
    ...(cut.size > 0 ? { perhapsCut: number => cut.has(number) } : {}),
    ...(days ? { dayOf: days.dayOf } : {}),
    ...(decisions ? { decisions } : {}),
    ...(options.priceChanges === undefined ? {} : { tightens: prices.add }),
  };
  const carrier = jobCarrier(joint, marks, columns, carrierOptions);
  const pending: PendingFile[] = [];
  const create = async (path: string) => {
    const file = await files.create(path);
    pending.push(file);
    return file;
  };
  try {
    const writer = hashedWriter(await create(out));
    let told = 0;
    const carried = await source.carry({
      carrier,
      columns,
      governed: policy !== undefined,
      write: writer.write,
      done: lines => {
        if (lines - told < 250_000) return;
        told = lines;
        progress(`${lines.toLocaleString('en')} lines carried`);
      },
    });
    const totals = carrier.totals();
    const questions = options.decisionsOut === undefined ? [] : carrier.questions();
    const also: Record<string, string> = {};
    for (const [path, bytes] of tablesBeside(options, { questions, decisions, prices })) {
      (await create(path)).stream.write(bytes);
      also[path] = hashOf(bytes);
    }
    const output = writer.digest();
    const stood = await stoodBefore(files, out, output);
    if (stood.copyTo !== undefined) await copyInto(files, out, await create(stood.copyTo));
    const sidecar: Sidecar = {
      tool: 'fishplate',
      from: edition.from,
      to: edition.to,
      input: carried.input,
      output,
      counts: { lines: totals.lines, ...totals.outcomes, folded: totals.folded, added: totals.added },
      ...stood.record,
      ...(Object.keys(also).length > 0 ? { also } : {}),
    };
    (await create(sidecarName(out))).stream.write(writeSidecar(sidecar));
    // The output last: killed before it, what stood there stands there still, and the record tells it.
    await commitAll([...pending].reverse());
    return {
      ...edition,
      leftAlone: false,
      columns,
      totals,
      cases: carrier.cases(),
      questions,
      editions: severalEditions(carrier.editions()),
      findings: [
        ...(days?.findings ?? []),
        ...cutFindings(joint, input, cut),
        ...carried.findings,
        ...carrier.findings(),
      ],
      answered: decisions?.toKeep(edition) ?? [],
    };
  } catch (error) {
    for (const file of pending) await file.abandon();
    throw error;
  }
}

async function* numberCells(
  source: JobSource,
  { number }: Columns,
): AsyncGenerator<readonly [string, 1], void, undefined> {
  for await (const { cells, numeric } of source.lines()) {
    if (numeric(number.at).length === 0) yield [cells[number.at] ?? '', 1];
  }
}

/** A table of jobs in the format that its first bytes tell. @throws CatalogError BadTable, BadFile */
export async function openJobs(
  files: Files,
  { input, sheet }: Pick<CarryJobsOptions, 'input' | 'sheet'>,
): Promise<JobSource> {
  const first = await firstBytes(files, input);
  const source = isWorkbook(first)
    ? await sheetJobs(files, input, sheet)
    : /^\ufeff?\s*\{/.test(new TextDecoder().decode(first.subarray(0, 200)))
      ? await jsonJobs(files, input)
      : await csvJobs(files, input);
  if (source) return source;
  throw new CatalogError('BadTable', `${input} is empty; give a table with a header line.`, { input });
}

async function refuseInputAsOutput(files: Files, input: string, out: string): Promise<void> {
  for (const path of [out, sidecarName(out)]) {
    if (!(await files.same(path, input))) continue;
    throw new CatalogError('OutputIsInput', `${path} is the input itself; choose another name for the output.`, {
      out,
    });
  }
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

function nothingDone(): CarriedJobs {
  const outcomes = { kept: 0, carried: 0, choose: 0, withdrawn: 0, unknown: 0 };
  const totals = { lines: 0, outcomes, folded: 0, closed: 0, ungoverned: 0, added: 0, agree: true };
  return { columns: {}, totals, cases: [], questions: [], editions: {}, findings: [], answered: [] };
}
