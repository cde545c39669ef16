import { mergeItems } from '../../editing/merging/merge-items.ts';
import type { Conflict } from '../../editing/merging/three-way.ts';
import { parseItemFile, writeItemFile } from '../../format/item-file.ts';
import type { Ports } from '../ports/ports.ts';

/**
 * What native git calls for a file that both sides of a merge changed: it sees one path, not the edition. Where their
 * changes to the items of the file can both stand they are merged; everything else waits for `draft merge --finish`,
 * which sees all. Until then the file holds a record that no reader takes for an item.
 *
 * @returns whether the file is merged
 */
export async function mergeOneFile(ports: Ports, base: string, ours: string, theirs: string): Promise<boolean> {
  const read = async (file: string) => new TextDecoder().decode(await ports.files.read(file));
  const texts = { base: await read(base), ours: await read(ours), theirs: await read(theirs) };
  const sides = {
    base: parseItemFile(base, texts.base),
    ours: parseItemFile(ours, texts.ours),
    theirs: parseItemFile(theirs, texts.theirs),
  };
  if (sides.base && sides.ours && sides.theirs) {
    const conflicts: Conflict[] = [];
    const merged = mergeItems({ base: sides.base, ours: sides.ours, theirs: sides.theirs }, new Map(), conflicts);
    if (conflicts.length === 0 && merged[0]?.id === sides.ours[0]!.id) {
      await ports.files.write(ours, writeItemFile(merged));
      return true;
    }
  }
  const told = 'this file is merged with all others at once; run: fishplate draft merge --finish';
  await ports.files.write(ours, `<<<<<<< ${told}\n${texts.ours}=======\n${texts.theirs}>>>>>>>\n`);
  return false;
}
