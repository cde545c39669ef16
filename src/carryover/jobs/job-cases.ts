import type { Joint } from '../../crosswalk/joint.ts';
import { OUTCOMES, type Outcome, type OutcomeKind } from '../../model/citation.ts';
import type { Finding } from '../../model/finding.ts';
import type { Decisions } from '../decisions.ts';
import { askedOn, isQuestion, largestFirst, type Question } from '../questions.ts';
import type { MarksOf } from '../resolve.ts';
import { type CaseCount, countCases, sumOfLines, type Tally } from './case-counts.ts';
import type { Columns } from './columns.ts';
import { type Governed, jobCase } from './job-case.ts';
import type { JobNotes } from './job-notes.ts';
import type { JobPolicy } from './job-policy.ts';
import { type CitedCells, caseReader, type Way } from './job-reader.ts';
import { dutyOf } from './settled-by-policy.ts';
import { foldedState, stateOf } from './states.ts';
import { totalWord } from './total-line.ts';
import { typeReader } from './type-names.ts';

/** What answering cases takes beside the two editions. */
export interface CaseOptions {
  /** Other editions that lines may cite, by name. */
  readonly others?: ReadonlyMap<string, Way>;
  /** Names of types that no edition knows any more, to what they mean now. */
  readonly typeNames?: Readonly<Record<string, string>>;
  /** Words of the table for a state, to words that are known. */
  readonly stateNames?: Readonly<Record<string, string>>;
  readonly policy?: JobPolicy;
  readonly decisions?: Decisions;
  /** Whether a spreadsheet may have cut such a number before it saved the table as text. */
  readonly perhapsCut?: (number: string) => boolean;
}

/** A case with its count and with what it takes to ask about it. */
export interface KnownCase extends Tally {
  readonly way: Way;
  readonly title: string | undefined;
  /** The edition that it cites. */
  readonly edition: string;
  readonly undecided: Outcome;
}

export interface CaseTotals {
  readonly lines: number;
  readonly outcomes: Readonly<Record<OutcomeKind, number>>;
  readonly closed: number;
  /** Open lines of which nobody has said which edition governs them; they wait, whatever their outcome would be. */
  readonly ungoverned: number;
}

/** The cases of a table: what a line's cells mean, answered once, and how many lines have it. */
export interface JobCases {
  /** The case of these cells; one value for all lines that have it. Counts nothing. */
  read(cells: readonly string[], numeric: readonly string[], governed: Governed): KnownCase;
  count(known: KnownCase, lines?: number): void;
  /** Notes words for a type or a state that are on no list; says whether there was one. */
  strange(cells: readonly string[], lines?: number): boolean;
  /** The edition that a line cites, and its state. */
  cited(cells: readonly string[]): { readonly edition: string; readonly state: string };
  totals(): CaseTotals;
  /** Largest first. */
  counts(): readonly CaseCount[];
  /** What people have to be asked, each once; those with the most lines first. */
  questions(): readonly Question[];
  /** How many lines cite which edition. */
  editions(): ReadonlyMap<string, number>;
  findings(): readonly Finding[];
}

/** Numbers that name nothing come in any quantity; beyond this many they are counted as one case. */
const UNREADABLE = 10_000;
/** Cells longer than this are not worth remembering. */
const LONG_CELL = 200;

export function jobCases(
  joint: Joint,
  marks: MarksOf,
  columns: Columns,
  notes: JobNotes,
  options: CaseOptions,
): JobCases {
  const { policy, decisions } = options;
  const reader = caseReader({ joint, marks }, options.others ?? new Map(), policy, decisions, options.perhapsCut);
  const typeOf = typeReader(joint, { ...policy?.types, ...options.typeNames });
  const named = new Map(Object.entries(options.stateNames ?? {}).map(([word, known]) => [foldedState(word), known]));
  const stateIn = (cell: string) => stateOf(named.get(foldedState(cell)) ?? cell);
  const cases = new Map<string, KnownCase>();
  const uncounted = new Map<OutcomeKind, { lines: number; closed: number; ungoverned: number }>();
  const editions = new Map<string, number>();
  let unreadable = 0;

  const at = (cells: readonly string[], role: keyof Columns) => {
    const column = columns[role];
    return column === undefined ? '' : (cells[column.at] ?? '');
  };
  const counts = () => countCases([...cases.values()], uncounted);

  return {
    read: (cells, numeric, governed) => {
      const type = typeOf(at(cells, 'type'));
      const state = stateIn(at(cells, 'state')) ?? 'open';
      const cited = { number: at(cells, 'number'), title: at(cells, 'title'), edition: at(cells, 'edition') };
      const blank = at(cells, 'type').trim() === '' && at(cells, 'state').trim() === '';
      const total = blank ? totalWord(cells) : undefined;
      const asked: CitedCells = { ...cited, type, state, governed, numeric, ...(total === undefined ? {} : { total }) };
      const { number, title, edition, way } = reader.cited(asked);
      const key = JSON.stringify([
        number,
        type ?? null,
        state,
        title ?? null,
        edition,
        governed,
        numeric,
        total ?? null,
      ]);
      const known = cases.get(key);
      if (known) return known;
      const { outcome, undecided } = reader.answer(asked);
      const found: KnownCase = {
        case: jobCase(way.joint, number, type, state, edition, outcome, governed),
        lines: 0,
        counted: true,
        way,
        title,
        undecided,
        edition,
      };
      const readable = outcome.from !== undefined || outcome.kind !== 'unknown';
      if (readable || (unreadable < UNREADABLE && number.length <= LONG_CELL)) {
        cases.set(key, found);
        if (!readable) unreadable++;
        return found;
      }
      return { ...found, counted: false };
    },
    count: (known, lines = 1) => {
      known.lines += lines;
      editions.set(known.edition, (editions.get(known.edition) ?? 0) + lines);
      if (known.counted) return;
      const { outcome, state, ungoverned } = known.case;
      const kind = uncounted.get(outcome.kind) ?? { lines: 0, closed: 0, ungoverned: 0 };
      kind.lines += lines;
      if (state !== 'open') kind.closed += lines;
      if (ungoverned) kind.ungoverned += lines;
      uncounted.set(outcome.kind, kind);
    },
    strange: (cells, lines = 1) => {
      const [type, state] = [at(cells, 'type'), at(cells, 'state')];
      return notes.strange(type, typeOf(type), state, stateIn(state), lines);
    },
    cited: cells => {
      const state = stateIn(at(cells, 'state')) ?? 'open';
      const cited = { number: at(cells, 'number'), title: '', edition: at(cells, 'edition') };
      const { edition } = reader.cited({ ...cited, type: undefined, state, governed: 'newer', numeric: [] });
      return { edition, state };
    },
    totals: () => {
      const all = counts();
      const outcomes = Object.fromEntries(OUTCOMES.map(k => [k, sumOfLines(all.filter(c => c.outcome === k))]));
      return {
        lines: sumOfLines(all),
        outcomes: outcomes as Record<OutcomeKind, number>,
        closed: all.reduce((n, c) => n + c.closed, 0),
        ungoverned: all.reduce((n, c) => n + c.ungoverned, 0),
      };
    },
    counts,
    questions: () => questionsOf([...cases.values()]),
    editions: () => editions,
    findings: () => [...notes.findings(), ...(decisions?.findings() ?? [])],
  };
}

/** Whether it is a case under contract that the newer edition makes dearer; not where somebody keeps it from there. */
export function tightens({ case: found, way, undecided }: KnownCase): boolean {
  const { kind, cause } = found.outcome;
  if (found.state !== 'open' || (cause === 'decided' && kind !== 'carried')) return false;
  const duty = dutyOf(way.joint, way.marks, undecided);
  return duty === 'stricter' || duty === 'mixed';
}

function questionsOf(cases: readonly KnownCase[]): readonly Question[] {
  const asked = new Map<string, Question>();
  for (const { case: found, way, title, edition, undecided, lines } of cases) {
    if (lines === 0 || found.state !== 'open' || !isQuestion(undecided)) continue;
    const mark = askedOn(way.joint, undecided);
    const { number, type, state } = found;
    const key = JSON.stringify([number, type ?? null, state, title ?? null, edition, mark]);
    const before = asked.get(key)?.lines ?? 0;
    asked.set(key, { number, type, state, title, edition, outcome: undecided, askedOn: mark, lines: before + lines });
  }
  return largestFirst([...asked.values()]);
}
