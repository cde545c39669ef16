import { staleFinder } from '../carryover/stale/stale-content.ts';
import { type StaleSearch, staleSearch } from '../carryover/stale/stale-places.ts';
import { type CitedBook, citedBook } from '../citing/cited-book.ts';
import type { PackedWays, Way } from '../crosswalk/packed-ways.ts';

/** The older edition with what its items say, and what looks for that where a lesson still tells it, by the packed texts. */
export function packedBook(
  { joint }: Way,
  { ways, texts, editions }: PackedWays,
): { readonly book: CitedBook; readonly searchStale: StaleSearch } {
  const at = ways.findIndex(way => way.from.header.name === joint.from.header.name);
  const [said, changed, now] = [new Map(texts.from[at]!.said), new Map(texts.from[at]!.changed), new Map(texts.to)];
  const read = {
    from: (id: string) => said.get(id),
    to: (id: string) => now.get(id),
    changed: (id: string) => changed.get(id) ?? [],
  };
  return {
    book: citedBook(joint.from, { places: joint.old, textOf: read.from }),
    searchStale: staleSearch(joint, read, staleFinder(joint, read, editions)),
  };
}
