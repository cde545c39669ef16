import type { Crosswalk, Link } from '../model/crosswalk.ts';
import { groupBy } from '../model/group-by.ts';
import type { ItemId } from '../model/item.ts';
import { narrower, stronger, weaker, wider } from './certainty.ts';

/**
 * Joins two crosswalks over their middle edition, by id and never by number.
 *
 * Law: associative on (from, to, extents, basis, confidence, types, and the reason of a withdrawal), with
 * `identityCrosswalk` as identity. An item may end for several reasons, each for types of its own: these stay apart.
 * Laws that fail, and are tested as failing: there and back is not the identity, since a merge forgets; duty does not
 * compose (compare the end texts again); composing over an unaccounted item hides the loss (check each step first).
 *
 *   old    middle    new
 *   a ──┐         ┌── x      A merge followed by a split yields a-x, a-y, b-x, b-y. Two of the four may be false, and
 *       ├── m ────┤          nothing here can tell which: such links are marked `doubtful`.
 *   b ──┘         └── y
 */
export function composeCrosswalks(first: Crosswalk, second: Crosswalk): Crosswalk {
  const onward = groupBy(second.links, l => l.from);
  const sources = groupBy(
    first.links.filter(l => l.from !== null),
    l => l.to,
  );
  const found = new Map<string, Link>();
  const add = (link: Link) => {
    const key = JSON.stringify([link.from, link.to, ...(link.to === null ? wordsOfEnd(link) : [])]);
    const known = found.get(key);
    found.set(key, known ? parallel(known, link) : link);
  };
  for (const a of first.links) {
    if (a.to === null) {
      add(a);
      continue;
    }
    const next = onward.get(a.to) ?? [];
    const forks = next.filter(l => l.to !== null).length > 1 && (sources.get(a.to)?.length ?? 0) > 1;
    for (const b of next) {
      // New in the middle and withdrawn at the end: no item of either edition, so no link of theirs.
      if (a.from === null && b.to === null) continue;
      add(chain(a, b, forks && b.to !== null));
    }
  }
  for (const b of second.links) if (b.from === null) add(b);
  return { from: first.from, to: second.to, links: [...found.values()] };
}

/** What makes two withdrawals of one item two: a job for one type must not be told why the item ended for another. */
function wordsOfEnd({ reason, governs, pointsTo, decision }: Link) {
  return [reason, governs, pointsTo, decision].map(said => said ?? null);
}

/** Every item to itself. */
export function identityCrosswalk(edition: string, items: readonly { readonly id: ItemId }[]): Crosswalk {
  return {
    from: edition,
    to: edition,
    links: items.map(({ id }) => ({
      from: id,
      to: id,
      fromExtent: 'all',
      toExtent: 'all',
      basis: 'declared',
      confidence: 1,
    })),
  };
}

function chain(a: Link, b: Link, forks: boolean): Link {
  const doubtful = a.doubtful || b.doubtful || forks;
  const note = [a.note, b.note].filter(Boolean).join(' Then: ');
  const { types: _, note: __, doubtful: ___, ...last } = b;
  const types = typesAlong(a.types, b.types);
  return {
    ...reasonOf(a),
    ...last,
    from: a.from,
    to: b.to,
    fromExtent: narrower(a.fromExtent, b.fromExtent),
    toExtent: narrower(a.toExtent, b.toExtent),
    ...weaker(a, b),
    ...(note ? { note } : {}),
    ...(types ? { types } : {}),
    ...(doubtful ? { doubtful: true as const } : {}),
  };
}

/** The reason of the first step stands where the second, a plain continuation, gives none. */
function reasonOf(a: Link): Partial<Link> {
  return a.reason === undefined ? {} : { reason: a.reason };
}

/** The types for which both links hold; absent = all that the item applies to. */
function typesAlong(a: Link['types'], b: Link['types']): Link['types'] {
  return a && b ? b.filter(t => a.includes(t)) : (a ?? b);
}

function parallel(a: Link, b: Link): Link {
  const { doubtful: _, types: __, ...kept } = a;
  const types = a.types && b.types && [...new Set([...a.types, ...b.types])];
  return {
    ...kept,
    fromExtent: wider(a.fromExtent, b.fromExtent),
    toExtent: wider(a.toExtent, b.toExtent),
    ...stronger(a, b),
    ...(types ? { types } : {}),
    ...(a.doubtful && b.doubtful ? { doubtful: true as const } : {}),
  };
}
