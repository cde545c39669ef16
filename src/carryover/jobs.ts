import type { Joint } from '../crosswalk/joint.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import type { Finding } from '../model/finding.ts';
import type { ItemId, TypeId } from '../model/item.ts';
import type { Columns } from './columns.ts';
import { type AddedLine, addedLine, type JobCase, jobCase } from './job-case.ts';
import { JobNotes } from './job-notes.ts';
import { newDutiesUnder } from './new-duties.ts';
import { readNumberCell } from './number-cell.ts';
import { type MarksOf, resolveCitation } from './resolve.ts';
import { stateOf } from './states.ts';
import { sameTitle, titlesOf } from '../citing/titles.ts';
import { typeReader } from './type-names.ts';

/** Lines of one old number, type and outcome. */
export interface CaseCount {
  readonly number: string;
  readonly type: TypeId | undefined;
  readonly outcome: OutcomeKind;
  readonly heirs: readonly { readonly number: string; readonly title: string }[];
  readonly why: string;
  readonly lines: number;
  /** How many of the lines are closed and stay under the older edition. */
  readonly closed: number;
}

export interface JobTotals {
  readonly lines: number;
  readonly outcomes: Readonly<Record<OutcomeKind, number>>;
  readonly folded: number;
  readonly closed: number;
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
}

export interface JobCarrier {
  /** Takes the lines of the table one after the other. */
  line(cells: readonly string[]): CarriedLine;
  /** The lines that the last job gained. */
  end(): readonly AddedLine[];
  totals(): JobTotals;
  /** Largest first. */
  cases(): readonly CaseCount[];
  findings(): readonly Finding[];
}

/** Numbers that name nothing come in any quantity; beyond this many they are counted as one case. */
const UNREADABLE = 10_000;
const OTHERS = '(other numbers)';
/** Answers remembered by the cells as they stand; cells longer than this are not worth remembering. */
const REMEMBERED = 50_000;
const LONG_CELL = 200;
const LONG_KEY = 500;

/**
 * Carries a job table line by line. What it keeps in memory grows with the cases and with the different jobs, not with
 * the lines. Law: each line has exactly one outcome.
 */
export function jobCarrier(joint: Joint, marks: MarksOf, columns: Columns): JobCarrier {
  const typeOf = typeReader(joint);
  const titles = titlesOf(joint.from);
  const notes = new JobNotes(columns);
  const remembered = new Map<string, Tally>();
  const cases = new Map<string, Tally>();
  const others = new Map<OutcomeKind, { lines: number; closed: number }>();
  let unreadable = 0;
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

  function tallyOf(cells: readonly string[]): Tally {
    let key = '';
    for (const column of readFrom) key += `${cells[column] ?? ''}\u0000`;
    const known = remembered.get(key);
    if (known) return known;
    const [type, state] = [at(cells, 'type'), at(cells, 'state')];
    const found = readCase(at(cells, 'number'), type, state, at(cells, 'title'), at(cells, 'edition'));
    if (key.length > LONG_KEY) return found;
    if (remembered.size >= REMEMBERED) remembered.clear();
    // A word on no list is noted each time that it is met, so such lines are not remembered.
    if (!notes.strange(type, typeOf(type), state, stateOf(state))) remembered.set(key, found);
    return found;
  }

  function readCase(numberCell: string, typeCell: string, stateCell: string, titleCell: string, editionCell: string) {
    const cell = readNumberCell(joint, numberCell);
    const type = typeOf(typeCell);
    const state = stateOf(stateCell) ?? 'open';
    const edition = editionCell.trim() || cell.edition || joint.from.header.name;
    // A title that names nothing is a remark; keeping it in the case would make every remark a case of its own.
    const beside = titleCell.trim() || cell.title;
    const title = beside !== undefined && telling(cell.number, beside) ? beside : undefined;
    const key = JSON.stringify([cell.number, type ?? null, state, title ?? null, edition]);
    const known = cases.get(key);
    if (known) return known;
    const outcome = resolveCitation(joint, marks, {
      number: cell.number,
      edition,
      ...(type === undefined ? {} : { type }),
      ...(title === undefined ? {} : { title }),
    });
    const found = { case: jobCase(joint, cell.number, type, state, edition, outcome), lines: 0, counted: true };
    const readable = outcome.from !== undefined || outcome.kind !== 'unknown';
    if (readable || (unreadable < UNREADABLE && cell.number.length <= LONG_CELL)) {
      cases.set(key, found);
      if (!readable) unreadable++;
      return found;
    }
    return { ...found, counted: false };
  }

  function telling(number: string, title: string): boolean {
    if (title.length > LONG_CELL) return false;
    return titles.named(title).length > 0 || joint.old.withNumber(number).some(i => sameTitle(i.title, title));
  }

  function count(tally: Tally): void {
    tally.lines++;
    if (tally.counted) return;
    const { outcome, state } = tally.case;
    const kind = others.get(outcome.kind) ?? { lines: 0, closed: 0 };
    kind.lines++;
    if (state !== 'open') kind.closed++;
    others.set(outcome.kind, kind);
  }

  function endRun(): readonly AddedLine[] {
    const gained: AddedLine[] = [];
    for (const { type, typeCell, workItem } of run.works.values()) {
      for (const line of dutiesOf(workItem, type, typeCell)) gained.push({ ...line, job: run.job });
    }
    if (run.job !== '') finished.add(run.job);
    added += gained.length;
    return gained;
  }

  function dutiesOf(workItem: ItemId, type: TypeId | undefined, typeCell: string): readonly AddedLine[] {
    const key = JSON.stringify([workItem, type ?? null, typeCell]);
    const known = duties.get(key);
    if (known) return known;
    const found = newDutiesUnder(joint, workItem, type).map(d => addedLine(joint, '', type, typeCell, d));
    duties.set(key, found);
    return found;
  }

  function joinRun(cells: readonly string[], found: JobCase): number | undefined {
    if (run.job === '') return undefined;
    if (found.workItems.length > 0 && !run.cited.has(found)) {
      run.cited.add(found);
      for (const workItem of found.workItems) {
        const key = JSON.stringify([workItem, found.type ?? null]);
        const typeCell = at(cells, 'type').slice(0, LONG_CELL);
        if (!run.works.has(key)) run.works.set(key, { workItem, type: found.type, typeCell });
      }
    }
    if (found.foldKey === undefined) return undefined;
    const survivor = run.survivors.get(found.foldKey);
    if (survivor === undefined) run.survivors.set(found.foldKey, lines);
    else folded++;
    return survivor;
  }

  return {
    line: cells => {
      lines++;
      const job = at(cells, 'job').trim();
      let gained: readonly AddedLine[] = [];
      if (job !== run.job) {
        gained = endRun();
        if (job !== '' && finished.has(job)) notes.returned(job, lines);
        run = emptyRun(job);
      }
      const tally = tallyOf(cells);
      count(tally);
      return { case: tally.case, foldsInto: joinRun(cells, tally.case), added: gained };
    },
    end: () => {
      const gained = endRun();
      run = emptyRun('');
      return gained;
    },
    totals: () => {
      const all = countCases([...cases.values()], others);
      const outcomes = Object.fromEntries(OUTCOMES.map(k => [k, sum(all.filter(c => c.outcome === k))]));
      return {
        lines,
        outcomes: outcomes as Record<OutcomeKind, number>,
        folded,
        closed: all.reduce((n, c) => n + c.closed, 0),
        added,
        agree: sum(all) === lines,
      };
    },
    cases: () => countCases([...cases.values()], others),
    findings: () => notes.findings(),
  };
}

/** A case and how many lines have it. Cases beyond the limit are not `counted` here but by their kind. */
interface Tally {
  readonly case: JobCase;
  lines: number;
  readonly counted: boolean;
}

interface Run {
  readonly job: string;
  readonly survivors: Map<string, number>;
  readonly cited: Set<JobCase>;
  readonly works: Map<
    string,
    { readonly workItem: ItemId; readonly type: TypeId | undefined; readonly typeCell: string }
  >;
}

function emptyRun(job: string): Run {
  return { job, survivors: new Map(), cited: new Set(), works: new Map() };
}

function countCases(
  counted: readonly Tally[],
  others: ReadonlyMap<OutcomeKind, { readonly lines: number; readonly closed: number }>,
): readonly CaseCount[] {
  const groups = new Map<string, CaseCount>();
  for (const { case: found, lines: n } of counted) {
    const { number, type, state, outcome } = found;
    if (n === 0) continue;
    const key = JSON.stringify([number, type ?? null, outcome.kind, outcome.why]);
    const before = groups.get(key);
    groups.set(key, {
      number,
      type,
      outcome: outcome.kind,
      heirs: outcome.heirs.map(h => ({ number: h.number, title: h.title })),
      why: outcome.why,
      lines: (before?.lines ?? 0) + n,
      closed: (before?.closed ?? 0) + (state === 'open' ? 0 : n),
    });
  }
  for (const [outcome, { lines, closed }] of others) {
    const why = 'Too many different numbers that the edition does not have; each line says its own.';
    groups.set(`${OTHERS}${outcome}`, { number: OTHERS, type: undefined, outcome, heirs: [], why, lines, closed });
  }
  return [...groups.values()].sort(
    (a, b) => b.lines - a.lines || (a.number < b.number ? -1 : a.number > b.number ? 1 : 0),
  );
}

function sum(cases: readonly CaseCount[]): number {
  return cases.reduce((n, c) => n + c.lines, 0);
}
