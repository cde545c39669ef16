import type { TheirTable } from '../../databases/database.ts';
import type { Ports } from '../ports/ports.ts';
import type { DatabaseRun } from './database-cases.ts';
import { endOfBatch, type LineKey, writeLines } from './database-lines.ts';
import { type RunRecord, setRun } from './database-runs.ts';

/**
 * Writes the outcomes of the lines, each batch in a transaction together with the key of its last line:
 *
 *   batch, `done_to` = its last key ─▶ batch, `done_to` = … ─▶ batch, `done_to` = null: all batches are done
 *
 * Killed in between, the next call reads `done_to` and goes on behind it. Kept outside the transaction, the key could
 * stand for lines that were never written, or lines without it, which would then be written twice.
 *
 * @param doneTo where an earlier call stopped, as it was kept; absent: nowhere yet
 */
export async function writeInBatches(
  run: DatabaseRun,
  theirs: TheirTable,
  {
    batch,
    progress,
    run: id,
    doneTo,
  }: Pick<RunRecord, 'run' | 'doneTo'> & Pick<Ports, 'progress'> & { readonly batch: number },
): Promise<void> {
  const { db, place } = run;
  let after = doneTo === undefined ? undefined : (JSON.parse(doneTo) as LineKey | null);
  while (after !== null) {
    const from: LineKey | undefined = after;
    after = await db.together(async () => {
      const upTo = await endOfBatch(run, theirs, from, batch);
      const lines = await writeLines(run, theirs, from, upTo);
      await setRun(db, place, id, { done_to: JSON.stringify(upTo ?? null) });
      progress(`${lines.toLocaleString('en')} lines carried in this batch`);
      return upTo ?? null;
    });
  }
}
