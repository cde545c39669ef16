import type { Joint } from '../crosswalk/joint.ts';
import type { Entry } from '../model/edition.ts';

/** At most this many numbers are offered: more would be a list to search, not an offer. */
const OFFERED = 3;

/**
 * Numbers of the older edition that a number naming nothing may have been meant for: first the ones that a spreadsheet
 * cuts to it (3.10 becomes 3.1), then its neighbours under the nearest ancestor that exists. Only children of one item
 * are looked at, so that a table full of wrong numbers stays cheap.
 */
export function nearestNumbers(joint: Joint, number: string): readonly string[] {
  const found = new Set<string>();
  for (const zeros of ['0', '00']) if (has(joint, number + zeros)) found.add(number + zeros);
  const plain = number.replace(/\b0+(?=\d)/g, '');
  if (plain !== number && has(joint, plain)) found.add(plain);

  for (let cut = plain.length; cut > 0; ) {
    cut = plain.lastIndexOf('.', cut - 1);
    const above = joint.old.withNumber(plain.slice(0, Math.max(cut, 0)))[0];
    if (!above) continue;
    const wanted = Number(plain.slice(cut + 1).split('.')[0]);
    for (const near of closest(joint.old.children(above.id), wanted)) found.add(near);
    if (found.size === 0) found.add(above.number);
    break;
  }
  return [...found].filter(n => n !== number).slice(0, OFFERED);
}

function has(joint: Joint, number: string): boolean {
  return joint.old.withNumber(number).length > 0;
}

function closest(children: readonly Entry[], wanted: number): readonly string[] {
  if (Number.isNaN(wanted)) return [];
  return children
    .map(c => ({ number: c.number, distance: Math.abs(Number(c.number.split('.').at(-1)) - wanted) }))
    .filter(c => c.number !== '' && !Number.isNaN(c.distance))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 2)
    .map(c => c.number);
}
