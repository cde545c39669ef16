import type { OperationForm } from './draft-form.ts';
import { appliesTo, move, restore, withdraw } from './draft-form-places.ts';
import { add, combine, retitle, reword, split } from './draft-form-words.ts';

/** What can be done to an item of a draft from its page, by the name that stands in addresses; the commonest first. */
export const ITEM_FORMS = {
  reword,
  retitle,
  move,
  combine,
  split,
  withdraw,
  'applies-to': appliesTo,
  add,
} satisfies Record<string, OperationForm>;

/** What can be done to an old item that does not stand in the draft. */
export const RESTORE = restore;

export function itemForm(name: string): OperationForm | undefined {
  return Object.hasOwn(ITEM_FORMS, name) ? ITEM_FORMS[name as keyof typeof ITEM_FORMS] : undefined;
}
