import type { Joint } from '../crosswalk/joint.ts';
import type { TypeId } from '../model/item.ts';
import { typeName } from '../model/settings.ts';
import { called, listed } from './sentences.ts';
import { otherEdition } from './unknown.ts';
import type { Verdict } from './verdict.ts';

/** A number that is said to be of the newer edition stays, if that prints it on one item of the type. */
export function ofNewer(joint: Joint, number: string, type: TypeId | undefined): Verdict {
  const { name } = joint.to.header;
  const bearers = number === '' ? [] : joint.new.withNumber(number);
  if (bearers.length === 0) return otherEdition(joint, number, name);
  const heirs = type === undefined ? bearers : bearers.filter(b => joint.new.types(b.id).includes(type));
  if (heirs.length === 1) {
    return { kind: 'kept', cause: 'other-edition', why: `${number} is said to be of ${name} already.`, heirs };
  }
  if (heirs.length > 1) {
    const why = `Edition ${name} prints ${number} on ${heirs.length} items: ${listed(heirs.map(h => h.title || h.id))}.`;
    return { kind: 'choose', cause: 'shared-number', why, toDo: 'Say which of them is meant.', heirs };
  }
  const why = `${listed(bearers.map(called))} of ${name} does not apply to ${typeName(joint.to.settings, type!)}.`;
  const toDo = 'Check the number and the installation type of this job.';
  return { kind: 'choose', cause: 'other-type', why, toDo, heirs: bearers };
}
