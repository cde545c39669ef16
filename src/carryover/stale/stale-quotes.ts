import type { ItemId } from '../../model/item.ts';
import type { LightReading } from './light-reading.ts';

/** Words that stand in a passage as they stand in a text: tokens `first` up to, not including, `next` of the passage. */
export interface Quote {
  readonly ids: readonly ItemId[];
  readonly first: number;
  readonly next: number;
  /** It fills a pair of quotation marks. */
  readonly marked: boolean;
}

/** What a passage says word for word, the longest runs, without overlap. */
export type QuotedIn = (passage: LightReading) => readonly Quote[];

const SHINGLE = 4;
/** A run of fewer words is a turn of phrase, unless it stands in quotation marks. */
const LEAST_RUN = 7;
const LEAST_STEMS = 3;

interface Place {
  readonly id: ItemId;
  readonly words: readonly string[];
  readonly at: number;
}

/** Finds what is taken word for word from the texts of an edition. Time grows with the passage alone. */
export function quoteFinder(texts: Iterable<{ readonly id: ItemId; readonly reading: LightReading }>): QuotedIn {
  const places = new Map<string, Place[]>();
  for (const { id, reading } of texts) {
    const words = wordsOf(reading).map(w => w.low);
    for (let at = 0; at + SHINGLE <= words.length; at++) {
      const key = words.slice(at, at + SHINGLE).join(' ');
      const known = places.get(key);
      if (known) known.push({ id, words, at });
      else places.set(key, [{ id, words, at }]);
    }
  }
  return passage => {
    const words = wordsOf(passage);
    const marks = markedStretches(passage);
    const quotes: Quote[] = [];
    for (let at = 0; at + SHINGLE <= words.length; ) {
      const key = words.slice(at, at + SHINGLE).map(w => w.low);
      let length = 0;
      let ids: ItemId[] = [];
      for (const place of places.get(key.join(' ')) ?? []) {
        let n = SHINGLE;
        while (words[at + n] && words[at + n]!.low === place.words[place.at + n]) n++;
        if (n > length) [length, ids] = [n, []];
        if (n === length) ids.push(place.id);
      }
      const [first, next] = [words[at]!.token, (words[at + length - 1]?.token ?? 0) + 1];
      const stems = passage.stems.slice(first, next).filter(Boolean).length;
      // What runs on to the left or right of the marks is chance.
      const mark = marks.find(m => first <= m.first + 2 && next >= m.next - 2 && m.first < next && m.next > first);
      if (length >= (mark ? SHINGLE : LEAST_RUN) && stems >= LEAST_STEMS) {
        const clipped = mark
          ? { first: Math.max(first, mark.first), next: Math.min(next, mark.next) }
          : { first, next };
        quotes.push({ ids: [...new Set(ids)], ...clipped, marked: mark !== undefined });
        at += length;
      } else at++;
    }
    return quotes;
  };
}

function wordsOf({ tokens }: LightReading): { readonly low: string; readonly token: number }[] {
  return tokens.flatMap(({ kind, low }, token) => (kind === 'mark' ? [] : [{ low, token }]));
}

/** Tokens between quotation marks, the marks not among them. */
function markedStretches({ text, tokens }: LightReading): { readonly first: number; readonly next: number }[] {
  return [...text.matchAll(/"[^"]{8,600}"|“[^”]{8,600}”|«[^»]{8,600}»|„[^“”]{8,600}[“”]/g)].map(found => {
    const inside = (at: number) => at > found.index && at < found.index + found[0].length - 1;
    const first = tokens.findIndex(t => inside(t.start));
    let next = first;
    while (next < tokens.length && inside(tokens[next]!.start)) next++;
    return { first, next };
  });
}
