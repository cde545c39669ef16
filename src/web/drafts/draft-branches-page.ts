import type { DraftBranch } from '../../commands/drafts/branches-desk.ts';
import { counted, dateWords } from '../../model/said-words.ts';
import { branchesLink, mergeLink, workLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';

/** Somebody's own branches of a draft, with what each of them changes. */
export interface BranchesPage {
  readonly draft: string;
  readonly sentence: string;
  readonly workHref: string;
  readonly done: string;
  readonly branches: readonly {
    readonly name: string;
    /** What it has that the draft has not, in one sentence. */
    readonly told: string;
    readonly steps: readonly string[];
    readonly more: string;
    readonly workHref: string;
    /** Empty where nothing is to be merged. */
    readonly mergeHref: string;
  }[];
  readonly action: string;
  readonly csrf: FormField;
  /** The name that somebody gave to a branch that could not be begun. */
  readonly name: string;
  readonly trouble: string;
}

export interface BranchesRequest {
  readonly draft: string;
  readonly branches: readonly DraftBranch[];
  readonly csrf: FormField;
  readonly merged?: string;
  readonly name?: string;
  readonly trouble?: string;
}

const MOST_STEPS = 8;

export function branchesPage({ draft, branches, csrf, merged, name, trouble }: BranchesRequest): BranchesPage {
  const waiting = branches.filter(b => b.steps.length > 0).length;
  return {
    draft,
    sentence:
      branches.length === 0
        ? `${draft} has no branch: everybody works on the draft itself.`
        : waiting === 0
          ? `Everything on the ${counted(branches.length, 'branch', 'branches')} of ${draft} is in the draft.`
          : `${waiting} of ${counted(branches.length, 'branch', 'branches')} of ${draft} ${waiting === 1 ? 'has' : 'have'} work that is not in the draft.`,
    workHref: workLink(draft),
    done: merged ? `Done: ${merged} is merged into ${draft}.` : '',
    branches: branches.map(branch => ({
      name: branch.name,
      told: toldOf(branch, draft),
      steps: branch.steps.slice(0, MOST_STEPS).map(s => s.did),
      more: branch.steps.length > MOST_STEPS ? `and ${branch.steps.length - MOST_STEPS} more` : '',
      workHref: workLink(branch.name),
      mergeHref: branch.steps.length === 0 ? '' : mergeLink(draft, branch.name),
    })),
    action: branchesLink(draft),
    csrf,
    name: name ?? '',
    trouble: trouble ?? '',
  };
}

function toldOf({ steps }: DraftBranch, draft: string): string {
  const [newest] = steps;
  if (!newest) return `Nothing that is not in ${draft}.`;
  const by = [...new Set(steps.map(s => s.by))];
  const who = by.length > 3 ? `${by.slice(0, 3).join(', ')} and others` : by.join(', ');
  return `${counted(steps.length, 'step')} by ${who}, the last on ${dateWords(newest.at.slice(0, 10))}.`;
}
