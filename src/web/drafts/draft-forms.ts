import type { DraftForm, OperationForm } from './draft-form.ts';
import { add, addAtTop } from './draft-form-add.ts';
import { days } from './draft-form-days.ts';
import { goOn, link, unlink } from './draft-form-lineage.ts';
import { appliesTo, move, restore, withdraw } from './draft-form-places.ts';
import { decide, rename, renumber } from './draft-form-whole.ts';
import { combine, incorporate, retitle, reword, split } from './draft-form-words.ts';

/** What can be done to an item of a draft from its page, by the name that stands in addresses; the commonest first. */
export const ITEM_FORMS: Readonly<Record<string, OperationForm>> = {
  reword,
  retitle,
  move,
  combine,
  split,
  withdraw,
  'applies-to': appliesTo,
  add,
  incorporate,
  link,
  unlink,
};

/** What can be done to an old item that does not stand in the draft under its own id. */
export const OLD_FORMS: Readonly<Record<string, OperationForm>> = { restore, link: goOn };

/** What can be done to a draft as a whole. */
export const DRAFT_FORMS: Readonly<Record<string, DraftForm>> = { add: addAtTop, decide, rename, renumber, days };

/** A form by its name in an address; undefined for a name that only every object has. */
export function formIn<F>(forms: Readonly<Record<string, F>>, name: string): F | undefined {
  return Object.hasOwn(forms, name) ? forms[name] : undefined;
}
