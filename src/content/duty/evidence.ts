import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';

/** The duty that single pieces of evidence add up to; undefined without any. */
export function dutyOfEvidence(evidence: readonly Evidence[]): Duty | undefined {
  const has = (duty: Duty) => evidence.some(e => e.direction === duty);
  if (has('unclear')) return 'unclear';
  if (has('mixed') || (has('stricter') && has('relaxed'))) return 'mixed';
  return has('stricter') ? 'stricter' : has('relaxed') ? 'relaxed' : has('same') ? 'same' : undefined;
}

export const opposite = (duty: Duty): Duty =>
  duty === 'stricter' ? 'relaxed' : duty === 'relaxed' ? 'stricter' : duty;
