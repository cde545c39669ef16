import type { Evidence } from '../../model/duty-evidence.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';
import { type Reading, said, withoutStretches } from '../reading/reading.ts';
import { AIMS } from '../reading/segments.ts';
import type { Stretch } from '../reading/sentences.ts';
import { type Atom, alignAtoms } from './atoms.ts';
import { opposite } from './evidence.ts';
import { bindingOf, clauseAt } from './role.ts';

/** Two texts without the sentences that only one of them has, and what these sentences ask. */
export interface WithoutSentences {
  readonly from: Reading;
  readonly to: Reading;
  readonly evidence: readonly Evidence[];
}

/** Least share of a sentence's words that the other text has not in its order, before it is a sentence of its own. */
const STRANGE = 0.75;

/**
 * Takes out sentences that came or went as wholes: each asks or permits something by itself.
 *
 *   old: Fit the lid.
 *   new: Fit the lid. Gaskets shall be greased.     Word by word, "gaskets" stands before a modal verb and would narrow
 *                                                   what the old sentence is about: relaxed instead of stricter.
 *
 * Where both texts have such sentences, one may say the other in new words; both are left for the words to tell.
 */
export function withoutSentences(from: Reading, to: Reading, a: readonly Atom[], b: readonly Atom[]): WithoutSentences {
  const { pairs } = alignAtoms(a, b);
  const gone = strange(from, a, new Set(pairs.map(([x]) => x)), b);
  const come = strange(to, b, new Set(pairs.map(([, y]) => y)), a);
  const more = to.sentences.length - from.sentences.length;
  if (more > 0 && gone.length === 0 && come.length > 0 && come.length <= more) {
    return { from, to: withoutStretches(to, come), evidence: come.map(s => told(to, s, 'added')) };
  }
  if (more < 0 && come.length === 0 && gone.length > 0 && gone.length <= -more) {
    return { from: withoutStretches(from, gone), to, evidence: gone.map(s => told(from, s, 'dropped')) };
  }
  return { from, to, evidence: [] };
}

function strange(
  { sentences }: Reading,
  atoms: readonly Atom[],
  paired: ReadonlySet<Atom>,
  others: readonly Atom[],
): Stretch[] {
  const stated = new Set(others.map(o => o.key));
  const values = others.flatMap(o => o.quantity ?? []);
  // In order of the text, so that each sentence takes its own without a look at all the others'.
  const telling = atoms.filter(x => x.kind === 'word' || x.kind === 'quantity').sort((x, y) => x.first - y.first);
  let at = 0;
  return sentences.filter(({ first, next }) => {
    while (at < telling.length && telling[at]!.first < first) at++;
    let end = at;
    while (end < telling.length && telling[end]!.first < next) end++;
    const own = telling.slice(at, end);
    // What the other text says in another order came from there.
    const isNew = own.filter(x => !stated.has(x.key)).length >= own.length / 2;
    // "Their width shall be at least 6 mm" may have become "with a width of no less than 6 mm".
    const mine = own.flatMap(x => x.quantity ?? []);
    const isToldWith = (q: Quantity) => values.some(other => sameValue(q, other));
    if (mine.length > 0 && mine.every(isToldWith)) return false;
    return isNew && own.length > 1 && own.filter(x => !paired.has(x)).length >= STRANGE * own.length;
  });
}

function told(reading: Reading, sentence: Stretch, how: 'added' | 'dropped'): Evidence {
  if (explains(reading, sentence)) {
    const words = said(reading, sentence);
    return how === 'added'
      ? { direction: 'same', what: 'explanation added', from: '', to: words }
      : { direction: 'same', what: 'explanation dropped', from: words, to: '' };
  }
  const permits = bindingOf(reading, clauseAt(reading, sentence.first)) === 'permission' || isEnough(reading, sentence);
  const direction = permits ? 'relaxed' : 'stricter';
  const words = said(reading, sentence);
  return how === 'added'
    ? { direction, what: 'sentence added', from: '', to: words }
    : { direction: opposite(direction), what: 'sentence dropped', from: words, to: '' };
}

/** "On sloping sites 75 mm is enough" lets less do. */
const isEnough = ({ tokens }: Reading, { first, next }: Stretch) =>
  tokens
    .slice(first, next)
    .some(
      ({ low }, at, own) =>
        /^suffices?$/.test(low) ||
        (/^(?:enough|sufficient)$/.test(low) && /^(?:is|are|be)$/.test(own[at - 1]?.low ?? '')),
    );

/** "This prevents breakage of the wax." says why. */
const explains = ({ tokens }: Reading, { first }: Stretch) =>
  /^(?:this|these|that|those)$/.test(tokens[first]!.low) &&
  AIMS.has(tokens[first + 1]?.low.replace(/(?:(?<=[sx])e)?s$/, '') ?? '');
