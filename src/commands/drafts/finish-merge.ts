import type { DraftState } from '../../editing/draft-state.ts';
import { mergeDrafts } from '../../editing/merging/merge-drafts.ts';
import type { Side, Takes } from '../../editing/merging/three-way.ts';
import { CatalogError } from '../../model/errors.ts';
import { openMergingClone, writeWorkTree } from '../../store/merging-clone.ts';
import { locateCommit } from '../../store/names.ts';
import { draftFiles } from '../../store/new-edition.ts';
import { readMergeBase } from './merge-base.ts';
import type { MergeReport } from './merge-draft.ts';
import { draftToWrite, readDraftAt } from './read-draft.ts';
import { tellConflict } from './tell-conflict.ts';

/**
 * Finishes a native `git merge` in a clone: the three states are merged by items, and the result stands in the work tree
 * for `git add` and `git commit`. With conflicts nothing is written.
 */
export async function finishMerge(
  folder: string,
  request: { readonly ours?: readonly string[]; readonly theirs?: readonly string[] },
): Promise<MergeReport> {
  const clone = await openMergingClone(folder);
  const at = async (commit: string) => readDraftAt(clone.catalog, await locateCommit(clone.catalog, commit));
  const base = await readMergeBase(clone.catalog, clone.ours, clone.theirs);
  if (base === undefined) {
    throw new CatalogError(
      'BadArgument',
      'The two branches have no commit in common; end the merge with: git merge --abort',
    );
  }
  const [ours, theirs] = [await at(clone.ours), await at(clone.theirs)];
  const sides = { ...base, ours: ours.state, theirs: theirs.state };
  const { draft, conflicts } = mergeDrafts(sides, takesOf(ours.state, request));
  const told = conflicts.map(c => ({ ...c, message: tellConflict(c, ours.state) }));
  if (told.length > 0) return { draft: ours.header.name, into: ours.header.name, merged: false, conflicts: told };
  const { files, folders } = draftFiles(draftToWrite(ours.header, draft));
  await writeWorkTree(clone, new Map(Object.entries(files)), folders);
  return { draft: ours.header.name, into: ours.header.name, merged: true, conflicts: [] };
}

/**
 * Whose state holds, by id. Conflicts are about items, but also about settings and decisions: what is neither an id nor
 * a number is taken as told.
 */
export function takesOf(
  state: DraftState,
  { ours = [], theirs = [] }: { readonly ours?: readonly string[]; readonly theirs?: readonly string[] },
): Takes {
  const known = (name: string) => {
    const numbered = state.items.filter(i => i.number === name);
    return numbered.length === 1 && !state.items.some(i => i.id === name) ? numbered[0]!.id : name;
  };
  return new Map<string, Side>([
    ...ours.map((name): [string, Side] => [known(name), 'ours']),
    ...theirs.map((name): [string, Side] => [known(name), 'theirs']),
  ]);
}
