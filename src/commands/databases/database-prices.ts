import type { JobCase } from '../../carryover/jobs/job-case.ts';
import type { TheirTable } from '../../databases/database.ts';
import { quoted } from '../../databases/quoted.ts';
import { tableIn } from '../../databases/shape.ts';
import type { priceChanges } from '../jobs/price-changes.ts';
import type { DatabaseRun } from './database-cases.ts';

/** An embedded engine reads statements of a million letters, and no longer ones. */
const ASKED_AT_ONCE = 50_000;

/**
 * Adds the lines that ask more, job by job, as the lines of a file are added one by one. The database counts them, since
 * a million lines are some hundred cases. Records count from 1 in the order of the key.
 *
 * @param dearer the outcomes of such lines, by the number that our table gives them
 */
export async function addDearerLines(
  { db, place, shapes, cells }: DatabaseRun,
  theirs: TheirTable,
  dearer: ReadonlyMap<number, JobCase>,
  prices: ReturnType<typeof priceChanges>,
): Promise<void> {
  const lines = tableIn(db, place, shapes.lines.name);
  const same = theirs.key.map((c, at) => `${cells.key[at]} = l.${quoted(c.name)}`).join(' and ');
  const found: { readonly job: string; readonly outcome: number; readonly first: number; readonly lines: number }[] =
    [];
  const outcomes = [...dearer.keys()];
  for (let at = 0; at < outcomes.length; at += ASKED_AT_ONCE) {
    const rows = await db.rows(`select job, outcome_no, min(record) as first, count(*) as lines
      from (select ${db.dialect.bytewise(cells.job)} as job, l.outcome_no, row_number() over (order by ${cells.key.join(', ')}) as record
        from ${cells.from} join ${lines} l on ${same}) carried
      where outcome_no in (${outcomes.slice(at, at + ASKED_AT_ONCE).join(', ')})
      group by job, outcome_no`);
    for (const r of rows)
      found.push({
        job: String(r.job),
        outcome: Number(r.outcome_no),
        first: Number(r.first),
        lines: Number(r.lines),
      });
  }
  found.sort((a, b) => a.first - b.first);
  for (const { job, outcome, first, lines: many } of found)
    prices.add(cells.ofJob(job), first, dearer.get(outcome)!, many);
}
