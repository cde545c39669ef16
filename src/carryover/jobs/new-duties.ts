import type { Joint } from '../../crosswalk/joint.ts';
import { isPair } from '../../crosswalk/pair-link.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId, TypeId } from '../../model/item.ts';

/**
 * The work items of the newer edition that a cited item brings into a job: the heirs of a cited work item, or, for a
 * requirement, the heirs of its work item in which the requirement itself goes on. A requirement moved elsewhere does
 * not bring all of its new neighbours along.
 */
export function workItemsOf(joint: Joint, cited: ItemId): readonly ItemId[] {
  const entry = joint.old.get(cited);
  if (!entry) return [];
  const heirs = heirsOf(joint, cited);
  if (!entry.obliges) return heirs.filter(id => joint.new.children(id).some(c => c.obliges));
  const parents = heirs.map(id => joint.new.get(id)?.parent ?? null);
  const above = entry.parent === null ? [] : heirsOf(joint, entry.parent);
  return above.filter(id => heirs.length === 0 || parents.includes(id));
}

/**
 * The requirements directly under a work item of the newer edition that a job of this type has to meet for the first
 * time: they have no source at all, or none that applied to the type. Without a type only those without any source
 * are certain.
 */
export function newDutiesUnder(joint: Joint, workItem: ItemId, type: TypeId | undefined): readonly Entry[] {
  return joint.new.children(workItem).filter(entry => {
    if (!entry.obliges) return false;
    const sources = joint.arriving(entry.id).filter(isPair);
    if (type === undefined) return sources.length === 0;
    if (!joint.new.types(entry.id).includes(type)) return false;
    return !sources.some(l => joint.old.types(l.from).includes(type));
  });
}

function heirsOf(joint: Joint, id: ItemId): readonly ItemId[] {
  return joint
    .leaving(id)
    .filter(isPair)
    .filter(l => l.basis !== 'inferred')
    .map(l => l.to);
}
