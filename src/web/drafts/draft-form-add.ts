import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { WrittenOperation } from '../../commands/drafts/draft-operations.ts';
import type { ItemId } from '../../model/item.ts';
import {
  type DraftForm,
  type Field,
  needed,
  type OperationForm,
  refuse,
  said,
  type Typed,
  WHY,
  whySaid,
} from './draft-form.ts';
import { VERIFIED, verifiedIn } from './draft-form-words.ts';

/** What arrives in a draft without an older item behind it: below another item, or at the top. */

export const add: OperationForm = {
  word: 'Add below',
  says: 'A new item stands below this one. No older item stands behind it, so it is told as new.',
  fields: (draft, item) => addFields(draft, item.id),
  operation: (draft, item, typed) => addition(draft, item.id, typed),
};

export const addAtTop: DraftForm = {
  word: 'Add',
  says: 'A new item stands at the top, beside the parts. Below a part or an item it is added from the page of that one.',
  heading: name => `Add at the top of ${name}`,
  fields: draft => addFields(draft, null),
  operation: (draft, typed) => addition(draft, null, typed),
};

const PLAIN = ['text', 'purpose', 'caution'] as const;

function addFields(draft: DeskDraft, under: ItemId | null): Field[] {
  const { installationTypes } = draft.settings;
  const options = installationTypes.map(t => ({ value: t.id, word: t.name }));
  return [
    { name: 'title', label: 'Title', kind: 'line', value: [], required: true },
    { name: 'text', label: 'Text', kind: 'text', rows: 5, value: [] },
    { name: 'purpose', label: 'Purpose', kind: 'text', rows: 2, value: [] },
    { name: 'caution', label: 'Caution', kind: 'text', rows: 2, value: [] },
    VERIFIED,
    ...(options.length < 2
      ? []
      : [{ name: 'types', label: 'Applies to', kind: 'ticks' as const, value: typesAbove(draft, under), options }]),
    {
      name: 'after',
      label: 'Right after which item',
      hint: 'its number; left empty: after all others',
      kind: 'line',
      value: [],
    },
    WHY,
  ];
}

function addition(draft: DeskDraft, under: ItemId | null, typed: Typed): WrittenOperation {
  const title = needed(typed, 'title', 'Give the title.');
  const words = PLAIN.map(field => [field, said(typed, field)] as const).filter(([, text]) => text !== '');
  const verified = verifiedIn(said(typed, 'verified'));
  const after = said(typed, 'after');
  const item = {
    title,
    ...Object.fromEntries(words),
    ...(verified.length > 0 ? { verified } : {}),
    ...typesSaid(draft, under, typed),
  };
  return { op: 'add', item, under, ...(after ? { after } : {}), ...whySaid(typed) };
}

function typesSaid(draft: DeskDraft, under: ItemId | null, typed: Typed): { readonly appliesTo?: string[] } {
  const all = draft.settings.installationTypes.map(t => t.id);
  if (all.length < 2) return {};
  const chosen = all.filter(t => typed.types?.includes(t));
  if (chosen.length === 0) throw refuse('Tick at least one installation type that it applies to.');
  const above = typesAbove(draft, under);
  // What it would inherit it does not say itself, so that it goes on following the item above.
  return chosen.length === above.length && chosen.every(t => above.includes(t)) ? {} : { appliesTo: chosen };
}

const typesAbove = ({ settings, places }: DeskDraft, under: ItemId | null): readonly string[] =>
  under === null ? settings.installationTypes.map(t => t.id) : places.types(under);
