import type { Wording } from '../model/crosswalk.ts';
import { compareDuty, type DutyVerdict } from './duty/compare-duty.ts';
import { type Lost, lostFrom } from './lost/lost.ts';
import { wordingOfTexts } from './wording/edited.ts';

/** What changed between two texts. */
export interface Comparison extends DutyVerdict {
  readonly wording: Wording;
  readonly lost: readonly Lost[];
}

/** Compares what two texts ask, by grammar and quantities; whatever they are about. */
export function compareTexts(from: string, to: string): Comparison {
  const wording = wordingOfTexts(from, to);
  if (wording !== 'substantive') return { wording, duty: 'same', lost: [], evidence: [] };
  return { wording, ...compareDuty(from, to), lost: lostFrom(from, [to]) };
}
