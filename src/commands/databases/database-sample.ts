import type { Database, TheirTable } from '../../databases/database.ts';
import { quoted } from '../../databases/quoted.ts';
import { SAMPLE } from '../jobs/job-source.ts';

/** The first lines in the order of their keys, by which columns are found. */
export async function sampleOf(db: Database, theirs: TheirTable): Promise<readonly (readonly string[])[]> {
  const cells = theirs.columns.map((c, at) => `${db.dialect.cell(c)} as c${at}`).join(', ');
  const order = theirs.key.map(c => db.dialect.column('t', c)).join(', ');
  const from = `${quoted(theirs.schema)}.${quoted(theirs.name)} t`;
  const rows = await db.rows(`select ${cells} from ${from} order by ${order} limit ${SAMPLE}`);
  return rows.map(row => theirs.columns.map((_, at) => String(row[`c${at}`])));
}
