import type { PublishedCatalog, PublishedEdition } from '../../commands/reading/published-catalog.ts';
import { reasonsInWords } from '../../model/heir-words.ts';
import type { ItemId } from '../../model/item.ts';
import { placeLink } from '../links.ts';

/** An item of the edition before that was withdrawn, told beside what stands where it stood. */
export interface Retired {
  readonly edition: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly reason: string;
}

/**
 * For each item of an edition: what was withdrawn in it from the edition before. A withdrawn item is told at the item
 * that its own record points to, else at the first heir of its nearest ancestor that has one.
 */
export async function retiredNeighbours(
  published: PublishedCatalog,
  edition: PublishedEdition,
): Promise<Map<ItemId, Retired[]>> {
  const beside = new Map<ItemId, Retired[]>();
  const { name, replaces } = edition.header;
  if (replaces === null || !published.headers.some(h => h.name === replaces)) return beside;
  const { joint } = await published.crosswalk(replaces, name);
  const reasons = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  for (const entry of joint.from.entries) {
    if (joint.fateOfOld(entry.id) !== 'withdrawn') continue;
    const ends = joint.leaving(entry.id);
    const heirs = joint.old.ancestors(entry.id).flatMap(above => joint.leaving(above.id).map(l => l.to));
    const place = ends.find(l => l.pointsTo !== undefined)?.pointsTo ?? heirs.find(id => id !== null);
    if (place === undefined || place === null) continue;
    const retired = {
      edition: replaces,
      number: entry.number,
      title: entry.title,
      href: placeLink(replaces, entry),
      reason: reasonsInWords(ends, reasons),
    };
    const known = beside.get(place);
    if (known) known.push(retired);
    else beside.set(place, [retired]);
  }
  return beside;
}
