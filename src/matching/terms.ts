import { stemmer } from 'stemmer';
import { words } from '../text/words.ts';

/** What a text is compared by. Lists may hold a term several times. */
export interface Terms {
  /** Stems of the words that carry meaning. */
  readonly stems: readonly string[];
  /** Pairs of neighbouring stems: "fire door" is rarer, and says more, than both its words. */
  readonly phrases: readonly string[];
  /** Numbers with what they count: `150 mm`. */
  readonly quantities: readonly string[];
}

/**
 * Words that stand in every text of a catalog and so link nothing. Negations and modal verbs are among them here, though
 * nowhere else in the program: they decide what a text asks, not which text it is.
 */
const COMMON = new Set(
  (
    'a an the of to in on at by for from with without into onto over under and or nor but as is are was were be been being ' +
    'it its this that these those there their them they he she his her which who whom whose what when where while if then ' +
    'than so such each any all every other another same own shall should must may can will would could not no do does did ' +
    'done have has had having also only both either more most less least up out off about between through during before ' +
    'after until above below again further once here how very per via e.g i.e etc'
  ).split(' '),
);

/** Scripts that are written without spaces; their words are taken as pairs of signs. */
const UNSPACED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}]/u;

/** The terms of a text in any language; endings are stripped from English words only (Porter, 1980). */
export function termsOf(text: string, english: boolean): Terms {
  const stems: string[] = [];
  const phrases: string[] = [];
  const quantities: string[] = [];
  let before: string | undefined;
  let number: string | undefined;
  for (const word of words(text.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))) {
    if (/^\p{N}/u.test(word)) {
      if (number !== undefined) quantities.push(number);
      number = plainNumber(word);
      stems.push(number);
      before = number;
      continue;
    }
    if (number !== undefined) {
      quantities.push(`${number} ${word}`);
      number = undefined;
    }
    if (!/^[\p{L}\p{M}]/u.test(word) || COMMON.has(word)) continue;
    for (const part of UNSPACED.test(word) ? signPairs(word) : [word]) {
      const stem = english && /^[a-z]+$/.test(part) ? stemmer(part) : part;
      stems.push(stem);
      if (before !== undefined) phrases.push(`${before} ${stem}`);
      before = stem;
    }
  }
  if (number !== undefined) quantities.push(number);
  return { stems, phrases, quantities };
}

/** `03` and `3`, `1,000` and `1000` are the same number. */
export function plainNumber(word: string): string {
  return word.replace(/^0+(?=\d)/, '').replace(/(?<=\d),(?=\d{3}(?!\d))/g, '');
}

function signPairs(word: string): string[] {
  const signs = [...word];
  return signs.length < 2 ? signs : signs.slice(1).map((sign, at) => signs[at]! + sign);
}

/** Runs of three letters of a text's beginning, for titles that share no whole word: `copyWithin`, `copy-within`. */
export function letterRuns(text: string): string[] {
  const letters = words(text.slice(0, 240)).join(' ');
  const runs: string[] = [];
  for (let at = 0; at + 3 <= letters.length; at++) runs.push(letters.slice(at, at + 3));
  return runs;
}
