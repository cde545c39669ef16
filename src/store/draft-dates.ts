import { parseJson, writeJson } from '../format/json.ts';
import { draftFile } from '../format/schemas.ts';
import type { EditionDates } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import { DRAFT_PATH, draftRef, locate } from './names.ts';
import type { Catalog } from './open.ts';
import { moveRef, readRef } from './refs.ts';
import { fileAt, type Person, readText, treeOf, writeChanges, writeCommit } from './repository.ts';

/**
 * Sets days of a draft; one that is given as '' is taken away. A published edition keeps the days that it was published
 * with.
 *
 * @throws CatalogError BadArgument for an edition that is published; Changed where somebody else wrote to the draft
 */
export async function setDraftDates(
  catalog: Catalog,
  name: string,
  dates: Readonly<Partial<Record<keyof EditionDates, string>>>,
  author: Person,
): Promise<void> {
  const { repo } = catalog;
  const at = await locate(catalog, name);
  if (at.state !== 'draft') {
    throw new CatalogError('BadArgument', `${name} is published, and its days stay as they are; set those of a draft.`);
  }
  const ref = draftRef(at.name);
  const tip = await readRef(repo.fs, repo.gitdir, ref);
  const tree = await treeOf(repo, tip ?? at.commit);
  const oid = await fileAt(repo, tree, DRAFT_PATH);
  const parsed = oid === null ? undefined : parseJson(DRAFT_PATH, await readText(repo, oid), draftFile);
  if (tip === null || !parsed || !('value' in parsed)) {
    throw new CatalogError(
      'BadCatalog',
      `The draft ${name} has no ${DRAFT_PATH} that can be read; mend it in a clone.`,
    );
  }
  const all = { ...parsed.value.dates, ...dates };
  const kept = Object.fromEntries(Object.entries(all).filter(([, date]) => date !== ''));
  const text = writeJson({ name: parsed.value.name, replaces: parsed.value.replaces, dates: kept });
  const changed = await writeChanges(repo, tree, new Map([[DRAFT_PATH, text]]));
  const told = Object.entries(dates).map(([key, date]) => `${key} ${date || 'taken away'}`);
  const message = `Days of draft ${at.name}: ${told.join(', ')}`;
  const commit = await writeCommit(repo, { tree: changed, parents: [tip], message, author });
  await moveRef(repo.fs, repo.gitdir, ref, tip, commit);
}
