import { type Atom, alignAtoms, atomsOf } from '../duty/atoms.ts';
import { LIGHT } from '../reading/light-words.ts';
import { PARTICLES } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Lost } from './lost.ts';
import { isShortened, isThing, isTopic } from './lost-things.ts';
import { statedIn } from './stated-words.ts';

/** Less of an old text than this in an heir, in its order, and the heir was written anew: what is gone proves nothing. */
const COPIED = 0.6;
/** From this share of common words on, and of words in their order, an heir is the old text with a few words changed. */
const EDITED = 0.8;
const IN_ORDER = 0.75;

/**
 * Stretches of an old text that were cut out of an heir which otherwise goes along with it: little or nothing stands in
 * their place, and they were not moved. Their words may all be said elsewhere ("clay fill to 92 % and gravel fill to 97 %"
 * that goes on as "gravel fill to 97 %"), so that no list of words shows the loss.
 */
export function cutOut(from: Reading, heirs: readonly Reading[], all: readonly Reading[] = heirs): Lost[] {
  const atoms = atomsOf(from);
  const aligned = heirs.map(heir => ({ heir, ...alignAtoms(atoms, atomsOf(heir)) }));
  const closest = aligned.reduce(
    (a, b) => (b.pairs.length > (a?.pairs.length ?? -1) ? b : a),
    undefined as (typeof aligned)[number] | undefined,
  );
  if (!closest) return [];
  const shorter = Math.min(atoms.length, atomsOf(closest.heir).length);
  const isEdited = closest.pairs.length >= IN_ORDER * shorter && likeness(from, closest.heir) >= EDITED;
  if (!isEdited && closest.pairs.length < COPIED * atoms.length) return [];
  const arrived = new Set(closest.hunks.flatMap(h => h.in).map(a => a.key));
  const others = all.filter(h => h !== closest.heir).map(h => new Set(atomsOf(h).map(a => a.key)));
  const stated = statedIn(all);
  const own = new Set(from.meanings);
  const isNew = (a: Atom) => isSaid(a) && (a.kind === 'quantity' || !own.has(a.key));
  const isDoneOtherwise = closest.heir.meanings.some((m, at) => closest.heir.tags[at] === 'VERB' && !own.has(m));
  return closest.hunks.flatMap(({ out, in: come }): Lost[] => {
    const says = out.filter(isSaid);
    // What only moved arrives in another place.
    const gone = says.filter(a => !arrived.has(a.key) && !others.some(o => o.has(a.key)));
    if (gone.length === 0 || (isEdited && 2 * gone.length < says.length)) return [];
    if (from.segments.some(s => isSilent(s.kind) && says.every(a => a.first >= s.first && a.first < s.next))) return [];
    // Said again, unless it is one more of a list: "the date and the pressure drop".
    const isAgain = says[0]!.first === out[0]!.first && gone.every(a => a.kind === 'word' && stated.has(a.key));
    if (isAgain || isAgent(from, closest.heir, says)) return [];
    if (isDoneOtherwise && gone.every(a => from.tags[a.first] === 'VERB')) return [];
    const isListed = out[0]!.kind === 'joint' && gone.some(a => from.tags[a.first] !== 'VERB');
    const isGone = isEdited
      ? (isListed && !come.some(isSaid)) || isCutFrom(from, closest.heir, gone, come.filter(isNew), stated)
      : isLongCut(from, says, gone, come);
    if (!isGone) return [];
    const whole = isEdited ? gone : says;
    const [first, next] = [whole[0]!.first, whole.at(-1)!.next];
    const start = from.tokens[first]!.start;
    const text = said(from, { first, next });
    return [{ kind: 'clause', text, start, end: start + text.length }];
  });
}

/** "The installer shall leave the card": whom a command speaks to. */
const isAgent = (from: Reading, heir: Reading, says: readonly Atom[]) =>
  heir.clauses[0]?.force.imperative === true && says.every(a => isTopic(from, a));

/** A list that names its head once ("treated posts and treated battens"), or a subject that is only shortened, is not cut. */
function isLongCut(from: Reading, says: readonly Atom[], gone: readonly Atom[], come: readonly Atom[]): boolean {
  if (says.length < 2) return false;
  const things = new Set(gone.filter(a => isThing(from, a) && !isTopic(from, a)).map(a => a.key));
  const instead = come.filter(isSaid).length;
  return things.size >= 2 + instead || (instead === 0 && gone.some(a => a.kind === 'quantity'));
}

/**
 * In a text that goes on word for word, whatever is left out is lost, and so is a thing for which another stands. A number
 * that names something else ("code 4") and a value stated anew are changes of what is still there.
 */
function isCutFrom(
  from: Reading,
  heir: Reading,
  gone: readonly Atom[],
  instead: readonly Atom[],
  stated: ReadonlySet<string>,
): boolean {
  if (instead.length === 0) {
    return (
      gone.some(a => a.kind === 'quantity' || tells(from, a)) &&
      !(isNoun(from, gone[0]!) && isShortened(from, gone, stated))
    );
  }
  const isName = (reading: Reading) => (a: Atom) =>
    a.kind === 'word' &&
    reading.tokens[a.first]!.kind === 'word' &&
    /^(?:NOUN|PROPN|ADJ)$/.test(reading.tags[a.first]!);
  return gone.some(isName(from)) && instead.some(isName(heir));
}

/** Neither a word of part and measure that a shorter text does without, nor what only holds others together. */
const tells = ({ tags, tokens }: Reading, { key, first }: Atom): boolean =>
  tokens[first]!.low !== 'never' &&
  !LIGHT.has(key) &&
  !PARTICLES.has(key) &&
  /^(?:NOUN|PROPN|VERB|ADJ|ADV|NUM)$/.test(tags[first]!);

const isNoun = ({ tags }: Reading, { first }: Atom) => /^(?:NOUN|PROPN)$/.test(tags[first]!);

/** Share of the words of the shorter text, small ones included, that stand in the other. */
function likeness(a: Reading, b: Reading): number {
  const left = new Map<string, number>();
  for (const { low } of b.tokens) left.set(low, (left.get(low) ?? 0) + 1);
  let common = 0;
  for (const { low } of a.tokens) {
    const n = left.get(low) ?? 0;
    if (n === 0) continue;
    common++;
    left.set(low, n - 1);
  }
  return common / Math.min(a.tokens.length, b.tokens.length);
}

const isSaid = (a: Atom) => a.kind === 'word' || a.kind === 'quantity';
const isSilent = (kind: string) => kind === 'purpose' || kind === 'soft';
