import { compareItems, type FieldText } from '../../commands/drafts/compare-items.ts';
import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { Item } from '../../model/item.ts';
import { MOMENT_WORDS } from '../../model/said-words.ts';
import { levelName, typeName } from '../../model/settings.ts';
import { commentsLink, itemLink, operationLink, workItemLink, workLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';
import { calledOf } from './draft-called.ts';
import { ITEM_FORMS } from './draft-forms.ts';
import { lastDone, type StepShown, stepShown } from './draft-work-page.ts';

/** An item of a draft: what it says, what it was, and what can be done to it. */
export interface DraftItemPage {
  readonly draft: string;
  readonly called: string;
  readonly number: string;
  readonly title: string;
  readonly kind: string;
  /** What it is beside the older edition, in one sentence. */
  readonly sentence: string;
  readonly above: readonly { readonly word: string; readonly href: string }[];
  readonly done: string;
  /** The step that was just done, so that it can be taken back at once. */
  readonly last?: StepShown;
  readonly csrf: FormField;
  readonly operations: readonly { readonly word: string; readonly says: string; readonly href: string }[];
  readonly text: string;
  readonly caution: string;
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly commentsHref: string;
  readonly below: readonly { readonly number: string; readonly title: string; readonly href: string }[];
  readonly oldName: string;
  readonly sources: readonly {
    readonly number: string;
    readonly title: string;
    readonly href: string;
    /** What differs from it; empty where both say the same. */
    readonly fields: readonly FieldText[];
  }[];
  readonly more: number;
}

const MOST_SOURCES = 6;

export function draftItemPage(draft: DeskDraft, item: Item, csrf: FormField, done: boolean): DraftItemPage {
  const { name, places, old, oldName, settings } = draft;
  const sources = draft.sources(item.id);
  const types = (of: typeof places, id: string) => of.types(id).map(type => typeName(settings, type));
  const [newest] = draft.steps;
  const shown = sources.slice(0, MOST_SOURCES).map(source => ({
    number: source.number,
    title: source.title,
    href: itemLink(source.id, oldName),
    fields: compareItems(source, item, { from: types(old, source.id), to: types(places, item.id) }).filter(
      f => f.changed,
    ),
  }));
  return {
    draft: name,
    called: calledOf(draft),
    number: item.number,
    title: item.title,
    kind: item.kind ?? levelName(settings, item.level),
    sentence: sentenceOf(item, shown, sources.length, oldName),
    above: [
      { word: calledOf(draft), href: workLink(name) },
      ...[...places.ancestors(item.id)]
        .reverse()
        .map(e => ({ word: `${e.number} ${e.title}`.trim(), href: workItemLink(name, e.id) })),
    ],
    done: done ? lastDone(draft.steps) : '',
    ...(done && newest ? { last: stepShown(name, newest) } : {}),
    csrf,
    operations: Object.entries(ITEM_FORMS)
      .filter(([, { fits }]) => fits?.(draft, item) ?? true)
      .map(([op, { word, says }]) => ({ word, says, href: operationLink(name, item.id, op) })),
    text: item.text ?? '',
    caution: item.caution ?? '',
    facts: factsOf(item, types(places, item.id)),
    commentsHref: `${commentsLink(draft.header.name, [
      ['state', 'all'],
      ['item', item.id],
    ])}#list`,
    below: places.children(item.id).map(e => ({ number: e.number, title: e.title, href: workItemLink(name, e.id) })),
    oldName,
    sources: shown,
    more: Math.max(0, sources.length - MOST_SOURCES),
  };
}

function sentenceOf(item: Item, [only]: DraftItemPage['sources'], sources: number, oldName: string): string {
  if (!only) return oldName ? `It is new: nothing in ${oldName} stands behind it.` : 'It is new.';
  if (sources > 1) return `It stands for ${sources} items of ${oldName}.`;
  const was = only.number || only.title;
  const moved = only.number === item.number ? '' : `It was ${was} in ${oldName}. `;
  if (only.fields.length === 0) return `${moved}It says what ${was} of ${oldName} says.`;
  return `${moved}It says something else than ${was} of ${oldName}.`;
}

function factsOf(item: Item, types: readonly string[]): DraftItemPage['facts'] {
  const verified = (item.verified ?? []).map(v => `${MOMENT_WORDS[v.when]}${v.how ? `: ${v.how}` : ''}`);
  const rows: readonly (readonly [string, string])[] = [
    ['Purpose', item.purpose ?? ''],
    ['Outcome', item.outcome ?? ''],
    ['Applies to', types.join(', ')],
    ['Verified', verified.join('; ')],
    ['References', (item.references ?? []).join('; ')],
    ['Id', item.id],
  ];
  return rows.filter(([, text]) => text !== '').map(([label, text]) => ({ label, text }));
}
