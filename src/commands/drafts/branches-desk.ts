import { mergeDrafts } from '../../editing/merging/merge-drafts.ts';
import type { Conflict, Takes } from '../../editing/merging/three-way.ts';
import { CatalogError } from '../../model/errors.ts';
import { draftCommits } from '../../store/draft-log.ts';
import { listDraftBranches, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import { remember } from '../remember.ts';
import { branchOf } from './branch-draft.ts';
import { type LoggedStep, stepsUpTo } from './draft-log.ts';
import { type Foreseen, foresee } from './foresee-operation.ts';
import { type MergeRequest, mergeDraft, type PreparedMerge, prepareMerge } from './merge-draft.ts';
import { nameOfBranch } from './read-draft.ts';
import { type ShownConflict, showConflicts } from './show-conflicts.ts';

/** Somebody's own branch of a draft. */
export interface DraftBranch {
  readonly name: string;
  /** Steps that the draft does not have, newest first; empty where all of it was merged. */
  readonly steps: readonly LoggedStep[];
}

export type { Takes };

/** What merging would do. */
export interface MergeForesight {
  /** What the branch is merged into: the draft, or another branch of it. */
  readonly into: string;
  readonly draft: string;
  readonly branch: string;
  /** Both commits that were looked at. */
  readonly seen: NonNullable<MergeRequest['seen']>;
  readonly steps: readonly LoggedStep[];
  /** All conflicts, settled or not. */
  readonly conflicts: readonly ShownConflict[];
  /** Those that still stand: nobody chose a side, or the side that was chosen settles nothing. */
  readonly open: readonly ShownConflict[];
  /** What changes in the draft; absent while a conflict stands. */
  readonly changes?: Foreseen;
}

/** Branches of drafts, for the people who work on them while a viewer runs. */
export interface BranchesDesk {
  /** @param draft a draft, or a branch of one: the branches of its draft are listed */
  list(draft: string): Promise<{ readonly draft: string; readonly branches: readonly DraftBranch[] }>;
  begin(draft: string, name: string): Promise<void>;
  /** Throws BadArgument where nothing is to be merged. */
  look(into: string, branch: string, takes: Takes): Promise<MergeForesight>;
  /** Throws Changed where one of them no longer stands where it was looked at; gives what still stands of conflicts. */
  merge(into: string, branch: string, takes: Takes, seen: MergeForesight['seen'], by: Person): Promise<boolean>;
}

const MOST = 2;
/** A branch with more is listed with its newest. */
const MOST_BRANCHES = 100;

export function branchesDesk(
  ports: Ports,
  reading: Catalog,
  writing: () => Promise<Catalog>,
  turn: <T>(work: () => Promise<T>) => Promise<T>,
): BranchesDesk {
  const lists = remember(MOST, async (key: string): Promise<readonly DraftBranch[]> => {
    const [tip, branches] = JSON.parse(key) as [string, { name: string; tip: string }[]];
    const known = await draftCommits(reading, tip);
    const listed: DraftBranch[] = [];
    for (const { name, tip: at } of branches) listed.push({ name, steps: await stepsUpTo(reading, at, known) });
    return listed;
  });
  return {
    list: async draft => {
      const { name, state } = await locate(reading, draft);
      if (state !== 'draft') {
        throw new CatalogError(
          'BadArgument',
          `Edition ${name} is published and stays as it is; open one of the drafts.`,
        );
      }
      const { commit } = await locate(reading, name);
      const branches = (await listDraftBranches(reading, name)).slice(0, MOST_BRANCHES);
      return { draft: name, branches: await lists(JSON.stringify([commit, branches])) };
    },
    begin: (draft, name) => turn(async () => branchOf(await writing(), name, draft)),
    look: async (into, branch, takes) => {
      const all = await prepareMerge(reading, { into, branch });
      const settled = takes.size === 0 ? all : mergeDrafts(all.sides, takes);
      return foreseenMerge(all, settled, {
        branch,
        steps: await stepsUpTo(reading, all.other.commit, await draftCommits(reading, all.branch.tip)),
      });
    },
    merge: (into, branch, takes, seen, by) =>
      turn(async () => {
        const signed = { ...ports, progress: () => {}, author: { name: by.name, email: by.address } };
        return (await mergeDraft(signed, await writing(), { into, branch, seen, takes })).merged;
      }),
  };
}

function foreseenMerge(
  all: PreparedMerge,
  { draft, conflicts }: Pick<PreparedMerge, 'draft' | 'conflicts'>,
  { branch, steps }: Pick<MergeForesight, 'branch' | 'steps'>,
): MergeForesight {
  const { header, sides } = all;
  // A choice may bring up what only shows once it is made.
  const every: Conflict[] = [...all.conflicts, ...conflicts.filter(c => !all.conflicts.some(a => a.about === c.about))];
  return {
    into: nameOfBranch(all.branch.ref),
    draft: header.name,
    branch,
    seen: { ours: all.branch.tip, theirs: all.other.commit },
    steps,
    conflicts: showConflicts(every, sides),
    open: showConflicts(conflicts, sides),
    ...(conflicts.length === 0 ? { changes: foresee(sides.ours, draft) } : {}),
  };
}
