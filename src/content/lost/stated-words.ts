import { meaning } from '../reading/meaning.ts';
import type { Reading } from '../reading/reading.ts';
import { remembered } from '../reading/remembered.ts';

/** What heirs talk about, in meanings; asked for the same heirs by each kind of loss. */
export const statedIn = remembered((heirs: readonly Reading[]): ReadonlySet<string> => {
  const stated = new Set(heirs.flatMap(heir => heir.meanings.filter(Boolean)));
  // What a quantity counts may stand inside it: 1.5 sones or less.
  for (const { tokens, quantities } of heirs) {
    for (const q of quantities) for (const t of tokens.slice(q.spanFirst, q.spanNext)) stated.add(meaning(t.low));
  }
  return stated;
});
