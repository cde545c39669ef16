import type { Duty } from '../../model/crosswalk.ts';
import { ORDINALS } from '../quantities/intervals.ts';
import type { Reading } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';

/**
 * "a class of at least IP 54" that became "at least IP 65": numbers that name a class are no quantities, but a bound in
 * front of them says that they rise. So does "every" before "tenth". Undefined for names without a bound.
 */
export function codeDirection(
  from: Reading,
  to: Reading,
  out: readonly Atom[],
  come: readonly Atom[],
): Duty | undefined {
  const [a, b] = [boundOf(from, out), boundOf(to, come)];
  if (!a || !b || a.bound !== b.bound || a.number === b.number) return undefined;
  return b.number > a.number === (a.bound === 'least') ? 'stricter' : 'relaxed';
}

function boundOf({ tokens }: Reading, atoms: readonly Atom[]): { bound: 'least' | 'most'; number: number } | undefined {
  const [atom] = atoms;
  const token = tokens[atom?.first ?? -1];
  const turn = ORDINALS.get(token?.low ?? '');
  if (turn && atoms.length === 1 && /^(?:every|each)$/.test(tokens[atom!.first - 1]?.low ?? '')) {
    return { bound: 'most', number: turn };
  }
  if (!atom || atoms.length > 1 || token?.kind !== 'number') return undefined;
  const before = tokens
    .slice(Math.max(0, atom.first - REACH), atom.first)
    .map(t => t.low)
    .join(' ');
  const number = Number(token.low.replace(',', '.'));
  if (/\b(?:at least|minimum|not (?:less|lower) than|no (?:less|lower) than)\b/.test(before))
    return { bound: 'least', number };
  if (/\b(?:at most|maximum|not (?:more|higher) than|no (?:more|higher) than)\b/.test(before))
    return { bound: 'most', number };
  return undefined;
}

const REACH = 5;
