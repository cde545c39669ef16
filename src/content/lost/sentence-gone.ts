import type { Reading } from '../reading/reading.ts';
import { sentencesOf } from '../reading/sentences.ts';
import { tokensOf } from '../reading/tokens.ts';

/** Whether of the sentence that holds a place of a text little more is stated anywhere: fewer than half of its words. */
export function sentenceIsGone(from: Reading, start: number, heirs: readonly Reading[]): boolean {
  const sentence = from.sentences.find(s => start < (from.tokens[s.next - 1]?.end ?? 0));
  if (!sentence) return false;
  const stated = new Set(heirs.flatMap(h => h.meanings));
  const own = from.meanings.slice(sentence.first, sentence.next).filter(Boolean);
  return own.filter(w => stated.has(w)).length < own.length / 2;
}

/** Whether two places of a text stand in one sentence. */
export function inOneSentence(text: string, a: number, b: number): boolean {
  const tokens = tokensOf(text);
  const ends = sentencesOf(text, tokens).map(s => tokens[s.next - 1]?.end ?? text.length);
  const holding = (at: number) => ends.findIndex(end => at < end);
  return holding(a) === holding(b);
}
