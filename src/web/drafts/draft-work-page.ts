import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { LoggedStep } from '../../commands/drafts/draft-log.ts';
import { capital, counted, dateWords } from '../../model/said-words.ts';
import { levelName } from '../../model/settings.ts';
import {
  branchesLink,
  deskLink,
  findLink,
  leftLink,
  mergeLink,
  undoLink,
  wholeLink,
  workItemLink,
  workLink,
} from '../links.ts';
import type { FormField } from '../signed-in.ts';
import { calledOf } from './draft-called.ts';
import { DRAFT_FORMS } from './draft-forms.ts';

/** What was done to a draft so far, and the way to its items. */
export interface DraftWorkPage {
  readonly draft: string;
  readonly called: string;
  readonly sentence: string;
  /** Where else to go from here. */
  readonly ways: readonly { readonly word: string; readonly href: string }[];
  readonly findAction: string;
  /** What somebody looked for and did not find; empty at first. */
  readonly sought: string;
  readonly trouble: string;
  readonly done: string;
  readonly parts: readonly {
    readonly number: string;
    readonly title: string;
    readonly href: string;
    readonly size: string;
  }[];
  readonly leftHref: string;
  readonly leftTold: string;
  /** What can be done to the draft as a whole. */
  readonly operations: readonly { readonly word: string; readonly says: string; readonly href: string }[];
  /** What holds edition-wide. */
  readonly decisions: readonly { readonly title: string; readonly told: string; readonly reason: string }[];
  readonly steps: readonly StepShown[];
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  readonly csrf: FormField;
}

export interface StepShown {
  readonly did: string;
  readonly who: string;
  readonly why: string;
  /** `TAKEN BACK` or empty. */
  readonly mark: string;
  /** Empty where it cannot be taken back. */
  readonly undoHref: string;
}

export interface WorkRequest {
  readonly page: number;
  readonly csrf: FormField;
  readonly sought?: string;
  readonly trouble?: string;
  readonly done?: boolean;
}

const A_PAGE = 25;

export function draftWorkPage(draft: DeskDraft, request: WorkRequest): DraftWorkPage {
  const { name, header, places, settings, left, oldName } = draft;
  const { name: of } = header;
  // What opened the draft is no step of work on it.
  const steps = draft.steps.filter(s => s.kind !== 'other');
  const pages = Math.max(1, Math.ceil(steps.length / A_PAGE));
  const page = Math.min(request.page, pages);
  const atPage = (n: number) => `${workLink(name, [['page', String(n)]])}#steps`;
  return {
    draft: name,
    called: calledOf(draft),
    sentence: `${name === of ? '' : branchWords(name, of)}${doneWords(name, oldName, steps)}`,
    ways: name === of ? draftWays(name) : branchWays(name, of),
    findAction: findLink(name),
    sought: request.sought ?? '',
    trouble: request.trouble ?? '',
    done: request.done ? lastDone(draft.steps) : '',
    parts: places.children(null).map(part => ({
      number: part.number,
      title: part.title || capital(levelName(settings, part.level)),
      href: workItemLink(name, part.id),
      size: counted(places.children(part.id).length, 'item'),
    })),
    leftHref: leftLink(name),
    leftTold:
      left.length === 0
        ? ''
        : `${counted(left.length, 'item')} of ${oldName} ${left.length === 1 ? 'has' : 'have'} ended or gone on in others`,
    operations: Object.entries(DRAFT_FORMS)
      .filter(([, { fits }]) => fits?.(draft) ?? true)
      .map(([op, { word, says }]) => ({ word, says, href: wholeLink(name, op) })),
    decisions: draft.decisions.map(d => ({
      title: d.title,
      told: [
        `${d.authority}${d.date ? `, ${dateWords(d.date)}` : ''}`,
        `covers: ${d.scope}`,
        ...(d.governs ? [`governed by: ${d.governs}`] : []),
      ].join('; '),
      reason: d.reason,
    })),
    steps: steps.slice((page - 1) * A_PAGE, page * A_PAGE).map(step => stepShown(name, step)),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    csrf: request.csrf,
  };
}

const branchWords = (name: string, of: string) =>
  `${name} is a branch of the draft ${of}: what is done here does not stand there until it is merged. `;

function doneWords(name: string, oldName: string, steps: readonly LoggedStep[]): string {
  if (steps.length === 0) return `Nothing was done to ${name} yet: it says what ${oldName || 'it began with'} says.`;
  const undone = steps.filter(s => s.undone).length;
  const were = steps.length === 1 ? 'was' : 'were';
  return `${counted(steps.length, 'step')} ${were} done on ${name}${undone > 0 ? `, ${undone} of them taken back since` : ''}.`;
}

const draftWays = (name: string) => [
  { word: `What stops ${name}`, href: deskLink(name) },
  { word: `Branches of ${name}`, href: branchesLink(name) },
];

const branchWays = (name: string, of: string) => [
  { word: `Merge it into ${of}`, href: mergeLink(of, name) },
  { word: `Take in what was done on ${of} since`, href: mergeLink(name, of) },
  { word: `Work on ${of}`, href: workLink(of) },
];

export function stepShown(draft: string, step: LoggedStep): StepShown {
  return {
    did: step.did,
    who: `${step.by}, ${dateWords(step.at.slice(0, 10))}`,
    why: step.why,
    mark: step.undone ? 'taken back' : '',
    undoHref: step.undone || step.kind === 'other' ? '' : undoLink(draft, step.commit),
  };
}

/** The newest step, as it is told to whoever has just done it. */
export function lastDone([newest]: readonly LoggedStep[]): string {
  return newest && newest.kind !== 'other' ? `Done: ${newest.did}.` : '';
}
