import type { DraftState } from '../../editing/draft-state.ts';
import { mergeDrafts } from '../../editing/merging/merge-drafts.ts';
import type { Three } from '../../editing/merging/three-way.ts';
import { mergeBases } from '../../store/draft-log.ts';
import { locateCommit } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readDraftAt } from './read-draft.ts';

/**
 * What two commits of a draft have in common; undefined where that is nothing.
 *
 *   o ── left ──── x ──      Where each took in the other there are two bases, left and right. They are merged first:
 *     ╲       ╲ ╱            with left alone for a base, what x decided against right would pass for untouched, and
 *      ╲      ╱ ╲            the other's decision would win without a word. What they cannot both say is unsettled.
 *       right ──── y ──
 */
export async function readMergeBase(
  catalog: Catalog,
  ours: string,
  theirs: string,
): Promise<Pick<Three<DraftState>, 'base' | 'unsettled'> | undefined> {
  const [first, ...more] = await mergeBases(catalog, ours, theirs);
  if (first === undefined) return undefined;
  const read = async (commit: string) => (await readDraftAt(catalog, await locateCommit(catalog, commit))).state;
  let base = await read(first);
  const unsettled = new Set<string>();
  for (const next of more) {
    const common = await readMergeBase(catalog, first, next);
    if (!common) return undefined;
    const { draft, conflicts } = mergeDrafts({ ...common, ours: base, theirs: await read(next) }, new Map());
    for (const { about } of conflicts) unsettled.add(about);
    base = draft;
  }
  return { base, unsettled };
}
