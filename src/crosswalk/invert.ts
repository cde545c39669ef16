import type { Crosswalk, Link } from '../model/crosswalk.ts';

/**
 * Reads a crosswalk from the newer edition's side: the derivation table of a disposition table. A withdrawn item
 * becomes one without a source and the reverse; reasons and notes stay. Law: `invert(invert(x)) = x`.
 */
export function invertCrosswalk(x: Crosswalk): Crosswalk {
  return {
    from: x.to,
    to: x.from,
    links: x.links.map((l): Link => ({ ...l, from: l.to, to: l.from, fromExtent: l.toExtent, toExtent: l.fromExtent })),
  };
}
