import { type Atom, alignAtoms, atomsOf } from './atoms.ts';
import type { Lost } from './lost.ts';
import { isThing, isTopic } from './lost-things.ts';
import { type Reading, said } from './reading.ts';

/** Less of an old text than this in an heir, in its order, and the heir was written anew: what is gone proves nothing. */
const COPIED = 0.6;

/**
 * Stretches of an old text that were cut out of an heir which otherwise goes along with it: little or nothing stands in
 * their place, and they were not moved. Their words may all be said elsewhere ("clay fill to 92 % and gravel fill to 97 %"
 * that goes on as "gravel fill to 97 %"), so that no list of words shows the loss.
 */
export function cutOut(from: Reading, heirs: readonly Reading[], all: readonly Reading[] = heirs): Lost[] {
  const atoms = atomsOf(from);
  const aligned = heirs.map(heir => ({ heir, ...alignAtoms(atoms, atomsOf(heir)) }));
  const closest = aligned.reduce(
    (a, b) => (b.pairs.length > (a?.pairs.length ?? -1) ? b : a),
    undefined as (typeof aligned)[number] | undefined,
  );
  if (!closest || closest.pairs.length < COPIED * atoms.length) return [];
  const arrived = new Set(closest.hunks.flatMap(h => h.in).map(a => a.key));
  const others = all.filter(h => h !== closest.heir).map(h => new Set(atomsOf(h).map(a => a.key)));
  return closest.hunks.flatMap(({ out, in: come }): Lost[] => {
    const says = out.filter(isSaid);
    if (says.length < 2) return [];
    // What only moved arrives in another place.
    const gone = says.filter(a => !arrived.has(a.key) && !others.some(o => o.has(a.key)));
    if (from.segments.some(s => isSilent(s.kind) && says.every(a => a.first >= s.first && a.first < s.next))) return [];
    // A list that names its head once ("treated posts and treated battens"), or a subject that is only shortened.
    const things = new Set(gone.filter(a => isThing(from, a) && !isTopic(from, a)).map(a => a.key));
    const instead = come.filter(isSaid).length;
    if (things.size < 2 + instead && (instead > 0 || !gone.some(a => a.kind === 'quantity'))) return [];
    const [first, next] = [says[0]!.first, says.at(-1)!.next];
    const start = from.tokens[first]!.start;
    const text = said(from, { first, next });
    return [{ kind: 'clause', text, start, end: start + text.length }];
  });
}

const isSaid = (a: Atom) => a.kind === 'word' || a.kind === 'quantity';
const isSilent = (kind: string) => kind === 'purpose' || kind === 'soft';
