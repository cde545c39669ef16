import type { Quantity } from '../quantities/quantities.ts';
import { isForceWord } from '../reading/force.ts';
import { base } from '../reading/meaning.ts';
import { idleEnd } from '../reading/phrases.ts';
import type { Reading } from '../reading/reading.ts';
import { remembered } from '../reading/remembered.ts';

/** The smallest parts in which two texts are compared: a word that says something, or a whole quantity. */
export interface Atom {
  /** Equal for words of one meaning; of a quantity its dimension alone, so that 50 mm stands against 2 in. */
  readonly key: string;
  readonly kind: 'word' | 'joint' | 'relation' | 'quantity';
  /** Tokens. */
  readonly first: number;
  readonly next: number;
  readonly quantity?: Quantity;
}

const SILENT = new Set(
  `a an the is are be been being was were am shall must should may can will not no nor to of that this these those it its
they them their such there has have had do does also so as please need needs required ought else then`.split(/\s+/),
);
/** 50 mm deep = a depth of 50 mm = 50 mm */
const SIZES = new Set(
  'depth width length height thickness breadth big centre apart spacing interval'.split(' ').map(base),
);
/** "a speed of 50 km/h" = "50 km/h": what the unit says already. */
const MEASURED = new Map(
  [
    ['speed', 'meter1 second-1'],
    ['temperature', 'kelvin1'],
    ['distance', 'meter1'],
    ['duration', 'second1'],
    ['pressure', 'kilogram1 meter-1 second-2'],
    ['weight', 'kilogram1'],
    ['mass', 'kilogram1'],
  ].map(([word, dimension]) => [base(word!), dimension!]),
);
const JOINTS = new Set(['and', 'or']);

/** Articles, forms of "be" and modal verbs are left out: the force of a clause is read from its grammar. */
export const atomsOf = remembered(takenApart);

function takenApart({ tokens, quantities, meanings, segments }: Reading): readonly Atom[] {
  const atoms: Atom[] = [];
  const measured = new Set(quantities.map(q => q.dimension));
  const openers = new Map(segments.flatMap(s => (s.kind === 'condition' && s.opener > 1 ? [[s.first, s.opener]] : [])));
  const begins = new Map(quantities.map(q => [q.spanFirst, q]));
  for (let at = 0; at < tokens.length; ) {
    const quantity = begins.get(at);
    if (quantity && quantity.spanNext > at) {
      atoms.push({ key: `#${quantity.dimension}`, kind: 'quantity', first: at, next: quantity.spanNext, quantity });
      at = quantity.spanNext;
      continue;
    }
    // "in the event of", "on condition that": the segment says so.
    const opened = openers.get(at);
    if (opened !== undefined) {
      at += opened;
      continue;
    }
    const idle = idleEnd(tokens, at);
    if (idle !== undefined) {
      at = idle;
      continue;
    }
    const { kind, low } = tokens[at]!;
    const said = meanings[at]!;
    const behindValue = atoms.at(-1)?.quantity !== undefined && atoms.at(-1)!.next === at;
    // 5 mm in thickness
    if (behindValue && low === 'in' && SIZES.has(meanings[at + 1] ?? '')) {
      at += 2;
      continue;
    }
    const size =
      measured.has(MEASURED.get(said) ?? '-') ||
      (SIZES.has(said) && (behindValue || begins.has(at + 1) || begins.has(at + 2)));
    if (kind !== 'mark' && !isForceWord(low) && !size && (said !== '' || !(SILENT.has(low) || low.endsWith("n't")))) {
      const role = JOINTS.has(low) ? 'joint' : said === '' ? 'relation' : 'word';
      atoms.push({ key: said === '' ? base(low) : said, kind: role, first: at, next: at + 1 });
    }
    at++;
  }
  return atoms;
}

/** What stands between two aligned atoms: left out, put in, or one for the other. */
export interface Hunk {
  readonly out: readonly Atom[];
  readonly in: readonly Atom[];
}

export interface Alignment {
  readonly pairs: readonly (readonly [from: Atom, to: Atom])[];
  readonly hunks: readonly Hunk[];
}

/** Beyond this a table of all pairs takes too long; what both texts begin and end with is aligned alone. */
const MOST = 400_000;

/** The longest common sequence of two lists of atoms, and what lies between. */
export function alignAtoms(a: readonly Atom[], b: readonly Atom[]): Alignment {
  return alignedWith(a)(b);
}

const alignedWith = remembered((a: readonly Atom[]) => remembered((b: readonly Atom[]) => aligned(a, b)));

function aligned(a: readonly Atom[], b: readonly Atom[]): Alignment {
  const places = a.length * b.length > MOST ? endsOnly(a, b) : longestCommon(a, b);
  const hunks: Hunk[] = [];
  let [i, j] = [0, 0];
  for (const [x, y] of [...places, [a.length, b.length] as const]) {
    if (x > i || y > j) hunks.push({ out: a.slice(i, x), in: b.slice(j, y) });
    [i, j] = [x + 1, y + 1];
  }
  return { pairs: places.map(([x, y]) => [a[x]!, b[y]!] as const), hunks };
}

function endsOnly(a: readonly Atom[], b: readonly Atom[]): [number, number][] {
  const places: [number, number][] = [];
  const least = Math.min(a.length, b.length);
  let head = 0;
  while (head < least && a[head]!.key === b[head]!.key) places.push([head, head++]);
  let tail = 0;
  while (tail < least - head && a.at(-1 - tail)!.key === b.at(-1 - tail)!.key) tail++;
  for (let k = tail; k > 0; k--) places.push([a.length - k, b.length - k]);
  return places;
}

function longestCommon(a: readonly Atom[], b: readonly Atom[]): [number, number][] {
  const width = b.length + 1;
  const lengths = new Uint16Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      lengths[i * width + j] =
        a[i]!.key === b[j]!.key
          ? lengths[(i + 1) * width + j + 1]! + 1
          : Math.max(lengths[(i + 1) * width + j]!, lengths[i * width + j + 1]!);
    }
  }
  const places: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    if (a[i]!.key === b[j]!.key) places.push([i++, j++]);
    else if (lengths[(i + 1) * width + j]! >= lengths[i * width + j + 1]!) i++;
    else j++;
  }
  return places;
}
