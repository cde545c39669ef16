import type { Joint } from '../crosswalk/joint.ts';
import type { AppliesTo, Duty, Link, Marks } from '../model/crosswalk.ts';
import type { Item, ItemId, TypeId } from '../model/item.ts';
import { compareWording } from './wording.ts';

/** Where the words of the items come from; only those whose content hash differs are ever asked for. */
export interface Texts {
  from(id: ItemId): Item | undefined;
  to(id: ItemId): Item | undefined;
}

/** A link that joins two items; withdrawals and arrivals have no marks. */
export type PairLink = Link & { readonly from: ItemId; readonly to: ItemId };

export function isPair(link: Link): link is PairLink {
  return link.from !== null && link.to !== null;
}

/** What changed along one link. Duty is judged per installation type: a merge may tighten one and leave two alone. */
export function marksOf(joint: Joint, link: PairLink, texts: Texts): Marks {
  const from = joint.old.get(link.from)!;
  const to = joint.new.get(link.to)!;
  const before = joint.old.types(link.from);
  const after = joint.new.types(link.to);
  const wording = from.hash === to.hash ? 'same' : wordingOf(texts.from(link.from), texts.to(link.to));
  const appliesTo = compareTypes(before, after);
  const duty: Duty = wording === 'substantive' || appliesTo !== 'same' ? 'unclear' : 'same';
  return {
    renumbered: from.number !== to.number,
    moved: hasMoved(joint, link),
    wording,
    duty,
    appliesTo,
    dutyByType: before.map(type => ({
      type,
      duty: !after.includes(type) ? 'ends' : wording === 'substantive' ? 'unclear' : 'same',
    })),
  };
}

function wordingOf(from: Item | undefined, to: Item | undefined) {
  if (!from || !to) throw new Error('the texts of a changed item were not read');
  return compareWording(from, to);
}

/**
 * An item has moved if its new parent is neither its old parent nor an heir of it. Comparing parents alone would call
 * every child of a merged or re-identified work item moved.
 */
function hasMoved(joint: Joint, link: PairLink): boolean {
  const before = joint.old.get(link.from)!.parent;
  const after = joint.new.get(link.to)!.parent;
  if (before === after) return false;
  if (before === null || after === null) return true;
  return !joint.leaving(before).some(l => l.to === after);
}

function compareTypes(before: readonly TypeId[], after: readonly TypeId[]): AppliesTo {
  const lost = before.some(t => !after.includes(t));
  const won = after.some(t => !before.includes(t));
  if (lost) return won ? 'shifted' : 'narrower';
  return won ? 'wider' : 'same';
}
