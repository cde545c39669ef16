import type { Duty } from '../model/crosswalk.ts';

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

/** The duty that single pieces of evidence add up to; undefined without any. */
export function dutyOfEvidence(evidence: readonly Evidence[]): Duty | undefined {
  const has = (duty: Duty) => evidence.some(e => e.direction === duty);
  if (has('unclear')) return 'unclear';
  if (has('mixed') || (has('stricter') && has('relaxed'))) return 'mixed';
  return has('stricter') ? 'stricter' : has('relaxed') ? 'relaxed' : has('same') ? 'same' : undefined;
}

export const opposite = (duty: Duty): Duty =>
  duty === 'stricter' ? 'relaxed' : duty === 'relaxed' ? 'stricter' : duty;
