import type { Crosswalk, Link } from '../model/crosswalk.ts';
import type { ItemId } from '../model/item.ts';
import { narrower, stronger, weaker, wider } from './certainty.ts';

/**
 * Joins two crosswalks over their middle edition, by id and never by number.
 *
 * Law: associative on (from, to, extents, basis, confidence), with `identityCrosswalk` as identity.
 * Laws that fail, and are tested as failing: there and back is not the identity, since a merge forgets; duty does not
 * compose (compare the end texts again); composing over an unaccounted item hides the loss (check each step first).
 *
 *   old    middle    new
 *   a ──┐         ┌── x      A merge followed by a split yields a-x, a-y, b-x, b-y. Two of the four may be false, and
 *       ├── m ────┤          nothing here can tell which: such links are marked `doubtful`.
 *   b ──┘         └── y
 */
export function composeCrosswalks(first: Crosswalk, second: Crosswalk): Crosswalk {
  const onward = groupLinks(second.links, l => l.from);
  const sources = groupLinks(
    first.links.filter(l => l.from !== null),
    l => l.to,
  );
  const found = new Map<string, Link>();
  const add = (link: Link) => {
    const key = JSON.stringify([link.from, link.to]);
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
  return {
    ...reasonOf(a),
    ...last,
    from: a.from,
    to: b.to,
    fromExtent: narrower(a.fromExtent, b.fromExtent),
    toExtent: narrower(a.toExtent, b.toExtent),
    ...weaker(a, b),
    ...(note ? { note } : {}),
    ...(b.types ? { types: b.types } : {}),
    ...(doubtful ? { doubtful: true as const } : {}),
  };
}

/** The reason of the first step stands where the second, a plain continuation, gives none. */
function reasonOf(a: Link): Partial<Link> {
  return a.reason === undefined ? {} : { reason: a.reason };
}

function parallel(a: Link, b: Link): Link {
  const { doubtful: _, ...kept } = a;
  return {
    ...kept,
    fromExtent: wider(a.fromExtent, b.fromExtent),
    toExtent: wider(a.toExtent, b.toExtent),
    ...stronger(a, b),
    ...(a.doubtful && b.doubtful ? { doubtful: true as const } : {}),
  };
}

function groupLinks(links: readonly Link[], key: (l: Link) => ItemId | null): Map<ItemId, Link[]> {
  const groups = new Map<ItemId, Link[]>();
  for (const link of links) {
    const id = key(link);
    if (id === null) continue;
    const group = groups.get(id);
    if (group) group.push(link);
    else groups.set(id, [link]);
  }
  return groups;
}
