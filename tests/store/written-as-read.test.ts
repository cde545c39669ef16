import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { NewEdition } from '../../src/store/new-edition.ts';
import { openOrCreate } from '../../src/store/open.ts';
import { publishEdition, publishErratum } from '../../src/store/publish.ts';
import { saveDraft } from '../../src/store/write-draft.ts';
import { AUTHOR, nativeGit, smallEdition, temporaryFolder, withdrawn } from './temp-catalog.ts';

const decision = { id: 'd', title: 'T', reason: 'R', authority: 'A', scope: 'S' };

it('nothing is published, drafted or corrected that the catalog could not read back', async () => {
  const dir = join(temporaryFolder(), 'c.git');
  const catalog = await openOrCreate(dir);
  await publishEdition(catalog, smallEdition('2018', null, 'Set'), AUTHOR, 'Edition 2018');
  await publishEdition(catalog, smallEdition('2024', '2018', 'Set'), AUTHOR, 'Edition 2024');
  const refs = nativeGit(dir, 'for-each-ref');
  const bad: Partial<NewEdition>[] = [
    { lineage: [{ ...withdrawn('w1a'), date: 'yesterday' }] },
    { lineage: [{ ...withdrawn('w1a'), governs: 'The act', governsChecked: 'banana' }] },
    { decisions: [{ ...decision, date: 'soon' }] },
    { dates: { effective: 'in spring' } },
  ];
  for (const more of bad) {
    const edition = smallEdition('2030', '2024', 'Set', more);
    const refused = /cannot be kept as it is/;
    await expect(publishEdition(catalog, edition, AUTHOR, 'm'), JSON.stringify(more)).rejects.toThrow(refused);
    await expect(saveDraft(catalog, edition, AUTHOR, 'm'), JSON.stringify(more)).rejects.toThrow(refused);
    if (!more.lineage) continue;
    await expect(publishErratum(catalog, '2024', more.lineage, id => id, AUTHOR, 'm')).rejects.toThrow(refused);
  }
  expect(nativeGit(dir, 'for-each-ref')).toBe(refs);
});
