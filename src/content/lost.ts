import { type Atom, alignAtoms, atomsOf } from './atoms.ts';
import { changedValues } from './changed-values.ts';
import { meaning } from './meaning.ts';
import type { Quantity } from './quantities.ts';
import { type Reading, readText, said } from './reading.ts';
import { sameValue } from './same-value.ts';

/** Something that an old text says and none of its heirs does, in the old text's words. */
export interface Lost {
  readonly kind: 'quantity' | 'condition' | 'exception' | 'thing' | 'reference';
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** A value of an old text that its heirs state otherwise, of the same thing. */
export interface Changed {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** In the heir's words. */
  readonly to: string;
}

export interface RetentionOfText {
  readonly lost: readonly Lost[];
  readonly changed: readonly Changed[];
}

/** What of a text none of its heirs states any more: quantities, conditions, exceptions, things and references. */
export function lostFrom(from: string, heirs: readonly string[]): readonly Lost[] {
  return retentionOf(
    readText(from),
    heirs.map(text => readText(text)),
  ).lost;
}

/**
 * The same, of texts already read, with the values that changed told apart.
 *
 * @param context what holds for the heirs without being their words: titles and purposes of what they stand in
 */
export function retentionOf(
  from: Reading,
  heirs: readonly Reading[],
  context: readonly Reading[] = [],
): RetentionOfText {
  const all = [...heirs, ...context];
  const { lost: quantities, changed } = valuesOf(from, heirs, all);
  const found = [...quantities, ...lostReferences(from, all), ...lostSegments(from, all)];
  // A thing inside a lost condition is told of with it.
  const things = lostThings(from, heirs, all).filter(t => !found.some(f => t.start < f.end && f.start < t.end));
  const inOrder = (a: { start: number }, b: { start: number }) => a.start - b.start;
  return { lost: [...found, ...things].sort(inOrder), changed: changed.sort(inOrder) };
}

function valuesOf(from: Reading, heirs: readonly Reading[], all: readonly Reading[]) {
  const stated = all.flatMap(heir => heir.quantities.map(q => asKept(heir, q)));
  const missing = from.quantities.filter(q => !isOne(q) && !isElliptic(from, q) && !stated.some(s => states(s, q)));
  const lost: Lost[] = [];
  const changed: Changed[] = [];
  if (missing.length === 0) return { lost, changed };
  const fresh = heirs.flatMap(heir =>
    heir.quantities.filter(q => !from.quantities.some(old => states(q, old))).map(q => ({ heir, q })),
  );
  for (const { q, to } of changedValues(from, missing, fresh)) {
    const { text, start, end } = q;
    if (to) changed.push({ text, start, end, to: to.text });
    else lost.push({ kind: 'quantity', text, start, end });
  }
  return { lost, changed };
}

/** "one" and "a" count the same. */
const isOne = (q: Quantity) => q.dimension === 'count' && q.low === 1 && q.high === 1;

/** "for seven days and kept free of traffic for three": a number whose unit stands elsewhere. */
const isElliptic = ({ tokens }: Reading, { dimension, next }: Quantity) =>
  dimension === 'count' && tokens[next]?.kind !== 'word' && tokens[next]?.kind !== 'number';

/** "keep 1 m from it" sets a least distance. */
function asKept({ tokens }: Reading, q: Quantity): Quantity {
  const kept =
    q.comparator === 'exact' && q.low === q.high && /^(from|away|clear|off)$/.test(tokens[q.spanNext]?.low ?? '');
  return kept ? { ...q, high: Number.POSITIVE_INFINITY } : q;
}

/**
 * A value that was to be met is still stated as a bound, and a least as what lies below it ("below 63 °C is thrown away");
 * a bound without its "at least" is not.
 */
function states(heir: Quantity, old: Quantity): boolean {
  if (sameValue(heir, old)) return true;
  const counted = (q: Quantity) => (q.dimension === 'times' ? 'count' : q.dimension);
  if (counted(heir) !== counted(old)) return false;
  const [now, was] = [figure(heir), figure(old)];
  if (Math.abs(now - was) > 1e-4 * Math.max(Math.abs(now), Math.abs(was))) return false;
  const met = (q: Quantity) => q.low === q.high || q.kind === 'interval' || q.kind === 'tolerance';
  return met(old) || (heir.open !== old.open && !met(heir)) || heir.kind === 'tolerance';
}

/** The number that a text gives. */
function figure({ low, high }: Quantity): number {
  return Number.isFinite(high) ? high : low;
}

function lostReferences(from: Reading, heirs: readonly Reading[]): Lost[] {
  const keys = new Set(heirs.flatMap(heir => heir.references.map(r => r.key)));
  return from.references
    .filter(r => !keys.has(r.key))
    .map(({ first, next }) => {
      const [start, end] = [from.tokens[first]!.start, from.tokens[next - 1]!.end];
      return { kind: 'reference', text: from.text.slice(start, end), start, end };
    });
}

function lostSegments(from: Reading, heirs: readonly Reading[]): Lost[] {
  const stated = statedIn(heirs);
  const values = heirs.flatMap(heir => heir.quantities);
  return from.segments.flatMap((segment): Lost[] => {
    const { kind } = segment;
    if (kind !== 'condition' && kind !== 'exception') return [];
    const words = from.meanings.slice(segment.first, segment.next).filter(Boolean);
    const inner = from.quantities.filter(q => q.first >= segment.first && q.first < segment.next);
    const size = words.length + inner.length;
    const known = words.filter(w => stated.has(w)).length + inner.filter(q => values.some(v => states(v, q))).length;
    if (size === 0 || known >= size / 2) return [];
    // "if it does so" names nothing of its own.
    const names =
      inner.length > 0 || from.tags.slice(segment.first, segment.next).some(t => /^(NOUN|PROPN|ADJ)$/.test(t));
    if (!names) return [];
    const start = from.tokens[segment.first]!.start;
    const text = said(from, segment);
    return [{ kind, text, start, end: start + text.length }];
  });
}

function statedIn(heirs: readonly Reading[]): Set<string> {
  const stated = new Set(heirs.flatMap(heir => heir.meanings.filter(Boolean)));
  // What a quantity counts may stand inside it: 1.5 sones or less.
  for (const { tokens, quantities } of heirs) {
    for (const q of quantities) for (const t of tokens.slice(q.spanFirst, q.spanNext)) stated.add(meaning(t.low));
  }
  return stated;
}

/** Runs of words that no heir says, where an heir has no words of its own in their place that could say the same. */
function lostThings(from: Reading, heirs: readonly Reading[], all: readonly Reading[]): Lost[] {
  const stated = statedIn(all);
  const own = new Set(from.meanings.filter(Boolean));
  const atoms = atomsOf(from);
  const gone = atoms.filter(a => a.kind === 'word' && !stated.has(a.key));
  if (gone.length === 0) return [];
  const explained = new Set<Atom>();
  let fresh = 0;
  for (const heir of heirs) {
    const others = atomsOf(heir);
    fresh += others.filter(o => isThing(heir, o) && !own.has(o.key)).length;
    for (const { out, in: come } of alignAtoms(atoms, others).hunks) {
      if (come.some(c => c.kind === 'word' && !own.has(c.key))) for (const atom of out) explained.add(atom);
    }
  }
  return runsOf(from, gone)
    .filter(run => run.some(a => isThing(from, a) && !isTopic(from, a)) && !isShortened(from, run, stated))
    .filter(run => fresh === 0 || !run.every(a => explained.has(a)))
    .map(run => {
      const text = said(from, { first: run[0]!.first, next: run.at(-1)!.next });
      const start = from.tokens[run[0]!.first]!.start;
      return { kind: 'thing', text, start, end: start + text.length };
    });
}

/** "acrylic sealer" that goes on as "acrylic", "stainless steel screws" as "stainless screws". */
function isShortened({ tokens, meanings, tags }: Reading, run: readonly Atom[], stated: ReadonlySet<string>): boolean {
  const at = run[0]!.first - 1;
  const named = meanings[at] !== '' && stated.has(meanings[at] ?? '') && tags[at] !== 'VERB' && tags[at] !== 'ADV';
  return run.length === 1 && named && tokens[at]!.kind === 'word';
}

/** Neighbours with nothing but small words between. */
function runsOf(from: Reading, atoms: readonly Atom[]): Atom[][] {
  const runs: Atom[][] = [];
  for (const atom of atoms) {
    const last = runs.at(-1)?.at(-1);
    const between = last ? from.tokens.slice(last.next, atom.first) : [];
    const parted = between.some(
      (t, i) => t.kind === 'number' || from.meanings[last!.next + i] !== '' || /^(,|;|\.|and)$/.test(t.low),
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
function isTopic({ clauses, segments, tokens, tags }: Reading, atom: Atom): boolean {
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

/** Nouns of part, place and measure, which a shorter text does without. */
const LIGHT = new Set(
  `depth height width length thickness size weight load side part end point place piece area level gap first second coat type kind way
ground free top case time number amount unit use work position start begin surface purpose manner member element item resistance value`
    .split(/\s+/)
    .map(meaning),
);

/** A noun, name, number or adjective, not a verb. */
function isThing({ tags, tokens, clauses }: Reading, atom: Atom): boolean {
  if (atom.kind !== 'word' || LIGHT.has(atom.key)) return false;
  if (tokens[atom.first]!.kind === 'number') return true;
  const commanded = clauses.some(c => c.force.imperative && c.first === atom.first);
  const tag = tags[atom.first];
  // "and files it": what has an object is no noun.
  if (/^(it|them)$/.test(tokens[atom.next]?.low ?? '')) return false;
  return !commanded && (tag === 'NOUN' || tag === 'PROPN' || tag === 'ADJ');
}
