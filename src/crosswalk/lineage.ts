import type { Extent, LineageRecord, Link } from '../model/crosswalk.ts';
import { endingsOf } from '../model/endings.ts';
import type { ItemId } from '../model/item.ts';

/**
 * Links two editions one step apart: from equal ids and from declared lineage, and from nothing else.
 *
 *   equal id, no record ........ one link to itself
 *   equal id, record ........... its heirs, and itself unless the record says notSame
 *   id gone, record ............ its heirs, or withdrawn (to: null) where the record has a reason and no heir
 *   id gone, no record ......... no link: the item is unaccounted, and `checkConservation` says so
 *   newer id nobody links to ... new (from: null)
 *
 * Falling back to the printed number would fill the gaps, and be wrong as soon as a number is re-used.
 */
export function linkByLineage(
  from: readonly { readonly id: ItemId }[],
  to: readonly { readonly id: ItemId }[],
  records: readonly LineageRecord[],
): Link[] {
  const newer = new Set(to.map(i => i.id));
  const byFrom = new Map<ItemId, LineageRecord>();
  const arrivals = new Map<ItemId, LineageRecord>();
  for (const r of records) {
    if (r.from !== null) byFrom.set(r.from, r);
    else for (const heir of r.heirs) arrivals.set(heir.to, r);
  }

  const links: Link[] = [];
  const sources = new Map<ItemId, number>();
  for (const { id } of from) {
    const record = byFrom.get(id);
    const found = record ? linksOfRecord(id, record, newer) : newer.has(id) ? [selfLink(id)] : [];
    for (const link of found) {
      links.push(link);
      if (link.to !== null) sources.set(link.to, (sources.get(link.to) ?? 0) + 1);
    }
  }
  for (const { id } of to) {
    if (!sources.has(id)) links.push(arrival(id, arrivals.get(id)));
  }
  // A continuing item that others were merged into is no longer the whole of its heir; how much, nobody said.
  return links.map(link =>
    link.from !== null && link.from === link.to && link.toExtent === 'all' && !byFrom.get(link.from)?.heirs.length
      ? { ...link, toExtent: sources.get(link.to) === 1 ? 'all' : ('unknown' as Extent) }
      : link,
  );
}

function selfLink(id: ItemId): Link {
  return { from: id, to: id, fromExtent: 'all', toExtent: 'all', basis: 'declared', confidence: 1 };
}

function arrival(id: ItemId, record: LineageRecord | undefined): Link {
  const link: Link = {
    from: null,
    to: id,
    fromExtent: 'all',
    toExtent: 'all',
    basis: record?.basis ?? 'declared',
    confidence: 1,
  };
  return record ? { ...link, ...told(record) } : link;
}

function linksOfRecord(id: ItemId, record: LineageRecord, newer: ReadonlySet<ItemId>): Link[] {
  const { reason, governs, pointsTo, ...more } = told(record);
  const base = { from: id, basis: record.basis, confidence: 1, ...more };
  // Beside an end for some types, reason and what governs are about that end: an heir that goes on is not told so.
  const joining = record.withdrawnFor === undefined ? { ...base, ...told(record) } : base;
  const links: Link[] = record.heirs
    .filter(h => newer.has(h.to))
    .map(h => ({ ...joining, to: h.to, fromExtent: h.fromExtent, toExtent: h.toExtent }));
  const continues = newer.has(id) && !record.notSame;
  if (continues && !links.some(l => l.to === id)) {
    const extent: Extent = links.length === 0 ? 'all' : 'unknown';
    links.push({ ...joining, to: id, fromExtent: extent, toExtent: extent });
  }
  if (continues && record.withdrawnFor === undefined) return links;
  for (const { governsChecked: _, ...ending } of endingsOf(record)) {
    if (ending.reason === undefined) continue;
    const { decision: __, ...shared } = base;
    links.push({ ...shared, ...ending, to: null, fromExtent: ending.types ? 'part' : 'all', toExtent: 'all' });
  }
  return links;
}

/** What a record tells the reader, without the fields that it does not have. */
function told(r: LineageRecord): Partial<Link> {
  const { reason, note, governs, pointsTo, decision, by, date } = r;
  const all = { reason, note, governs, pointsTo, decision, by, date };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Partial<Link>;
}
