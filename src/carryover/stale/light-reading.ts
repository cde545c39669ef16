import { type Quantity, quantitiesOf } from '../../content/quantities/quantities.ts';
import { isEmptyWord } from '../../content/reading/empty-words.ts';
import { meaning } from '../../content/reading/meaning.ts';
import { type Stretch, sentencesOf } from '../../content/reading/sentences.ts';
import { writtenOut } from '../../content/reading/spelling.ts';
import { type Token, tokensOf } from '../../content/reading/tokens.ts';

/**
 * A text as far as lessons are compared with requirements: words by what they mean, and values. `readText` knows parts of
 * speech as well, which takes a thousand pages of lessons minutes.
 */
export interface LightReading {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** For each token what it means; `` for empty words, marks and parts of values. A number that measures nothing is a name. */
  readonly stems: readonly string[];
  readonly quantities: readonly Quantity[];
  readonly sentences: readonly Stretch[];
}

export function lightReading(text: string): LightReading {
  const tokens = tokensOf(text);
  const quantities = quantitiesOf(text, tokens);
  const measured = new Set<number>();
  for (const q of quantities) for (let at = q.spanFirst; at < q.spanNext; at++) measured.add(at);
  const stems = tokens.map(({ kind, low }, at) =>
    kind === 'mark' || measured.has(at) || isEmptyWord(low) ? '' : meaning(writtenOut(low)[0]!),
  );
  return { text, tokens, stems, quantities, sentences: sentencesOf(text, tokens) };
}

/** What a stretch says, each thing once. */
export function stemsIn({ stems }: LightReading, { first, next }: Stretch): Set<string> {
  return new Set(stems.slice(first, next).filter(Boolean));
}

export function quantitiesIn({ quantities }: LightReading, { first, next }: Stretch): readonly Quantity[] {
  return quantities.filter(q => q.first >= first && q.first < next);
}

/**
 * The sizes of a value, whatever bounds it: "at least 50 mm", "5 cm" and "50 mm" are of one size, "two screws" and
 * "2 screws" too, and a range has two. A lesson seldom keeps the comparator of the text that it tells.
 */
export function sizesOf({ tokens }: Pick<LightReading, 'tokens'>, q: Quantity): readonly string[] {
  const counted = q.dimension === 'count' ? ` ${meaning(tokens[q.next]?.low ?? '')}` : '';
  const bounds = [q.low, q.high].filter(Number.isFinite).map(n => Math.abs(Number(n.toPrecision(4))));
  const told = q.kind === 'interval' ? bounds.slice(-1) : [...new Set(bounds)];
  return told.map(n => `${n} ${q.dimension}${counted}`);
}
