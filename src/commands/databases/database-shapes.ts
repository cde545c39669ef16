import type { TheirColumn, TheirTable } from '../../databases/database.ts';
import { namedAfter } from '../../databases/quoted.ts';
import type { Shape, ShapeColumn } from '../../databases/shape.ts';

/** Counts up whenever the tables change, so that what an older version left is told apart. */
export const LAYOUT = 2;

const text = (name: string): ShapeColumn => ({ name, type: 'text' });
const must = (name: string, type = 'text'): ShapeColumn => ({ name, type, required: true });
const whole = (name: string): ShapeColumn => ({ name, type: 'integer' });

/** One row for each table of theirs that was carried. */
export const RUNS: Shape = {
  name: 'fishplate_runs',
  columns: [
    must('run'),
    must('table_name'),
    must('edition_from'),
    must('edition_to'),
    must('columns'),
    must('layout', 'integer'),
    must('finished', 'boolean'),
    { name: 'lines', type: 'bigint' },
    text('done_to'),
  ],
  key: ['run'],
  leadsTo: [],
};

/** Which crosswalks a run rests on. */
export const RUN_CROSSWALKS: Shape = {
  name: 'fishplate_run_crosswalks',
  columns: [must('run'), must('crosswalk')],
  key: ['run', 'crosswalk'],
  leadsTo: [
    [['run'], RUNS.name, ['run']],
    [['crosswalk'], 'fishplate_crosswalks', ['crosswalk']],
  ],
};

/** Our tables and views beside one table of theirs, by what they hold. */
export interface RunShapes {
  /** What their lines cite, by the number that our table gives it. */
  readonly outcome: Shape;
  readonly heir: Shape;
  /** Their cells as they stand. */
  readonly cases: Shape;
  /** With a policy: what decides which edition governs. */
  readonly rule: Shape;
  /** With a policy: the outcome of a case under the edition that governs. */
  readonly answer: Shape;
  readonly work: Shape;
  readonly outcomeWork: Shape;
  readonly duty: Shape;
  /** One row for each of their lines. */
  readonly lines: Shape;
  readonly fold: Shape;
  /** What their jobs gain. */
  readonly job: Shape;
  /** Views. */
  readonly annotated: string;
  readonly added: string;
}

/** Columns by which our tables name a line of theirs. */
export function keyColumns({ key }: TheirTable, sameType: (c: TheirColumn) => string, before = ''): ShapeColumn[] {
  return key.map(c => ({ name: before + c.name, type: sameType(c), required: true }));
}

export function runShapes(theirs: TheirTable, sameType: (c: TheirColumn) => string, governed: boolean): RunShapes {
  const named = (ending: string) => namedAfter(theirs.name, ending);
  const [outcome, cases, work, rule, lines] = ['outcome', 'case', 'work', 'rule', 'lines'].map(n =>
    named(n === 'lines' ? '_carried' : `_carried_${n}`),
  ) as [string, string, string, string, string];
  const keys = theirs.key.map(c => c.name);
  return {
    outcome: {
      name: outcome,
      columns: [
        must('outcome_no', 'integer'),
        must('number'),
        text('type'),
        must('state'),
        must('read_in'),
        must('carried_to'),
        must('outcome'),
        must('cause'),
        must('new_number'),
        must('new_title'),
        must('why'),
        must('to_do'),
        text('from_item'),
        whole('fold_no'),
      ],
      key: ['outcome_no'],
      leadsTo: [[['from_item'], 'fishplate_items', ['item']]],
    },
    heir: {
      name: named('_carried_heir'),
      columns: [must('outcome_no', 'integer'), must('place', 'integer'), must('item')],
      key: ['outcome_no', 'place'],
      leadsTo: [
        [['outcome_no'], outcome, ['outcome_no']],
        [['item'], 'fishplate_items', ['item']],
      ],
    },
    cases: {
      name: cases,
      columns: [
        must('case_no', 'integer'),
        must('number'),
        must('is_number', 'integer'),
        must('type'),
        must('state'),
        must('title'),
        must('edition'),
        must('lines', 'bigint'),
        text('read_in'),
        text('closed'),
        whole('outcome_no'),
      ],
      key: ['case_no'],
      leadsTo: [[['outcome_no'], outcome, ['outcome_no']]],
    },
    rule: {
      name: rule,
      columns: [
        must('rule_no', 'integer'),
        must('read_in'),
        must('closed'),
        must('job'),
        must('days'),
        text('governed'),
        text('governed_by'),
        text('rule'),
      ],
      key: ['rule_no'],
      leadsTo: [],
    },
    answer: {
      name: named('_carried_answer'),
      columns: [
        must('answer_no', 'integer'),
        must('case_no', 'integer'),
        must('governed'),
        must('lines', 'bigint'),
        whole('outcome_no'),
      ],
      key: ['answer_no'],
      leadsTo: [
        [['case_no'], cases, ['case_no']],
        [['outcome_no'], outcome, ['outcome_no']],
      ],
    },
    work: {
      name: work,
      columns: [must('work_no', 'integer'), must('read_in'), must('item'), text('type'), must('group_no', 'integer')],
      key: ['work_no'],
      leadsTo: [[['item'], 'fishplate_items', ['item']]],
    },
    outcomeWork: {
      name: named('_carried_outcome_work'),
      columns: [must('outcome_no', 'integer'), must('place', 'integer'), must('work_no', 'integer')],
      key: ['outcome_no', 'place'],
      leadsTo: [
        [['outcome_no'], outcome, ['outcome_no']],
        [['work_no'], work, ['work_no']],
      ],
    },
    duty: {
      name: named('_carried_duty'),
      columns: [
        must('work_no', 'integer'),
        must('place', 'integer'),
        must('item'),
        must('new_number'),
        must('new_title'),
        must('outcome'),
        must('why'),
        must('to_do'),
        must('read_in'),
        must('carried_to'),
      ],
      key: ['work_no', 'place'],
      leadsTo: [
        [['work_no'], work, ['work_no']],
        [['item'], 'fishplate_items', ['item']],
      ],
    },
    lines: {
      name: lines,
      columns: [
        ...keyColumns(theirs, sameType),
        must('outcome_no', 'integer'),
        ...(governed ? [must('rule_no', 'integer')] : []),
      ],
      key: keys,
      leadsTo: [
        [['outcome_no'], outcome, ['outcome_no']],
        ...(governed ? [[['rule_no'], rule, ['rule_no']] as const] : []),
      ],
    },
    fold: {
      name: named('_carried_fold'),
      columns: [...keyColumns(theirs, sameType), ...keyColumns(theirs, sameType, 'into_')],
      key: keys,
      leadsTo: [
        [keys, lines, keys],
        [keys.map(k => `into_${k}`), lines, keys],
      ],
    },
    job: {
      name: named('_carried_job'),
      columns: [
        must('job'),
        must('work_no', 'integer'),
        must('type_cell'),
        ...(governed ? [must('rule_no', 'integer')] : []),
      ],
      key: ['job', 'work_no'],
      leadsTo: [[['work_no'], work, ['work_no']], ...(governed ? [[['rule_no'], rule, ['rule_no']] as const] : [])],
    },
    annotated: named('_annotated'),
    added: named('_added'),
  };
}

/** The tables of a run in the order in which they can be made; taken away in the other one. */
export function tablesOf(shapes: RunShapes, governed: boolean): readonly Shape[] {
  const { outcome, heir, cases, rule, answer, work, outcomeWork, duty, lines, fold, job } = shapes;
  return [outcome, heir, cases, ...(governed ? [rule, answer] : []), work, outcomeWork, duty, lines, fold, job];
}
