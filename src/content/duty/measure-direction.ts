import type { Duty } from '../../model/crosswalk.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';
import { base } from '../reading/meaning.ts';
import type { Reading } from '../reading/reading.ts';
import { bindingOf, clauseAt, type Role, roleAt, usesObject } from './role.ts';

const stems = (words: string) => new Set(words.split(/\s+/).map(base));

/** What is the worse, the more there is of it. */
const WORSE = stems(
  'tolerance deviation deviate loss lost leak leakage error drop drift difference gap noise sag delay residue backlash play distortion variation shrinkage deflection settlement sway misalignment waste spill emission exposure accurate accuracy precise precision sensitive sensitivity resolution uncertainty',
);
const FALLS = stems('fall slope gradient pitch incline drain');
const BETWEEN = stems('spacing spaced centre centres center interval intervals pitch');
const DEPTHS = stems('depth deep bury buried cover overlap lap embed embedment penetration penetrate');
const STRENGTHS = stems('rate rated rating carry carries bear withstand resist capacity strength support hold');
const TESTED = stems('test check inspect sample survey examine measure verify calibrate audit review');
const HEATING = stems('heat hot boil cook warm wash reheat sterilize pasteurize');
const COOLING = stems('cool chill freeze frozen refrigerate cold evacuate vacuum');
const SENSED = stems('visible legible readable audible heard seen');
const LASTING = stems(
  'notice warranty keep retain store hold wait cure dry leave soak rest last remain stand archive preserve',
);
const ENDING = stems('expire expires lapse end ends lock close closes stop shut log cut switch respond alarm');
const UPKEEP = stems('replace renew change discard inspect check recheck service retighten clean lubricate grease');
/** "fixed at four points": how many places, no count at which something begins. */
const PLACES = /^(?:points?|places?|locations?|positions?|ends?|sides?|levels?|corners?|heights?|stations?|spots?)$/;
const TRIGGERS = new Set(['after', 'at', 'on', 'upon', 'when', 'once', 'if', 'reaches', 'exceeds']);

/** Whether a changed quantity asks for more or less: from comparator, place and subject, never from the bigger number. */
export function measureDirection(from: Reading, a: Quantity, to: Reading, b: Quantity): Duty {
  if (sameValue(a, b) && a.open === b.open) return 'same';
  if (sameValue(a, b)) return 'unclear';
  return directionOf(from, shared(from, a), to, shared(to, b));
}

/** "at least 1.2 m high and 900 mm wide": the bound is said once for both. */
function shared({ quantities, tokens }: Reading, q: Quantity): Quantity {
  const before = quantities.findLast(o => o.spanNext <= q.spanFirst);
  if (q.kind !== 'value' || q.comparator !== 'exact' || before?.kind !== 'value' || before.dimension !== q.dimension)
    return q;
  const between = tokens.slice(before.spanNext, q.spanFirst);
  if (between.length > 3 || between.at(-1)?.low !== 'and') return q;
  if (before.comparator === 'min') return { ...q, comparator: 'min', high: Number.POSITIVE_INFINITY };
  return before.comparator === 'max' ? { ...q, comparator: 'max', low: Number.NEGATIVE_INFINITY } : q;
}

function directionOf(from: Reading, a: Quantity, to: Reading, b: Quantity): Duty {
  const binding = bindingOf(to, clauseAt(to, b.first));
  const role = roleAt(to, b.first);
  if (a.low !== a.high || b.low !== b.high) {
    const [x, y] = [fromZero(boundLike(a, b), b), fromZero(boundLike(b, a), a)];
    // "at 600 mm centres" is "every 600 mm"; whether "7 days" was meant as "at least 7 days" nobody can tell.
    if (sameValue(x, y)) return a.kind === 'interval' || b.kind === 'interval' ? 'same' : 'unclear';
    if (isLead(from, a) && isLead(to, b)) return b.high > a.high ? 'stricter' : 'relaxed';
    const narrower = y.low >= x.low && y.high <= x.high;
    const wider = y.low <= x.low && y.high >= x.high;
    if (!narrower && !wider) return 'mixed';
    const turned =
      reaches(to, b, role) || (a.open && b.open && role === 'duty' && roleAt(from, a.first) === 'condition')
        ? binding !== 'permission'
        : // "not … in wind above 10 m/s" is read as at most 10 m/s: the ban is in the bound already.
          // "gaps between 8 and 25 mm are not allowed": what is banned, more of it the wider it is.
          reachesBan(to, b) ||
          (binding === 'ban' && (role === 'duty' || role === 'scope') && !b.denied) ||
          spans(to, b);
    return narrower !== turned ? 'stricter' : 'relaxed';
  }
  const more = moreIsStricter(from, a, role) ?? moreIsStricter(to, b, role);
  if (more === undefined) return 'unclear';
  const stricter = b.low > a.low === more;
  return stricter !== (binding === 'permission' && role === 'duty' && !isWorse(to, b)) ? 'stricter' : 'relaxed';
}

/** "at intervals not exceeding six months" is "at least every six months": no time is less than none. */
function fromZero(q: Quantity, other: Quantity): Quantity {
  return other.kind === 'interval' && q.low === Number.NEGATIVE_INFINITY && q.dimension === other.dimension
    ? { ...q, low: 0 }
    : q;
}

/** An exact value as a bound where the other is one: 1:350 beside "1:200 at least" is the least that was asked. */
function boundLike(q: Quantity, other: Quantity): Quantity {
  if (q.low !== q.high) return q;
  const isLeast = other.high === Number.POSITIVE_INFINITY;
  const isMost = other.low === Number.NEGATIVE_INFINITY || (other.kind === 'interval' && !isLeast);
  return { ...q, low: isMost ? other.low : q.low, high: isLeast ? other.high : q.high };
}

/** Whether it says which things the duty reaches, not which values it allows: walls taller than 2.4 m, in wind above 35 kn. */
function reaches(reading: Reading, q: Quantity, role: Role): boolean {
  if (role === 'condition') return true;
  // "trees within 5 m of the pit"
  if (role === 'scope' && /^within\b/i.test(q.text) && reading.tokens[q.spanNext]?.low === 'of') return true;
  if (!q.open) return false;
  if (role === 'scope') return true;
  const tag = reading.tags[q.spanFirst - 1];
  // "not go on until deviations above 1 mm have been corrected"
  if (role === 'timing')
    return (
      (tag === 'NOUN' || reading.tokens[q.spanFirst - 1]?.low === 'of') &&
      /^(?:have|has|are|is)$/.test(reading.tokens[q.spanNext]?.low ?? '')
    );
  return role === 'duty' && (tag === 'NOUN' || tag === 'PROPN') && !usesObject(reading, q.spanFirst);
}

/** "is forbidden within 10 m": the bound says how far the ban reaches, and bounds nothing else. */
function reachesBan(reading: Reading, q: Quantity): boolean {
  const at = clauseAt(reading, q.first)?.force.at;
  const isForbidden = at !== undefined && /^(?:forbidden|prohibited|banned)$/.test(reading.tokens[at]!.low);
  return isForbidden && at < q.spanFirst && !q.denied && /^within\b/i.test(q.text);
}

/** "up to 24 hours before arrival", "no later than 3 days before": the more, the earlier it has to be. */
const isLead = ({ tokens }: Reading, q: Quantity) =>
  q.dimension === 'second1' &&
  q.comparator === 'max' &&
  !/^(?:with)?in\b/i.test(q.text) &&
  /^(?:before|prior)$/.test(tokens[q.spanNext]?.low ?? '');

/** "adjustable from 400 to 800 mm", "able to weigh 0 to 20 kg": what a thing has to cover, more of it the wider it is. */
function spans(reading: Reading, q: Quantity): boolean {
  if (!Number.isFinite(q.low) || !Number.isFinite(q.high) || q.kind === 'tolerance') return false;
  const { tokens, tags } = reading;
  const clause = clauseAt(reading, q.first);
  for (let at = q.spanFirst - 1; at >= Math.max(clause?.first ?? 0, q.spanFirst - 8); at--) {
    const { low } = tokens[at]!;
    if (/^(?:able|capable|suitable|fit|suited|withstand|cover|covers)$/.test(low)) return true;
    if (tags[at] === 'ADJ' && /[a-z]{3}[ai]ble$/.test(low)) return true;
  }
  return false;
}

function nearby(reading: Reading, q: Quantity): string[] {
  const clause = clauseAt(reading, q.first);
  const [first, next] = [Math.max(clause?.first ?? 0, q.spanFirst - 8), Math.min(clause?.next ?? 0, q.spanNext + 4)];
  const words = reading.tokens.slice(first, next).map(t => base(t.low));
  // "carry 80 kg without visible sag", "hold for 10 minutes with no loss"
  const from = q.spanNext - first;
  const without = words.findIndex(
    (w, at) => at >= from && (w === 'without' || (w === 'with' && /^(?:no|nothing|zero)$/.test(words[at + 1] ?? ''))),
  );
  return without < 0 ? words : words.slice(0, without);
}

const isWorse = (reading: Reading, q: Quantity) => nearby(reading, q).some(w => WORSE.has(w));

/** For a value that is to be met, whether a bigger one asks for more; undefined where the words do not tell. */
function moreIsStricter(reading: Reading, q: Quantity, role: Role): boolean | undefined {
  const { tokens } = reading;
  const words = nearby(reading, q);
  const has = (set: ReadonlySet<string>) => words.some(w => set.has(w));
  const before = tokens[q.spanFirst - 1]?.low ?? '';
  const behind = tokens.slice(q.spanNext, q.spanNext + 2).map(t => t.low);
  const [time, length] = [q.dimension === 'second1', q.dimension === 'meter1'];
  const over = dividend(reading, q);
  if (over)
    return over.comparator === 'max' || over.comparator === 'under' || isWorse(reading, over) ? true : undefined;
  if (isWorse(reading, q)) return false;
  if (q.dimension === '' && (has(FALLS) || has(TESTED))) return true;
  if (behind.includes('apart')) return time ? true : length ? false : undefined;
  if (has(BETWEEN) && (length || time)) return false;
  if (length && behind.some(w => w === 'from' || w === 'away' || w === 'clear')) return true;
  // "expire after 30 minutes"
  if (time && before === 'after' && role !== 'condition' && (has(ENDING) || has(UPKEEP))) return false;
  if (time && role === 'timing' && before === 'for' && has(LASTING)) return true;
  // "not loaded until 7 days after casting"
  if (time && role === 'timing' && /^(?:until|till)$/.test(before)) {
    const binding = bindingOf(reading, clauseAt(reading, q.first));
    return binding === 'ban' ? true : undefined;
  }
  if (
    role === 'condition' ||
    role === 'timing' ||
    (TRIGGERS.has(before) && q.dimension === 'count' && !PLACES.test(behind[0] ?? ''))
  ) {
    return q.dimension === 'count' ? false : undefined;
  }
  if (time) return before === 'for' || has(LASTING) ? true : undefined;
  if (q.dimension === 'times') return true;
  // "3 parts of sand to 1 of cement": another mix, and no more of anything.
  if (q.dimension === 'count' && /^(?:parts?|volumes?|measures?)$/.test(behind[0] ?? '')) return undefined;
  if (q.dimension === 'count')
    return role !== 'scope' || q.first === clauseAt(reading, q.first)?.first ? true : undefined;
  if (q.dimension.includes('kelvin'))
    return before === 'below' || has(COOLING) ? false : has(HEATING) ? true : undefined;
  if (before === 'to' && tokens[q.spanFirst - 2]?.low === 'down') return false;
  if (length && (has(DEPTHS) || has(SENSED))) return true;
  if (has(STRENGTHS) || (!length && has(TESTED))) return true;
  return undefined;
}

/** Of "6 mm in 2 m" the 6 mm, asked of the 2 m. */
function dividend({ tokens, quantities }: Reading, q: Quantity): Quantity | undefined {
  if (!/^(in|per|over)$/.test(tokens[q.spanFirst - 1]?.low ?? '')) return undefined;
  return quantities.find(o => o.spanNext === q.spanFirst - 1);
}
