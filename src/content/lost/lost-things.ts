import { type Atom, alignAtoms, atomsOf } from '../duty/atoms.ts';
import { isForceWord } from '../reading/force.ts';
import { LIGHT } from '../reading/light-words.ts';
import { PLAIN } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Lost } from './lost.ts';
import { DOCUMENTS, MATERIALS } from './named-things.ts';
import { statedIn } from './stated-words.ts';

/** Runs of words that no heir says, where an heir has no words of its own in their place that could say the same. */
export function lostThings(from: Reading, heirs: readonly Reading[], all: readonly Reading[]): Lost[] {
  const stated = statedIn(all);
  const own = new Set(from.meanings.filter(Boolean));
  const atoms = atomsOf(from);
  const gone = atoms.filter(
    a => a.kind === 'word' && !stated.has(a.key) && !isReason(from, a) && !isGrown(a.key, stated),
  );
  if (gone.length === 0) return [];
  const explained = new Set<Atom>();
  let fresh = 0;
  for (const heir of heirs) {
    const others = atomsOf(heir);
    fresh += others.filter(o => isThing(heir, o) && !own.has(o.key)).length;
    for (const { out, in: come } of alignAtoms(atoms, others).hunks) {
      const fresher = come.filter(c => c.kind === 'word' && !own.has(c.key));
      const names = fresher.filter(c => isThing(heir, c)).length;
      // A paper or a material is another word only where one stands for one, not anywhere in a stretch written anew.
      const oneForOne = names > 0 && names <= out.filter(a => isThing(from, a)).length + 1;
      // Rubber for bark, silicone for butyl tape: the old material is stated no more.
      const otherMaterial = fresher.some(c => MATERIALS.has(c.key));
      for (const atom of out) {
        if (otherMaterial && MATERIALS.has(atom.key)) continue;
        const proper = DOCUMENTS.has(atom.key) || MATERIALS.has(atom.key);
        if (fresher.length > 0 && (oneForOne || !proper)) explained.add(atom);
      }
    }
  }
  const told = new Set<string>();
  const acts = fresh === 0 ? gone.flatMap(a => lostAct(from, a)) : [];
  const things = runsOf(from, gone)
    .map(run => trimmed(from, run))
    .filter(
      run =>
        run.some(a => isThing(from, a) && (!isTopic(from, a) || isListed(from, run, stated))) &&
        !isShortened(from, run, stated),
    )
    .filter(run => fresh === 0 || !run.every(a => explained.has(a)))
    .flatMap((run): Lost[] => {
      const place = unbroken(from, run[0]!.first, run.at(-1)!.next);
      if (run.length === 1 && place.parts.some(w => stated.has(w)) && !place.denied) return [];
      const text = said(from, place);
      const start = from.tokens[place.first]!.start;
      const again = told.has(text.toLowerCase());
      told.add(text.toLowerCase());
      return again ? [] : [{ kind: kindOf(run), text, start, end: start + text.length }];
    });
  return [...things, ...acts.filter(a => !things.some(t => a.start < t.end && t.start < a.end))];
}

function kindOf(run: readonly Atom[]): Lost['kind'] {
  if (run.some(a => DOCUMENTS.has(a.key))) return 'document';
  return run.some(a => MATERIALS.has(a.key)) ? 'material' : 'thing';
}

/**
 * "and the refusal is logged", "or scrapped": a second act of a sentence, of which an heir without any words of its own
 * says nothing.
 */
function lostAct({ tokens, tags, text, segments }: Reading, { first, next, key }: Atom): Lost[] {
  // What stands behind it may go on although the verb is another: "finished with sealant", "with sealant".
  const ends = tokens[next]?.kind !== 'word' || segments.some(s => s.first === next);
  if (!ends) return [];
  if (tags[first] !== 'VERB' || PLAIN.has(key) || !/(?:ed|en|wn|ut|nt)$/.test(tokens[first]!.low)) return [];
  for (let at = first - 1; at >= Math.max(0, first - REACH); at--) {
    // "square nails, sherardised, 30 mm long", "greased, then wiped"
    if (/^(?:and|or|then|,)$/.test(tokens[at]!.low)) {
      const [start, end] = [tokens[at + 1]!.start, tokens[next - 1]!.end];
      return [{ kind: 'clause', text: text.slice(start, end), start, end }];
    }
    if (!/^(?:AUX|DET|NOUN|ADV)$/.test(tags[at]!)) return [];
  }
  return [];
}

const REACH = 6;

/**
 * "non-slip" and "light-coloured" are one word: with what a hyphen ties to it; `parts` go before it and
 * may be stated ("soft" of "soft-boiled"); `denied` where one of them denies the rest.
 */
function unbroken({ tokens, meanings }: Reading, first: number, next: number) {
  const tied = (at: number) => tokens[at]?.low === '-' && tokens[at]!.glued && tokens[at + 1]?.glued;
  let [start, end] = [first, next];
  while (start >= 2 && first - start < REACH && tied(start - 1) && tokens[start - 2]!.kind === 'word') start -= 2;
  while (end - next < REACH && tied(end) && tokens[end + 1]!.kind === 'word') end += 2;
  const parts = meanings.slice(start, first).filter(Boolean);
  return { first: start, next: end, parts, denied: tokens.slice(start, end).some(t => /^(non|un|anti)$/.test(t.low)) };
}

/** "met with in the excavation" is lost as "excavation": verbs and adverbs at its ends are the sentence's. */
function trimmed(from: Reading, run: readonly Atom[]): readonly Atom[] {
  const [first, last] = [run.findIndex(a => isThing(from, a)), run.findLastIndex(a => isThing(from, a))];
  return first < 0 ? [] : run.slice(first, last + 1);
}

/** "acrylic sealer" that goes on as "acrylic", "stainless steel screws" as "stainless screws". */
export function isShortened(
  { tokens, meanings, tags }: Reading,
  run: readonly Atom[],
  stated: ReadonlySet<string>,
): boolean {
  const at = run[0]!.first - 1;
  const named = meanings[at] !== '' && stated.has(meanings[at] ?? '') && /^(?:NOUN|PROPN|ADJ)$/.test(tags[at] ?? '');
  return run.length === 1 && named && tokens[at]!.kind === 'word' && !DOCUMENTS.has(run[0]!.key);
}

/** Neighbours with nothing but small words between. */
function runsOf(from: Reading, atoms: readonly Atom[]): Atom[][] {
  const runs: Atom[][] = [];
  for (const atom of atoms) {
    const last = runs.at(-1)?.at(-1);
    const between = last ? from.tokens.slice(last.next, atom.first) : [];
    const parted = between.some(
      (t, i) =>
        t.kind === 'number' ||
        from.meanings[last!.next + i] !== '' ||
        isForceWord(t.low) ||
        /^(,|;|\.|and|no|not|nor|which|that|who|is|are|be|been|being|was|were|shall|must|should|may|can|will)$/.test(
          t.low,
        ),
    );
    if (!last || parted) runs.push([atom]);
    else runs.at(-1)!.push(atom);
  }
  return runs;
}

/**
 * Whether a word belongs to the first subject: whom a text speaks to, and the fuller name of what it is about (stair
 * treads), which heirs shorten. What stands there behind a preposition (treads of oak) is no part of the name.
 */
export function isTopic({ clauses, segments, tokens, tags }: Reading, atom: Atom): boolean {
  const clause = clauses[0];
  if (!clause || clause.force.imperative || segments.some(s => atom.first >= s.first && atom.first < s.next))
    return false;
  for (const at of clause.main) {
    if (at >= atom.next) return true;
    if (
      at > clause.first &&
      (tags[at] === 'ADP' || tags[at] === 'AUX' || tags[at] === 'VERB' || tokens[at]!.kind === 'mark')
    ) {
      return false;
    }
  }
  return true;
}

/** "A method statement and a lifting plan shall be …": one of several subjects, of which the others are stated. */
function isListed({ tokens, tags, meanings }: Reading, run: readonly Atom[], stated: ReadonlySet<string>): boolean {
  const ends = (at: number) => tokens[at] === undefined || /^(?:,|and|or|;|\.)$/.test(tokens[at]!.low);
  let [first, next] = [run[0]!.first, run.at(-1)!.next];
  while (!ends(first - 1) && run[0]!.first - first < REACH) first--;
  while (!ends(next) && tags[next] !== 'AUX' && next - run.at(-1)!.next < REACH) next++;
  const joined = [tokens[first - 1]?.low, tokens[next]?.low].some(low => low === 'and' || low === 'or');
  const own = meanings.slice(first, next).filter(Boolean);
  return joined && own.length > 0 && !own.some(w => stated.has(w));
}

/** A reason is read so far back; without a bound a text of a thousand words without a comma is read a thousand times. */
const CLAUSE = 40;

/** Why a thing is asked obliges to nothing: "so that it drains", "since sand moves down". */
function isReason({ tokens, segments, sentences }: Reading, { first }: Atom): boolean {
  if (segments.some(s => s.kind === 'purpose' && first >= s.first && first < s.next)) return true;
  const sentence = sentences.find(s => s.next > first);
  for (let at = first; at >= Math.max(sentence?.first ?? 0, first - CLAUSE); at--) {
    if (/^[,;]$/.test(tokens[at]!.low)) return false;
    if (tokens[at]!.low === 'since') return true;
  }
  return false;
}

/** "movement" where an heir says "move": one word, grown by an ending that the stemmer leaves. */
function isGrown(key: string, stated: ReadonlySet<string>): boolean {
  for (let length = key.length - 1; length >= 4; length--) if (stated.has(key.slice(0, length))) return true;
  if (key.length >= 4)
    for (const other of stated) if (other.length <= key.length + 5 && other.startsWith(key)) return true;
  return false;
}

/** A noun, name, number, adjective, or a participle before its noun; not a verb. */
export function isThing({ tags, tokens, clauses }: Reading, atom: Atom): boolean {
  // A single letter marks a place in a list.
  if (atom.kind !== 'word' || atom.key.length < 2 || LIGHT.has(atom.key)) return false;
  const { first } = atom;
  if (tokens[first]!.kind === 'number') return true;
  const commanded = clauses.some(c => c.force.imperative && c.first === first);
  const tag = tags[first];
  // "and files it": what has an object is no noun.
  if (/^(it|them)$/.test(tokens[atom.next]?.low ?? '')) return false;
  const low = tokens[first]!.low;
  // "shall be sown": the tagger may take it for a noun.
  const done = /(?:ed|en|wn|ing)$/.test(low);
  if (done && /^(be|been|being|is|are|was|were)$/.test(tokens[first - 1]?.low ?? '')) return false;
  if (tag === 'VERB' && done) return isBeforeNoun(tags, tokens, first);
  return !commanded && (tag === 'NOUN' || tag === 'PROPN' || tag === 'ADJ');
}

/** "treated battens", "of galvanised steel"; not "gutters fixed above". */
function isBeforeNoun(tags: Reading['tags'], tokens: Reading['tokens'], at: number): boolean {
  const [before, behind] = [tags[at - 1], tags[at + 1]];
  return (
    (behind === 'NOUN' || behind === 'ADJ') &&
    tokens[at + 1]!.kind === 'word' &&
    (before === 'ADP' || before === 'DET' || before === 'ADJ' || before === 'VERB')
  );
}
