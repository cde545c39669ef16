import type { Crosswalk, Link } from '../model/crosswalk.ts';
import { composeCrosswalks } from './compose.ts';
import type { Joint } from './joint.ts';

/**
 * The crosswalk over steps that follow each other, at least one, older to newer. What ends is told for the installation
 * types for which a way leads to that end: a bare crosswalk does not know to what the items between applied, so an item
 * that was divided by type and lost one half would end for all.
 *
 * Law: for each type of an old item, the withdrawals are those that are met by taking the steps one after the other
 * (where a step loses the type, perhaps more). The heirs are all that are met so; one that took the type up again on
 * the way may be among them.
 */
export function composeSteps(steps: readonly Joint[]): Crosswalk {
  if (steps.length === 1) return steps[0]!.crosswalk;
  const composed = steps.map(withTypes).reduce(composeCrosswalks);
  const telling = new Set(composed.links.filter(l => l.types?.length !== 0).map(l => l.from));
  // What ends for no type that the item had is left out only where something else is said of it.
  const links = composed.links.filter(l => l.to !== null || l.types?.length !== 0 || !telling.has(l.from));
  return { ...composed, links: links.map(link => asSaid(steps[0]!, link)) };
}

/** Every link out of an old item with the types that go along it. */
function withTypes(joint: Joint): Crosswalk {
  const links = joint.crosswalk.links.map((link): Link => {
    if (link.from === null) return link;
    const had = joint.old.types(link.from);
    const has = link.to === null ? link.types : joint.new.types(link.to);
    // A catalog may begin or cease to tell types apart: then all go along.
    if (had.length === 0 || has?.length === 0) return link;
    return { ...link, types: has ? had.filter(t => has.includes(t)) : had };
  });
  return { ...joint.crosswalk, links };
}

/** As one step says it: types beside a withdrawal only, and there only where it is not for all. */
function asSaid(first: Joint, { types, ...link }: Link): Link {
  if (types === undefined || link.to !== null || link.from === null) return link;
  const had = first.old.types(link.from);
  const ends = had.filter(t => types.includes(t));
  return ends.length === 0 || ends.length === had.length ? link : { ...link, types: ends };
}
