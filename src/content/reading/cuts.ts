import type { Quantity } from '../quantities/quantities.ts';
import type { Stretch } from './sentences.ts';
import type { Token } from './tokens.ts';
import type { Mention } from './type-names.ts';

/** Signs of a text that go, and what stands in their place. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly instead: string;
  /** `value`: the value that is told to all, in the place of which the type has its own; `own`: where its own stands. */
  readonly kind: 'words' | 'value' | 'own';
}

/** A sentence that names types. */
export interface Named {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly quantities: readonly Quantity[];
  readonly sentence: Stretch;
  readonly mentions: readonly Mention[];
}

export function wordsOf({ tokens }: Named, { first, next }: Stretch): Cut {
  const [from, to] = [tokens[first], tokens[next - 1]];
  return { start: from?.start ?? 0, end: to && next > first ? to.end : (from?.start ?? 0), instead: '', kind: 'words' };
}

export function phraseOf({ tokens }: Named, { first, next }: Mention): Stretch {
  if (tokens[first - 1]?.low === ',' && /^(?:[.;)]|)$/.test(tokens[next]?.low ?? '')) return { first: first - 1, next };
  return { first, next: /^[,:]$/.test(tokens[next]?.low ?? '') ? next + 1 : next };
}

export function bracketed(tokens: readonly Token[], first: number, from: number, end: number): Stretch {
  let next = from;
  while (next < end && tokens[next]!.low !== ')') next++;
  return { first, next: Math.min(end, next + 1) };
}

export const JOINT = /^(?:,|and|or|but|;|:)$/;
export const MODALS = new Set('shall must should may can will is are'.split(' '));
export const SEPARATING = /^(?:,|or|and|\(|at|by|of|with|to)$/;
