import type { Atom } from './atoms.ts';
import type { Evidence } from './evidence.ts';
import { measureDirection } from './measure-direction.ts';
import { type Reading, said } from './reading.ts';
import { sameValue } from './same-value.ts';

/** Least share of the words of both texts that must be accounted for before a rewritten text is held to ask the same. */
const ENOUGH = 0.7;

/** What a text written anew asks more or less: its quantities against the old ones, then words without a counterpart. */
export function rewrittenEvidence(
  from: Reading,
  to: Reading,
  a: readonly Atom[],
  b: readonly Atom[],
  decided: boolean,
): Evidence[] {
  const evidence = quantitiesAgainst(from, to);
  if (decided || evidence.length > 0) return evidence;
  const [gone, come] = [only(a, b), only(b, a)];
  const all = words(a).length + words(b).length;
  const share = 1 - (gone.length + come.length) / Math.max(1, all);
  if (share >= ENOUGH) return [];
  return [{ direction: 'unclear', what: 'rewritten in other words', from: tell(from, gone), to: tell(to, come) }];
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
    } else found.push({ direction: 'unclear', what: 'value dropped', from: quantity.text, to: '' });
  }
  for (const other of left) found.push({ direction: 'unclear', what: 'value added', from: '', to: other.text });
  return found;
}

const words = (atoms: readonly Atom[]) => atoms.filter(a => a.kind === 'word');

function only(atoms: readonly Atom[], others: readonly Atom[]): Atom[] {
  const known = new Set(others.map(o => o.key));
  return words(atoms).filter(a => !known.has(a.key));
}

const tell = (reading: Reading, atoms: readonly Atom[]) => [...new Set(atoms.map(a => said(reading, a)))].join(', ');
