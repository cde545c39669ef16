import type { Joint } from '../crosswalk/joint.ts';
import type { Entry } from '../model/edition.ts';
import { reasonsInWords } from '../model/heir-words.ts';
import type { IntakeRecord } from '../model/intake.ts';
import type { ItemId } from '../model/item.ts';

/** A report with where its item stands in the edition that is asked about. */
export interface FollowedReport {
  readonly record: IntakeRecord;
  /** Empty where the item ended on the way. */
  readonly now: readonly Entry[];
  /** Of an item that ended: its title, and why it ended where that is on record. */
  readonly title?: string;
  readonly ended?: string;
}

export interface CauseCount {
  readonly cause: string;
  readonly reports: number;
}

/** How often people reported something about one item. */
export interface IntakeLine {
  readonly id: ItemId;
  readonly number: string;
  readonly title: string;
  /** Absent where the item stands in the edition; else the edition that it was reported under. */
  readonly endedAfter?: string;
  readonly why?: string;
  readonly reports: number;
  /** Of them: those whose item became several, and that are counted under each. */
  readonly shared: number;
  /** Most frequent first. */
  readonly causes: readonly CauseCount[];
}

export interface IntakeCounts {
  /** Each report once, however many items it is counted under. */
  readonly reports: number;
  /** Most reports first, then in the order of the edition; items that have ended come last. */
  readonly lines: readonly IntakeLine[];
  readonly causes: readonly CauseCount[];
}

/** Follows a report's item to another edition, earlier or later, by lineage. */
export function followReport(record: IntakeRecord, joint: Joint): FollowedReport {
  const links = joint.leaving(record.item);
  const now = links.flatMap(l => (l.to === null ? [] : (joint.new.get(l.to) ?? [])));
  if (now.length > 0) return { record, now: [...new Set(now)] };
  const meanings = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  const reason = reasonsInWords(links, meanings);
  const title = joint.old.get(record.item)?.title ?? '';
  return { record, now: [], title, ...(reason ? { ended: reason } : {}) };
}

/**
 * Where the next edition has to work: reports by item and by cause. A report on an item that became several is counted
 * under each of them, since any may be what failed; the total counts it once.
 *
 * @param rollUp the item under which an entry is counted, e.g. its work item
 */
export function countIntake(
  followed: readonly FollowedReport[],
  order: readonly Entry[],
  rollUp: (entry: Entry) => Entry = entry => entry,
): IntakeCounts {
  const lines = new Map<string, { line: Omit<IntakeLine, 'reports' | 'shared' | 'causes'>; found: FollowedReport[] }>();
  const put = (key: string, line: Omit<IntakeLine, 'reports' | 'shared' | 'causes'>, report: FollowedReport) => {
    const known = lines.get(key) ?? { line, found: [] };
    known.found.push(report);
    lines.set(key, known);
  };
  for (const report of followed) {
    const { record, ended, title: before = '' } = report;
    const under = new Map(report.now.map(rollUp).map(e => [e.id, e]));
    for (const { id, number, title } of under.values()) put(id, { id, number, title }, report);
    if (under.size > 0) continue;
    const { item: id, number, edition: endedAfter } = record;
    put(`${endedAfter} ${id}`, { id, number, title: before, endedAfter, ...(ended ? { why: ended } : {}) }, report);
  }
  const place = new Map(order.map((e, at) => [e.id, at]));
  const all = [...lines.values()].map(
    ({ line, found }): IntakeLine => ({
      ...line,
      reports: found.length,
      shared: found.filter(f => new Set(f.now.map(e => rollUp(e).id)).size > 1).length,
      causes: causesOf(found),
    }),
  );
  const rank = (l: IntakeLine) => (l.endedAfter === undefined ? (place.get(l.id) ?? 0) : order.length);
  const ends = (l: IntakeLine) => (l.endedAfter === undefined ? 0 : 1);
  const named = (l: IntakeLine) => `${l.endedAfter} ${l.number}`;
  all.sort(
    (a, b) =>
      ends(a) - ends(b) ||
      b.reports - a.reports ||
      rank(a) - rank(b) ||
      named(a).localeCompare(named(b), 'en', { numeric: true }),
  );
  return { reports: followed.length, lines: all, causes: causesOf(followed) };
}

function causesOf(followed: readonly FollowedReport[]): CauseCount[] {
  const counts = new Map<string, number>();
  for (const { record } of followed) counts.set(record.cause, (counts.get(record.cause) ?? 0) + 1);
  return [...counts]
    .map(([cause, reports]) => ({ cause, reports }))
    .sort((a, b) => b.reports - a.reports || (a.cause < b.cause ? -1 : 1));
}
