import type { EditionDates } from '../../model/edition.ts';
import type { OperationOf } from '../../model/operation.ts';
import type { DraftState } from '../draft-state.ts';

/** Sets days of the draft; one that is given as '' is taken away. Whether they follow one another is the gate's to say. */
export function setDays(state: DraftState, { days }: OperationOf<'set-days'>): DraftState {
  const all = Object.entries({ ...state.dates, ...days }).filter(([, day]) => day !== '');
  return { ...state, dates: Object.fromEntries(all) as EditionDates };
}
