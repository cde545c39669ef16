import { governing, type LocalVerdict } from '../../carryover/local/governs.ts';
import { isPair } from '../../content/links/marks.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { ItemId } from '../../model/item.ts';
import type { LocalRecord } from '../../model/local.ts';
import type { PublishedCatalog } from '../reading/published-catalog.ts';

/** A local rule or variance that touches an item, set beside what the item asks. */
export interface LocalBeside extends LocalVerdict {
  /** The item that its citation leads to: the one asked for, one above it or one below it. */
  readonly on: Entry;
}

/**
 * Which local rules and variances touch an item of an edition. One that cites another edition is followed along the
 * lineage, either way; one that cites the item's work item, or what stands below it, touches it as well.
 *
 * @param date calendar date on which it is asked what is in force
 */
export async function localBeside(
  published: PublishedCatalog,
  edition: string,
  entry: Entry,
  date: string,
): Promise<readonly LocalBeside[]> {
  const { places } = await published.edition(edition);
  const below = (id: ItemId): readonly ItemId[] => places.children(id).flatMap(e => [e.id, ...below(e.id)]);
  const near = new Set<ItemId>([entry.id, ...places.ancestors(entry.id).map(e => e.id), ...below(entry.id)]);
  const found: LocalBeside[] = [];
  for (const record of await published.localRecords()) {
    for (const on of await leadsTo(published, record, edition)) {
      if (!near.has(on.id)) continue;
      // A rule about the whole work item is set beside the requirement that is looked at.
      const isBelow = on.id !== entry.id && places.ancestors(on.id).some(a => a.id === entry.id);
      const { text } = await published.item(edition, isBelow ? on.id : entry.id);
      found.push({ ...governing(text ?? '', record, date), on });
    }
  }
  return found;
}

async function leadsTo(
  published: PublishedCatalog,
  { cites }: LocalRecord,
  edition: string,
): Promise<readonly Entry[]> {
  const names = published.headers.map(h => h.name);
  const [at, own] = [names.indexOf(edition), names.indexOf(cites.edition)];
  // A record of an edition that nobody publishes any more is for the commands to complain of, not for a reader.
  if (own < 0) return [];
  const { places } = await published.edition(edition);
  const cited = (of: typeof places) =>
    cites.item === undefined ? of.withNumber(cites.number) : [of.get(cites.item)].flatMap(e => e ?? []);
  if (own === at) return cited(places);
  try {
    const { joint } = await (own < at
      ? published.crosswalk(cites.edition, edition)
      : published.crosswalk(edition, cites.edition));
    const ids =
      own < at
        ? cited(joint.old).flatMap(e =>
            joint
              .leaving(e.id)
              .filter(isPair)
              .map(l => l.to),
          )
        : cited(joint.new).flatMap(e =>
            joint
              .arriving(e.id)
              .filter(isPair)
              .map(l => l.from),
          );
    return [...new Set(ids)].flatMap(id => places.get(id) ?? []);
  } catch (error) {
    // Two editions that no line joins.
    if (error instanceof CatalogError) return [];
    throw error;
  }
}
