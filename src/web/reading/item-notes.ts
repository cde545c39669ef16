import type { NotesDesk, ToldNote } from '../../commands/intake/notes-desk.ts';
import type { Person } from '../../commands/people.ts';
import { INTAKE_KINDS } from '../../model/intake.ts';
import type { ItemId } from '../../model/item.ts';
import { capital, counted, dateWords } from '../../model/said-words.ts';
import { noteLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';

/** What people with a name told about an item, and where they tell more. A reader is shown where to sign in. */
export interface ItemNotes {
  readonly signIn: string;
  readonly sentence: string;
  readonly notes: readonly { readonly head: string; readonly text: string }[];
  readonly action: string;
  readonly csrf?: FormField;
  readonly kinds: readonly { readonly value: string; readonly word: string; readonly chosen: boolean }[];
  readonly causes: readonly string[];
  readonly typed: ToldNote;
  readonly done: boolean;
  readonly trouble: string;
}

export interface NotesRequest {
  readonly edition: string;
  readonly item: ItemId;
  readonly person: Person | undefined;
  readonly csrf: FormField | undefined;
  readonly signIn: string;
  readonly done: boolean;
  readonly refused?: (ToldNote & { readonly trouble: string }) | undefined;
}

const MOST_NOTES = 20;

export async function itemNotes(desk: NotesDesk, request: NotesRequest): Promise<ItemNotes> {
  const { edition, item, person, csrf, signIn, done, refused } = request;
  // What was told may name people and places: it is for those who have a name here themselves.
  const { notes, causes } = person ? await desk.about(item) : { notes: [], causes: [] };
  const typed = refused ?? { kind: 'site comment', cause: '', text: '' };
  return {
    signIn,
    sentence: person
      ? notes.length === 0
        ? 'Nothing was told about it yet.'
        : `${counted(notes.length, 'note')}.`
      : '',
    notes: notes.slice(0, MOST_NOTES).map(n => ({
      head: `${dateWords(n.date)}, ${n.from}, ${n.kind} on ${n.edition} ${n.number}: ${n.cause}`,
      text: n.text,
    })),
    action: noteLink(item, edition),
    ...(csrf ? { csrf } : {}),
    kinds: INTAKE_KINDS.map(value => ({ value, word: capital(value), chosen: value === typed.kind })),
    causes,
    typed,
    done,
    trouble: refused?.trouble ?? '',
  };
}
