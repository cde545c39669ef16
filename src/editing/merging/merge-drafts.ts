import type { EditionDates } from '../../model/edition.ts';
import type { Settings } from '../../model/settings.ts';
import { lossesOf } from '../apply-operation.ts';
import type { DraftState } from '../draft-state.ts';
import { renumbered } from '../outline-edits.ts';
import { mergeItems } from './merge-items.ts';
import { mergeRecords } from './merge-records.ts';
import { type Conflict, spread, type Takes, type Three, threeWay, threeWayList } from './three-way.ts';

/**
 * Two people's work on one draft, merged by items: moved here and reworded there is both; both reworded is one conflict;
 * moved to two places is a conflict, not a duplicate. Law: nothing that either side did is lost - it stands in the
 * merged draft, or a conflict names it.
 *
 * @param takes whose state holds for the items on which a former attempt told conflicts
 */
export function mergeDrafts(
  sides: Three<DraftState>,
  takes: Takes,
): { readonly draft: DraftState; readonly conflicts: readonly Conflict[] } {
  const conflicts: Conflict[] = [];
  const items = mergeItems(
    spread(sides, s => s.items),
    takes,
    conflicts,
  );
  const settings = mergeSettings(
    spread(sides, s => s.settings),
    takes,
    conflicts,
  );
  const decisions = threeWayList(
    spread(sides, s => s.decisions),
    d => d.id,
    id => `decision ${id}`,
    takes,
    conflicts,
  );
  const dates = mergeFields(
    spread(sides, s => s.dates),
    'dates',
    takes,
    conflicts,
  ) as EditionDates;
  const merged: DraftState = {
    older: sides.ours.older,
    settings,
    dates,
    items: renumbered(settings, items),
    lineage: [],
    decisions,
  };
  const draft = mergeRecords(merged, sides, takes, conflicts);
  return { draft, conflicts: [...conflicts, ...dangling(draft, sides, conflicts)] };
}

/** What only shows when both are put together: heirs that the other side ended, and old items with none left. */
function dangling(draft: DraftState, sides: Three<DraftState>, known: readonly Conflict[]): Conflict[] {
  const here = new Set(draft.items.map(i => i.id));
  const told = new Set(known.map(c => c.about));
  const toNowhere = draft.lineage.flatMap(record =>
    [...record.heirs.map(h => h.to), record.pointsTo]
      .filter(id => id !== undefined && !here.has(id) && !told.has(id))
      .map(id => ({ about: id!, what: 'gone', ours: record.from })),
  );
  const before = new Set([...lossesOf(sides.ours), ...lossesOf(sides.theirs)].map(f => f.subject));
  const lost = lossesOf(draft).filter(f => !before.has(f.subject) && !told.has(f.subject));
  return [...toNowhere, ...lost.map(f => ({ about: f.subject, what: 'lineage', ours: f.message }))];
}

function mergeSettings(sides: Three<Settings>, takes: Takes, conflicts: Conflict[]): Settings {
  const fields = mergeFields(sides, 'settings', takes, conflicts, ['installationTypes', 'withdrawalReasons']);
  const installationTypes = threeWayList(
    spread(sides, s => s.installationTypes),
    t => t.id,
    id => `settings.installationTypes.${id}`,
    takes,
    conflicts,
  );
  const withdrawalReasons = threeWayList(
    spread(sides, s => s.withdrawalReasons),
    r => r.code,
    code => `settings.withdrawalReasons.${code}`,
    takes,
    conflicts,
  );
  return { ...fields, installationTypes, withdrawalReasons };
}

/** A plain value merged field by field, in the order of ours. */
function mergeFields<T extends object>(
  sides: Three<T>,
  about: string,
  takes: Takes,
  conflicts: Conflict[],
  except: readonly (keyof T)[] = [],
): T {
  const keys = new Set([...Object.keys(sides.ours), ...Object.keys(sides.theirs)] as (keyof T)[]);
  const merged = [...keys].map(key => {
    if (except.includes(key)) return [key, sides.ours[key]];
    const value = threeWay(
      spread(sides, s => s[key]),
      `${about}.${String(key)}`,
      String(key),
      takes,
      conflicts,
    );
    return [key, value];
  });
  return Object.fromEntries(merged.filter(([, value]) => value !== undefined)) as T;
}
