import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { howMany } from '../reading/how-many.ts';
import { base } from '../reading/meaning.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';
import { opposite } from './evidence.ts';
import { lowAt } from './joints.ts';
import { type Binding, bindingOf, clauseAt, type Role, roleAt } from './role.ts';

/** What may stand beside a word of how many and says no more: at most times, in all cases, a random sample of the. */
const BESIDE = new Set('at in on of the a an times time cases case occasions only random representative'.split(' '));

/** All that became most, every that became one in ten, always that became usually, and the other way about. */
export function reachChanged(
  from: Reading,
  to: Reading,
  out: readonly Atom[],
  come: readonly Atom[],
): Evidence | undefined {
  const [before, after] = [
    out.length === 0 ? (allBut(to, come) ?? everyOf(from, to, come)) : reachIn(from, out),
    come.length === 0 ? (allBut(from, out) ?? everyOf(to, from, out)) : reachIn(to, come),
  ];
  if (before === undefined || after === undefined || before === after) return undefined;
  const words = { from: phrase(from, out), to: phrase(to, come) };
  return { direction: directionOf(from, before, out, to, after, come), what: 'reach changed', ...words };
}

/** "Most joints" for "joints", "at most times" put in: what says nothing of how many meant all. */
function allBut(reading: Reading, atoms: readonly Atom[]): number | undefined {
  const at = atoms.find(a => PART.has(lowAt(reading, a.first)))?.first;
  if (at === undefined || lowAt(reading, at - 1) === 'the' || /^(?:ADJ|ADV)$/.test(reading.tags[at + 1] ?? ''))
    return undefined;
  // "take a sample of water" takes one; "test a sample of the welds" leaves the others.
  if (/^samples?$/.test(lowAt(reading, at)) && !/^(?:the|all|its|their)$/.test(lowAt(reading, at + 2)))
    return undefined;
  const { binding, role } = placeOf(reading, at);
  return role === 'duty' || role === 'scope' ? (binding === 'permission' ? Number.NaN : 4) : Number.NaN;
}

/** "Every tank" where the other says "at least one tank": the words for all are no atoms of their own. */
function everyOf(reading: Reading, other: Reading, atoms: readonly Atom[]): number | undefined {
  const one = atoms.length === 1 ? atoms[0]!.quantity : undefined;
  if (!one || !isAtLeastOne(one)) return undefined;
  const thing = base(lowAt(other, one.spanNext));
  const at = reading.tokens.findIndex(
    (t, i) => /^(?:every|each|all)$/.test(t.low) && [1, 2].some(n => base(lowAt(reading, i + n)) === thing),
  );
  if (at < 0) return undefined;
  const { binding, role } = placeOf(reading, at);
  return binding === 'ban' && role === 'duty' ? Number.NaN : 4;
}

const isAtLeastOne = (q: Quantity) =>
  q.kind === 'count' && q.dimension === 'count' && q.comparator === 'min' && q.low === 1;

const PART = new Set('most mostly majority half sample samples sometimes occasionally rarely seldom'.split(' '));

function directionOf(
  from: Reading,
  before: number,
  out: readonly Atom[],
  to: Reading,
  after: number,
  come: readonly Atom[],
): Duty {
  if (Number.isNaN(before) || Number.isNaN(after)) return 'unclear';
  const [reading, [atom]] = come.length > 0 ? [to, come] : [from, out];
  const { binding, role } = placeOf(reading, atom!.first);
  const direction: Duty = after > before ? 'stricter' : 'relaxed';
  // "where all lamps fail" is the case less often than "where one lamp fails".
  const isTurned = role === 'condition' ? binding !== 'permission' : role === 'exception' || binding === 'permission';
  return isTurned && role !== 'exception' ? opposite(direction) : direction;
}

const placeOf = (reading: Reading, at: number): { binding: Binding; role: Role } => ({
  binding: bindingOf(reading, clauseAt(reading, at)),
  role: roleAt(reading, at),
});

/** How many of the things the words take in; undefined where they say something else, not a number where nobody can tell. */
function reachIn(reading: Reading, atoms: readonly Atom[]): number | undefined {
  const [first] = atoms;
  if (!first || atoms.length > 6) return undefined;
  // One weld in ten, 90 % of the welds.
  const share = atoms.find(a => a.quantity)?.quantity;
  if (share?.dimension === '' && share.high < 1 && atoms.every(a => a.quantity || isBeside(reading, a))) return 1;
  if (atoms.length === 1 && first.quantity && isAtLeastOne(first.quantity)) return 1;
  const known = atoms.filter(a => !isBeside(reading, a));
  if (known.length !== 1 || known[0]!.next - known[0]!.first > 1) return undefined;
  return levelAt(reading, known[0]!.first);
}

const isBeside = ({ tokens }: Reading, atom: Atom) => tokens.slice(atom.first, atom.next).every(t => BESIDE.has(t.low));

function levelAt(reading: Reading, at: number): number | undefined {
  const low = lowAt(reading, at);
  const level = howMany(low);
  if (level === undefined) return undefined;
  if (low === 'either') {
    const { binding, role } = placeOf(reading, at);
    // "at either end" = "at each end"; "paint either side" is one of them; "do not open either" is none.
    const isPlace = /^(?:at|on|to|from|along|of)$/.test(lowAt(reading, at - 1));
    if (binding === 'ban' && role === 'duty') return 4;
    return isPlace && SIDES.test(lowAt(reading, at + 1)) ? 4 : 1;
  }
  if (level === 4) {
    const { binding, role } = placeOf(reading, at);
    // "if any lamp fails": one is enough. "do not open all": whether one may be opened nobody can tell.
    if (low === 'any' && (role === 'condition' || role === 'exception')) return 1;
    if (low !== 'any' && low !== 'always' && binding === 'ban' && role === 'duty') return Number.NaN;
  }
  return level;
}

const SIDES = /^(?:ends?|sides?|faces?|edges?|directions?)$/;

/**
 * The last look at texts in which nothing was found that asks more or less: one of them says "most" or "sometimes" and the
 * other does not, wherever it stands.
 */
export function reachLeft(from: Reading, to: Reading): Evidence[] {
  const [before, after] = [partialsIn(from), partialsIn(to)];
  if (before.map(p => p.level).join() === after.map(p => p.level).join()) return [];
  const tell = (list: readonly { low: string }[]) => list.map(p => p.low).join(', ');
  return [{ direction: 'unclear', what: 'reach changed', from: tell(before), to: tell(after) }];
}

function partialsIn(reading: Reading): { level: number; low: string }[] {
  const { tokens, quantities } = reading;
  return tokens
    .flatMap(({ low }, at) => {
      const isMeasured = quantities.some(q => at >= q.spanFirst && at < q.spanNext);
      const isOne = /^(?:one|single)$/.test(low) || (low === 'either' && hasOr(reading, at));
      const level = isMeasured || isOne || howMany(low) === undefined ? undefined : levelAt(reading, at);
      return level === undefined || level === 4 || low === 'any' || Number.isNaN(level) ? [] : [{ level, low }];
    })
    .sort((a, b) => a.level - b.level);
}

const hasOr = ({ tokens }: Reading, at: number) => tokens.slice(at, at + 10).some(t => t.low === 'or');

function phrase(reading: Reading, atoms: readonly Atom[]): string {
  if (atoms.length === 0) return '';
  return said(reading, { first: atoms[0]!.first, next: atoms.at(-1)!.next });
}
