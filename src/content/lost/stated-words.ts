import { meaning } from '../reading/meaning.ts';
import type { Reading } from '../reading/reading.ts';

/** What heirs talk about, in meanings. */
export function statedIn(heirs: readonly Reading[]): Set<string> {
  const stated = new Set(heirs.flatMap(heir => heir.meanings.filter(Boolean)));
  // What a quantity counts may stand inside it: 1.5 sones or less.
  for (const { tokens, quantities } of heirs) {
    for (const q of quantities) for (const t of tokens.slice(q.spanFirst, q.spanNext)) stated.add(meaning(t.low));
  }
  return stated;
}
