import type { DeskDraft, LeftItem } from '../commands/draft-desk.ts';
import type { LoggedStep } from '../commands/draft-log.ts';
import { capital, counted, dateWords, inWords } from '../model/said-words.ts';
import { levelName } from '../model/settings.ts';
import { DRAFT_FORMS, OLD_FORMS } from './draft-forms.ts';
import {
  deskLink,
  findLink,
  itemLink,
  leftLink,
  leftOperationLink,
  undoLink,
  wholeLink,
  workItemLink,
  workLink,
} from './links.ts';
import type { FormField } from './people.ts';

/** What was done to a draft so far, and the way to its items. */
export interface DraftWorkPage {
  readonly draft: string;
  readonly sentence: string;
  readonly deskHref: string;
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
  const { header, places, settings, left, oldName } = draft;
  const name = header.name;
  // What opened the draft is no step of work on it.
  const steps = draft.steps.filter(s => s.kind !== 'other');
  const undone = steps.filter(s => s.undone).length;
  const pages = Math.max(1, Math.ceil(steps.length / A_PAGE));
  const page = Math.min(request.page, pages);
  const atPage = (n: number) => `${workLink(name, [['page', String(n)]])}#steps`;
  return {
    draft: name,
    sentence:
      steps.length === 0
        ? `Nothing was done to ${name} yet: it says what ${oldName || 'it began with'} says.`
        : `${counted(steps.length, 'step')} ${steps.length === 1 ? 'was' : 'were'} done on ${name}${undone > 0 ? `, ${undone} of them taken back since` : ''}.`,
    deskHref: deskLink(name),
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

/** Old items that do not stand in the draft under their own id. */
export interface DraftLeftPage {
  readonly draft: string;
  readonly sentence: string;
  readonly workHref: string;
  readonly items: readonly {
    readonly number: string;
    readonly title: string;
    readonly href: string;
    readonly told: string;
    readonly note: string;
    readonly operations: readonly { readonly word: string; readonly href: string }[];
  }[];
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
}

const LEFT_A_PAGE = 50;

export function draftLeftPage({ header, left, oldName }: DeskDraft, asked: number): DraftLeftPage {
  const name = header.name;
  const pages = Math.max(1, Math.ceil(left.length / LEFT_A_PAGE));
  const page = Math.min(asked, pages);
  const ended = left.filter(l => l.heirs.length === 0).length;
  return {
    draft: name,
    sentence:
      left.length === 0
        ? `Every item of ${oldName} stands in ${name}.`
        : `${counted(ended, 'item')} of ${oldName} ended, ${left.length - ended} went on in others.`,
    workHref: workLink(name),
    items: left.slice((page - 1) * LEFT_A_PAGE, page * LEFT_A_PAGE).map(l => ({
      number: l.item.number,
      title: l.item.title,
      href: itemLink(l.item.id, oldName),
      told: toldOf(l),
      note: l.note,
      operations: Object.entries(OLD_FORMS).map(([op, { word }]) => ({
        word,
        href: leftOperationLink(name, l.item.id, op),
      })),
    })),
    pages: {
      ...(page > 1 ? { before: leftLink(name, [['page', String(page - 1)]]) } : {}),
      ...(page < pages ? { after: leftLink(name, [['page', String(page + 1)]]) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
  };
}

function toldOf({ heirs, reason }: LeftItem): string {
  if (heirs.length === 0) return `Ended: ${reason || 'no reason is on record'}.`;
  return `Goes on in ${inWords(heirs.map(h => h.number || h.title))}.`;
}
