import type { Evidence } from '../../model/duty-evidence.ts';
import { sameValue } from '../quantities/same-value.ts';
import { PARTICLES, PLAIN } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';
import { isContrary } from './contrary.ts';
import { forceEvidence } from './force-evidence.ts';
import { measureDirection } from './measure-direction.ts';
import { bindingOf, clauseAt, roleAt } from './role.ts';
import { segmentEvidence } from './segment-evidence.ts';

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
  if (evidence.some(e => e.direction !== 'same')) return evidence;
  const unsaid = { from: tell(from, gone), to: tell(to, come) };
  const turned = gone.find(x => come.some(y => isContrary(x.key, y.key)));
  if (turned) return [{ direction: 'unclear', what: 'the opposite word', ...unsaid }];
  const [lost, won] = [gone.filter(x => isThing(from, x)), come.filter(x => isThing(to, x))];
  const all = words(a).length + words(b).length;
  const share = 1 - (gone.length + come.length) / Math.max(1, all);
  // "welded" for "bolted" is as good a sentence; only the words that grammar needs are exchanged freely.
  const deeds = [...deedsOf(from, gone), ...deedsOf(to, come)];
  if (lost.length === 0 && won.length === 0 && deeds.length === 0 && share >= ENOUGH) return [];
  const [less, more] = [aloneIn(from, gone, to, come), aloneIn(to, come, from, gone)];
  if (less.length > 0) return [{ direction: 'relaxed', what: 'demand dropped', from: tell(from, less), to: '' }];
  if (more.length > 0) return [{ direction: 'stricter', what: 'demand added', from: '', to: tell(to, more) }];
  return [{ direction: 'unclear', what: 'rewritten in other words', ...unsaid }];
}

/**
 * Words that one text alone has, where the other has nothing that could say them: no deed and no thing of its own. Who
 * acts and what is meant is often left to be understood; so where words of the scope are among them, nothing is told.
 */
function aloneIn(reading: Reading, gone: readonly Atom[], other: Reading, come: readonly Atom[]): readonly Atom[] {
  if (come.some(x => isThing(other, x)) || deedsOf(other, come).length > 0) return [];
  const deeds = deedsOf(reading, gone);
  const isTold = deeds.some(x => isNoun(reading, x)) && deeds.every(x => roleAt(reading, x.first) === 'duty');
  const permits = deeds.some(x => bindingOf(reading, clauseAt(reading, x.first)) !== 'duty');
  return isTold && !permits ? deeds : [];
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

/** A verb that the tagger takes for a noun ("Fit a valve") is among the plain ones, if it is one that texts exchange. */
const isNoun = ({ tags }: Reading, { key, first }: Atom) =>
  !PLAIN.has(key) && (tags[first] === 'NOUN' || tags[first] === 'PROPN');

/** A noun or adjective: a thing or what it is like. Verbs and adverbs are exchanged freely when a text is written anew. */
function isThing({ tags, clauses }: Reading, atom: Atom): boolean {
  const tag = tags[atom.first];
  const commanded = clauses.some(c => c.force.imperative && c.first === atom.first);
  return !commanded && (tag === 'NOUN' || tag === 'PROPN' || tag === 'ADJ');
}

const tell = (reading: Reading, atoms: readonly Atom[]) => [...new Set(atoms.map(a => said(reading, a)))].join(', ');
