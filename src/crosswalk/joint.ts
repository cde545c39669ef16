import type { Crosswalk, Fate, Link } from '../model/crosswalk.ts';
import type { EditionIndex, Entry } from '../model/edition.ts';
import { groupBy } from '../model/group-by.ts';
import type { ItemId } from '../model/item.ts';
import { type Places, placesOf } from '../model/places.ts';

/** Two editions and what joins them, ready to be asked about one item at a time. */
export interface Joint {
  readonly from: EditionIndex;
  readonly to: EditionIndex;
  readonly crosswalk: Crosswalk;
  readonly old: Places<Entry>;
  readonly new: Places<Entry>;
  /** Links out of an old item, withdrawals included, in the order of the newer edition. */
  leaving(id: ItemId): readonly Link[];
  /** Links into a new item, arrivals included, in the order of the older edition. */
  arriving(id: ItemId): readonly Link[];
  /** What became of an old item. */
  fateOfOld(id: ItemId): Fate;
  /** Where a new item comes from. */
  fateOfNew(id: ItemId): Fate;
}

export function joinEditions(from: EditionIndex, to: EditionIndex, crosswalk: Crosswalk): Joint {
  const leaving = groupBy(crosswalk.links, l => l.from);
  const arriving = groupBy(crosswalk.links, l => l.to);
  const none: readonly Link[] = [];
  const heirs = (id: ItemId) => (leaving.get(id) ?? none).filter(l => l.to !== null);
  const sources = (id: ItemId) => (arriving.get(id) ?? none).filter(l => l.from !== null);

  return {
    from,
    to,
    crosswalk,
    old: placesOf(from.settings, from.entries),
    new: placesOf(to.settings, to.entries),
    leaving: id => leaving.get(id) ?? none,
    arriving: id => arriving.get(id) ?? none,
    fateOfOld: id => {
      const next = heirs(id);
      if (next.length === 0) return leaving.has(id) ? 'withdrawn' : 'unaccounted';
      const shared = next.some(l => sources(l.to as ItemId).length > 1);
      if (next.length === 1) return shared ? 'merged' : 'kept';
      return shared ? 'recombined' : 'split';
    },
    fateOfNew: id => {
      const before = sources(id);
      if (before.length === 0) return 'new';
      const shared = before.some(l => heirs(l.from as ItemId).length > 1);
      if (before.length === 1) return shared ? 'split' : 'kept';
      return shared ? 'recombined' : 'merged';
    },
  };
}
