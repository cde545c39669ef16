import { type Reading, readText, said } from './reading.ts';
import { sameValue } from './same-value.ts';

/** Something that an old text says and none of its heirs does, in the old text's words. */
export interface Lost {
  readonly kind: 'quantity' | 'condition' | 'exception' | 'thing' | 'reference';
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** What of a text none of its heirs states any more: quantities, conditions, exceptions, things and references. */
export function lostFrom(from: string, heirs: readonly string[]): Lost[] {
  return lostOf(
    readText(from),
    heirs.map(text => readText(text)),
  );
}

/** The same, of texts already read. */
export function lostOf(from: Reading, heirs: readonly Reading[]): Lost[] {
  const found: Lost[] = [];
  for (const quantity of from.quantities) {
    if (heirs.some(heir => heir.quantities.some(q => sameValue(q, quantity)))) continue;
    found.push({ kind: 'quantity', text: quantity.text, start: quantity.start, end: quantity.end });
  }
  const keys = new Set(heirs.flatMap(heir => heir.references.map(r => r.key)));
  for (const reference of from.references) {
    if (keys.has(reference.key)) continue;
    const [start, end] = [from.tokens[reference.first]!.start, from.tokens[reference.next - 1]!.end];
    found.push({ kind: 'reference', text: from.text.slice(start, end), start, end });
  }
  const stated = new Set(heirs.flatMap(heir => heir.meanings.filter(Boolean)));
  for (const segment of from.segments) {
    if (segment.kind !== 'condition' && segment.kind !== 'exception') continue;
    const words = from.meanings.slice(segment.first, segment.next).filter(Boolean);
    if (words.length === 0 || words.some(w => stated.has(w))) continue;
    const start = from.tokens[segment.first]!.start;
    const text = said(from, segment);
    found.push({ kind: segment.kind, text, start, end: start + text.length });
  }
  return found.sort((a, b) => a.start - b.start);
}
