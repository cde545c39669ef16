import type { DeskDraft, LeftItem } from '../../commands/drafts/draft-desk.ts';
import { counted, inWords } from '../../model/said-words.ts';
import { itemLink, leftLink, leftOperationLink, workLink } from '../links.ts';
import { calledOf } from './draft-called.ts';
import { OLD_FORMS } from './draft-forms.ts';

/** Old items that do not stand in the draft under their own id. */
export interface DraftLeftPage {
  readonly draft: string;
  readonly called: string;
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

export function draftLeftPage(draft: DeskDraft, asked: number): DraftLeftPage {
  const { name, left, oldName } = draft;
  const pages = Math.max(1, Math.ceil(left.length / LEFT_A_PAGE));
  const page = Math.min(asked, pages);
  const ended = left.filter(l => l.heirs.length === 0).length;
  return {
    draft: name,
    called: calledOf(draft),
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
