import { createHash } from 'node:crypto';
import { type Columns, findColumns } from '../../carryover/jobs/columns.ts';
import { ADDED_COLUMNS, ourColumnsFrom } from '../../carryover/jobs/job-case.ts';
import { caseReader, numbersBehind, type Way } from '../../carryover/jobs/job-reader.ts';
import { stateOf } from '../../carryover/jobs/states.ts';
import { typeReader } from '../../carryover/jobs/type-names.ts';
import { sameTitle } from '../../citing/titles.ts';
import { joinEditions } from '../../crosswalk/joint.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { namesApart } from '../documents/document-set.ts';
import { openJobs } from '../jobs/carry-jobs.ts';
import type { JobLine } from '../jobs/job-source.ts';
import type { Ports } from '../ports/ports.ts';
import {
  type CitingJobs,
  type CitingLine,
  itemKey,
  type JobsToRead,
  MOST_JOBS,
  MOST_LINES,
  type ReadJobs,
} from './jobs-citing.ts';

/**
 * Reads tables of jobs once, as streams, and keeps what cites each item: the memory grows with the items, not with the
 * lines. Columns, editions and numbers are read as `carry jobs` reads them.
 *
 * @throws CatalogError UnknownEdition; a file that cannot be read is told in the result
 */
export async function readJobsCiting(
  { files, progress }: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  { inputs, edition, columns: told }: JobsToRead,
): Promise<ReadJobs> {
  const ways = await waysWithin(catalog);
  const main = ways.get(edition);
  if (!main) throw unknownEdition(edition, [...ways.keys()]);
  const found = new Map<string, Tally>();
  const unread: { file: string; why: string }[] = [];
  const names = namesApart(inputs);
  let [lines, unknown] = [0, 0];
  for (const [input, file] of names) {
    try {
      const source = await openJobs(files, { input });
      const { header, sample, readIn } = withoutOurs(source.header, source.sample);
      const columns = findColumns(main.joint, header, sample, told);
      const meant = meaning(main, ways, columns, readIn);
      for await (const line of source.lines()) {
        if ((line.cells[columns.number.at] ?? '').trim() === '') continue;
        lines++;
        if (lines % 250_000 === 0) progress(`${lines.toLocaleString('en')} job lines read`);
        const { name, items } = meant(line);
        if (items.length === 0) unknown++;
        for (const item of items) {
          const key = itemKey(name, item.id);
          const tally = found.get(key) ?? emptyTally();
          found.set(key, tally);
          count(tally, citing(line, columns, file, /\.xls[xm]$/i.test(file)), items.length > 1);
        }
      }
    } catch (error) {
      if (!(error instanceof CatalogError)) throw error;
      unread.push({ file, why: error.message.replace(/which one does, or check --from\.$/, COLUMN) });
    }
  }
  return { found: new Map([...found].map(([key, t]) => [key, toldOf(t)])), files: names.size, lines, unknown, unread };
}

const COLUMN = 'which one does with --jobs-column number=HEADER, or check --jobs-edition.';

/** Every edition joined to itself: what a line cites is asked in one edition at a time. */
async function waysWithin(catalog: Catalog): Promise<ReadonlyMap<string, Way>> {
  const ways = new Map<string, Way>();
  for (const { name } of await listEditions(catalog)) {
    const index = await readIndex(catalog, name);
    ways.set(name, { joint: joinEditions(index, index, { from: name, to: name, links: [] }), marks: noMarks });
  }
  return ways;
}

const noMarks: Way['marks'] = () => {
  throw new Error('nothing is followed along a link here');
};

/** A table that was carried over is read by its own columns; ours say in which edition its lines were read. */
function withoutOurs(header: readonly string[], sample: readonly (readonly string[])[]) {
  const end = ourColumnsFrom(header);
  if (end === undefined) return { header, sample, readIn: undefined };
  const readIn = end + ADDED_COLUMNS.indexOf('read_in');
  return { header: header.slice(0, end), sample: sample.map(cells => cells.slice(0, end)), readIn };
}

/** Which items a line means, and in which edition; more than one where it does not say. */
function meaning(main: Way, ways: ReadonlyMap<string, Way>, columns: Columns, readIn: number | undefined) {
  const reader = caseReader(main, ways, undefined, undefined);
  const types = new Map([...ways.values()].map(way => [way, typeReader(way.joint)]));
  return ({ cells, numeric }: JobLine): { readonly name: string; readonly items: readonly Entry[] } => {
    const at = (role: keyof Columns) => cells[columns[role]?.at ?? -1] ?? '';
    const shown = numeric(columns.number.at);
    const { way, number, title, edition, several } = reader.cited({
      number: at('number'),
      title: at('title'),
      edition: at('edition') || (cells[readIn ?? -1] ?? ''),
      type: undefined,
      state: 'open',
      governed: 'newer',
      numeric: shown,
    });
    const { joint } = way;
    if (joint.from.header.name !== edition) return { name: edition, items: [] };
    const behind = numbersBehind(joint, number, shown);
    const bearers = (several?.numbers ?? (behind.length > 0 ? behind : [number])).flatMap(n => joint.old.withNumber(n));
    const type = types.get(way)!(at('type'));
    const items = among(
      among(bearers, item => type !== undefined && joint.old.types(item.id).includes(type)),
      item => title !== undefined && sameTitle(item.title, title),
    );
    return { name: edition, items };
  };
}

/** Those that fit, or all where none does. */
function among(items: readonly Entry[], fits: (item: Entry) => boolean): readonly Entry[] {
  if (items.length < 2) return items;
  const fitting = items.filter(fits);
  return fitting.length > 0 ? fitting : items;
}

/**
 * An id has a digit and no blank; a column of jobs that holds "54 Tanyard Row" names where somebody lives, and is
 * counted without being shown.
 */
const JOB_ID = /^(?=.*\d)[^\s@]{1,40}$/;

function citing({ cells, line }: JobLine, columns: Columns, file: string, row: boolean): Found {
  const job = (cells[columns.job?.at ?? -1] ?? '').trim();
  return {
    told: {
      file,
      line,
      row,
      job: JOB_ID.test(job) ? job : '',
      state: stateOf(cells[columns.state?.at ?? -1] ?? '') ?? '',
    },
    key: job === '' ? undefined : JSON.stringify([file, job]),
  };
}

interface Found {
  readonly told: CitingLine;
  /** Tells jobs apart. */
  readonly key: string | undefined;
}

interface Tally {
  lines: number;
  unsure: number;
  readonly states: Map<string, number>;
  readonly jobs: Set<string>;
  lastJob: string | undefined;
  readonly open: CitingLine[];
  readonly others: CitingLine[];
}

const emptyTally = (): Tally => ({
  lines: 0,
  unsure: 0,
  states: new Map(),
  jobs: new Set(),
  lastJob: undefined,
  open: [],
  others: [],
});

function count(tally: Tally, { told, key }: Found, unsure: boolean): void {
  tally.lines++;
  if (unsure) tally.unsure++;
  tally.states.set(told.state, (tally.states.get(told.state) ?? 0) + 1);
  // Lines of a job stand together as a rule, so that most are told by the one before.
  if (key !== undefined && key !== tally.lastJob && tally.jobs.size < MOST_JOBS) tally.jobs.add(shortened(key));
  tally.lastJob = key;
  const list = told.state === 'open' ? tally.open : tally.others;
  if (list.length < MOST_LINES) list.push(told);
}

/** Cells may be long, and hundreds of them are kept for each item. */
const shortened = (key: string) => (key.length <= 80 ? key : createHash('sha256').update(key).digest('base64url'));

function toldOf({ lines, unsure, states, jobs, open, others }: Tally): CitingJobs {
  const first = [...open, ...others].slice(0, MOST_LINES);
  return { lines, unsure, states: Object.fromEntries(states), jobs, first };
}

function unknownEdition(edition: string, known: readonly string[]): CatalogError {
  return new CatalogError('UnknownEdition', `There is no edition ${edition}; use one of: ${known.join(', ')}.`, {
    name: edition,
    known,
  });
}
