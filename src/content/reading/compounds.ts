import { meaning } from './meaning.ts';
import type { Reading } from './reading.ts';
import { remembered } from './remembered.ts';

/**
 * Two readings with compounds in one form: what one text writes as two words and the other as one ("back rest",
 * "back-rest", "backrest") means the one word in both. By each text alone nobody can tell that two words are one.
 */
export function withCompounds(from: Reading, to: Reading): readonly [Reading, Reading] {
  return [joinedAs(from, to), joinedAs(to, from)];
}

/** A reading with the compounds that another text writes in another form. */
export function joinedAs(reading: Reading, other: Reading): Reading {
  const { tokens, meanings } = reading;
  const strange = wordsMissingIn(reading, other);
  if (strange.length === 0) return reading;
  let joined: string[] | undefined;
  for (let at = 0; at + 1 < tokens.length; at++) {
    const next = tokens[at + 1]!.low === '-' ? at + 2 : at + 1;
    if (tokens[at]!.kind !== 'word' || tokens[next]?.kind !== 'word' || !meanings[at] || !meanings[next]) continue;
    const [first, second] = [tokens[at]!.low, tokens[next]!.low];
    const one = strange.find(word => word.startsWith(first) && isOne(word.slice(first.length), second));
    if (one === undefined) continue;
    joined ??= [...meanings];
    joined.fill('', at, next + 1);
    joined[at] = meaning(one);
  }
  return joined ? { ...reading, meanings: joined } : reading;
}

const isOne = (rest: string, word: string) => rest === word || `${rest}s` === word || rest === `${word}s`;

/** Words of another text that could be made of two of this one. */
function wordsMissingIn(reading: Reading, other: Reading): string[] {
  const own = wordsOf(reading);
  return [...wordsOf(other)].filter(word => word.length >= SHORTEST && !own.has(word));
}

const wordsOf = remembered(
  ({ tokens }: Reading): ReadonlySet<string> => new Set(tokens.filter(t => t.kind === 'word').map(t => t.low)),
);

/** Two words that make a shorter one ("in", "to") are no compound. */
const SHORTEST = 6;
