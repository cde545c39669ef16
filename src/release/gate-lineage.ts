import type { LineageRecord } from '../model/crosswalk.ts';
import type { Edition } from '../model/edition.ts';
import { endingsOf } from '../model/endings.ts';
import type { Finding } from '../model/finding.ts';
import type { ItemId } from '../model/item.ts';
import type { Settings } from '../model/settings.ts';

/** Withdrawals whose reason the catalog does not know, or that do not say what governs instead, or when it was read. */
export function withdrawalFindings(lineage: readonly LineageRecord[], settings: Settings, older: Edition): Finding[] {
  const reasons = new Map(settings.withdrawalReasons.map(r => [r.code, r]));
  const items = new Map(older.items.map(i => [i.id, i]));
  return lineage.flatMap((record): Finding[] => {
    const { from } = record;
    if (from === null) return [];
    const item = items.get(from);
    const name = item ? [item.number, item.title].filter(Boolean).join(' ') : from;
    const say = (rule: string, message: string): Finding => ({
      rule,
      severity: 'error',
      subject: from,
      message: `${name} ${message}`,
    });
    return endingsOf(record).flatMap(ending => {
      const reason = reasons.get(ending.reason ?? '');
      if (!reason) {
        if (reasons.size === 0 || ending.reason === undefined) return [];
        return [say('reason-unknown', `is withdrawn as "${ending.reason}", which is none of the catalog's reasons.`)];
      }
      if (!reason.governedElsewhere) return [];
      const as = `is withdrawn as ${reason.code}, and nothing says`;
      return [
        ...(ending.governs ? [] : [say('governs-unsaid', `${as} what governs.`)]),
        ...(ending.governsChecked ? [] : [say('governs-unchecked', `${as} when what governs was read.`)]),
      ];
    });
  });
}

/**
 * Ids that come back: an item of an edition before the one that is replaced, gone since, and here again. Whoever looks
 * an old number up would be led to something that may mean another thing.
 *
 * @param before id → the newest older edition that had it, and its title there
 */
export function returnedIds(
  items: readonly { readonly id: ItemId; readonly number: string; readonly title: string }[],
  replaced: ReadonlySet<ItemId>,
  before: ReadonlyMap<ItemId, { readonly edition: string; readonly title: string }>,
): Finding[] {
  return items.flatMap(({ id, number, title }): Finding[] => {
    const known = before.get(id);
    if (!known || replaced.has(id)) return [];
    const severity = known.title === title ? 'warning' : 'error';
    const message = `${number} ${title} has the id ${id}, which "${known.title}" had in ${known.edition}; give it a new id, or the old title if it is the same thing again.`;
    return [{ rule: 'id-returned', severity, subject: id, message }];
  });
}
