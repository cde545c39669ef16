import { isBareQuantifier } from './how-many.ts';

/**
 * Words that carry no content of their own: articles, auxiliaries, pronouns, plain prepositions and joints. Words of
 * place and relation (above, inside, with, without, between) are not among them: exchanging them changes what is asked.
 */
const EMPTY = new Set(
  `a an the this that these those it its they them their there here he she his her we our you your i and or but nor so
of to in on at by for from as into onto per with be is are was were been being has have had having do does did not no
shall must should may can will would could might ought cannot if when where whenever wherever unless except then than which who whom whose what
also such other own same such so too very just only e g i.e e.g etc
respectively thereof therein thereto hereby please within up if else about least more less min minimum maximum max
it's one ones s t re ll such used use using`.split(/\s+/),
);

/** Nor does a word name anything that says how many or how often; those are compared on their own. */
export function isEmptyWord(word: string): boolean {
  return EMPTY.has(word) || isBareQuantifier(word) || word.endsWith("n't");
}
