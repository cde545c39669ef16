import { CatalogError } from '../../model/errors.ts';
import { refuseTaken } from '../../store/free-name.ts';
import type { Catalog } from '../../store/open.ts';
import { branchDraft } from '../../store/write-draft.ts';
import { readDraft } from './read-draft.ts';

/** Begins a branch of a draft for one person's or one group's work. */
export async function branchOf(catalog: Catalog, name: string, draft: string | undefined): Promise<void> {
  if (!/^[A-Za-z][\w-]{0,59}$/.test(name) || name === 'main') {
    throw new CatalogError(
      'BadArgument',
      `${JSON.stringify(name)} cannot be a branch's name; use up to 60 letters, digits, hyphens and underscores that begin with a letter, for example roofs.`,
    );
  }
  const { branch } = await readDraft(catalog, draft);
  // An edition of that name would be meant wherever the branch is named.
  await refuseTaken(catalog, name);
  await branchDraft(catalog, name, branch.tip);
}
