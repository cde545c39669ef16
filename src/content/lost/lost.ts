import type { Evidence } from '../../model/duty-evidence.ts';
import { compareDuty } from '../duty/compare-duty.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';
import { valueIndex } from '../quantities/value-index.ts';
import { joinedAs } from '../reading/compounds.ts';
import { type Reading, readText } from '../reading/reading.ts';
import type { Reference } from '../reading/references.ts';
import { tokensLately } from '../reading/tokens.ts';
import { changedValues } from './changed-values.ts';
import { cutOut } from './lost-runs.ts';
import { lostSegments } from './lost-segments.ts';
import { withDropped } from './lost-sentences.ts';
import { lostThings } from './lost-things.ts';
import { misplacedMaterials, misplacedValue } from './misplaced.ts';
import { statedIn } from './stated-words.ts';

/** Something that an old text says and none of its heirs does, in the old text's words. */
export interface Lost {
  /**
   * `thing`: a component, or whatever else a noun names that is no plain name of a material or a paper. `clause`: words
   * that were cut out of a text that otherwise goes on, whatever they say.
   */
  readonly kind: 'quantity' | 'condition' | 'exception' | 'material' | 'document' | 'thing' | 'reference' | 'clause';
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

/**
 * What of a text none of its heirs states any more: quantities, conditions, exceptions, things and references, and the
 * sentences and demands that `compareDuty` calls dropped.
 */
export function lostFrom(from: string, heirs: readonly string[]): readonly Lost[] {
  return retentionOf(
    readText(from),
    heirs.map(text => readText(text)),
    [],
    compareDuty(from, heirs.join('\n')).evidence,
  ).lost;
}

/**
 * The same, of texts already read, with the values that changed told apart.
 *
 * @param context what holds for the heirs without being their words: titles and purposes of what they stand in
 * @param evidence of the comparison of what the old text and its heirs ask
 */
export function retentionOf(
  old: Reading,
  says: readonly Reading[],
  context: readonly Reading[] = [],
  evidence: readonly Evidence[] = [],
): RetentionOfText {
  const from = says.reduce(joinedAs, old);
  const heirs = says.map(heir => joinedAs(heir, old));
  const all = [...heirs, ...context];
  const { lost: quantities, changed } = valuesOf(from, heirs, all);
  for (const { to, ...place } of misplacedMaterials(from, heirs)) {
    if (to === undefined) quantities.push({ kind: 'material', ...place });
    else changed.push({ ...place, to });
  }
  const segments = lostSegments(from, all, q => !quantities.some(l => l.start === q.start));
  const alone = [...quantities, ...lostReferences(from, all)].filter(l => !segments.some(s => within(l, s)));
  const found = [...alone, ...segments];
  // A thing inside a lost condition is told of with it.
  const apart = (l: Lost) => !found.some(f => l.start < f.end && f.start < l.end);
  const things = lostThings(from, heirs, all).filter(apart);
  found.push(...things);
  const cuts = cutOut(from, heirs, all).filter(apart);
  const inOrder = (a: { start: number }, b: { start: number }) => a.start - b.start;
  const lost = joined(from.text, [...found, ...cuts].sort(inOrder));
  return {
    lost: withDropped(old, lost, evidence, all),
    changed: changed.filter(c => !segments.some(s => within(c, s))).sort(inOrder),
  };
}

/** "a deflection" and "1/100 of the span", lost side by side, are one loss: "deflection of no more than 1/100 of the span". */
function joined(text: string, lost: readonly Lost[]): Lost[] {
  const whole: Lost[] = [];
  for (const loss of lost) {
    const last = whole.at(-1);
    const isOne = last && [last, loss].some(l => l.kind === 'quantity') && OF.test(text.slice(last.end, loss.start));
    if (!isOne) whole.push(loss);
    else whole.splice(-1, 1, { ...last, kind: 'quantity', text: text.slice(last.start, loss.end), end: loss.end });
  }
  return whole;
}

const OF = /^\s{1,3}(?:of\s{1,3})?(?:(?:a|an|the)\s{1,3})?$/;

const within = (a: { start: number; end: number }, b: { start: number; end: number }) =>
  a.start >= b.start && a.end <= b.end;

function valuesOf(from: Reading, heirs: readonly Reading[], all: readonly Reading[]) {
  const lost: Lost[] = [];
  const changed: Changed[] = [];
  if (from.quantities.length === 0) return { lost, changed };
  const said = valueIndex(
    all.flatMap(heir => heir.quantities.map(q => ({ heir, q: asKept(heir, q) }))),
    s => s.q,
  );
  const letters = all.map(heir => lettersOf(heir.text));
  const missing: Quantity[] = [];
  for (const q of from.quantities) {
    if (isOne(q) || isElliptic(from, q)) continue;
    const groups = said.near(q).filter(group => states(group.q, q));
    const count = groups.reduce((n, group) => n + group.all.length, 0);
    // A value of another thing states nothing of this one; one that stands everywhere is no other thing's.
    const misplaced =
      count > 0 && count < MANY
        ? misplacedValue(
            from,
            q,
            groups.flatMap(g => g.all),
            heirs,
            statedIn(heirs),
          )
        : undefined;
    if (misplaced) {
      const { to, ...loss } = misplaced;
      if (to === undefined) lost.push({ kind: 'quantity', ...loss });
      else changed.push({ ...loss, to });
    } else if (count === 0 && !letters.some(text => text.includes(lettersOf(q.text)))) missing.push(q);
  }
  if (missing.length === 0) return { lost, changed };
  const before = valueIndex(from.quantities, q => q);
  const fresh = heirs.flatMap(heir => heir.quantities.filter(q => !before.has(q)).map(q => ({ heir, q })));
  for (const { q, to } of changedValues(from, missing, fresh)) {
    const { text, start, end } = q;
    if (to) changed.push({ text, start, end, to: to.text });
    else lost.push({ kind: 'quantity', text, start, end });
  }
  return { lost, changed };
}

const MANY = 20;

/** A text as a row of words between spaces, so that a phrase is found in it word by word: " grit 2 6 ". */
const lettersOf = (text: string) =>
  ` ${tokensLately(text)
    .map(t => t.low)
    .join(' ')} `;

/** "one", "a" and "at least one" count the same. */
const isOne = (q: Quantity) => q.dimension === 'count' && q.low === 1 && (q.high === 1 || q.comparator === 'min');

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
  // "100 to 150 mm" is at least 100 mm and at most 150 mm.
  if (isRange(heir) && !isRange(old)) return met(old) ? false : near(heir.low, old.low) || near(heir.high, old.high);
  if (isRange(heir) !== isRange(old)) return false;
  const [now, was] = [figure(heir), figure(old)];
  if (!near(now, was)) return false;
  return (
    met(old) ||
    (heir.kind === 'interval' && old.comparator === 'max') ||
    (heir.open !== old.open && !met(heir)) ||
    heir.kind === 'tolerance'
  );
}

const met = (q: Quantity) => q.low === q.high || q.kind === 'interval' || q.kind === 'tolerance';

const near = (a: number, b: number) =>
  Number.isFinite(a) && Number.isFinite(b) && Math.abs(a - b) <= 1e-4 * Math.max(Math.abs(a), Math.abs(b));

/** Between two values; their difference is no figure that a single one could state. */
const isRange = ({ kind, low, high }: Quantity) =>
  kind === 'range' && low !== high && Number.isFinite(low) && Number.isFinite(high);

/** The number that a text gives. */
function figure({ low, high }: Quantity): number {
  return Number.isFinite(high) ? high : low;
}

function lostReferences(from: Reading, heirs: readonly Reading[]): Lost[] {
  const keys = new Set(heirs.flatMap(heir => heir.references.map(r => r.key)));
  return from.references
    .filter(
      r =>
        !keys.has(r.key) &&
        !isNamedAnew(from, r, heirs) &&
        !from.sentences.some(s => s.next > r.first && s.next < r.next),
    )
    .map(({ first, next }) => {
      const [start, end] = [from.tokens[first]!.start, from.tokens[next - 1]!.end];
      return { kind: 'reference', text: from.text.slice(start, end), start, end };
    });
}

/** "class 2" that is "class 3" now, "at least QP 54" that is "at least QP 65": what was named has another grade or number. */
function isNamedAnew({ tokens }: Reading, { key, kind, first }: Reference, heirs: readonly Reading[]): boolean {
  const isBound = tokens.slice(Math.max(0, first - 3), first).some(t => t.low === 'least' || t.low === 'most');
  if (kind === 'standard' && !isBound) return false;
  return heirs.some(heir => heir.references.some(r => lettersBefore(r.key) === lettersBefore(key)));
}

const lettersBefore = (key: string) => key.replace(/\d.*$/, '');
