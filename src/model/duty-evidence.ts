import type { Duty, Marks } from './crosswalk.ts';
import type { TypeId } from './item.ts';

/** One thing that makes a duty stricter or relaxes it, with the words of both texts; `` where a text has none. */
export interface Evidence {
  readonly direction: Duty;
  /** What it is: "condition added". */
  readonly what: string;
  readonly from: string;
  readonly to: string;
}

/** `condition added: "if it is wet"` · `value changed: "at least 100 mm" → "at least 150 mm"` */
export function tellEvidence({ what, from, to }: Evidence): string {
  if (from === '' && to === '') return what;
  if (from === '') return `${what}: "${to}"`;
  return to === '' ? `${what}: "${from}"` : `${what}: "${from}" → "${to}"`;
}

/** Each piece of evidence of a link once, whatever types it holds for; or those of one type. */
export function evidenceIn(marks: Pick<Marks, 'evidence'>, type?: TypeId): Evidence[] {
  const meant = marks.evidence.filter(e => type === undefined || e.types.length === 0 || e.types.includes(type));
  return [...new Map(meant.map(e => [tellEvidence(e), e])).values()];
}

/** So many are told in a sentence; a text written anew has dozens. */
const MOST_TOLD = 3;
const LONGEST = 90;

/**
 * `condition added: "if it is wet" (relaxed)` for a sentence among others: the first three, long phrases cut in their
 * middle. Evidence without a direction has no brackets.
 */
export function tellInShort(evidence: readonly Evidence[]): string {
  const told = evidence.slice(0, MOST_TOLD).map(e => {
    const short = { ...e, from: shortened(e.from), to: shortened(e.to) };
    const told = tellEvidence(short);
    return e.direction === 'unclear' ? told : `${told} (${DIRECTIONS[e.direction]})`;
  });
  const more = evidence.length - told.length;
  return [...told, ...(more > 0 ? [`and ${more} more`] : [])].join('; ');
}

export const DIRECTIONS: Readonly<Record<Duty, string>> = {
  same: 'the same',
  stricter: 'stricter',
  relaxed: 'relaxed',
  mixed: 'both ways',
  unclear: 'to be read',
};

function shortened(phrase: string): string {
  if (phrase.length <= LONGEST) return phrase;
  const half = Math.floor(LONGEST / 2);
  const [head, tail] = [phrase.slice(0, half), phrase.slice(-half)];
  return `${head.replace(/\s+\S*$/, '')} … ${tail.replace(/^\S*\s+/, '')}`;
}
