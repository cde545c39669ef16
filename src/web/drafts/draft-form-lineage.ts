import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { Extent } from '../../model/crosswalk.ts';
import type { Item } from '../../model/item.ts';
import { type Field, needed, type OperationForm, refuse, said, type Typed, WHY, whySaid } from './draft-form.ts';

/** What changes where older items go on, and no text. */

export const link: OperationForm = {
  word: 'Link',
  says: 'An older item goes on in this one as well. No text changes: only what is said of where it came from.',
  fits: ({ old }) => old.all.length > 0,
  fields: draft => [
    {
      name: 'from',
      label: 'Which older item',
      hint: `its number in ${draft.oldName}`,
      kind: 'line',
      value: [],
      required: true,
    },
    ...extentFields('How much of the older item goes on here', 'How much of this item that is'),
    WHY,
  ],
  operation: (draft, item, typed) => ({
    op: 'link',
    from: needed(typed, 'from', `Name the item of ${draft.oldName} by its number.`),
    to: item.id,
    ...extentsSaid(typed),
    ...whySaid(typed),
  }),
};

export const unlink: OperationForm = {
  word: 'Unlink',
  says: 'An older item does not go on in this one. Where it goes on nowhere else it has to be withdrawn instead.',
  fits: (draft, item) => draft.sources(item.id).length > 0,
  fields: (draft, item) => [
    {
      name: 'from',
      label: `Which item of ${draft.oldName}`,
      kind: 'choice',
      value: [],
      required: true,
      options: [
        { value: '', word: 'choose one' },
        ...draft.sources(item.id).map(s => ({ value: s.id, word: titled(s) })),
      ],
    },
    WHY,
  ],
  operation: (_, item, typed) => ({
    op: 'unlink',
    from: needed(typed, 'from', 'Choose the older item.'),
    to: item.id,
    ...whySaid(typed),
  }),
};

/** The same link, from the side of an older item that does not stand in the draft. */
export const goOn: OperationForm = {
  word: 'Link',
  says: 'The older item goes on in an item of the draft. Where it had ended, it has not ended any more.',
  fields: () => [
    { name: 'to', label: 'In which item', hint: 'its number in the draft', kind: 'line', value: [], required: true },
    ...extentFields('How much of the older item goes on there', 'How much of that item it is'),
    WHY,
  ],
  operation: (_: DeskDraft, old: Item, typed) => ({
    op: 'link',
    from: old.id,
    to: needed(typed, 'to', 'Name the item of the draft by its number.'),
    ...extentsSaid(typed),
    ...whySaid(typed),
  }),
};

const EXTENT_WORDS: Readonly<Record<Extent, string>> = {
  unknown: 'nobody said',
  all: 'all of it',
  part: 'a part of it',
};

function extentFields(from: string, to: string): Field[] {
  const options = Object.entries(EXTENT_WORDS).map(([value, word]) => ({ value, word }));
  const choice = { kind: 'choice', value: ['unknown'], options } as const;
  return [
    { name: 'fromExtent', label: from, ...choice },
    { name: 'toExtent', label: to, ...choice },
  ];
}

function extentsSaid(typed: Typed): { readonly fromExtent: Extent; readonly toExtent: Extent } {
  return { fromExtent: extentSaid(said(typed, 'fromExtent')), toExtent: extentSaid(said(typed, 'toExtent')) };
}

function extentSaid(value: string): Extent {
  if (value === 'all' || value === 'part' || value === 'unknown') return value;
  throw refuse('Choose how much of it: all, a part, or that nobody said.');
}

const titled = ({ number, title, id }: Item) => `${number} ${title}`.trim() || id;
