import type { AppliesTo, Duty, Fate, Marks, Wording } from './crosswalk.ts';
import type { VerificationMoment } from './item.ts';

/** A mark as the pages print it: its code in addresses, its word in small capitals, and what it means. */
export interface MarkWord {
  readonly code: string;
  readonly word: string;
  readonly meaning: string;
}

interface Marked {
  readonly renumbered: boolean | undefined;
  readonly moved: boolean | undefined;
  readonly wording: Wording | '';
  readonly duty: Duty | '';
  readonly appliesTo: AppliesTo | '';
}

const MARKS: readonly (MarkWord & { readonly of: (m: Marked) => boolean })[] = [
  { code: 'renumbered', word: 'renumbered', meaning: 'it has another number', of: m => m.renumbered === true },
  { code: 'moved', word: 'moved', meaning: 'it stands under another heading', of: m => m.moved === true },
  { code: 'reworded', word: 'reworded', meaning: 'its words changed', of: m => m.wording === 'substantive' },
  { code: 'edited', word: 'edited', meaning: 'only its spelling changed', of: m => m.wording === 'editorial' },
  { code: 'stricter', word: 'stricter', meaning: 'it asks more than before', of: m => m.duty === 'stricter' },
  { code: 'relaxed', word: 'relaxed', meaning: 'it asks less than before', of: m => m.duty === 'relaxed' },
  { code: 'mixed', word: 'mixed', meaning: 'it asks more in some ways, less in others', of: m => m.duty === 'mixed' },
  {
    code: 'unclear',
    word: 'read both',
    meaning: 'whether it asks more or less has to be read',
    of: m => m.duty === 'unclear',
  },
  { code: 'wider', word: 'wider', meaning: 'it applies to more installation types', of: m => m.appliesTo === 'wider' },
  {
    code: 'narrower',
    word: 'narrower',
    meaning: 'it applies to fewer installation types',
    of: m => m.appliesTo === 'narrower',
  },
  {
    code: 'shifted',
    word: 'shifted',
    meaning: 'it applies to other installation types',
    of: m => m.appliesTo === 'shifted',
  },
  { code: 'unchanged', word: 'unchanged', meaning: 'same number, place, words and duty', of: isUnchanged },
];

function isUnchanged(m: Marked): boolean {
  return (
    m.renumbered === false && m.moved === false && m.wording === 'same' && m.duty === 'same' && m.appliesTo === 'same'
  );
}

export const MARK_WORDS: readonly MarkWord[] = MARKS.map(({ code, word, meaning }) => ({ code, word, meaning }));

/** The marks of a link; none for a withdrawal or an arrival. */
export function marksIn(marks: Marked): MarkWord[] {
  return MARKS.filter(m => m.of(marks));
}

/** What a fate means, for people who meet the word for the first time. */
export const FATE_MEANINGS: Readonly<Record<Fate, string>> = {
  kept: 'one item, one heir',
  merged: 'several items became one',
  split: 'one item became several',
  recombined: 'several items became several others',
  withdrawn: 'no longer in force, with a reason',
  new: 'nothing came before it',
  unaccounted: 'no record says what became of it',
};

export const MOMENT_WORDS: Readonly<Record<VerificationMoment, string>> = {
  'before-covering': 'Before covering',
  'at-completion': 'At completion',
  'by-document': 'By document',
};

const DUTY_WORDS: Readonly<Record<Duty | 'ends', string>> = {
  same: 'unchanged',
  stricter: 'stricter',
  relaxed: 'relaxed',
  mixed: 'stricter in some ways, relaxed in others',
  unclear: 'reworded, read both texts',
  ends: 'no longer covered',
};

/** The duty of a link for each installation type, types of one duty together: `stricter for terrace row`. */
export function dutySentence(marks: Marks, nameOf: (type: string) => string): string {
  const groups = new Map<Duty | 'ends', string[]>();
  for (const { type, duty } of marks.dutyByType) groups.set(duty, [...(groups.get(duty) ?? []), nameOf(type)]);
  if (groups.size === 0) return `${capital(DUTY_WORDS[marks.duty])}.`;
  // One word for all of them; what ends is told with its types, since others may never have been meant.
  if (groups.size === 1 && !groups.has('ends')) return `${capital(DUTY_WORDS[[...groups.keys()][0]!])}.`;
  return `${capital([...groups].map(([duty, types]) => `${DUTY_WORDS[duty]} for ${inWords(types)}`).join('; '))}.`;
}

/** `a`, `a and b`, `a, b and c`. */
export function inWords(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

export const capital = (text: string) => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

export const sentence = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`);

export { counted } from './counted.ts';

/** Made once: a date of a page would cost a millisecond otherwise. */
const CALENDAR = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** A calendar date as people write it: 1 July 2024. */
export function dateWords(date: string): string {
  const at = new Date(`${date}T00:00:00Z`);
  if (Number.isNaN(at.getTime())) return date;
  return CALENDAR.format(at);
}
