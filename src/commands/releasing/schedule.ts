import { isDay } from '../../model/day.ts';
import type { EditionDates, EditionHeader } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { openComments } from '../../release/comments.ts';
import { MILESTONES, type Schedule, type ScheduleFacts, scheduleOf } from '../../release/schedule.ts';
import { scheduleIcs } from '../../release/schedule-ics.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { readComments } from '../comments/comments-store.ts';
import { operateOnDraft } from '../drafts/draft-operations.ts';
import { localFiles } from '../local/governs.ts';
import type { Ports } from '../ports/ports.ts';
import { allHeaders } from '../reading/read-crosswalk.ts';

export interface ScheduleRequest {
  /** Absent: all drafts, and the editions that nothing published has replaced. */
  readonly edition?: string;
  readonly date: string;
}

/** What is late on a day, and what each milestone still needs. */
export async function readSchedules(ports: Ports, catalog: Catalog, request: ScheduleRequest): Promise<Schedule[]> {
  const headers = await allHeaders(catalog);
  const asked = request.edition === undefined ? undefined : (await locate(catalog, request.edition)).name;
  const wanted = headers.filter(h => (asked === undefined ? isCurrent(h, headers) : h.name === asked));
  const schedules: Schedule[] = [];
  for (const header of wanted) {
    schedules.push(scheduleOf(await factsOf(ports, catalog, header, headers, request.date), request.date));
  }
  return schedules;
}

function isCurrent({ name, state }: EditionHeader, headers: readonly EditionHeader[]): boolean {
  return state === 'draft' || !headers.some(h => h.replaces === name && h.state === 'published');
}

async function factsOf(
  ports: Ports,
  catalog: Catalog,
  header: EditionHeader,
  headers: readonly EditionHeader[],
  date: string,
): Promise<ScheduleFacts> {
  const { records, circulations } = await readComments(catalog, header.name);
  const waiting = openComments(records);
  const replacedBy = headers.find(h => h.replaces === header.name)?.name;
  return {
    header,
    ...(replacedBy === undefined ? {} : { replacedBy }),
    rounds: circulations.length,
    comments: {
      open: waiting.filter(f => f.rule === 'comment-open').length,
      withoutChange: waiting.filter(f => f.rule === 'comment-without-change').length,
    },
    ...(await lossesOf(ports, catalog, header)),
    variances: await undecided(catalog, header, headers, date),
  };
}

/** Of a draft only: what a published edition lost was settled or overridden when it was published. */
async function lossesOf(ports: Ports, catalog: Catalog, { name, replaces, state }: EditionHeader) {
  if (state !== 'draft' || replaces === null) return { losses: 0, unaccounted: 0 };
  ports.progress(`Asking whether ${name} loses anything of ${replaces}`);
  const { auditEditions, openLosses } = await import('../audit/audit-editions.ts');
  const report = await auditEditions(catalog, replaces, name);
  // An item that nothing accounts for is a loss of kind `type` as well, and is counted once.
  const losses = openLosses(report).filter(f => f.data?.kind !== 'type').length;
  return { losses, unaccounted: report.findings.filter(f => f.severity === 'error').length };
}

/** Variances asked for under an edition that this one replaces, near or far, and neither granted nor denied. */
async function undecided(
  catalog: Catalog,
  { replaces }: EditionHeader,
  headers: readonly EditionHeader[],
  date: string,
): Promise<number> {
  const older = new Set<string>();
  for (let at = replaces; at !== null && !older.has(at); ) {
    older.add(at);
    at = headers.find(h => h.name === at)?.replaces ?? null;
  }
  const { records } = await localFiles(catalog);
  return records.filter(
    ({ record }) =>
      record.kind === 'variance' &&
      record.state === 'requested' &&
      record.from <= date &&
      older.has(record.cites.edition),
  ).length;
}

/** Days of a draft set as `comment-opens=2029-01-10`; nothing behind the sign takes the day away. */
export async function setDates(ports: Ports, catalog: Catalog, draft: string, said: readonly string[]): Promise<void> {
  const dates: Partial<Record<keyof EditionDates, string>> = {};
  for (const text of said) {
    const [, word = '', date = ''] = /^([^=]*)=(.*)$/.exec(text) ?? [];
    const name = word
      .trim()
      .toLowerCase()
      .replace(/[\s_-]+/g, '');
    const milestone = MILESTONES.find(([key]) => key.toLowerCase() === name);
    if (!milestone || !/^(?:\d{4}-\d\d-\d\d)?$/.test(date) || (date !== '' && !isDay(date))) {
      const names = MILESTONES.map(([, words]) => words.replace(' ', '-')).join(', ');
      throw new CatalogError(
        'BadArgument',
        `${text} sets no day; write NAME=YEAR-MONTH-DAY with one of the names ${names}.`,
        { said: text },
      );
    }
    dates[milestone[0]] = date;
  }
  const operations = [{ op: 'set-days' as const, days: dates as Record<string, string> }];
  await operateOnDraft(ports, catalog, { draft, operations });
}

/** The schedules as a calendar file, named for the catalog. */
export async function calendarOf(ports: Ports, catalog: Catalog, schedules: readonly Schedule[]): Promise<string> {
  const first = schedules[0];
  const title = first ? (await readIndex(catalog, first.edition)).settings.title : '';
  return scheduleIcs(title, schedules, ports.now());
}
