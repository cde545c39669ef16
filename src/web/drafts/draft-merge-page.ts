import type { MergeForesight, Takes } from '../../commands/drafts/branches-desk.ts';
import type { ShownConflict } from '../../commands/drafts/show-conflicts.ts';
import { counted } from '../../model/said-words.ts';
import { branchesLink, mergeLink, workLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';
import { type ChangesShown, changesShown } from './draft-foreseen.ts';

/** What merging a branch would do; before that, what both changed, each with a choice of whose state holds. */
export interface DraftMergePage {
  /** What the branch is merged into. */
  readonly into: string;
  readonly branch: string;
  readonly sentence: string;
  readonly ways: readonly { readonly word: string; readonly href: string }[];
  readonly action: string;
  readonly csrf: FormField;
  readonly trouble: string;
  readonly anew: boolean;
  readonly steps: readonly string[];
  readonly more: string;
  readonly conflicts: readonly (ShownConflict & {
    /** Name of the field that holds the choice. */
    readonly field: string;
    readonly ours: string;
    readonly theirs: string;
    readonly taken: '' | 'ours' | 'theirs';
    /** A side was chosen, and it settles nothing. */
    readonly stuck: boolean;
  })[];
  /** Conflicts that this page has no room for. */
  readonly waiting: string;
  /** Choices that do not stand on this page as buttons. */
  readonly kept: string;
  /** Both commits that were looked at. */
  readonly seen: string;
  /** Absent while a conflict stands. */
  readonly foreseen?: ChangesShown;
}

export interface MergeRequest {
  readonly takes: Takes;
  readonly csrf: FormField;
  /** The conflicts are asked for, though all may be settled. */
  readonly change?: boolean;
  /** Somebody pressed on before everything was settled. */
  readonly pressed?: boolean;
  readonly anew?: boolean;
}

const MOST_STEPS = 12;
const MOST_CONFLICTS = 30;

export function draftMergePage(found: MergeForesight, request: MergeRequest): DraftMergePage {
  const { into, branch, draft, steps, conflicts, open, changes, seen } = found;
  const { takes, csrf, change = false, pressed = false, anew = false } = request;
  const still = new Set(open.map(c => c.about));
  const asked = change || !changes;
  const listed = !asked ? [] : change || open.length === 0 ? conflicts : open;
  const shown = listed.slice(0, MOST_CONFLICTS);
  const onPage = new Set(shown.map(c => c.about));
  return {
    into,
    branch,
    sentence: sentenceOf(found, asked),
    ways: [
      ...(into === draft ? [{ word: `Branches of ${draft}`, href: branchesLink(draft) }] : []),
      { word: `Work on ${branch}`, href: workLink(branch) },
      { word: `Work on ${into}`, href: workLink(into) },
    ],
    action: mergeLink(into, branch),
    csrf,
    trouble:
      pressed && open.length > 0
        ? `${counted(open.length, 'conflict')} still ${open.length === 1 ? 'needs' : 'need'} a choice that settles it. Nothing was written.`
        : '',
    anew,
    steps: steps.slice(0, MOST_STEPS).map(s => s.did),
    more: steps.length > MOST_STEPS ? `and ${steps.length - MOST_STEPS} more` : '',
    conflicts: shown.map((conflict, at) => ({
      ...conflict,
      field: `c${at}`,
      ours: `ours:${conflict.about}`,
      theirs: `theirs:${conflict.about}`,
      taken: takes.get(conflict.about) ?? '',
      stuck: takes.has(conflict.about) && still.has(conflict.about),
    })),
    waiting:
      listed.length > shown.length
        ? `${counted(listed.length - shown.length, 'conflict')} more ${listed.length - shown.length === 1 ? 'follows' : 'follow'} when these are settled.`
        : '',
    kept: [...takes]
      .filter(([about]) => !onPage.has(about))
      .map(([about, side]) => `${side}:${about}`)
      .join('\n'),
    seen: `${seen.ours} ${seen.theirs}`,
    ...(changes && !asked ? { foreseen: changesShown(changes) } : {}),
  };
}

function sentenceOf({ into, branch, conflicts, open }: MergeForesight, asked: boolean): string {
  if (!asked) {
    return conflicts.length === 0
      ? `${branch} can be merged into ${into}: nothing was changed by both. Nothing is done yet.`
      : `${branch} can be merged into ${into}: every conflict is settled. Nothing is done yet.`;
  }
  const n = open.length === 0 ? conflicts.length : open.length;
  return `${counted(n, 'thing')} ${n === 1 ? 'was' : 'were'} changed on ${branch} and on ${into} in ways that cannot both stand. Choose for each which holds.`;
}

const LONGEST = 60_000;

/** The choices that a form of this page sends. */
export function takesIn(body: Readonly<Record<string, unknown>>): Takes {
  const takes = new Map<string, 'ours' | 'theirs'>();
  const take = (text: string) => {
    const [, side, about] = /^(ours|theirs):(.+)$/s.exec(text) ?? [];
    if (side !== undefined && about !== undefined) takes.set(about, side as 'ours' | 'theirs');
  };
  const { kept } = body;
  if (typeof kept === 'string') for (const line of kept.slice(0, LONGEST).split(/\r?\n/)) take(line);
  for (let at = 0; at < MOST_CONFLICTS; at++) {
    const value = Object.hasOwn(body, `c${at}`) ? body[`c${at}`] : undefined;
    if (typeof value === 'string') take(value);
  }
  return takes;
}
