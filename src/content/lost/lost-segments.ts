import { standsBesideAnother } from '../duty/subjects.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Segment } from '../reading/segments.ts';
import type { Stretch } from '../reading/sentences.ts';
import type { Lost } from './lost.ts';
import { wordsOutside } from './misplaced.ts';
import { statedIn } from './stated-words.ts';

const MODALS = new Set('shall must should may can will'.split(' '));
const EXCEPTING = new Set(
  'unless except excepting excluding save only but not no none never neither need instead without other'.split(' '),
);

const ORDER = new Set('first second third last other others same one former latter'.split(' '));

/**
 * Conditions, exceptions and times of which no heir says enough. One sentence of an heir has to say it: words found here
 * and there in other sentences would state any condition.
 *
 * @param kept whether a quantity of the old text is stated by an heir
 */
export function lostSegments(from: Reading, heirs: readonly Reading[], kept: (q: Quantity) => boolean): Lost[] {
  const sentences = heirs.flatMap(statedBySentence);
  const everywhere = statedIn(heirs);
  const excepting = heirs.some(h => h.tokens.some(t => EXCEPTING.has(t.low)));
  return from.segments.flatMap((segment): Lost[] => {
    const { kind } = segment;
    if (kind === 'soft' || kind === 'purpose') return [];
    const stretch = { first: segment.first, next: ownEnd(from, segment) };
    const words = from.meanings.slice(stretch.first, stretch.next).filter(Boolean);
    const inner = from.quantities.filter(q => q.first >= stretch.first && q.first < stretch.next);
    const size = words.length + inner.length;
    const values = inner.filter(kept).length;
    const known = values + words.filter(w => everywhere.has(w)).length;
    const together = values + Math.max(0, ...sentences.map(s => words.filter(w => s.has(w)).length));
    // Without any word of exception in the heirs, its words alone make no exception.
    const unsaid = kind === 'exception' && !excepting && known < size;
    const isKept = !unsaid && known >= size / 2 && together >= size / 3;
    if (size === 0 || (isKept && !isOfAnother(from, stretch, words, heirs))) return [];
    // "if it does so" names nothing of its own.
    const names =
      inner.length > 0 ||
      from.tokens
        .slice(stretch.first, stretch.next)
        .some((t, i) => /^(NOUN|PROPN)$/.test(from.tags[stretch.first + i]!) && !ORDER.has(t.low));
    if (!names) return [];
    const start = from.tokens[stretch.first]!.start;
    const text = said(from, stretch);
    return [{ kind: kind === 'exception' ? 'exception' : 'condition', text, start, end: start + text.length }];
  });
}

/** "when half full and shall be inspected": the second verb has the subject of the sentence, not of the condition. */
function ownEnd({ tokens }: Reading, { first, next, opener }: Segment): number {
  for (let at = first + opener + 1; at < next - 1; at++) {
    if (/^(and|but|or)$/.test(tokens[at]!.low) && MODALS.has(tokens[at + 1]!.low)) return at;
  }
  return next;
}

/** "Lock the hatch at frost. Drain the pipe in rain." where the old text had it the other way about. */
function isOfAnother(from: Reading, stretch: Stretch, words: readonly string[], heirs: readonly Reading[]): boolean {
  if (words.length === 0 || from.sentences.length < 2) return false;
  const place = from.sentences.find(s => s.next > stretch.first);
  // Sentences without a condition of their own may have taken it as well; only where two have, one stands for the other.
  const rivals = from.segments
    .filter(x => x.kind === 'condition' && from.sentences.find(s => s.next > x.first) !== place)
    .map(x => wordsOutside(from, x.first, x.next));
  const now = heirs.flatMap(statedBySentence).filter(sentence => words.every(w => sentence.has(w)));
  return standsBesideAnother(wordsOutside(from, stretch.first, stretch.next), rivals, now, statedIn(heirs));
}

function statedBySentence(heir: Reading): Set<string>[] {
  return heir.sentences.map(({ first, next }) => new Set(heir.meanings.slice(first, next).filter(Boolean)));
}
