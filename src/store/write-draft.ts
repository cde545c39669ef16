import { CatalogError } from '../model/errors.ts';
import { refuseTaken } from './free-name.ts';
import { draftRef, MAIN } from './names.ts';
import { draftFiles, type NewEdition } from './new-edition.ts';
import type { Catalog } from './open.ts';
import { moveRef, readRef } from './refs.ts';
import { type Person, treeOf, writeChanges, writeCommit } from './repository.ts';
import { changesFor } from './tree-changes.ts';

/** Writes a new draft as the first commit on its branch. */
export async function saveDraft(catalog: Catalog, edition: NewEdition, author: Person, message: string): Promise<void> {
  const { repo } = catalog;
  await refuseTaken(catalog, edition.name);
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const commit = await commitDraft(catalog, edition, main === null ? [] : [main], author, message);
  await moveRef(repo.fs, repo.gitdir, draftRef(edition.name), null, commit);
}

/** A draft after one step of work, with what is said about the step. */
export interface DraftStep {
  readonly edition: NewEdition;
  readonly message: string;
  /** Commits that the step joins with the branch, besides the one before it. */
  readonly joins?: readonly string[];
}

/**
 * Writes steps of work on a draft, a commit each, on the branch that it was read from. The branch moves once: all of
 * them are there, or none. Throws Changed where somebody else has written to the branch since.
 */
export async function saveDraftSteps(
  catalog: Catalog,
  branch: { readonly ref: string; readonly tip: string },
  steps: readonly DraftStep[],
  author: Person,
): Promise<string> {
  const { repo } = catalog;
  let tip = branch.tip;
  for (const { edition, message, joins = [] } of steps) {
    tip = await commitDraft(catalog, edition, [tip, ...joins], author, message);
  }
  await moveRef(repo.fs, repo.gitdir, branch.ref, branch.tip, tip);
  return tip;
}

/** Begins somebody's own branch of a draft, at the commit where the draft stands. */
export async function branchDraft(catalog: Catalog, branch: string, at: string): Promise<void> {
  const { repo } = catalog;
  const ref = `refs/heads/${branch}`;
  if ((await readRef(repo.fs, repo.gitdir, ref)) !== null) {
    throw new CatalogError('EditionExists', `There is a branch ${branch} already; choose another name, or work on it.`);
  }
  await moveRef(repo.fs, repo.gitdir, ref, null, at);
}

async function commitDraft(
  { repo }: Catalog,
  edition: NewEdition,
  parents: readonly string[],
  author: Person,
  message: string,
): Promise<string> {
  const base = parents[0] === undefined ? null : await treeOf(repo, parents[0]);
  const { files, folders } = draftFiles(edition);
  const tree = await writeChanges(repo, base, await changesFor(repo, base, files, folders));
  return writeCommit(repo, { tree, parents, message, author });
}
