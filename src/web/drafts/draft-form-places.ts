import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { Item } from '../../model/item.ts';
import { daySaid, type Field, type OperationForm, refuse, said, type Typed, WHY, whySaid } from './draft-form.ts';

/** What changes whether and where something stands: withdrawn, moved, restored. */

export const withdraw: OperationForm = {
  word: 'Withdraw',
  says: 'The item ends, with everything below it. The reason is kept with every older item behind it.',
  fields: (draft, item) => [
    reasonField(draft),
    ...typesField(draft, item),
    ...WITHDRAWAL,
    ...decisionField(draft),
    { ...WHY, rows: 3 },
  ],
  operation: (draft, item, typed) => {
    const reason = said(typed, 'reason');
    if (reason === '') throw refuse('Choose the reason.');
    const types = draft.places.types(item.id);
    const ending = types.filter(t => typed.types?.includes(t));
    if (types.length > 1 && ending.length === 0) throw refuse('Say for which installation types it ends.');
    const governs = said(typed, 'governs');
    const governsChecked = daySaid(typed, 'checked', 'the day on which it was read');
    const [pointsTo, decision] = [said(typed, 'points'), said(typed, 'decision')];
    return {
      op: 'withdraw',
      id: item.id,
      reason,
      ...(types.length > 1 && ending.length < types.length ? { types: ending } : {}),
      ...(governs ? { governs } : {}),
      ...(governsChecked ? { governsChecked } : {}),
      ...(pointsTo ? { pointsTo } : {}),
      ...(decision ? { decision } : {}),
      ...whySaid(typed),
    };
  },
};

const WITHDRAWAL: readonly Field[] = [
  { name: 'governs', label: 'What governs instead', hint: 'whose rule, for which place', kind: 'line', value: [] },
  { name: 'checked', label: 'Day on which that was read', kind: 'date', value: [] },
  { name: 'points', label: 'Number of an item to send readers to', hint: 'it is no heir', kind: 'line', value: [] },
];

function reasonField({ settings: { withdrawalReasons } }: DeskDraft): Field {
  const field = { name: 'reason', label: 'Reason', value: [], required: true };
  // A catalog that lists no reasons takes any.
  if (withdrawalReasons.length === 0) return { ...field, kind: 'line' };
  const options = withdrawalReasons.map(r => ({
    value: r.code,
    word: `${r.meaning}${r.governedElsewhere ? ' (say what governs)' : ''}`,
  }));
  return { ...field, kind: 'choice', options: [{ value: '', word: 'choose one' }, ...options] };
}

/** Nothing is asked where no decision is on record. */
function decisionField({ decisions }: DeskDraft): Field[] {
  if (decisions.length === 0) return [];
  const options = [{ value: '', word: 'none' }, ...decisions.map(d => ({ value: d.id, word: d.title }))];
  return [{ name: 'decision', label: 'Decision that it follows from', kind: 'choice', value: [], options }];
}

function typesField({ settings, places }: DeskDraft, item: Item): Field[] {
  const types = places.types(item.id);
  if (types.length < 2) return [];
  const options = settings.installationTypes.filter(t => types.includes(t.id));
  const words = options.map(t => ({ value: t.id, word: t.name }));
  return [{ name: 'types', label: 'Ends for', kind: 'ticks', value: types, options: words }];
}

export const appliesTo: OperationForm = {
  word: 'Apply to',
  says: 'The item, and what stands below it without saying otherwise, applies to other installation types. For a type that it loses it ends, and that needs a reason.',
  fields: (draft, item) => [
    {
      name: 'types',
      label: 'Applies to',
      kind: 'ticks',
      value: draft.places.types(item.id),
      options: draft.settings.installationTypes.map(t => ({ value: t.id, word: t.name })),
    },
    { ...reasonField(draft), label: 'Reason why it ends for others', required: false },
    WHY,
  ],
  operation: ({ settings, places }, item, typed) => {
    const types = settings.installationTypes.map(t => t.id).filter(t => typed.types?.includes(t));
    const before = places.types(item.id);
    if (types.length === 0) throw refuse('It has to apply to something; withdraw it instead, with a reason.');
    if (
      types.join(' ') ===
      settings.installationTypes
        .map(t => t.id)
        .filter(t => before.includes(t))
        .join(' ')
    ) {
      throw refuse('It applies to these already; tick others, or go back to the item.');
    }
    const reason = said(typed, 'reason');
    if (before.some(t => !types.includes(t)) && reason === '')
      throw refuse('Choose the reason why it ends for others.');
    return { op: 'applies-to', id: item.id, types, ...(reason ? { reason } : {}), ...whySaid(typed) };
  },
};

export const move: OperationForm = {
  word: 'Move',
  says: 'The item stands elsewhere, with everything below it. Its words and what it applies to stay.',
  fields: (draft, item) => placeFields(draft, item.parent),
  operation: (_, item, typed) => ({ op: 'move', id: item.id, ...placeSaid(typed), ...whySaid(typed) }),
};

export const restore: OperationForm = {
  word: 'Restore',
  says: 'The item comes back under its own id, with the words that it had. What stood below it is restored one by one.',
  fields: (draft, item) => placeFields(draft, draft.places.get(item.parent ?? '') ? item.parent : null),
  operation: (_, item, typed) => ({ op: 'restore', from: item.id, ...placeSaid(typed), ...whySaid(typed) }),
};

function placeFields({ places }: DeskDraft, parent: string | null): Field[] {
  const above = parent === null ? undefined : places.get(parent);
  return [
    {
      name: 'under',
      label: 'Under which item',
      hint: 'its number; left empty: at the top',
      kind: 'line',
      value: above ? [above.number || above.id] : [],
    },
    {
      name: 'where',
      label: 'Where there',
      kind: 'choice',
      value: ['last'],
      options: [
        { value: 'last', word: 'after all others' },
        { value: 'first', word: 'before all others' },
        { value: 'after', word: 'right after the item named below' },
      ],
    },
    { name: 'after', label: 'Right after which item', hint: 'its number', kind: 'line', value: [] },
    WHY,
  ];
}

function placeSaid(typed: Typed): { readonly under: string | null; readonly after?: string | null } {
  const [under, where, after] = [said(typed, 'under') || null, said(typed, 'where'), said(typed, 'after')];
  if (where === 'after' && after === '') throw refuse('Name the item after which it shall stand.');
  if (where !== 'after' && after !== '') {
    throw refuse(
      `${after} is named, but "${where === 'first' ? 'before' : 'after'} all others" is chosen; settle for one.`,
    );
  }
  return { under, ...(where === 'first' ? { after: null } : after === '' ? {} : { after }) };
}
