import { ITEMS_FOLDER, OUTLINE_PATH, SETTINGS_PATH } from '../format/edition-files.ts';
import { decisionsFolder, lineageFolder } from '../format/lineage-files.ts';
import type { LineageRecord } from '../model/crosswalk.ts';
import { CatalogError } from '../model/errors.ts';
import type { ItemId } from '../model/item.ts';
import { refuseTaken } from './free-name.ts';
import { followMain } from './main-branch.ts';
import { DRAFT_PATH, draftRef, locate, MAIN, tagOf } from './names.ts';
import { editionFiles, frozenFiles, lineageFiles, type NewEdition } from './new-edition.ts';
import type { Catalog } from './open.ts';
import { moveRef, readRef, underLock } from './refs.ts';
import {
  isAncestor,
  type Person,
  type Repository,
  treeOf,
  writeChanges,
  writeCommit,
  writeTagObject,
  writeTreeFrom,
} from './repository.ts';
import { changesFor } from './tree-changes.ts';

/**
 * Publishes a whole edition: one commit with its files, lineage and frozen table, then its tag. The tag is the moment
 * of publication; before it nothing is visible, after it the edition is there whole. Throws EditionExists.
 */
export async function publishEdition(
  catalog: Catalog,
  edition: NewEdition,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  await refuseTaken(catalog, edition.name);
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const base = main === null ? null : await treeOf(repo, main);
  const tree = await writeChanges(
    repo,
    base,
    await changesFor(repo, base, { ...editionFiles(edition), ...frozenFiles(edition) }),
  );
  const commit = await writeCommit(repo, { tree, parents: main === null ? [] : [main], message, author });
  await tagEdition(repo, edition.name, 0, commit, message, author);
  await following(edition.name, () => followMain(repo));
}

/**
 * Publishes a draft that is on its branch: a commit that joins it with main and carries its frozen table, then the
 * tag, then the branch of the draft goes. Throws Changed where the branch no longer stands at the tip.
 */
export async function publishFromDraft(
  catalog: Catalog,
  edition: NewEdition,
  tip: string,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const { name } = edition;
  const own = [SETTINGS_PATH, OUTLINE_PATH, ITEMS_FOLDER, lineageFolder(name), decisionsFolder(name)];
  const draft = await treeOf(repo, tip);
  const base = main === null ? draft : await writeTreeFrom(repo, await treeOf(repo, main), draft, own);
  const changes = new Map<string, string | null>(Object.entries(frozenFiles(edition)));
  changes.set(DRAFT_PATH, null);
  const tree = await writeChanges(repo, base, changes);
  const parents = main === null || (await isAncestor(repo, main, tip)) ? [tip] : [main, tip];
  const commit = await writeCommit(repo, { tree, parents, message, author });
  // Under the lock of the branch: a step of work that came after the tip was read would stay behind on it for good.
  await underLock(repo.fs, repo.gitdir, draftRef(name), async () => {
    if ((await readRef(repo.fs, repo.gitdir, draftRef(name))) !== tip) {
      throw new CatalogError(
        'Changed',
        `Somebody has worked on ${name} since it was read; nothing was published - look at it, and publish it again.`,
        { name, tip },
      );
    }
    await tagEdition(repo, name, 0, commit, message, author);
  });
  await following(name, async () => {
    await followMain(repo);
    await moveRef(repo.fs, repo.gitdir, draftRef(name), tip, null);
  });
}

/**
 * Publishes an erratum of an edition: its lineage is replaced, nothing else changes. Returns the erratum's number.
 */
export async function publishErratum(
  catalog: Catalog,
  name: string,
  lineage: readonly LineageRecord[],
  oldFileOf: (id: ItemId) => ItemId,
  author: Person,
  message: string,
): Promise<number> {
  const { repo } = catalog;
  const at = await locate(catalog, name);
  if (at.state !== 'published') {
    throw new CatalogError(
      'BadArgument',
      `${name} is a draft; its lineage is changed in the draft itself, not by an erratum.`,
    );
  }
  const files = Object.fromEntries(lineageFiles(at.name, lineage, oldFileOf));
  const changes = await changesFor(repo, at.tree, files, [lineageFolder(at.name)]);
  const tree = await writeChanges(repo, at.tree, changes);
  const commit = await writeCommit(repo, { tree, parents: [at.commit], message, author });
  await tagEdition(repo, at.name, at.erratum + 1, commit, message, author);
  await following(`${at.name}.${at.erratum + 1}`, () => followMain(repo));
  return at.erratum + 1;
}

async function tagEdition(
  repo: Repository,
  name: string,
  erratum: number,
  commit: string,
  message: string,
  tagger: Person,
) {
  const tag = tagOf(name, erratum);
  const oid = await writeTagObject(repo, { object: commit, name: tag, message, tagger });
  await moveRef(repo.fs, repo.gitdir, `refs/tags/${tag}`, null, oid);
}

/** The tag has published already; "was not changed" would be false where only the branches that follow it fail. */
async function following(name: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof CatalogError)) throw error;
    const { why = error.message.replace(/\.$/, '') } = error.data;
    throw new CatalogError(
      error.code,
      `${name} is published, but the branches do not follow it yet (${why}); mend that, and the next command that writes completes them.`,
      error.data,
    );
  }
}
