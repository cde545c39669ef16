import type { Reading } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';

/** The folded word at a place, or `` beyond the text. */
export const lowAt = (reading: Reading, at: number) => reading.tokens[at]?.low ?? '';

/** Whether the words stand beside "and" or "or". */
export function jointBeside(reading: Reading, atoms: readonly Atom[]): 'and' | 'or' | undefined {
  const own = atoms.find(a => a.kind === 'joint');
  if (own) return own.key as 'and' | 'or';
  const [first, last] = [atoms[0]!.first, atoms.at(-1)!.next];
  for (const at of [first - 1, first - 2, last, last + 1]) {
    const low = lowAt(reading, at);
    if (low === 'and' || low === 'or') return low;
    if (low === 'nor') return 'or';
  }
  if (lowAt(reading, first - 1) !== ',' && lowAt(reading, last) !== ',') return undefined;
  // In the middle of "A, B, C or D" the joint stands farther on.
  for (let at = last; at < last + 16; at++) {
    const low = lowAt(reading, at);
    if (low === 'and' || low === 'or') return low;
    if (low === '.' || low === ';' || low === '') return undefined;
  }
  return undefined;
}
