import type { Joint } from '../../crosswalk/joint.ts';
import type { OutcomeKind } from '../../model/citation.ts';
import type { Finding } from '../../model/finding.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import type { Question } from '../questions.ts';
import type { MarksOf } from '../resolve.ts';
import type { CaseCount } from './case-counts.ts';
import type { Columns } from './columns.ts';
import { type DecidingDay, type Governing, governingEdition } from './governing-edition.ts';
import { type AddedLine, addedLine, type Governed, type JobCase } from './job-case.ts';
import { type CaseOptions, jobCases, type KnownCase, tightens } from './job-cases.ts';
import { JobNotes } from './job-notes.ts';
import type { Way } from './job-reader.ts';
import { newDutiesUnder } from './new-duties.ts';
import { totalWord } from './total-line.ts';

export type { CaseCount } from './case-counts.ts';

export interface JobTotals {
  readonly lines: number;
  readonly outcomes: Readonly<Record<OutcomeKind, number>>;
  readonly folded: number;
  readonly closed: number;
  /** Open lines of which nobody has said which edition governs them. */
  readonly ungoverned: number;
  readonly added: number;
  /** Law: lines in = sum of outcomes = sum of cases. */
  readonly agree: boolean;
}

export interface CarriedLine {
  readonly case: JobCase;
  /** 1-based record of the input that survives in place of this one. */
  readonly foldsInto: number | undefined;
  /** The lines that the job before this line gained; they stand before it. */
  readonly added: readonly AddedLine[];
  /** Where a policy governs. */
  readonly governing?: Governing;
}

/** What a run may know beside the two editions. */
export interface CarrierOptions extends CaseOptions {
  /** The day that decides for a line, by the policy's columns; only with a policy. */
  readonly dayOf?: (cells: readonly string[]) => DecidingDay | undefined;
  /** Told of each open line that asks more under the newer edition than under the one that it cites. */
  readonly tightens?: (cells: readonly string[], line: number, found: JobCase) => void;
}

export interface JobCarrier {
  /**
   * Takes the lines of the table one after the other.
   *
   * @param numeric what a spreadsheet's number cell shows and stores, where the cited number is a number and no text
   */
  line(cells: readonly string[], numeric?: readonly string[]): CarriedLine;
  /** The lines that the last job gained. */
  end(): readonly AddedLine[];
  totals(): JobTotals;
  /** Largest first. */
  cases(): readonly CaseCount[];
  /** What people have to be asked, each once; those with the most lines first. */
  questions(): readonly Question[];
  /** How many lines cite which edition. */
  editions(): ReadonlyMap<string, number>;
  findings(): readonly Finding[];
}

/** Answers remembered by the cells as they stand; cells longer than this are not worth remembering. */
const REMEMBERED = 50_000;
const LONG_CELL = 200;
const LONG_KEY = 500;

/**
 * Carries a job table line by line. What it keeps in memory grows with the cases and with the different jobs, not with
 * the lines. Law: each line has exactly one outcome.
 */
export function jobCarrier(joint: Joint, marks: MarksOf, columns: Columns, options: CarrierOptions = {}): JobCarrier {
  const { policy } = options;
  const notes = new JobNotes(columns);
  const cases = jobCases(joint, marks, columns, notes, options);
  const remembered = new Map<string, Known>();
  const finished = new Set<string>();
  const duties = new Map<string, readonly AddedLine[]>();
  let run = emptyRun('');
  let lines = 0;
  let folded = 0;
  let added = 0;

  const at = (cells: readonly string[], role: keyof Columns) => {
    const column = columns[role];
    return column === undefined ? '' : (cells[column.at] ?? '');
  };

  const readFrom = (['number', 'type', 'state', 'title', 'edition'] as const).flatMap(r => columns[r]?.at ?? []);

  function tallyOf(cells: readonly string[], numeric: readonly string[], governed: Governed): Known {
    let key = typeof governed === 'string' ? governed : `=${governed.edition}`;
    for (const shown of numeric) key += `\u0000${shown}`;
    const total = totalWord(cells);
    if (total !== undefined) key += `\u0000\u0000${total}`;
    for (const column of readFrom) key += `\u0000${cells[column] ?? ''}`;
    const known = remembered.get(key);
    if (known) return known;
    const found: Known = cases.read(cells, numeric, governed);
    if (key.length > LONG_KEY) return found;
    if (remembered.size >= REMEMBERED) remembered.clear();
    // A word on no list is noted each time that it is met, so such lines are not remembered.
    if (!cases.strange(cells)) remembered.set(key, found);
    return found;
  }

  /** The edition that governs a line, by the policy; without one every open line goes to the newer edition. */
  function governingOf(cells: readonly string[], job: string): Governing | undefined {
    if (!policy) return undefined;
    const { edition, state } = cases.cited(cells);
    const day = options.dayOf?.(cells);
    return governingEdition(policy, {
      job,
      readIn: edition,
      ...(state === 'open' ? {} : { closed: state }),
      ...(day ? { day } : {}),
    });
  }

  function endRun(): readonly AddedLine[] {
    const gained: AddedLine[] = [];
    for (const { type, typeCell, workItem, way, governing } of run.works.values()) {
      const rule = governing ? { governing } : {};
      for (const line of dutiesOf(way.joint, workItem, type, typeCell)) gained.push({ ...line, job: run.job, ...rule });
    }
    if (run.job !== '') finished.add(run.job);
    added += gained.length;
    return gained;
  }

  function dutiesOf(joint: Joint, workItem: ItemId, type: TypeId | undefined, typeCell: string): readonly AddedLine[] {
    const key = JSON.stringify([joint.from.header.name, workItem, type ?? null, typeCell]);
    const known = duties.get(key);
    if (known) return known;
    const found = newDutiesUnder(joint, workItem, type).map(d => addedLine(joint, '', type, typeCell, d));
    duties.set(key, found);
    return found;
  }

  function joinRun(
    cells: readonly string[],
    { case: found, way }: Known,
    governing: Governing | undefined,
  ): number | undefined {
    if (run.job === '') return undefined;
    if (found.workItems.length > 0 && !run.cited.has(found)) {
      run.cited.add(found);
      for (const workItem of found.workItems) {
        const key = JSON.stringify([workItem, found.type ?? null]);
        const typeCell = at(cells, 'type').slice(0, LONG_CELL);
        if (!run.works.has(key)) run.works.set(key, { workItem, type: found.type, typeCell, way, governing });
      }
    }
    if (found.foldKey === undefined) return undefined;
    const survivor = run.survivors.get(found.foldKey);
    if (survivor === undefined) run.survivors.set(found.foldKey, lines);
    else folded++;
    return survivor;
  }

  return {
    line: (cells, numeric = NOT_NUMERIC) => {
      lines++;
      const job = at(cells, 'job').trim();
      let gained: readonly AddedLine[] = [];
      if (job !== run.job) {
        gained = endRun();
        if (job !== '' && finished.has(job)) notes.returned(job, lines);
        run = emptyRun(job);
      }
      const governing = governingOf(cells, job);
      const governed = governing ? governedBy(governing, joint.to.header.name) : 'newer';
      const tally = tallyOf(cells, numeric, governed);
      cases.count(tally);
      // What stays under the older edition costs what was agreed.
      if (options.tightens && governed === 'newer') {
        tally.tightens ??= tightens(tally);
        if (tally.tightens) options.tightens(cells, lines, tally.case);
      }
      const carried = { case: tally.case, foldsInto: joinRun(cells, tally, governing), added: gained };
      return governing ? { ...carried, governing } : carried;
    },
    end: () => {
      const gained = endRun();
      run = emptyRun('');
      return gained;
    },
    totals: () => {
      const { lines: counted, outcomes, closed, ungoverned } = cases.totals();
      return { lines, outcomes, folded, closed, ungoverned, added, agree: counted === lines };
    },
    cases: cases.counts,
    questions: cases.questions,
    editions: cases.editions,
    findings: cases.findings,
  };
}

interface Run {
  readonly job: string;
  readonly survivors: Map<string, number>;
  readonly cited: Set<JobCase>;
  readonly works: Map<
    string,
    {
      readonly workItem: ItemId;
      readonly type: TypeId | undefined;
      readonly typeCell: string;
      readonly way: Way;
      readonly governing: Governing | undefined;
    }
  >;
}

function emptyRun(job: string): Run {
  return { job, survivors: new Map(), cited: new Set(), works: new Map() };
}

const NOT_NUMERIC: readonly string[] = [];

interface Known extends KnownCase {
  /** Looked up when it is first asked for. */
  tightens?: boolean;
}

export function governedBy({ edition }: Governing, to: string): Governed {
  return edition === undefined ? 'ask' : edition === to ? 'newer' : { edition };
}
