import type { Joint } from '../crosswalk/joint.ts';
import type { Entry } from '../model/edition.ts';
import type { TypeId } from '../model/item.ts';

/**
 * The items of the newer edition that a line of this type means by a number, whether a person or a program writes it
 * there: exactly one, or the number cannot be written. Of items that share a number those count that apply to the type.
 */
export function newBearers(joint: Joint, number: string, type: TypeId | undefined): readonly Entry[] {
  if (number === '') return [];
  const bearers = joint.new.withNumber(number);
  const applying = type === undefined ? bearers : bearers.filter(b => joint.new.types(b.id).includes(type));
  return applying.length > 0 ? applying : bearers;
}
