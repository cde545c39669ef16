import { isRequirement } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { OperationOf } from '../model/operation.ts';
import { placesOf } from '../model/places.ts';
import type { Settings } from '../model/settings.ts';

/** Something that the evidence suggests, as an operation that can be done as it stands. */
export interface Proposal {
  readonly operation: OperationOf<'combine'> | OperationOf<'withdraw'>;
  readonly told: string;
  /** What it rests on, for the lineage: the record of an accepted proposal says so. */
  readonly because: string;
}

/** Requirements that say nearly the same, the first of them first. */
export interface Alike {
  readonly items: readonly ItemId[];
  /** Where they differ, in words. */
  readonly differs: readonly string[];
}

/** Drafting rules whose remark is a reason to withdraw, with the reason codes that a catalog may know it by. */
const REASON_OF: Readonly<Record<string, string>> = {
  'chooses-work': 'chooses-work',
  'worker-safety': 'law-governs',
  'bare-reference': 'bare-reference',
};

/**
 * Proposals out of evidence: requirements of one level that say nearly the same become one; a requirement of which a
 * rule says that all of it does not belong is withdrawn. The largest saving comes first.
 */
export function propose(
  settings: Settings,
  items: readonly Item[],
  alike: readonly Alike[],
  remarks: readonly Finding[],
): readonly Proposal[] {
  const places = placesOf(settings, items);
  const name = (id: ItemId) => places.get(id)?.number || id;
  const combine = alike.flatMap((cluster): Proposal[] => {
    const [into, ...others] = cluster.items;
    if (into === undefined || others.length === 0) return [];
    const ids = cluster.items.filter(id => places.get(id)?.level === places.get(into)?.level);
    if (ids.length < 2) return [];
    const differs = cluster.differs.length > 0 ? `; they differ in ${cluster.differs.slice(0, 3).join('; ')}` : '';
    return [
      {
        operation: { op: 'combine', ids, into },
        told: `Combine ${ids.slice(1).map(name).join(', ')} into ${name(into)}: they say nearly the same${differs}.`,
        because: `said nearly the same as ${ids.length - 1} other ${ids.length === 2 ? 'requirement' : 'requirements'}`,
      },
    ];
  });
  const known = new Set(settings.withdrawalReasons.map(r => r.code));
  const taken = new Set(combine.flatMap(p => ('ids' in p.operation ? p.operation.ids : [])));
  const withdraw = remarks.flatMap((remark): Proposal[] => {
    const reason = REASON_OF[remark.rule];
    const item = places.get(remark.subject);
    if (!reason || !item?.text || !known.has(reason) || taken.has(item.id) || !isRequirement(settings, item)) return [];
    // A remark on one sentence of several is a matter of rewording.
    const { start = 0, end = 0 } = remark.data as { start?: number; end?: number };
    if (end - start < 0.6 * item.text.trim().length) return [];
    taken.add(item.id);
    return [
      {
        operation: { op: 'withdraw', id: item.id, reason },
        told: `Withdraw ${name(item.id)} ${item.title} as ${reason}: ${remark.message}`,
        because: remark.rule.replaceAll('-', ' '),
      },
    ];
  });
  return [...combine.sort((a, b) => saved(b) - saved(a)), ...withdraw];
}

const saved = ({ operation }: Proposal) => (operation.op === 'combine' ? operation.ids.length - 1 : 1);
