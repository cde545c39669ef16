import { ITEMS_FOLDER, OUTLINE_PATH, SETTINGS_PATH } from '../format/edition-files.ts';
import { headerPath, tablePath } from '../format/edition-table.ts';
import { decisionsFolder, lineageFolder } from '../format/lineage-files.ts';
import { CatalogError } from '../model/errors.ts';
import { draftRef, listDrafts, listEditionTags, MAIN, newestTags } from './names.ts';
import { moveRef, readRef } from './refs.ts';
import {
  authorOf,
  commitOfTag,
  fileAt,
  isAncestor,
  type Repository,
  treeOf,
  writeCommit,
  writeTreeFrom,
} from './repository.ts';

/**
 * Brings `main` up to the published editions. The tag alone publishes; the branch only follows, so a process killed
 * between the two has published, and the next writer completes it here.
 */
export async function followMain(repo: Repository): Promise<void> {
  for (const tag of newestTags(await listEditionTags(repo))) {
    for (let attempt = 0; ; attempt++) {
      const main = await readRef(repo.fs, repo.gitdir, MAIN);
      const commit = await commitOfTag(repo, (await readRef(repo.fs, repo.gitdir, tag.ref))!);
      if (main !== null && (await hasEdition(repo, main, commit, tag.name))) break;
      const next =
        main === null || (await isAncestor(repo, main, commit)) ? commit : await join(repo, main, commit, tag.name);
      try {
        await moveRef(repo.fs, repo.gitdir, MAIN, main, next);
        break;
      } catch (error) {
        if (!(error instanceof CatalogError && error.code === 'Changed') || attempt >= 5) throw error;
      }
    }
  }
}

/** Whether main already holds an edition with this lineage; three small trees instead of a walk through history. */
async function hasEdition(repo: Repository, main: string, commit: string, name: string): Promise<boolean> {
  const [ours, theirs] = await Promise.all([treeOf(repo, main), treeOf(repo, commit)]);
  if ((await fileAt(repo, ours, headerPath(name))) === null) return false;
  const [a, b] = await Promise.all([ours, theirs].map(tree => fileAt(repo, tree, lineageFolder(name))));
  return a === b;
}

/** A commit on main that takes an edition's own paths from its tag and leaves everything else as it stands. */
async function join(repo: Repository, main: string, commit: string, name: string): Promise<string> {
  const [ours, theirs] = await Promise.all([treeOf(repo, main), treeOf(repo, commit)]);
  const newEdition = (await fileAt(repo, ours, headerPath(name))) === null;
  const paths = [lineageFolder(name), decisionsFolder(name), headerPath(name), tablePath(name)];
  if (newEdition) paths.push(SETTINGS_PATH, OUTLINE_PATH, ITEMS_FOLDER);
  const tree = await writeTreeFrom(repo, ours, theirs, paths);
  return writeCommit(repo, {
    tree,
    parents: [main, commit],
    message: `Follow edition ${name}`,
    author: await authorOf(repo, commit),
  });
}

/** Removes the branches of drafts that are published; a process killed between tag and branch leaves one behind. */
export async function dropPublishedDrafts(repo: Repository): Promise<void> {
  const tags = newestTags(await listEditionTags(repo));
  for (const draft of await listDrafts({ repo })) {
    const tag = tags.find(t => t.name === draft);
    const tip = await readRef(repo.fs, repo.gitdir, draftRef(draft));
    if (!tag || tip === null) continue;
    const commit = await commitOfTag(repo, (await readRef(repo.fs, repo.gitdir, tag.ref))!);
    // Somebody may have pushed to it since; that work is not ours to throw away.
    if (await isAncestor(repo, tip, commit)) await moveRef(repo.fs, repo.gitdir, draftRef(draft), tip, null);
  }
}
