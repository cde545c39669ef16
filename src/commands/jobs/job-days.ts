import { type DateOrder, DateOrderEvidence, readDate } from '../../carryover/jobs/calendar-date.ts';
import type { Columns } from '../../carryover/jobs/columns.ts';
import type { DecidingDay } from '../../carryover/jobs/governing-edition.ts';
import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { JobSource } from './job-source.ts';

const ORDERS = ['dmy', 'mdy', 'ymd'] as const;
/** As much of a cell that is no day as a sentence repeats. */
const SHOWN = 40;

export interface JobDays {
  /** By the first of the deciding cells that is filled. */
  readonly dayOf: (cells: readonly string[]) => DecidingDay | undefined;
  /** How the dates were read, and cells that are none. */
  readonly findings: readonly Finding[];
}

/**
 * Reads the dates by which a policy decides. Whether the day or the month comes first is settled by the whole column: a
 * guess from one cell would put half of the lines under the wrong edition.
 *
 * @param told the order that the user gives; it stands
 * @throws CatalogError BadTable where nothing proves the order, or two cells prove different ones; BadArgument where the
 * table has none of the policy's columns
 */
export async function jobDays(
  source: JobSource,
  columns: Columns,
  policy: JobPolicy,
  told: DateOrder | undefined,
): Promise<JobDays> {
  const found = decidingColumns(source.header, columns, policy);
  const each = async function* () {
    let record = 0;
    for await (const { cells } of source.lines()) yield { cells, record: ++record, lines: 1 };
  };
  return daysOf(found, each(), policy, told);
}

export interface DateColumn {
  readonly header: string;
  /** 0-based position. */
  readonly at: number;
}

/** The columns by which a policy decides, in its order. @throws CatalogError BadArgument where the table has none of them */
export function decidingColumns(header: readonly string[], columns: Columns, policy: JobPolicy): readonly DateColumn[] {
  const wanted = policy.decidedBy.length > 0 ? policy.decidedBy : columns.date ? [columns.date.header] : [];
  const found = wanted.flatMap(name => {
    const at = header.findIndex(h => fold(h) === fold(name));
    return at < 0 ? [] : [{ header: header[at]!, at }];
  });
  if (found.length > 0) return found;
  throw new CatalogError(
    'BadArgument',
    `The policy of ${policy.agency} decides by ${wanted.join(', ') || 'a date'}, and the table has no such column; name its date columns under decidedBy.`,
    { wanted },
  );
}

/**
 * The same from cells that have been counted already.
 *
 * @param seen different cells, in the order in which they are first met, each with that record and with how many lines have them
 */
export async function daysOf(
  found: readonly DateColumn[],
  seen: AsyncIterable<{ readonly cells: readonly string[]; readonly record: number; readonly lines: number }>,
  policy: JobPolicy,
  told: DateOrder | undefined,
): Promise<JobDays> {
  const evidence = found.map(() => new DateOrderEvidence());
  const unread = found.map(() => ({ cells: 0, first: '', record: 0 }));
  for await (const { cells, record, lines } of seen) {
    for (const [n, { at }] of found.entries()) {
      const cell = (cells[at] ?? '').trim();
      if (cell === '') continue;
      evidence[n]!.add(cell, record);
      if ((told ? [told] : ORDERS).some(order => readDate(cell, order))) continue;
      const none = unread[n]!;
      if (none.cells === 0) Object.assign(none, { first: cell.slice(0, SHOWN), record });
      none.cells += lines;
    }
  }
  const findings: Finding[] = [];
  const orders = found.map(({ header }, n): DateOrder => {
    const none = unread[n]!;
    if (none.cells > 0) {
      const message = `${none.cells} cells of column ${header} are no dates, the first "${none.first}" in record ${none.record}; a person decides which edition governs their lines.`;
      findings.push({ rule: 'no-date', severity: 'warning', subject: header, message });
    }
    if (told) return told;
    const shown = evidence[n]!.order();
    if ('doubt' in shown) {
      throw new CatalogError(
        'BadTable',
        `The dates of column ${header} cannot be read: ${shown.doubt}; say --dates dmy, mdy or ymd.`,
        { header },
      );
    }
    if (shown.proof) {
      const message = `The dates of column ${header} are read as ${shown.order}, which ${shown.proof} proves.`;
      findings.push({ rule: 'date-order', severity: 'note', subject: header, message });
    }
    return shown.order;
  });
  return {
    dayOf: cells => {
      for (const [n, { header, at }] of found.entries()) {
        const cell = (cells[at] ?? '').trim();
        if (cell === '') continue;
        const day = readDate(cell, orders[n]!, policy.timeZone);
        // The next column must not speak in its place: a contract is often signed long before the permit.
        return day === undefined ? { unreadable: cell.slice(0, SHOWN), header } : { day, header };
      }
      return undefined;
    },
    findings,
  };
}

function fold(name: string): string {
  return name.trim().toLowerCase();
}
