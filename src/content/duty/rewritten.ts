import type { Evidence } from '../../model/duty-evidence.ts';
import { sameValue } from '../quantities/same-value.ts';
import { LIGHT } from '../reading/light-words.ts';
import { isFree, withoutNear } from '../reading/near-words.ts';
import { PARTICLES, PLAIN } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import { addition } from './addition.ts';
import type { Atom } from './atoms.ts';
import { isContrary } from './contrary.ts';
import { opposite } from './evidence.ts';
import { forceEvidence } from './force-evidence.ts';
import { jointBeside } from './joints.ts';
import { measureDirection } from './measure-direction.ts';
import { clauseAt, roleAt } from './role.ts';
import { segmentEvidence, segmentsOnlyIn } from './segment-evidence.ts';
import { isBareVerb } from './word-evidence.ts';

/** Least share of the words of both texts that must be accounted for before a rewritten text is held to ask the same. */
const ENOUGH = 0.6;

/**
 * What a text written anew asks more or less. Single words prove little here, since they may be said in other words;
 * so a direction is given only where one of the texts has nothing left that could say it.
 */
export function rewrittenEvidence(from: Reading, to: Reading, a: readonly Atom[], b: readonly Atom[]): Evidence[] {
  const [gone, come] = [only(a, b), only(b, a)];
  const measured = quantitiesAgainst(from, to);
  const evidence = [
    ...forceEvidence(from, to, true),
    ...segmentEvidence(from, to).map((e): Evidence => {
      const other = e.from === '' ? gone : come;
      return other.length > 1 ? { ...e, direction: 'unclear' } : e;
    }),
    ...measured,
  ];
  const near = withoutNear(gone, come);
  const [strangeGone, strangeCome] = near.map(list => list.filter(x => !isFree(x.key))) as [Atom[], Atom[]];
  const isApart = (reading: Reading, other: Reading) => {
    const told = segmentsOnlyIn(reading, other);
    return (x: Atom) => !told.some(s => x.first >= s.first && x.first < s.next);
  };
  const [ofGone, ofCome] = [strangeGone.filter(isApart(from, to)), strangeCome.filter(isApart(to, from))];
  const [less, more] = [aloneIn(from, ofGone, to, ofCome), aloneIn(to, ofCome, from, ofGone)];
  const alone = [
    ...less.map(({ direction, what, words }) => ({
      direction: opposite(direction),
      what: what.replace('added', 'dropped'),
      from: words,
      to: '',
    })),
    ...more.map(({ direction, what, words }) => ({ direction, what, from: '', to: words })),
  ];
  if (evidence.some(e => e.direction !== 'same')) return [...evidence, ...alone];
  const unsaid = { from: tell(from, gone), to: tell(to, come) };
  const turned = gone.find(x => come.some(y => isContrary(x.key, y.key)));
  if (turned) return [{ direction: 'unclear', what: 'the opposite word', ...unsaid }];
  const [lost, won] = [strangeGone.filter(x => isThing(from, x)), strangeCome.filter(x => isThing(to, x))];
  const all = words(a).length + words(b).length;
  const share = 1 - (gone.length + come.length) / Math.max(1, all);
  // "welded" for "bolted" is as good a sentence; only the words that grammar needs are exchanged freely.
  const deeds = [...deedsOf(from, strangeGone), ...deedsOf(to, strangeCome)];
  if (lost.length === 0 && won.length === 0 && deeds.length === 0 && share >= ENOUGH) return [];
  return alone.length > 0 ? alone : [{ direction: 'unclear', what: 'rewritten in other words', ...unsaid }];
}

/**
 * What the words of one text do that the other has nothing left to say with. A verb alone may be grammar's ("the pane shall
 * be checked with a gauge", "by a gauge"), unless it is one of several; who acts is often left to be understood.
 */
function aloneIn(reading: Reading, gone: readonly Atom[], other: Reading, come: readonly Atom[]) {
  if (come.some(x => isThing(other, x)) || deedsOf(other, come).length > 0) return [];
  const deeds = deedsOf(reading, gone).filter(x => !LIGHT.has(x.key) && !isAgent(reading, x) && isTelling(reading, x));
  if (deeds.every(x => isBareVerb(reading, [x]))) return [];
  const told = runsOf(deeds).map(run => ({
    ...addition(reading, run, run),
    words: said(reading, { first: run[0]!.first, next: run.at(-1)!.next }),
  }));
  const isOne = told.every(t => t.direction === told[0]!.direction);
  return isOne ? told : [];
}

/** A thing, a deed or how it is done; not "before", "against" or "above", which another word may stand for anywhere. */
function isTelling(reading: Reading, atom: Atom): boolean {
  const { first } = atom;
  const { tags, tokens, clauses } = reading;
  // What a duty is about, and when it holds, is said in other words more often than what is asked.
  const role = roleAt(reading, first);
  if (role !== 'duty' && !(role === 'scope' && jointBeside(reading, [atom]))) return false;
  const isCommand = clauses.some(c => c.force.imperative && c.first === first);
  if (isCommand && !/^(?:and|or|,)$/.test(tokens[first + 1]?.low ?? '')) return false;
  return tags[first] === 'ADV' ? tokens[first]!.low.endsWith('ly') : /^(?:NOUN|PROPN|ADJ|VERB|NUM)$/.test(tags[first]!);
}

/** The subject of an active sentence that a command or a passive does without. */
function isAgent(reading: Reading, { first }: Atom): boolean {
  const clause = clauseAt(reading, first);
  const modal = clause?.force.at;
  return (
    modal !== undefined &&
    first < modal &&
    reading.tokens[modal + 1]?.low !== 'be' &&
    reading.tags[modal + 1] === 'VERB'
  );
}

/** Atoms side by side, apart from small words, are one phrase. */
function runsOf(atoms: readonly Atom[]): Atom[][] {
  const runs: Atom[][] = [];
  for (const atom of atoms) {
    const last = runs.at(-1);
    if (last && atom.first - last.at(-1)!.next <= 1) last.push(atom);
    else runs.push([atom]);
  }
  return runs;
}

function quantitiesAgainst(from: Reading, to: Reading): Evidence[] {
  const left = [...to.quantities];
  const gone = from.quantities.filter(q => {
    const at = left.findIndex(o => sameValue(o, q));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  const found: Evidence[] = [];
  for (const quantity of gone) {
    const at = left.findIndex(o => o.dimension === quantity.dimension);
    const other = at < 0 ? undefined : left.splice(at, 1)[0];
    if (other) {
      const direction = measureDirection(from, quantity, to, other);
      found.push({ direction, what: 'value changed', from: quantity.text, to: other.text });
    } else if (!isOne(quantity)) {
      found.push({ direction: 'unclear', what: 'value dropped', from: quantity.text, to: '' });
    }
  }
  for (const other of left.filter(q => !isOne(q))) {
    found.push({ direction: 'unclear', what: 'value added', from: '', to: other.text });
  }
  return found;
}

/** "one strand" and "a strand" count the same. */
const isOne = (q: { dimension: string; low: number; high: number }) =>
  q.dimension === 'count' && q.low === 1 && q.high === 1;

const words = (atoms: readonly Atom[]) => atoms.filter(a => a.kind === 'word');

function only(atoms: readonly Atom[], others: readonly Atom[]): Atom[] {
  const known = new Set(others.map(o => o.key));
  return words(atoms).filter(a => !known.has(a.key));
}

/** Without "provide" and "apply", and without the "off" of "taken off": grammar may need them, they ask for nothing. */
function deedsOf({ tags, clauses }: Reading, atoms: readonly Atom[]): Atom[] {
  return atoms.filter(
    ({ key, first }) =>
      !(PLAIN.has(key) && (tags[first] === 'VERB' || clauses.some(c => c.force.imperative && c.first === first))) &&
      !(PARTICLES.has(key) && !/^(NOUN|ADJ)$/.test(tags[first]!)),
  );
}

/** A noun or adjective: a thing or what it is like. Verbs and adverbs are exchanged freely when a text is written anew. */
function isThing({ tags, clauses }: Reading, atom: Atom): boolean {
  const tag = tags[atom.first];
  const commanded = clauses.some(c => c.force.imperative && c.first === atom.first);
  return !commanded && (tag === 'NOUN' || tag === 'PROPN' || tag === 'ADJ');
}

const tell = (reading: Reading, atoms: readonly Atom[]) => [...new Set(atoms.map(a => said(reading, a)))].join(', ');
