/**
 * Where an order may begin in a segment: its first word, or the first word behind an opening phrase.
 *
 *   Seal the joint.                     ^0
 *   Where pipes cross a wall, seal ...                            ^ behind the comma
 *   Paint films are to be dry.          none: a verb with a subject comes before any new clause
 */
export function orderBegins(segment: string): number | undefined {
  const lower = segment.toLowerCase();
  const first = /^[\p{L}'-]+/u.exec(lower)?.[0];
  if (first === undefined) return undefined;
  const at = OPENS.has(first) ? behindOpening(lower) : skipAdverbs(lower, 0);
  if (at === undefined) return undefined;
  const word = /^[\p{L}'-]+/u.exec(lower.slice(at))?.[0];
  if (word === undefined || NO_ORDER.has(word)) return undefined;
  return hasSubject(lower, at) ? undefined : at;
}

const list = (words: string) => new Set(words.split(' '));

/** Words that open a phrase before the main clause. */
const OPENS = list(
  'where wherever when whenever if unless until before after once while as in at on for to from with within without during upon under over above below between behind by except because since although though prior immediately following having not only',
);

const ADVERBS = list(
  'always never then also only carefully first firstly finally lastly next afterwards thoroughly slowly lightly evenly securely immediately gently please permanently clearly temporarily fully completely properly simply either both and but or',
);

/** Words that begin something else than an order. */
const NO_ORDER = list(
  'the a an all each every any no none neither this these that those it they there he she we you i one two three four five six his her its their our some such other both more most many several few which who what whose shall must should may can will is are was were has have had here also only not',
);

function behindOpening(lower: string): number | undefined {
  for (const comma of lower.matchAll(/,\s+/g)) {
    const at = skipAdverbs(lower, comma.index + comma[0].length);
    const next = /^[\p{L}'-]+/u.exec(lower.slice(at))?.[0];
    if (next === undefined || next === 'or' || next === 'and') continue;
    return at;
  }
  return undefined;
}

function skipAdverbs(lower: string, from: number): number {
  let at = from;
  for (;;) {
    const word = /^([\p{L}'-]+),?\s+/u.exec(lower.slice(at, at + 40));
    if (!word || !ADVERBS.has(word[1]!)) return at;
    at += word[0].length;
  }
}

/** A finite verb with a subject before any new clause begins: then nobody is told to do anything outright. */
function hasSubject(lower: string, at: number): boolean {
  // "Fire collars around pipes that ..., are to be screwed": a comma right before the verb closes a clause in the subject.
  if (/,\s+(?:shall|must|should|may|is|are|was|were|has|have)\s/.test(lower.slice(at))) return true;
  for (const { 0: word } of lower.slice(at).matchAll(/[\p{L}'-]+|,/gu)) {
    if (NEW_CLAUSE.has(word)) return false;
    if (FINITE.has(word)) return true;
  }
  return false;
}

const NEW_CLAUSE = list(
  ', that which who whose where wherever when whenever if unless until before after once while whether how so because since as and or ensure check confirm make verify than do',
);
const FINITE = list(
  'shall must should may might can could will would is are was were has have had does need needs ought',
);
