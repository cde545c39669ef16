import type { Columns } from '../../carryover/jobs/columns.ts';
import type { JobCase } from '../../carryover/jobs/job-case.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { CellValue } from '../../tables/plain-sheet.ts';

/**
 * Collects the open lines that ask more under the newer edition than under the one that they were ordered by: what a
 * contractor may ask a price for. One row for each case of a job, with its first record and how many lines there are.
 */
export function priceChanges(joint: Joint, columns: Columns) {
  const rows = new Map<string, { readonly cells: readonly CellValue[]; lines: number }>();
  return {
    columns: ['job', 'first_record', 'lines', 'number', 'type', 'new_number', 'new_title', 'why', 'carried_to'],
    /** @param many how many lines of the job have the case, `line` the first of them */
    add: (cells: readonly string[], line: number, found: JobCase, many = 1): void => {
      const job = columns.job ? (cells[columns.job.at] ?? '').trim() : '';
      const key = JSON.stringify([job, found.number, found.type ?? null, found.outcome.why]);
      const known = rows.get(key);
      if (known) {
        known.lines += many;
        return;
      }
      const [numbers, titles, , why] = found.before;
      const told = [job, line, found.number, found.type ?? '', numbers, titles, why, joint.to.header.name];
      rows.set(key, { cells: told, lines: many });
    },
    rows: (): readonly (readonly CellValue[])[] =>
      [...rows.values()].map(({ cells: [job, line, ...rest], lines }) => [job, line, lines, ...rest]),
  };
}
