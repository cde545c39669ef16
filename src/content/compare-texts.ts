import type { Wording } from '../model/crosswalk.ts';
import { areTooLong, compareWordingAndDuty, type DutyVerdict } from './duty/compare-duty.ts';
import { type Lost, lostFrom } from './lost/lost.ts';

/** What changed between two texts. */
export interface Comparison extends DutyVerdict {
  readonly wording: Wording;
  readonly lost: readonly Lost[];
}

/** Compares what two texts ask, by grammar and quantities; whatever they are about. */
export function compareTexts(from: string, to: string): Comparison {
  const verdict = compareWordingAndDuty(from, to);
  const isRead = verdict.wording === 'substantive' && !areTooLong(from, to);
  return { ...verdict, lost: isRead ? lostFrom(from, [to]) : [] };
}
