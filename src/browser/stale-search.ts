import { staleFinder } from '../carryover/stale/stale-content.ts';
import { type StaleSearch, staleSearch } from '../carryover/stale/stale-places.ts';
import type { PackedWays, Way } from '../crosswalk/packed-ways.ts';

/** Looks for what a lesson still tells of an older edition, by the packed texts. */
export function packedStaleSearch({ joint }: Way, { ways, texts, editions }: PackedWays): StaleSearch {
  const at = ways.findIndex(way => way.from.header.name === joint.from.header.name);
  const [said, changed, now] = [new Map(texts.from[at]!.said), new Map(texts.from[at]!.changed), new Map(texts.to)];
  const read = {
    from: (id: string) => said.get(id),
    to: (id: string) => now.get(id),
    changed: (id: string) => changed.get(id) ?? [],
  };
  return staleSearch(joint, read, staleFinder(joint, read, editions));
}
