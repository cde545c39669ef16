import type { Reading } from './reading.ts';

/** Whether of the sentence that holds a place of a text little more is stated anywhere: fewer than half of its words. */
export function sentenceIsGone(from: Reading, start: number, heirs: readonly Reading[]): boolean {
  const sentence = from.sentences.find(s => start < (from.tokens[s.next - 1]?.end ?? 0));
  if (!sentence) return false;
  const stated = new Set(heirs.flatMap(h => h.meanings));
  const own = from.meanings.slice(sentence.first, sentence.next).filter(Boolean);
  return own.filter(w => stated.has(w)).length < own.length / 2;
}
