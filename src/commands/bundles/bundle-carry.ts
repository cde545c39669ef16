import { type PackedTexts, type PackedWays, packWays, type Way } from '../../crosswalk/packed-ways.ts';
import type { Entry } from '../../model/edition.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readEditionTexts } from '../reading/edition-texts.ts';

/**
 * All that a page needs to carry files to an edition: the ways to it, with the marks and the changed values worked out.
 *
 * @param ways from every older edition, the nearest first; at least one
 */
export async function readCarryData(catalog: Catalog, ways: readonly Way[]): Promise<PackedWays> {
  const editions = (await listEditions(catalog)).map(header => header.name);
  const read = await Promise.all(ways.map(({ joint }) => readEditionTexts(catalog, joint)));
  const pairs = <T>(entries: readonly Entry[], of: (id: string) => T | undefined) =>
    entries.flatMap(({ id }): [string, T][] => {
      const value = of(id);
      return value === undefined ? [] : [[id, value]];
    });
  const texts: PackedTexts = {
    to: pairs(ways[0]!.joint.to.entries, id => read[0]!.to(id)),
    from: ways.map(({ joint }, at) => ({
      said: pairs(joint.from.entries, id => read[at]!.from(id)),
      changed: pairs(joint.from.entries, id => {
        const changed = read[at]!.changed(id);
        return changed.length === 0 ? undefined : changed;
      }),
    })),
  };
  return packWays(ways, editions, texts);
}
