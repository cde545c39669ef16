import { type DraftState, nameOf } from '../../editing/draft-state.ts';
import type { Conflict } from '../../editing/merging/three-way.ts';

/** A conflict in one sentence. */
export function tellConflict({ about, what, ours, theirs }: Conflict, state: DraftState): string {
  const item = state.items.find(i => i.id === about) ?? state.older?.items.find(i => i.id === about);
  const name = item ? `${nameOf(item)} (${about})` : about;
  if (what === 'gone') return `${name}: one side ended it, and the other changed it or builds on it.`;
  if (what === 'place') return `${name} was moved to two places.`;
  if (what === 'order') return `The items under ${name} were put in two different orders.`;
  if (what === 'lineage') return `${name}: the two sides say different things about what becomes of it.`;
  return `${name}: both changed its ${what}, to ${short(ours)} and to ${short(theirs)}.`;
}

function short(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return `"${text.length > 60 ? `${text.slice(0, 59)}…` : text}"`;
}
