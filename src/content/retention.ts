import { matchQuantities, sameSet } from './match-quantities.ts';
import { type Reading, said } from './reading.ts';
import type { Stretch } from './sentences.ts';

/** A statement of an old text that none of its heirs makes. */
export interface Lost {
  readonly kind: 'quantity' | 'condition' | 'exception' | 'reference' | 'thing';
  readonly phrase: string;
  readonly start: number;
}

/**
 * What of a text none of the heirs states: values with their subject and bound, conditions, exceptions, references, and
 * the materials, components and documents named. Purposes and phrases of judgement (where practicable) oblige to nothing
 * and are not counted.
 */
export function lostFrom(from: Reading, heirs: readonly Reading[]): Lost[] {
  const there = new Set(heirs.flatMap(h => h.meanings));
  const references = new Set(heirs.flatMap(h => h.references.map(r => r.key)));
  const lost: Lost[] = [];
  const taken: Stretch[] = from.segments.filter(s => s.kind === 'purpose' || s.kind === 'soft');
  const add = (kind: Lost['kind'], place: Stretch) => {
    const phrase = said(from, place);
    if (phrase !== '') lost.push({ kind, phrase, start: from.tokens[place.first]!.start });
  };

  for (const q of lostQuantities(from, heirs)) add('quantity', { first: q.spanFirst, next: q.spanNext });
  for (const reference of from.references) {
    if (!references.has(reference.key)) add('reference', reference);
    taken.push(reference);
  }
  const exceptionsThere = heirs.some(
    h => h.segments.some(s => s.kind === 'exception') || h.clauses.some(c => c.force.kind === 'exempt'),
  );
  for (const segment of from.segments) {
    if (segment.kind === 'purpose' || segment.kind === 'soft') continue;
    const body = [...new Set(from.meanings.slice(segment.first + segment.opener, segment.next).filter(Boolean))];
    const kept = body.filter(m => there.has(m)).length;
    const gone =
      body.length > 0 &&
      (kept / body.length < 0.5 || (segment.kind === 'exception' && !exceptionsThere && kept < body.length));
    if (!gone) continue;
    add(segment.kind === 'exception' ? 'exception' : 'condition', segment);
    taken.push(segment);
  }
  for (const thing of things(from)) {
    if (taken.some(t => thing.first >= t.first && thing.first < t.next)) continue;
    if (isLost(from, thing, there)) add('thing', thing);
  }
  return lost.sort((a, b) => a.start - b.start);
}

function lostQuantities(from: Reading, heirs: readonly Reading[]) {
  const pairings = heirs.map(h => matchQuantities(from, h));
  const words = new Set(heirs.flatMap(h => h.meanings));
  return from.quantities.filter(
    (_, at) =>
      !pairings.some(pairs => {
        const { from: a, to, likeness } = pairs[at]!;
        if (!to || !sameSet(a, to)) return false;
        if (likeness >= 0.12) return true;
        // The value stands there, but about something else, while its own subject is still spoken of.
        const subject = from.meanings.slice(Math.max(0, a.spanFirst - 4), a.spanFirst).filter(Boolean);
        return !subject.some(m => words.has(m));
      }),
  );
}

/** Noun phrases: nouns with the adjectives and participles before them. */
function things(reading: Reading): Stretch[] {
  const found: Stretch[] = [];
  const { tags, tokens, meanings } = reading;
  const outside = (at: number) => meanings[at] !== '' && tokens[at]!.kind === 'word';
  for (let at = 0; at < tokens.length; ) {
    let next = at;
    while (next < tokens.length && ((outside(next) && partOfPhrase(reading, at, next)) || joins(reading, at, next)))
      next++;
    let end = next;
    while (end > at && tags[end - 1] !== 'NOUN' && tags[end - 1] !== 'PROPN') end--;
    if (end > at) found.push({ first: at, next: end });
    at = Math.max(next, at + 1);
  }
  return found;
}

function partOfPhrase({ tags, tokens }: Reading, first: number, at: number): boolean {
  const tag = tags[at];
  if (tag === 'NOUN' || tag === 'PROPN' || tag === 'ADJ') return true;
  // "approved sealant", "standing water": a participle at the head, before a noun and behind no auxiliary.
  return (
    tag === 'VERB' &&
    at === first &&
    /(?:ed|ing|en)$/.test(tokens[at]!.low) &&
    (tags[at + 1] === 'NOUN' || tags[at + 1] === 'ADJ') &&
    tags[at - 1] !== 'AUX' &&
    tags[at - 1] !== 'NOUN'
  );
}

/** A hyphen inside a phrase. */
function joins({ tokens, meanings }: Reading, first: number, at: number): boolean {
  return (
    at > first && tokens[at]!.low === '-' && tokens[at]!.glued && !!tokens[at + 1]?.glued && meanings[at + 1] !== ''
  );
}

const GENERIC = new Set(
  `thing way manner time case order part area work use place purpose condition requirement item type kind number amount extent means process
method person people someone contractor installer operator employer employee owner supervisor manager worker builder user staff
responsibility basis need reason fact result effect practice member side end point position location direction
suitable appropriate proper adequate new good other necessary relevant applicable final due possible sufficient available correct
care addition accordance compliance respect event presence line regard least minimum maximum detail note matter issue`.split(
    /\s+/,
  ),
);

function isLost(reading: Reading, thing: Stretch, there: ReadonlySet<string>): boolean {
  for (let at = thing.first; at < thing.next; at++) {
    const said = reading.meanings[at]!;
    if (said === '' || there.has(said) || GENERIC.has(reading.tokens[at]!.low)) continue;
    return true;
  }
  return false;
}
