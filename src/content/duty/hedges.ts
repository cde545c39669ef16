import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import { PARTICLES } from '../reading/plain-verbs.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';
import { opposite } from './evidence.ts';
import { bindingOf, clauseAt } from './role.ts';

/** Words that loosen what they stand beside, wherever it stands: "on average", "generally", "where possible" in one word. */
const LOOSE = new Set(
  'average averaged mean typically generally normally usually preferably ideally nominally approximately roughly mainly mostly largely'.split(
    ' ',
  ),
);

/** A loosening word that came or went: looser or firmer, whatever clause it stands in, but for a permission or a ban. */
export function hedgeChanged(
  from: Reading,
  to: Reading,
  out: readonly Atom[],
  come: readonly Atom[],
): Evidence | undefined {
  const [gone, new_] = [isLoose(from, out), isLoose(to, come)];
  if (gone === new_ || bindingOf(to, clauseAt(to, (come[0] ?? out[0])!.first)) !== 'duty') return undefined;
  const direction: Duty = new_ ? 'relaxed' : opposite('relaxed');
  return { direction, what: new_ ? 'loosened' : 'made firm', from: phrase(from, out), to: phrase(to, come) };
}

/** Nothing but the loosening word and small words: "on average over all" for "at every". */
function isLoose(reading: Reading, atoms: readonly Atom[]): boolean {
  const words = atoms.filter(a => (a.kind === 'word' && !PARTICLES.has(a.key)) || a.kind === 'quantity');
  return words.length === 1 && LOOSE.has(reading.tokens[words[0]!.first]!.low);
}

const phrase = (reading: Reading, atoms: readonly Atom[]) =>
  atoms.length === 0 ? '' : said(reading, { first: atoms[0]!.first, next: atoms.at(-1)!.next });
