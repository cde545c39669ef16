import type { Fate } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { groupBy } from '../model/group-by.ts';
import type { Joint } from './joint.ts';

/** What became of the requirements of one part of the older edition (or of the whole of it). */
export interface PartStatistics {
  /** Number and title of the part; empty for the whole edition. */
  readonly number: string;
  readonly title: string;
  /** Old items by their own fate. */
  readonly old: number;
  readonly fates: Readonly<Record<Exclude<Fate, 'new'>, number>>;
  /** An item that ended for several reasons, each for types of its own, counts under each. */
  readonly withdrawnBy: Readonly<Record<string, number>>;
  /** New items that stand, in the newer edition, where this part went: heirs' parts; for the whole: all. */
  readonly heirs: number;
}

export interface Statistics {
  readonly from: string;
  readonly to: string;
  readonly counted: 'requirements' | 'items';
  readonly whole: PartStatistics & { readonly new: number; readonly total: number };
  /** Share by which the number of counted items fell; negative where it grew. */
  readonly reduction: number;
  readonly parts: readonly PartStatistics[];
  /** New items without a source, by part of the newer edition. */
  readonly newByPart: readonly { readonly number: string; readonly title: string; readonly new: number }[];
}

/**
 * Counts fates per part of the older edition. Requirements are counted where the older edition has any, since merging
 * work items says little; otherwise all items.
 */
export function crosswalkStatistics(joint: Joint): Statistics {
  const count = joint.from.entries.some(e => e.obliges) ? 'requirements' : 'items';
  const counted = (entry: Entry) => count === 'items' || entry.obliges;
  const olds = joint.from.entries.filter(counted);
  const news = joint.to.entries.filter(counted);
  const groups = [...groupBy(olds, e => joint.old.part(e.id)!)];
  const arrivals = news.filter(e => joint.fateOfNew(e.id) === 'new');
  return {
    from: joint.from.header.name,
    to: joint.to.header.name,
    counted: count,
    whole: { ...partStatistics(joint, '', '', olds), new: arrivals.length, total: news.length },
    reduction: olds.length === 0 ? 0 : 1 - news.length / olds.length,
    parts: groups.map(([part, entries]) => partStatistics(joint, part.number, part.title, entries)),
    newByPart: [...groupBy(arrivals, e => joint.new.part(e.id)!)].map(([part, entries]) => ({
      number: part.number,
      title: part.title,
      new: entries.length,
    })),
  };
}

function partStatistics(joint: Joint, number: string, title: string, olds: readonly Entry[]): PartStatistics {
  const fates = { kept: 0, merged: 0, split: 0, recombined: 0, withdrawn: 0, unaccounted: 0 };
  // Reasons are words of the catalog's own: in a plain object `constructor` is there before it is counted.
  const withdrawnBy = new Map<string, number>();
  const heirs = new Set<string>();
  for (const { id } of olds) {
    const fate = joint.fateOfOld(id) as Exclude<Fate, 'new'>;
    fates[fate]++;
    for (const link of joint.leaving(id)) if (link.to !== null) heirs.add(link.to);
    if (fate !== 'withdrawn') continue;
    const reasons = joint.leaving(id).flatMap(l => (l.to === null ? [l.reason ?? 'no reason given'] : []));
    for (const reason of new Set(reasons)) withdrawnBy.set(reason, (withdrawnBy.get(reason) ?? 0) + 1);
  }
  return { number, title, old: olds.length, fates, withdrawnBy: Object.fromEntries(withdrawnBy), heirs: heirs.size };
}
