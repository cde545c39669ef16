import type { DraftState } from '../../editing/draft-state.ts';
import { mergeDrafts } from '../../editing/merging/merge-drafts.ts';
import type { Conflict, Takes, Three } from '../../editing/merging/three-way.ts';
import { CatalogError } from '../../model/errors.ts';
import { isJoined, type Located, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { saveDraftSteps } from '../../store/write-draft.ts';
import { type Ports, person } from '../ports/ports.ts';
import { MERGES } from './draft-log.ts';
import { takesOf } from './finish-merge.ts';
import { readMergeBase } from './merge-base.ts';
import { draftToWrite, nameOfBranch, type ReadDraft, readDraft, readDraftAt } from './read-draft.ts';
import { tellConflict } from './tell-conflict.ts';

export interface MergeRequest {
  /** The branch whose work is taken in. */
  readonly branch: string;
  /** The draft, or a branch of it, that takes it in; absent = the only draft. */
  readonly into?: string;
  /** Items (by id, or by number of the draft) whose state on that side holds. */
  readonly ours?: readonly string[];
  readonly theirs?: readonly string[];
  /** The same by exactly what conflicts are about. */
  readonly takes?: Takes;
  /** The commits of both that whoever asks has seen; absent: whatever stands there. Throws Changed where somebody was faster. */
  readonly seen?: { readonly ours: string; readonly theirs: string };
}

export interface MergeReport {
  readonly draft: string;
  /** The draft, or the branch of it, that took the work in. */
  readonly into: string;
  readonly merged: boolean;
  /** What both changed and cannot both stand; empty where the merge is done. */
  readonly conflicts: readonly (Conflict & { readonly message: string })[];
}

/**
 * Takes somebody's work on a branch into the draft, item by item. With conflicts nothing is written: the report lists
 * them, and the next attempt says whose state holds.
 */
export async function mergeDraft(ports: Ports, catalog: Catalog, request: MergeRequest): Promise<MergeReport> {
  const { header, branch, other, sides, draft, conflicts } = await prepareMerge(catalog, request);
  const told = conflicts.map(c => ({ ...c, message: tellConflict(c, sides.ours) }));
  const into = nameOfBranch(branch.ref);
  if (told.length > 0) return { draft: header.name, into, merged: false, conflicts: told };
  const message = `Merge ${request.branch} into ${tellInto({ draft: header.name, into })}\n\n${MERGES}${other.commit}`;
  await saveDraftSteps(
    catalog,
    branch,
    [{ edition: draftToWrite(header, draft), message, joins: [other.commit] }],
    person(ports),
  );
  return { draft: header.name, into, merged: true, conflicts: [] };
}

/** `the draft 2030`, or `roofs, a branch of the draft 2030`. */
export const tellInto = ({ draft, into }: Pick<MergeReport, 'draft' | 'into'>) =>
  into === draft ? `the draft ${draft}` : `${into}, a branch of the draft ${draft}`;

/** A merge as it would be done; nothing is written. */
export interface PreparedMerge extends Omit<ReadDraft, 'state'> {
  readonly other: Located;
  readonly sides: Three<DraftState>;
  readonly draft: DraftState;
  readonly conflicts: readonly Conflict[];
}

/** Merges in memory, for whoever writes it and for whoever only looks. Throws Changed where `seen` is not what stands there. */
export async function prepareMerge(catalog: Catalog, request: MergeRequest): Promise<PreparedMerge> {
  const { header, branch, state } = await readDraft(catalog, request.into);
  const other = await locate(catalog, request.branch);
  if (other.state !== 'draft' || other.name !== header.name) {
    throw new CatalogError(
      'BadArgument',
      `${request.branch} is not a branch of the draft ${header.name}; begin one with: fishplate draft branch NAME`,
    );
  }
  if (request.seen && (request.seen.ours !== branch.tip || request.seen.theirs !== other.commit)) {
    throw new CatalogError('Changed', `Somebody has worked on ${header.name} since; look at it again.`);
  }
  if (await isJoined(catalog, other.commit, branch.tip)) {
    throw new CatalogError(
      'BadArgument',
      `Everything on ${request.branch} is in ${nameOfBranch(branch.ref)} already; nothing is to be merged.`,
    );
  }
  const base = await readMergeBase(catalog, branch.tip, other.commit);
  if (base === undefined) {
    throw new CatalogError(
      'BadArgument',
      `${request.branch} and ${tellInto({ draft: header.name, into: nameOfBranch(branch.ref) })} have no commit in common; begin the branch from the draft.`,
    );
  }
  const sides = {
    ...base,
    ours: state,
    theirs: (await readDraftAt(catalog, other)).state,
  };
  return {
    header,
    branch,
    other,
    sides,
    ...mergeDrafts(sides, new Map([...takesOf(state, request), ...(request.takes ?? [])])),
  };
}
