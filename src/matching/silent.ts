import { words } from '../text/words.ts';
import type { Bag } from './bags.ts';
import type { Prepared } from './believe.ts';
import { isEnglish, type Side } from './sides.ts';
import { plainNumber } from './terms.ts';
import { VECTOR_STEMS } from './word-vectors.ts';

/*
 *  Подпруга не менее 80 мм      Webbing girths, 80 mm at least      a number is shared, and no word: place and number
 *                                                                  alone made such links 95 to 99 % likely
 */

/** What no word speaks for. */
export interface Silent {
  /** Whether a pair shares no word, and the general English that the matcher knows cannot compare the two either. */
  pair(p: number): boolean;
  /** Rows with words of which the other table has none, by position; all their pairs are silent. */
  readonly from: ReadonlySet<number>;
  readonly to: ReadonlySet<number>;
  /** Those of them whose words the matcher does not know either: not the English rows beside Russian ones. */
  readonly unknown: { readonly from: readonly number[]; readonly to: readonly number[] };
}

/** From so large a share of known words on, the matcher knows what a row is about. */
const KNOWN = 0.5;
/** Titles so alike letter by letter are as good as a shared word: copyWithin, copywithin. */
const SAME_LETTERS = 0.5;

export function silentOf({ sides, pairs, words: { fields } }: Prepared): Silent {
  const { from, to } = sides;
  const isWord = wordsAmong(sides);
  const [old, next] = [isEnglish(from.rows), isEnglish(to.rows)];
  // Beside an English table, the few words of another language that are English too ("die", "wand") mean nothing.
  const known = knownWords(sides, isWord);
  const ofOld = from.all.map(bag => (old || !next) && known(bag));
  const ofNew = to.all.map(bag => (next || !old) && known(bag));
  const pair = (p: number): boolean => {
    const [i, j] = [pairs.from[p]!, pairs.to[p]!];
    if (ofOld[i] && ofNew[j]) return false;
    if (fields.sameTitle![p]! > 0 || fields.sameText![p]! > 0 || fields.letters![p]! >= SAME_LETTERS) return false;
    return !(fields.cosine![p]! > 0 && shareWord(from.all[i]!, to.all[j]!, isWord));
  };
  const silent = Uint8Array.from({ length: pairs.size }, (_, p) => (pair(p) ? 1 : 0));
  const rows = (own: Side, other: Side, pairsOf: (at: number) => Iterable<number>) => {
    const others = new Uint8Array(isWord.length);
    for (const bag of other.all) for (const id of bag.ids) others[id] = 1;
    const alone = new Set<number>();
    own.all.forEach((bag, at) => {
      const mine = bag.ids.filter(id => isWord[id]);
      if (mine.length === 0 || mine.some(id => others[id])) return;
      for (const p of pairsOf(at)) if (!silent[p]) return;
      alone.add(at);
    });
    return alone;
  };
  const olds = rows(from, to, function* (i) {
    for (let p = pairs.starts[i]!; p < pairs.starts[i + 1]!; p++) yield p;
  });
  const news = rows(to, from, j => pairs.ofNew[j]!);
  const unknown = { from: [...olds].filter(i => !ofOld[i]), to: [...news].filter(j => !ofNew[j]) };
  return { pair: p => silent[p] === 1, from: olds, to: news, unknown };
}

/** Which terms are words: no numbers, and no units, which tables of any language share. */
function wordsAmong({ from, to, words: vocabulary }: Prepared['sides']): Uint8Array {
  const isWord = new Uint8Array(vocabulary.size).fill(1);
  const none = (term: string) => {
    const id = vocabulary.idOf(term);
    if (id !== undefined) isWord[id] = 0;
  };
  for (const { title, text } of [...from.rows, ...to.rows]) {
    if (!/\p{N}/u.test(title) && !/\p{N}/u.test(text)) continue;
    for (const word of words(`${title} ${text}`)) if (/^\p{N}/u.test(word)) none(plainNumber(word));
  }
  const letters = [...'abcdefghijklmnopqrstuvwxyz'];
  for (const a of letters) for (const b of ['', ...letters]) none(a + b);
  return isWord;
}

function knownWords({ words: vocabulary }: Prepared['sides'], isWord: Uint8Array): (bag: Bag) => boolean {
  const isKnown = new Uint8Array(vocabulary.size);
  for (const stem of VECTOR_STEMS.split(' ')) {
    const id = vocabulary.idOf(stem);
    if (id !== undefined) isKnown[id] = isWord[id]!;
  }
  return bag => {
    let [all, known] = [0, 0];
    for (const id of bag.ids) {
      all += isWord[id]!;
      known += isKnown[id]!;
    }
    return known > 0 && known >= all * KNOWN;
  };
}

function shareWord(a: Bag, b: Bag, isWord: Uint8Array): boolean {
  for (let i = 0, j = 0; i < a.ids.length && j < b.ids.length; ) {
    const [left, right] = [a.ids[i]!, b.ids[j]!];
    if (left === right) {
      if (isWord[left]) return true;
      i++;
      j++;
    } else if (left < right) i++;
    else j++;
  }
  return false;
}
