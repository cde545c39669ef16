import { addedHeaders } from '../../carryover/jobs/job-case.ts';
import type { TheirTable, Value } from '../../databases/database.ts';
import { literal, quoted } from '../../databases/quoted.ts';
import { tableIn } from '../../databases/shape.ts';
import { CatalogError } from '../../model/errors.ts';
import { type DatabaseRun, joinedToCase } from './database-cases.ts';

/** The key of a line as it is kept between two batches. */
export type LineKey = readonly (string | number)[];

/**
 * Writes the outcome of every line in one statement, joined inside the database.
 *
 * @param after only lines behind this one
 * @param upTo only lines up to this one, itself among them
 */
export async function writeLines(
  run: DatabaseRun,
  theirs: TheirTable,
  after?: LineKey,
  upTo?: LineKey,
): Promise<number> {
  const { db, place, shapes, cells, policy } = run;
  const keys = theirs.key.map(c => quoted(c.name));
  const values: Value[] = [];
  const bound = (sign: string, key: LineKey) => {
    const places = theirs.key.map((c, at) => {
      values.push(key[at]);
      return db.dialect.value(values.length, c);
    });
    return `(${cells.key.join(', ')}) ${sign} (${places.join(', ')})`;
  };
  const where = [...(after ? [bound('>', after)] : []), ...(upTo ? [bound('<=', upTo)] : [])];
  const found = policy ? 'a.outcome_no, r.rule_no' : 'c.outcome_no';
  return db.run(
    `insert into ${tableIn(db, place, shapes.lines.name)} (${keys.join(', ')}, outcome_no${policy ? ', rule_no' : ''})
     select ${cells.key.join(', ')}, ${found} from ${cells.from} ${joinedToCase(run, 'answer')}
     ${where.length > 0 ? `where ${where.join(' and ')}` : ''}`,
    values,
  );
}

/** The key of the last line of the next batch; undefined where the rest is no larger than one. */
export async function endOfBatch(
  { db, cells }: DatabaseRun,
  theirs: TheirTable,
  after: LineKey | undefined,
  size: number,
): Promise<LineKey | undefined> {
  const shown = theirs.key.map((_, at) => `${cells.key[at]}${db.kind === 'postgres' ? '::text' : ''} as k${at}`);
  const places = theirs.key.map((c, at) => db.dialect.value(at + 1, c)).join(', ');
  const where = after ? `where (${cells.key.join(', ')}) > (${places})` : '';
  const sql = `select ${shown.join(', ')} from ${cells.from} ${where} order by ${cells.key.join(', ')} limit 1 offset ${size - 1}`;
  const [row] = await db.rows(sql, after ?? []);
  if (!row) return undefined;
  return theirs.key.map((c, at) => {
    const part = row[`k${at}`];
    if (typeof part === 'string' || typeof part === 'number') return part;
    throw new CatalogError(
      'BadArgument',
      `The key ${c.name} cannot be kept between batches; run again without --batch.`,
    );
  });
}

/** Later lines of a job that do the same work as an earlier one, each with that one. How many there are. */
export async function writeFolds(run: DatabaseRun, theirs: TheirTable): Promise<number> {
  const { db, place, shapes, cells } = run;
  const keys = theirs.key.map(c => quoted(c.name));
  const ours = keys.map(k => `l.${k}`);
  const into = keys.map((k, at) => `first_value(l.${k}) over w as into_${at}`);
  return db.run(`insert into ${tableIn(db, place, shapes.fold.name)} (${keys.join(', ')}, ${theirs.key.map(c => quoted(`into_${c.name}`)).join(', ')})
    select ${keys.join(', ')}, ${keys.map((_, at) => `into_${at}`).join(', ')} from (
      select ${ours.join(', ')}, ${into.join(', ')}, row_number() over w as nth
      from ${tableIn(db, place, shapes.outcome.name)} o
      join ${tableIn(db, place, shapes.lines.name)} l on l.outcome_no = o.outcome_no
      join ${cells.from} on ${sameLine(theirs, cells.key)}
      where o.fold_no is not null and ${cells.job} <> ''
      window w as (partition by ${db.dialect.bytewise(cells.job)}, o.fold_no order by ${ours.join(', ')})
    ) found where nth > 1`);
}

/** The work of each job that brings it something new; the first line of the job that brings it counts. */
export async function writeJobWork(run: DatabaseRun, theirs: TheirTable): Promise<number> {
  const { db, place, shapes, cells, policy } = run;
  const rule = policy ? ', rule_no' : '';
  const [work, duty, job] = [shapes.work, shapes.duty, shapes.job].map(s => tableIn(db, place, s.name)) as [
    string,
    string,
    string,
  ];
  const ours = theirs.key.map(c => `l.${quoted(c.name)}`).join(', ');
  await db.run(`insert into ${job} (job, work_no, type_cell${rule})
    select job, work_no, type_cell${rule} from (
      select ${cells.job} as job, w.work_no, ${cells.typeCell} as type_cell${policy ? ', l.rule_no' : ''},
        row_number() over (partition by ${db.dialect.bytewise(cells.job)}, w.group_no order by ${ours}, ow.place) as nth
      from ${work} w
      join ${tableIn(db, place, shapes.outcomeWork.name)} ow on ow.work_no = w.work_no
      join ${tableIn(db, place, shapes.lines.name)} l on l.outcome_no = ow.outcome_no
      join ${cells.from} on ${sameLine(theirs, cells.key)}
      where ${cells.job} <> ''
    ) found where nth = 1 and exists (select 1 from ${duty} d where d.work_no = found.work_no)`);
  const sql = `select count(*) as n from ${job} j join ${duty} d on d.work_no = j.work_no`;
  return Number((await db.rows(sql))[0]!.n);
}

/** How many lines there are, how many of them have a row of ours, and for how many it is still what their cells say. */
export async function countLines(
  run: DatabaseRun,
  theirs: TheirTable,
): Promise<{ readonly theirs: number; readonly ours: number; readonly right: number }> {
  const { db, place, shapes, cells, policy } = run;
  const lines = tableIn(db, place, shapes.lines.name);
  const count = async (from: string) => Number((await db.rows(`select count(*) as n from ${from}`))[0]!.n);
  const same = policy ? 'l.outcome_no = a.outcome_no and l.rule_no = r.rule_no' : 'l.outcome_no = c.outcome_no';
  return {
    theirs: await count(cells.from),
    ours: await count(lines),
    right: await count(
      `${cells.from} ${joinedToCase(run, 'answer')} join ${lines} l on ${sameLine(theirs, cells.key)} and ${same}`,
    ),
  };
}

/** Their lines with our columns at the right, and the lines that their jobs gain: as the file comes back, but as views. */
export async function makeViews({ db, place, shapes, cells, policy }: DatabaseRun, theirs: TheirTable): Promise<void> {
  const table = (name: string) => tableIn(db, place, name);
  const headers = addedHeaders(
    theirs.columns.map(c => c.name),
    policy !== undefined,
  ).map(quoted);
  const into = theirs.key.map(c => `cast(f.${quoted(`into_${c.name}`)} as text)`).join(` || ${literal(', ')} || `);
  const values = [
    ...['new_number', 'new_title', 'outcome', 'why', 'to_do'].map(c => `o.${c}`),
    `case when o.outcome_no is not null then 'input' end`,
    into,
    ...['read_in', 'carried_to'].map(c => `o.${c}`),
    ...(policy ? ['r.governed_by', 'r.rule'] : []),
  ];
  await db.run(`create view ${table(shapes.annotated)} as
    select ${theirs.columns.map(c => db.dialect.column('t', c)).join(', ')}, ${values.map((v, at) => `${v} as ${headers[at]}`).join(', ')}
    from ${cells.from}
    left join ${table(shapes.lines.name)} l on ${sameLine(theirs, cells.key)}
    left join ${table(shapes.outcome.name)} o on o.outcome_no = l.outcome_no
    ${policy ? `left join ${table(shapes.rule.name)} r on r.rule_no = l.rule_no` : ''}
    left join ${table(shapes.fold.name)} f on ${sameLine(theirs, cells.key, 'f')}`);
  await db.run(`create view ${table(shapes.added)} as
    select j.job, w.type, j.type_cell, d.new_number, d.new_title, d.outcome, d.why, d.to_do, d.read_in, d.carried_to,
      d.work_no, d.place${policy ? ', r.governed_by, r.rule' : ''}
    from ${table(shapes.job.name)} j
    join ${table(shapes.work.name)} w on w.work_no = j.work_no
    join ${table(shapes.duty.name)} d on d.work_no = j.work_no
    ${policy ? `join ${table(shapes.rule.name)} r on r.rule_no = j.rule_no` : ''}`);
}

/** Their column first: where it compares without regard to case, so does ours. */
function sameLine(theirs: TheirTable, key: readonly string[], alias = 'l'): string {
  return theirs.key.map((c, at) => `${key[at]} = ${alias}.${quoted(c.name)}`).join(' and ');
}
