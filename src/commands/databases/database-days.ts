import type { DateOrder } from '../../carryover/jobs/calendar-date.ts';
import type { Columns } from '../../carryover/jobs/columns.ts';
import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import type { Database, TheirTable } from '../../databases/database.ts';
import { quoted } from '../../databases/quoted.ts';
import { type DateColumn, daysOf, decidingColumns, type JobDays } from '../jobs/job-days.ts';

/**
 * The days by which a policy decides, from the different cells that there are. Records count from 1 in the order of the
 * key, as they would in a file.
 *
 * @throws CatalogError as `jobDays`
 */
export async function databaseDays(
  db: Database,
  theirs: TheirTable,
  columns: Columns,
  policy: JobPolicy,
  told: DateOrder | undefined,
): Promise<{ readonly columns: readonly DateColumn[]; readonly days: JobDays }> {
  const header = theirs.columns.map(c => c.name);
  const found = decidingColumns(header, columns, policy);
  const cells = found.map(({ at }, n) => `${db.dialect.cell(theirs.columns[at]!)} as d${n}`).join(', ');
  const order = theirs.key.map(c => db.dialect.column('t', c)).join(', ');
  const from = `${quoted(theirs.schema)}.${quoted(theirs.name)} t`;
  const days = found.map((_, n) => `d${n}`).join(', ');
  const sql = `select ${days}, min(record) as first, count(*) as lines
    from (select ${cells}, row_number() over (order by ${order}) as record from ${from}) dated
    group by ${days} order by first`;
  const rows = await db.rows(sql);
  const seen = async function* () {
    for (const row of rows) {
      const line = header.map(() => '');
      for (const [n, { at }] of found.entries()) line[at] = String(row[`d${n}`]);
      yield { cells: line, record: Number(row.first), lines: Number(row.lines) };
    }
  };
  return { columns: found, days: await daysOf(found, seen(), policy, told) };
}
