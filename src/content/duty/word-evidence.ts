import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import { sameValue } from '../quantities/same-value.ts';
import { isNear } from '../reading/near-words.ts';
import { isParticle, PLAIN } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Segment } from '../reading/segments.ts';
import { addition } from './addition.ts';
import { agentChanged } from './agents.ts';
import type { Atom, Hunk } from './atoms.ts';
import { codeDirection } from './bounded-codes.ts';
import { opposite } from './evidence.ts';
import { hedgeChanged } from './hedges.ts';
import { jointBeside, lowAt } from './joints.ts';
import { measureDirection } from './measure-direction.ts';
import { reachChanged } from './reach.ts';
import { bindingOf, clauseAt, roleAt } from './role.ts';

/** What words left out, put in or exchanged do to a duty. */
export function wordEvidence(from: Reading, to: Reading, hunks: readonly Hunk[]): Evidence[] {
  // "Never paint" for "do not paint", "shall never be" for "shall not be": the force of the clauses tells of it.
  const said = hunks.filter(h => [...h.out, ...h.in].some(counts));
  const isNot = said.length === 1 && isNever(from, said[0]!.out, to) && isNever(to, said[0]!.in, from);
  return hunks.flatMap(hunk => (isNot && hunk === said[0] ? [] : ofHunk(from, to, hunk)));
}

/** The hunks without what merely moved, and without segments that are told of as wholes. */
export function withoutMoved(
  hunks: readonly Hunk[],
  told: { from: readonly Segment[]; to: readonly Segment[] },
): Hunk[] {
  const inside = (segments: readonly Segment[]) => (atom: Atom) =>
    !segments.some(s => atom.first >= s.first && atom.first < s.next);
  const bare = hunks.map(h => ({ out: h.out.filter(inside(told.from)), in: h.in.filter(inside(told.to)) }));
  const moved = new Set<Atom>();
  const came = bare.flatMap(h => h.in);
  for (const atom of bare.flatMap(h => h.out)) {
    if (atom.kind !== 'word' && atom.kind !== 'quantity') continue;
    const other = came.find(
      c => !moved.has(c) && c.key === atom.key && (!atom.quantity || sameValue(atom.quantity, c.quantity!)),
    );
    if (other) moved.add(atom).add(other);
  }
  return bare.map(h => ({ out: h.out.filter(a => !moved.has(a)), in: h.in.filter(a => !moved.has(a)) }));
}

/** The hunks without a word that its text says again and the other text says too: "The glass … Glass …" made one sentence. */
export function withoutRepeated(hunks: readonly Hunk[], from: readonly Atom[], to: readonly Atom[]): Hunk[] {
  const [before, after] = [countsOf(from), countsOf(to)];
  const isRepeated = (atom: Atom, own: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>) =>
    atom.kind === 'word' && (own.get(atom.key) ?? 0) > 1 && other.has(atom.key);
  // "the date and the pressure drop": one more of a list is asked for, whatever was said of it before.
  const isListed = (atoms: readonly Atom[]) =>
    atoms[0]?.key === 'and' && atoms.slice(1).every(a => a.kind === 'word') && atoms.length < 5;
  return hunks.map(h => ({
    out: h.in.length === 0 && isListed(h.out) ? h.out : h.out.filter(a => !isRepeated(a, before, after)),
    in: h.out.length === 0 && isListed(h.in) ? h.in : h.in.filter(a => !isRepeated(a, after, before)),
  }));
}

function countsOf(atoms: readonly Atom[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { key } of atoms) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

function ofHunk(from: Reading, to: Reading, hunk: Hunk): Evidence[] {
  const found: Evidence[] = [];
  let [out, come] = [[...hunk.out], [...hunk.in]];
  for (const atom of out.filter(a => a.quantity)) {
    const other = come.find(c => c.key === atom.key);
    if (!other) continue;
    found.push(measured(from, to, atom, other));
    out = out.filter(a => a !== atom);
    come = come.filter(c => c !== other);
  }
  const reach = reachChanged(from, to, out, come);
  if (reach) return [...found, reach];
  const hedge = out.length + come.length > 0 ? hedgeChanged(from, to, out, come) : undefined;
  if (hedge) return [...found, hedge];
  const agent = agentChanged(from, to, out, come);
  if (agent) return [...found, agent];
  const words = { from: phrase(from, out), to: phrase(to, come) };
  const code = codeDirection(from, to, out, come);
  if (code) return [...found, { direction: code, what: 'value changed', ...words }];
  let [lost, won] = [out.filter(counts), come.filter(counts)];
  const isJoining = (reading: Reading, atoms: readonly Atom[]) =>
    atoms.length === 1 && /^(?:ADP|SCONJ|ADV)$/.test(reading.tags[atoms[0]!.first] ?? '');
  // "once" for "after"; a verb or noun for another is more often meant.
  if (isJoining(from, lost) && isJoining(to, won) && isNear(lost[0]!.key, won[0]!.key)) return found;
  // "hold" for "lay" is another deed.
  if ((lost.length === 0 || won.length === 0) && isNeeded(from, lost) && isNeeded(to, won)) [lost, won] = [[], []];
  // "and by 800 mm where sheep graze": the value that is gone here is still stated.
  if (won.length === 0 && isStated(lost, to)) return found;
  if (lost.length === 0 && won.length === 0) {
    const joint = jointChanged(out, come);
    if (joint) {
      const [before, at] = [out, come].map(atoms => atoms.find(a => a.kind === 'joint')!.first) as [number, number];
      // "… shall not exceed 50 lux, or the time shall not …" joins two demands, whatever they forbid.
      const joinsClauses = to.clauses.some(c => c.first === at || c.first === at + 1);
      // "before leaving and after returning": two times, both asked for.
      const areTimes = /^(?:before|after|on|upon)$/.test(lowAt(to, at + 1));
      const isCase = !areTimes && (roleAt(to, at) !== 'duty' || roleAt(from, before) !== 'duty');
      const isTurned = !joinsClauses && (bindingOf(to, clauseAt(to, at)) === 'ban' || isCase);
      found.push({ direction: isTurned ? opposite(joint) : joint, what: 'joint of a list changed', ...words });
    }
    return found;
  }
  if (lost.length === 0 || won.length === 0) {
    const [reading, atoms] = won.length === 0 ? [from, out] : [to, come];
    const isRelation = [...lost, ...won].every(a => a.kind === 'word' && RELATIONS.has(lowAt(reading, a.first)));
    if (isRelation && jointBeside(reading, atoms) === undefined) {
      return [...found, { direction: 'unclear', what: won.length === 0 ? 'words left out' : 'words put in', ...words }];
    }
    if (isBareVerb(reading, atoms) && !isOwnSentence(reading, won.length === 0 ? to : from, atoms)) {
      return [...found, { direction: 'unclear', what: won.length === 0 ? 'verb dropped' : 'verb added', ...words }];
    }
  }
  const kind = kindForAll(from, to, out, come);
  if (kind) return [...found, { ...kind, ...words }];
  if (won.length > 0 && (lost.length === 0 || isAny(from, out))) {
    found.push({ ...addition(to, come, won), from: lost.length > 0 ? words.from : '', to: words.to });
  } else if (won.length === 0) {
    const { direction, what } = addition(from, out, lost);
    found.push({ direction: opposite(direction), what: what.replace('added', 'dropped'), from: words.from, to: '' });
  } else {
    found.push({
      direction: isDemanded(from, out) && isDemanded(to, come) && !isCode(from, lost) ? 'mixed' : 'unclear',
      what: 'words replaced',
      ...words,
    });
  }
  return found;
}

/** Nothing, or "never" where it denies as "not" does, beside a text that denies as well. */
const isNever = ({ tokens, clauses }: Reading, atoms: readonly Atom[], other: Reading) =>
  other.clauses.some(c => c.force.negated) &&
  atoms.filter(counts).every(({ first }) => {
    const before = tokens[first - 1]?.low ?? '';
    const denies = clauses.some(c => c.first === first) || /^(?:shall|must|should|may|can|will)$/.test(before);
    return tokens[first]!.low === 'never' && denies;
  });

const isStated = (atoms: readonly Atom[], { quantities }: Reading) =>
  atoms.length > 0 && atoms.every(a => a.quantity && quantities.some(q => sameValue(q, a.quantity!)));

/** "code 5" for "code 4": one name for another. */
const isCode = ({ tokens }: Reading, lost: readonly Atom[]) =>
  lost.length === 1 && tokens[lost[0]!.first]!.kind === 'number';

function measured(from: Reading, to: Reading, a: Atom, b: Atom): Evidence {
  const direction = measureDirection(from, a.quantity!, to, b.quantity!);
  return { direction, what: 'value changed', from: a.quantity!.text, to: b.quantity!.text };
}

/** Evidence of quantities that stand in the same place with other values. */
export function measureEvidence(from: Reading, to: Reading, pairs: readonly (readonly [Atom, Atom])[]): Evidence[] {
  const changed = pairs.filter(([a, b]) => a.quantity && b.quantity && !sameValue(a.quantity, b.quantity));
  const evidence = changed.map(([a, b]) => measured(from, to, a, b));
  // Values that changed places: one is more and the other less than it was.
  const swapped =
    changed.length > 1 && changed.every(([a]) => changed.some(([, b]) => sameValue(a.quantity!, b.quantity!)));
  return swapped ? evidence.map(e => ({ ...e, direction: 'mixed' })) : evidence;
}

const counts = (atom: Atom) => atom.kind === 'word' || atom.kind === 'quantity' || atom.key === 'onli';

/** Whether all that words say is what grammar needs: "down" of "cool down", "provided" before "with". */
function isNeeded(reading: Reading, atoms: readonly Atom[]): boolean {
  return atoms.every(
    ({ kind, key, first }) =>
      kind === 'relation' || isParticle(reading, first) || (PLAIN.has(key) && reading.tags[first] === 'VERB'),
  );
}

/**
 * A verb alone, which another may stand for in another place. One of several is a demand of its own, and so is what a
 * participle behind a noun ("drums marked") or a noun made of a verb ("in writing") says.
 */
export function isBareVerb(reading: Reading, atoms: readonly Atom[]): boolean {
  const { tags, tokens } = reading;
  const isParticiple = (at: number) => /(?:ed|wn|en)$/.test(tokens[at]!.low);
  const isVerb = ({ first }: Atom) =>
    tags[first] === 'VERB' &&
    tags[first - 1] !== 'ADP' &&
    !(isParticiple(first) && (/^(?:NOUN|PROPN)$/.test(tags[first + 1] ?? '') || tags[first - 1] === 'DET')) &&
    !(isParticiple(first) && /^(?:NOUN|PROPN)$/.test(tags[first - 1] ?? ''));
  // "and shall be weighted"
  let before = atoms[0]!.first - 1;
  while (tags[before] === 'AUX') before--;
  const isJoined = /^(?:and|or)$/.test(tokens[before]?.low ?? '') || jointBeside(reading, atoms) !== undefined;
  return atoms.filter(counts).every(isVerb) && !isJoined;
}

/** "after", "away", "against" alone: how the others hang together, which other words may say. */
const RELATIONS = new Set('before after against away upon once along across past around over off out'.split(' '));

/** "The kiln shall be vented." that went: nothing but its verb is new, and there is a sentence less. */
function isOwnSentence(reading: Reading, other: Reading, atoms: readonly Atom[]): boolean {
  if (reading.sentences.length <= other.sentences.length || atoms.length > 1) return false;
  const { first } = atoms[0]!;
  if (reading.tokens[first]!.low.endsWith('ing')) return false;
  const sentence = reading.sentences.find(s => first >= s.first && first < s.next)!;
  const isVerb = (at: number) => at !== first && reading.tags[at] === 'VERB';
  for (let at = sentence.first; at < sentence.next; at++) if (isVerb(at)) return false;
  return true;
}

/** "at permanent workplaces" for "at all workplaces", or the other way about: one kind of them, or all. */
function kindForAll(from: Reading, to: Reading, out: readonly Atom[], come: readonly Atom[]) {
  const isAll = (reading: Reading, atoms: readonly Atom[]) =>
    atoms.length === 1 && /^(?:all|every|each)$/.test(lowAt(reading, atoms[0]!.first));
  const isKind = (reading: Reading, atoms: readonly Atom[]) =>
    atoms.length === 1 && atoms[0]!.kind === 'word' && reading.tags[atoms[0]!.first] === 'ADJ';
  const [fewer, more] = [isAll(from, out) && isKind(to, come), isKind(from, out) && isAll(to, come)];
  if (fewer === more) return undefined;
  const permits = bindingOf(to, clauseAt(to, come[0]!.first)) === 'permission';
  const direction: Duty = fewer === permits ? 'stricter' : 'relaxed';
  return { direction, what: fewer ? 'limit of the scope added' : 'limit of the scope dropped' };
}

function jointChanged(out: readonly Atom[], come: readonly Atom[]): Duty | undefined {
  const [before, after] = [out, come].map(atoms => atoms.find(a => a.kind === 'joint')?.key);
  if (!before || !after || before === after) return undefined;
  return after === 'or' ? 'relaxed' : 'stricter';
}

function isAny(reading: Reading, out: readonly Atom[]): boolean {
  return out.some(a => lowAt(reading, a.first - 1) === 'any' || lowAt(reading, a.first) === 'any') && out.length <= 3;
}

/**
 * Whether words are one of several things that are all asked for: "gloves and goggles". Of "gloves or goggles" one will do,
 * and "of rubber and shall be …" joins clauses.
 */
function isDemanded(reading: Reading, atoms: readonly Atom[]): boolean {
  if (atoms.filter(counts).length > 3 || jointBeside(reading, atoms) !== 'and') return false;
  const [first, next] = [atoms[0]!.first, atoms.at(-1)!.next];
  const behind = lowAt(reading, next) === 'and' ? next + 1 : undefined;
  if (behind === undefined) return [first - 1, first - 2, first].some(at => lowAt(reading, at) === 'and');
  return /^(?:NOUN|PROPN|ADJ|DET|NUM)$/.test(reading.tags[behind] ?? '') && !lowAt(reading, behind).endsWith('ed');
}

function phrase(reading: Reading, atoms: readonly Atom[]): string {
  if (atoms.length === 0) return '';
  return said(reading, { first: atoms[0]!.first, next: atoms.at(-1)!.next });
}
