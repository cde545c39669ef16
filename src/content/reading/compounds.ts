import { meaning } from './meaning.ts';
import type { Reading } from './reading.ts';

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
  const written = new Set(other.tokens.filter(t => t.kind === 'word' && t.low.length >= SHORTEST).map(t => t.low));
  let joined: string[] | undefined;
  for (let at = 0; at + 1 < tokens.length; at++) {
    const next = tokens[at + 1]!.low === '-' ? at + 2 : at + 1;
    if (tokens[at]!.kind !== 'word' || tokens[next]?.kind !== 'word') continue;
    const both = [tokens[at]!.low + tokens[next]!.low].flatMap(one => [one, one.replace(/s$/, ''), `${one}s`]);
    const one = both.find(word => written.has(word));
    if (one === undefined || !meanings[at] || !meanings[next]) continue;
    joined ??= [...meanings];
    joined.fill('', at, next + 1);
    joined[at] = meaning(one);
  }
  return joined ? { ...reading, meanings: joined } : reading;
}

/** Two words that make a shorter one ("in", "to") are no compound. */
const SHORTEST = 6;
