import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import type { Ports } from '../../src/commands/ports/ports.ts';
import { type Catalog, openOrCreate } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';
import { testPorts } from '../demo-catalog.ts';
import { AUTHOR, nativeGit, smallEdition, temporaryFolder } from '../store/temp-catalog.ts';

/** A catalog with the edition 2018 (work items 1 to 3 with requirements 1.1 to 3.2) and a draft 2030 that begins as it; `words` make the texts of the first ones. */
export async function catalogWithDraft(words = 'Set'): Promise<{ catalog: Catalog; ports: Ports; dir: string }> {
  const dir = join(temporaryFolder(), 'works.git');
  const catalog = await openOrCreate(dir);
  await publishEdition(catalog, smallEdition('2018', null, words), AUTHOR, 'Edition 2018');
  const ports = testPorts('release');
  await openDraft(ports, catalog, { name: '2030' });
  return { catalog, ports, dir };
}

/** Changes files of the draft in a clone, as people do who work with git; null takes a file away. */
export function changeDraft(dir: string, files: Readonly<Record<string, (before: string) => string | null>>): string {
  const clone = join(temporaryFolder(), 'clone');
  nativeGit('.', 'clone', '-q', '-b', 'draft/2030', dir, clone);
  for (const [path, change] of Object.entries(files)) {
    const after = change(nativeGit(clone, 'show', `HEAD:${path}`));
    if (after === null) rmSync(join(clone, path));
    else writeFileSync(join(clone, path), after);
  }
  nativeGit(clone, 'commit', '-qam', 'Work on the draft');
  nativeGit(clone, 'push', '-q');
  return nativeGit(clone, 'rev-parse', 'HEAD').trim();
}
