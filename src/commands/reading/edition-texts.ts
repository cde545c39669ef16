import { withChanges } from '../../carryover/stale/changed-texts.ts';
import type { EditionTexts } from '../../carryover/stale/old-sayings.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { EditionIndex, Entry } from '../../model/edition.ts';
import type { Places } from '../../model/places.ts';
import type { Catalog } from '../../store/open.ts';
import { readItems } from '../../store/read.ts';

/** The texts of all items of two joined editions. */
export async function readEditionTexts(catalog: Catalog, joint: Joint): Promise<EditionTexts> {
  const read = (index: EditionIndex, places: Places<Entry>) =>
    readItems(
      catalog,
      index,
      places,
      index.entries.map(e => e.id),
    );
  const [from, to] = [await read(joint.from, joint.old), await read(joint.to, joint.new)];
  return withChanges(joint, { from: id => from.get(id)?.text, to: id => to.get(id)?.text });
}
