import type { Duty, Wording } from '../model/crosswalk.ts';
import { wordingOfTexts } from './edited.ts';
import { type Lost, lostOf, sameValue } from './lost.ts';
import { readText } from './reading.ts';

/** One thing that makes a duty stricter or relaxes it, with the words of both texts; `` where a text has none. */
export interface Evidence {
  readonly direction: Duty;
  readonly from: string;
  readonly to: string;
  /** What it is: "minimum raised". */
  readonly what: string;
}

/** What changed between two texts. */
export interface Comparison {
  readonly wording: Wording;
  readonly duty: Duty;
  readonly lost: readonly Lost[];
  readonly evidence: readonly Evidence[];
}

/** Compares what two texts ask, by grammar and quantities; whatever they are about. */
export function compareTexts(from: string, to: string): Comparison {
  const wording = wordingOfTexts(from, to);
  if (wording !== 'substantive') return { wording, duty: 'same', lost: [], evidence: [] };
  const [a, b] = [readText(from), readText(to)];
  const evidence: Evidence[] = [];
  for (const [at, quantity] of a.quantities.entries()) {
    const other = b.quantities[at];
    if (!other || a.quantities.length !== b.quantities.length || other.dimension !== quantity.dimension) continue;
    if (sameValue(quantity, other)) continue;
    const narrower = other.low >= quantity.low && other.high <= quantity.high;
    const wider = other.low <= quantity.low && other.high >= quantity.high;
    const direction = narrower ? 'stricter' : wider ? 'relaxed' : 'unclear';
    evidence.push({ direction, from: quantity.text, to: other.text, what: 'value changed' });
  }
  return { wording, duty: dutyOf(evidence), lost: lostOf(a, [b]), evidence };
}

/** The duty that single pieces of evidence add up to; without any it is unclear. */
function dutyOf(evidence: readonly Evidence[]): Duty {
  const has = (duty: Duty) => evidence.some(e => e.direction === duty);
  if (evidence.length === 0 || has('unclear')) return 'unclear';
  if (has('mixed') || (has('stricter') && has('relaxed'))) return 'mixed';
  return has('stricter') ? 'stricter' : has('relaxed') ? 'relaxed' : 'same';
}

/** `minimum raised: "at least 100 mm" → "at least 150 mm"` */
export function tellEvidence({ what, from, to }: Evidence): string {
  if (from === '') return `${what}: "${to}"`;
  return to === '' ? `${what}: "${from}"` : `${what}: "${from}" → "${to}"`;
}
