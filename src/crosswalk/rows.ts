import type { Crosswalk, Fate, Link, Row } from '../model/crosswalk.ts';
import type { ItemId } from '../model/item.ts';

/**
 * Groups the links of a crosswalk into its connected rows. Law: the rows partition both sides - every old and every
 * new item stands in exactly one row, unaccounted ones in a row of their own.
 *
 * Weak inferred links chain into giant rows: choose the links first, then group.
 */
export function groupIntoRows(
  crosswalk: Crosswalk,
  from: readonly { readonly id: ItemId }[],
  to: readonly { readonly id: ItemId }[],
): Row[] {
  // Old items are nodes 0..n-1 and new ones n..n+m-1; a union-find joins the ends of each link.
  const oldAt = new Map(from.map((i, at) => [i.id, at]));
  const newAt = new Map(to.map((i, at) => [i.id, from.length + at]));
  const leader = Int32Array.from({ length: from.length + to.length }, (_, at) => at);
  const find = (at: number): number => {
    let top = at;
    while (leader[top] !== top) top = leader[top]!;
    for (let next = at; next !== top; ) {
      const up = leader[next]!;
      leader[next] = top;
      next = up;
    }
    return top;
  };
  const node = (link: Link, side: 'from' | 'to') => {
    const id = link[side];
    return id === null ? undefined : (side === 'from' ? oldAt : newAt).get(id);
  };
  for (const link of crosswalk.links) {
    const a = node(link, 'from');
    const b = node(link, 'to');
    if (a !== undefined && b !== undefined) leader[Math.max(find(a), find(b))] = Math.min(find(a), find(b));
  }

  const rows = new Map<number, { from: ItemId[]; to: ItemId[]; links: Link[] }>();
  const rowAt = (at: number) => {
    const top = find(at);
    let row = rows.get(top);
    if (!row) {
      row = { from: [], to: [], links: [] };
      rows.set(top, row);
    }
    return row;
  };
  from.forEach((item, at) => {
    rowAt(at).from.push(item.id);
  });
  to.forEach((item, at) => {
    rowAt(from.length + at).to.push(item.id);
  });
  for (const link of crosswalk.links) {
    const at = node(link, 'from') ?? node(link, 'to');
    if (at !== undefined) rowAt(at).links.push(link);
  }
  return [...rows.values()].map((row, at) => ({ number: at + 1, fate: fateOfRow(row), ...row }));
}

function fateOfRow(row: { from: ItemId[]; to: ItemId[]; links: Link[] }): Fate {
  if (row.from.length === 0) return 'new';
  if (row.to.length === 0) return row.links.length > 0 ? 'withdrawn' : 'unaccounted';
  if (row.from.length === 1) return row.to.length === 1 ? 'kept' : 'split';
  return row.to.length === 1 ? 'merged' : 'recombined';
}
