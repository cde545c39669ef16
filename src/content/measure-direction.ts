import type { Duty } from '../model/crosswalk.ts';
import { base } from './meaning.ts';
import type { Quantity } from './quantities.ts';
import type { Reading } from './reading.ts';
import { bindingOf, clauseAt, roleAt } from './role.ts';
import { sameValue } from './same-value.ts';

const stems = (words: string) => new Set(words.split(/\s+/).map(base));

/** What is the worse, the more there is of it. */
const WORSE = stems(
  'tolerance deviation deviate loss lost leak leakage error drop drift difference gap noise sag delay residue backlash play distortion variation shrinkage deflection settlement sway misalignment waste spill',
);
const FALLS = stems('fall slope gradient pitch incline drain');
const BETWEEN = stems('spacing spaced centre centres center interval intervals apart pitch');
const SIZES = stems(
  'depth deep thick thickness bury buried cover overlap lap embed embedment penetration penetrate seal width wide',
);
const STRENGTHS = stems(
  'rate rated rating carry carries bear withstand resist capacity strength support hold tighten torque',
);
const TESTED = stems('test check inspect sample survey examine measure verify calibrate audit review');
const HEATING = stems('heat hot boil cook warm wash reheat sterilize pasteurize');
const COOLING = stems('cool chill freeze frozen refrigerate cold evacuate vacuum');
const TRIGGERS = new Set(['after', 'at', 'on', 'upon', 'when', 'once', 'if', 'reaches', 'exceeds']);

/** Whether a changed quantity asks for more or less: from comparator, place and subject, never from the bigger number. */
export function measureDirection(from: Reading, a: Quantity, to: Reading, b: Quantity): Duty {
  if (sameValue(a, b)) return 'same';
  const binding = bindingOf(to, clauseAt(to, b.first));
  const role = roleAt(to, b.first);
  if (a.low === b.low && a.high === b.high) return a.open === b.open ? 'same' : 'unclear';
  const bounded = a.low !== a.high || b.low !== b.high;
  if (bounded) {
    const narrower = b.low >= a.low && b.high <= a.high;
    const wider = b.low <= a.low && b.high >= a.high;
    if (!narrower && !wider) return 'mixed';
    // The set of things reached, not of values allowed: walls taller than 2.4 m, when wind exceeds 35 knots.
    const reached =
      (role === 'condition' || (role === 'scope' && binding !== 'permission' && a.open)) && binding !== 'permission';
    const refused = binding === 'ban' && role === 'duty';
    return narrower !== (reached || refused) ? 'stricter' : 'relaxed';
  }
  const more =
    moreIsStricter(from, a, role === 'condition' || role === 'timing') ??
    moreIsStricter(to, b, role === 'condition' || role === 'timing');
  if (more === undefined) return 'unclear';
  const grows = b.low > a.low;
  const stricter = grows === more;
  return stricter !== (binding === 'permission' && role === 'duty' && !isWorse(to, b)) ? 'stricter' : 'relaxed';
}

function nearby(reading: Reading, q: Quantity): string[] {
  const clause = clauseAt(reading, q.first);
  const [first, next] = [Math.max(clause?.first ?? 0, q.spanFirst - 8), Math.min(clause?.next ?? 0, q.spanNext + 4)];
  return reading.tokens.slice(first, next).map(t => base(t.low));
}

const isWorse = (reading: Reading, q: Quantity) => nearby(reading, q).some(w => WORSE.has(w));

/** For a value that is to be met, whether a bigger one asks for more; undefined where the words do not tell. */
function moreIsStricter({ tokens, ...rest }: Reading, q: Quantity, trigger: boolean): boolean | undefined {
  const reading = { tokens, ...rest };
  const words = nearby(reading, q);
  const has = (set: ReadonlySet<string>) => words.some(w => set.has(w));
  const before = tokens[q.spanFirst - 1]?.low ?? '';
  const behind = tokens.slice(q.spanNext, q.spanNext + 2).map(t => t.low);
  if (isWorse(reading, q)) return false;
  const time = q.dimension === 'second1';
  if (q.dimension === '' && has(FALLS)) return true;
  if (q.dimension === '' && has(TESTED)) return true;
  if (behind.includes('apart') || (has(BETWEEN) && q.dimension === 'meter1')) return time;
  if (behind.includes('from') || behind.includes('away') || behind.includes('clear'))
    return q.dimension === 'meter1' ? true : undefined;
  if (trigger || (TRIGGERS.has(before) && q.dimension === 'count')) return q.dimension === 'count' ? false : undefined;
  if (time)
    return before === 'for' ||
      /^(keep|retain|store|hold|wait|cure|dry|leave|soak|rest)$/.test(words[0] ?? '') ||
      before === 'last'
      ? true
      : undefined;
  if (q.dimension === 'count' || q.dimension === 'times') return true;
  if (/kelvin/.test(q.dimension)) return before === 'below' || has(COOLING) ? false : has(HEATING) ? true : undefined;
  if (before === 'to' && tokens[q.spanFirst - 2]?.low === 'down') return false;
  if (q.dimension === 'meter1' && has(SIZES)) return true;
  if (has(STRENGTHS)) return true;
  return undefined;
}
