import type { DraftState } from '../draft-state.ts';

/** Numbers everything by its place from now on, in decimals without gaps, instead of keeping printed numbers. */
export function renumber(state: DraftState): DraftState {
  const { settings } = state;
  const levels = settings.numbering.levels.map(l => (l.style === 'printed' ? { ...l, style: 'decimal' as const } : l));
  const all = settings.levels.map((_, n) => levels[n] ?? { style: 'decimal' as const });
  return { ...state, settings: { ...settings, numbering: { levels: all, numbersUnique: true } } };
}
