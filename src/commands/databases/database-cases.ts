import { type CutNumbers, countCut } from '../../carryover/jobs/cut-numbers.ts';
import { governingEdition } from '../../carryover/jobs/governing-edition.ts';
import type { Governed } from '../../carryover/jobs/job-case.ts';
import type { JobCases, KnownCase } from '../../carryover/jobs/job-cases.ts';
import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import { governedBy } from '../../carryover/jobs/jobs.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Database, Value } from '../../databases/database.ts';
import { quoted } from '../../databases/quoted.ts';
import { type Place, pagesOf, tableIn } from '../../databases/shape.ts';
import type { JobDays } from '../jobs/job-days.ts';
import { CASE_COLUMNS, type JobCells } from './database-cells.ts';
import { OutcomeWriter } from './database-outcomes.ts';
import type { RunShapes } from './database-shapes.ts';

/** One run over a table of a database. */
export interface DatabaseRun {
  readonly db: Database;
  readonly place: Place;
  readonly shapes: RunShapes;
  readonly cells: JobCells;
  readonly cases: JobCases;
  readonly joint: Joint;
  readonly policy?: { readonly rules: JobPolicy; readonly days: JobDays; readonly newest: string };
  /** Told of each outcome that goes to the newer edition, with its number. */
  readonly met?: (outcome: number, known: KnownCase) => void;
}

/** Asks the database which different cells there are, with how many lines have them. One pass, inside the database. */
export async function findCases({ db, place, shapes, cells }: DatabaseRun): Promise<void> {
  const columns = CASE_COLUMNS.map((name, at) => `${cells.cited[at]} as ${quoted(name)}`).join(', ');
  const groups = CASE_COLUMNS.map((_, at) => at + 1).join(', ');
  const names = CASE_COLUMNS.map(quoted).join(', ');
  const order = CASE_COLUMNS.map(c => (c === 'is_number' ? c : db.dialect.bytewise(quoted(c)))).join(', ');
  const table = tableIn(db, place, shapes.cases.name);
  await db.run(`insert into ${table} (case_no, ${names}, lines)
    select row_number() over (order by ${order}), ${names}, lines
    from (select ${columns}, count(*) as lines from ${cells.from} group by ${groups}) found`);
  // The other engine joins by hashing, and refuses to index a cell of more than some 2,700 bytes.
  if (db.kind === 'sqlite') await index(db, place, shapes.cases.name, CASE_COLUMNS);
  await db.measured(table);
}

/**
 * Answers the cases by the same pure function that answers the lines of a file, and writes the outcomes.
 *
 * @param write without it only the counts are taken: the tables stand already
 */
export async function answerCases(run: DatabaseRun, write: boolean): Promise<void> {
  const { db, place, shapes, cells, cases, policy, met } = run;
  const outcomes = new OutcomeWriter(run);
  const table = tableIn(db, place, shapes.cases.name);
  for await (const page of pagesOf(db, table, 'case_no')) {
    const told: Value[][] = [];
    for (const row of page) {
      const line = cells.ofCase(row);
      cases.strange(line, Number(row.lines));
      const known = cases.read(line, cells.numeric(row), 'newer');
      const { state } = known.case;
      const closed = state === 'open' ? '' : state;
      if (policy) told.push([row.case_no as number, known.edition, closed]);
      else {
        cases.count(known, Number(row.lines));
        const outcome = outcomes.number(known);
        met?.(outcome, known);
        told.push([row.case_no as number, outcome]);
      }
    }
    if (!write) continue;
    await outcomes.flush();
    await setColumns(
      db,
      table,
      'case_no',
      policy ? ['read_in', 'closed'] : ['outcome_no'],
      policy ? 'text' : 'integer',
      told,
    );
  }
  if (policy) {
    if (write) await findRules(run);
    if (write) await findAnswers(run);
    await answerGoverned(run, outcomes, write);
  }
  if (write) {
    await outcomes.finish();
    for (const s of [
      shapes.outcome,
      shapes.cases,
      shapes.work,
      shapes.outcomeWork,
      shapes.duty,
      ...(policy ? [shapes.rule, shapes.answer] : []),
    ])
      await db.measured(tableIn(db, place, s.name));
  }
}

/** The numbers that a spreadsheet may have cut before the table was filled; asked for before cases are answered. */
export function cutCases(run: DatabaseRun): Promise<CutNumbers> {
  return countCut(run.joint, textNumbers(run));
}

/** The number cells that are texts, each with how many lines have it: a column of numbers tells what it has cut. */
async function* textNumbers({ db, place, shapes }: DatabaseRun): AsyncGenerator<readonly [string, number]> {
  for await (const page of pagesOf(db, tableIn(db, place, shapes.cases.name), 'case_no')) {
    for (const { number, is_number, lines } of page) if (Number(is_number) !== 1) yield [String(number), Number(lines)];
  }
}

/** `join … on …`, from a line to its case and, with a policy, on to its rule and its answer. */
export function joinedToCase({ db, place, shapes, cells, policy }: DatabaseRun, upTo: 'rule' | 'answer'): string {
  const on = CASE_COLUMNS.map((name, at) => `c.${quoted(name)} = ${cells.cited[at]}`).join(' and ');
  const toCase = `join ${tableIn(db, place, shapes.cases.name)} c on ${on}`;
  if (!policy) return toCase;
  const toRule = `join ${tableIn(db, place, shapes.rule.name)} r on r.read_in = c.read_in and r.closed = c.closed and r.job = ${cells.earlyJob} and r.days = ${cells.days}`;
  if (upTo === 'rule') return `${toCase} ${toRule}`;
  return `${toCase} ${toRule} join ${tableIn(db, place, shapes.answer.name)} a on a.case_no = c.case_no and a.governed = r.governed`;
}

/** Which different facts decide, and what the policy makes of them. */
async function findRules(run: DatabaseRun): Promise<void> {
  const { db, place, shapes, cells, policy } = run;
  const { days, rules, newest } = policy!;
  const table = tableIn(db, place, shapes.rule.name);
  const cases = tableIn(db, place, shapes.cases.name);
  const on = CASE_COLUMNS.map((name, at) => `c.${quoted(name)} = ${cells.cited[at]}`).join(' and ');
  await db.measured(cases);
  await db.run(`insert into ${table} (rule_no, read_in, closed, job, days)
    select row_number() over (order by ${['read_in', 'closed', 'job', 'days'].map(db.dialect.bytewise).join(', ')}), read_in, closed, job, days
    from (select distinct c.read_in, c.closed, ${cells.earlyJob} as job, ${cells.days} as days
      from ${cells.from} join ${cases} c on ${on}) found`);
  for await (const page of pagesOf(db, table, 'rule_no')) {
    const told = page.map(row => {
      const day = days.dayOf(cells.ofDays(String(row.days)));
      const governing = governingEdition(rules, {
        job: String(row.job),
        readIn: String(row.read_in),
        ...(row.closed === '' ? {} : { closed: String(row.closed) }),
        ...(day ? { day } : {}),
      });
      const governed = governedBy(governing, newest);
      const word = typeof governed === 'string' ? governed : `=${governed.edition}`;
      return [row.rule_no as number, word, governing.edition ?? 'ask', governing.why];
    });
    await setColumns(db, table, 'rule_no', ['governed', 'governed_by', 'rule'], 'text', told);
  }
  if (db.kind === 'sqlite') await index(db, place, shapes.rule.name, ['read_in', 'closed', 'job', 'days']);
  await db.measured(table);
}

async function findAnswers(run: DatabaseRun): Promise<void> {
  const { db, place, shapes, cells } = run;
  await db.run(`insert into ${tableIn(db, place, shapes.answer.name)} (answer_no, case_no, governed, lines)
    select row_number() over (order by case_no, ${db.dialect.bytewise('governed')}), case_no, governed, lines
    from (select c.case_no, r.governed, count(*) as lines from ${cells.from} ${joinedToCase(run, 'rule')} group by 1, 2) found`);
  if (db.kind === 'sqlite') await index(db, place, shapes.answer.name, ['case_no', 'governed']);
}

async function answerGoverned(run: DatabaseRun, outcomes: OutcomeWriter, write: boolean): Promise<void> {
  const { db, place, shapes, cells, cases, met } = run;
  const answer = tableIn(db, place, shapes.answer.name);
  const both = `(select a.answer_no, a.governed, a.lines as governed_lines, ${CASE_COLUMNS.map(n => `c.${quoted(n)}`).join(', ')}
    from ${answer} a join ${tableIn(db, place, shapes.cases.name)} c on c.case_no = a.case_no) as asked`;
  for await (const page of pagesOf(db, both, 'answer_no')) {
    const told = page.map(row => {
      const governed = governedOf(String(row.governed));
      const known = cases.read(cells.ofCase(row), cells.numeric(row), governed);
      cases.count(known, Number(row.governed_lines));
      const outcome = outcomes.number(known);
      if (governed === 'newer') met?.(outcome, known);
      return [row.answer_no as number, outcome];
    });
    if (!write) continue;
    await outcomes.flush();
    await setColumns(db, answer, 'answer_no', ['outcome_no'], 'integer', told);
  }
}

function governedOf(word: string): Governed {
  return word === 'newer' || word === 'ask' ? word : { edition: word.slice(1) };
}

/** Sets columns of rows that are named by a whole number. */
async function setColumns(
  db: Database,
  table: string,
  key: string,
  columns: readonly string[],
  type: string,
  rows: readonly (readonly Value[])[],
): Promise<void> {
  if (rows.length === 0) return;
  if (db.kind === 'postgres') {
    const lists = [`$1::text[]`, ...columns.map((_, at) => `$${at + 2}::text[]`)].join(', ');
    const sets = columns.map((c, at) => `${quoted(c)} = v.c${at}::${type}`).join(', ');
    const values = [0, ...columns.map((_, at) => at + 1)].map(at => rows.map(r => String(r[at])));
    await db.run(
      `update ${table} o set ${sets} from unnest(${lists}) as v(k, ${columns.map((_, at) => `c${at}`).join(', ')}) where o.${quoted(key)} = v.k::integer`,
      values as unknown as Value[],
    );
    return;
  }
  const sets = columns.map((c, at) => `${quoted(c)} = $${at + 1}`).join(', ');
  const sql = `update ${table} set ${sets} where ${quoted(key)} = $${columns.length + 1}`;
  for (const [number, ...cells] of rows) await db.run(sql, [...cells, number]);
}

async function index(db: Database, place: Place, name: string, columns: readonly string[]): Promise<void> {
  const where = tableIn(db, place, `${name}_by`);
  await db.run(`create index ${where} on ${quoted(name)} (${columns.map(quoted).join(', ')})`);
}
