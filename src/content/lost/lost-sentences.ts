import type { Evidence } from '../../model/duty-evidence.ts';
import { sameValue } from '../quantities/same-value.ts';
import type { Reading } from '../reading/reading.ts';
import type { Lost } from './lost.ts';

/**
 * Of the words of a dropped demand that say something, so many at least. Of single ones ("steel", "after") ten in twenty-four
 * were said otherwise in the labelled texts; whether these are lost is asked word by word.
 */
const LEAST = 2;

/**
 * The phrases of a text that its comparison with the heirs calls dropped sentences and demands, with the losses found by
 * their words. One that holds other losses takes their place: "buried" alone would not say that a ban is gone. Where one of
 * its values goes on, it is not gone as a whole, and what was found in it stays apart.
 *
 * @param all what says for the heirs: one sentence there that has all words of a phrase states it
 */
export function withDropped(
  from: Reading,
  lost: readonly Lost[],
  evidence: readonly Evidence[],
  all: readonly Reading[],
): readonly Lost[] {
  const isSaid = (words: readonly string[]) =>
    all.some(heir => heir.sentences.some(s => words.every(w => heir.meanings.slice(s.first, s.next).includes(w))));
  const values = all.flatMap(heir => heir.quantities);
  const goesOn = ({ start, end }: Place) =>
    from.quantities.some(q => q.start >= start && q.end <= end && values.some(v => sameValue(v, q))) &&
    lost.some(l => touches(l, { start, end }));
  const unsaid = unsaidSentences(from, all).reduce((found, place) => withPlace(from.text, found, place), lost);
  return evidence
    .filter(e => e.what === 'sentence dropped' || e.what === 'demand dropped')
    .flatMap(({ what, from: phrase }) => {
      const place = placeOf(from.text, phrase.replace(/^(?:and|or|then) /i, ''));
      if (!place || goesOn(place)) return [];
      // "as Table 4 shows" is lost as what it refers to.
      if (what === 'demand dropped' && lost.some(l => l.kind === 'reference' && touches(l, place))) return [];
      const words = wordsAt(from, place);
      return words.length < (what === 'sentence dropped' ? 1 : LEAST) || isSaid(words) ? [] : [place];
    })
    .reduce((found, place) => withPlace(from.text, found, place), unsaid);
}

/** So many words that say something, or a sentence is too short for its silence to prove anything. */
const ENOUGH = 3;

/** Sentences of which no heir says one word: put in other words, a demand keeps its thing or its deed. */
function unsaidSentences(from: Reading, heirs: readonly Reading[]): readonly Place[] {
  const stated = new Set(heirs.flatMap(h => h.meanings));
  return from.sentences.flatMap(({ first, next }) => {
    const own = from.meanings.slice(first, next).filter(m => m !== '');
    if (own.length < ENOUGH || own.some(m => stated.has(m))) return [];
    const last = from.tokens[next - 1]!;
    const end = /^[.;]$/.test(last.text) ? from.tokens[next - 2]!.end : last.end;
    return [{ start: from.tokens[first]!.start, end }];
  });
}

interface Place {
  readonly start: number;
  readonly end: number;
}

const touches = (a: Place, b: Place) => a.start < b.end && b.start < a.end;

function withPlace(text: string, lost: readonly Lost[], { start, end }: Place): readonly Lost[] {
  const touching = lost.filter(l => touches(l, { start, end }));
  if (touching.some(l => l.start <= start && l.end >= end)) return lost;
  const [first, next] = [Math.min(start, ...touching.map(l => l.start)), Math.max(end, ...touching.map(l => l.end))];
  const whole: Lost = { kind: 'clause', text: text.slice(first, next), start: first, end: next };
  return [...lost.filter(l => !touching.includes(l)), whole].sort((a, b) => a.start - b.start);
}

function placeOf(text: string, phrase: string): Place | undefined {
  for (let start = text.indexOf(phrase); phrase !== '' && start >= 0; start = text.indexOf(phrase, start + 1)) {
    const end = start + phrase.length;
    if (!isLetter(text[start - 1]) && !isLetter(text[end])) return { start, end };
  }
  return undefined;
}

const isLetter = (sign: string | undefined) => sign !== undefined && /[\p{L}\p{N}]/u.test(sign);

function wordsAt({ tokens, meanings }: Reading, { start, end }: Place): string[] {
  return meanings.filter((m, at) => m !== '' && tokens[at]!.start >= start && tokens[at]!.end <= end);
}
