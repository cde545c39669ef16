import { mergeDrafts } from '../../editing/merging/merge-drafts.ts';
import type { Conflict, Takes } from '../../editing/merging/three-way.ts';
import { CatalogError } from '../../model/errors.ts';
import { draftLog } from '../../store/draft-log.ts';
import { locateCommit } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { saveDraftSteps } from '../../store/write-draft.ts';
import { type Ports, person } from '../ports/ports.ts';
import { type LoggedStep, stepsUpTo, UNDOES } from './draft-log.ts';
import { draftToWrite, readDraft, readDraftAt } from './read-draft.ts';
import { tellConflict } from './tell-conflict.ts';

/**
 * Takes a step of work on a draft back, by a step of its own: the last one that still stands, or any that is named.
 * Work that was done since stays; where it rests on what would go, nothing is undone and the sentence says on what.
 */
export async function undoOperation(
  ports: Ports,
  catalog: Catalog,
  request: { readonly draft?: string; readonly commit?: string },
): Promise<{ readonly draft: string; readonly undone: string }> {
  const { header, branch, state } = await readDraft(catalog, request.draft);
  const step = stepToUndo(await stepsUpTo(catalog, branch.tip), request.commit);
  const commit = (await draftLog(catalog, step.commit))[0]!;
  const [before] = commit.parents;
  const base = await readDraftAt(catalog, await locateCommit(catalog, commit.oid));
  const theirs = await readDraftAt(catalog, await locateCommit(catalog, before!));
  const sides = { base: base.state, ours: state, theirs: theirs.state };
  const { draft, conflicts } = mergeDrafts(sides, new Map() as Takes);
  if (conflicts.length > 0) throw restsOn(step, conflicts, tellConflict(conflicts[0]!, state));
  const message = `Undo: ${step.did}\n\n${UNDOES}${step.commit}`;
  await saveDraftSteps(catalog, branch, [{ edition: draftToWrite(header, draft), message }], person(ports));
  return { draft: header.name, undone: step.did };
}

function stepToUndo(steps: readonly LoggedStep[], commit: string | undefined): LoggedStep {
  if (commit === undefined) {
    const last = steps.find(s => s.kind !== 'undo' && s.kind !== 'other' && !s.undone);
    if (last) return last;
    throw new CatalogError('BadArgument', 'Nothing has been done to the draft that is not undone already.');
  }
  const found = steps.filter(s => commit.length >= 4 && s.commit.startsWith(commit));
  if (found.length === 1 && !found[0]!.undone && found[0]!.kind !== 'other') return found[0]!;
  throw new CatalogError(
    'BadArgument',
    found[0]?.undone
      ? `${commit} is undone already; see what stands with: fishplate draft log`
      : `${commit} is no step of work on this draft; copy one from: fishplate draft log`,
  );
}

function restsOn(step: LoggedStep, conflicts: readonly Conflict[], first: string): CatalogError {
  return new CatalogError(
    'BadArgument',
    `"${step.did}" cannot be undone by itself, since later work rests on it: ${first} Undo the later work first.`,
    { conflicts },
  );
}
