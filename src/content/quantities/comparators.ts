import type { Token } from '../reading/tokens.ts';
import { numberAt } from './numbers.ts';

/**
 * How a value bounds what it measures. `over` and `under` leave the value itself out (more than 5); `about` is a value
 * that need not be met exactly.
 */
export type Comparator = 'exact' | 'min' | 'max' | 'over' | 'under' | 'about';

export interface ReadComparator {
  readonly comparator: Comparator;
  /** First and last token of the words that say so; a bound said far off ("minimum width … 800 mm") has none. */
  readonly from?: number;
  readonly to?: number;
  /** A denial turned it: "not fall below 5" is at least 5, "no pipe below 5" as well. */
  readonly denied?: true;
}

const BEFORE: readonly (readonly [string, Comparator])[] = [
  ['at least', 'min'],
  ['at the least', 'min'],
  ['at a minimum', 'min'],
  ['at minimum', 'min'],
  ['as a minimum', 'min'],
  ['minimum', 'min'],
  ['min', 'min'],
  ['min .', 'min'],
  ['≥', 'min'],
  ['> =', 'min'],
  ['no sooner than', 'min'],
  ['no earlier than', 'min'],
  ['not sooner than', 'min'],
  ['not earlier than', 'min'],
  ['starting at', 'min'],
  ['at most', 'max'],
  ['at the most', 'max'],
  ['up to', 'max'],
  ['up to and including', 'max'],
  ['not to exceed', 'max'],
  ['within', 'max'],
  ['to within', 'max'],
  ['maximum', 'max'],
  ['max', 'max'],
  ['max .', 'max'],
  ['limited to', 'max'],
  ['≤', 'max'],
  ['< =', 'max'],
  ['no later than', 'max'],
  ['not later than', 'max'],
  ['or less than', 'under'],
  ['in excess of', 'over'],
  ['exceed', 'over'],
  ['exceeds', 'over'],
  ['exceeding', 'over'],
  ['exceeded', 'over'],
  ['above', 'over'],
  ['over', 'over'],
  ['beyond', 'over'],
  ['past', 'over'],
  ['>', 'over'],
  ['below', 'under'],
  ['under', 'under'],
  ['beneath', 'under'],
  ['<', 'under'],
  ['about', 'about'],
  ['approximately', 'about'],
  ['approx', 'about'],
  ['approx .', 'about'],
  ['around', 'about'],
  ['roughly', 'about'],
  ['nominally', 'about'],
  ['nominal', 'about'],
  ['~', 'about'],
  ['exactly', 'exact'],
  ['precisely', 'exact'],
];

/** "more than", "deeper than": any comparative that asks for more, or for less. */
const MORE = new Set(
  'more greater larger longer higher wider deeper thicker taller heavier bigger broader older hotter warmer farther further faster later stronger steeper over'.split(
    ' ',
  ),
);
const LESS = new Set(
  'less fewer smaller shorter lower narrower shallower thinner lighter younger colder cooler closer nearer slower sooner earlier weaker flatter under'.split(
    ' ',
  ),
);
const FILLERS = new Set(['of', 'a', 'an', 'the', 'to', 'is', 'be', 'any', 'about', 'approximately', 'every', 'each']);
const NEGATIONS = new Set(['not', 'no', 'never', 'cannot', 'nor', 'neither', 'without', 'none']);
const BARRIERS = new Set(
  'until unless if when where before after that which while and or but except , ; : . ( )'.split(' '),
);

/** Phrases by their last word, longest first. */
const BY_LAST = new Map<string, { words: readonly string[]; comparator: Comparator }[]>();
for (const [phrase, comparator] of BEFORE) {
  const words = phrase.split(' ');
  const last = words.at(-1)!;
  BY_LAST.set(
    last,
    [...(BY_LAST.get(last) ?? []), { words, comparator }].sort((a, b) => b.words.length - a.words.length),
  );
}

/**
 * The bound that words before or after a value set to it.
 *
 * @param first the value's first token
 * @param next the token behind the value and its unit
 */
export function comparatorOf(tokens: readonly Token[], first: number, next: number): ReadComparator {
  return (
    adjacentBefore(tokens, first) ??
    behind(tokens, next) ??
    farBehind(tokens, next) ??
    farBefore(tokens, first) ?? { comparator: 'exact' }
  );
}

function adjacentBefore(tokens: readonly Token[], first: number): ReadComparator | undefined {
  for (let last = first - 1; last >= 0 && last >= first - 4; last--) {
    const found = phraseEndingAt(tokens, last);
    if (found) {
      const { comparator, from } = found;
      const bound = comparator === 'about' ? (adjacentBefore(tokens, from)?.comparator ?? comparator) : comparator;
      if (tokens[from - 1]?.low === 'or' && tokens[from - 2]?.low === 'at') {
        return { comparator: bound === 'over' ? 'min' : 'max', from: from - 2, to: last }; // at or above, at or below
      }
      const direct = negatedAt(tokens, from);
      if (direct !== undefined) return { comparator: flip(bound), from: direct, to: last, denied: true };
      const denied = flips(bound, tokens[last]!.low) ? negatedFar(tokens, from) : undefined;
      if (denied === undefined) return { comparator: bound, from, to: last };
      return {
        comparator: flip(bound),
        from: isMoving(tokens, denied, from) ? denied : from,
        to: last,
        denied: true,
      };
    }
    if (!FILLERS.has(tokens[last]!.low)) return undefined;
  }
  return undefined;
}

function phraseEndingAt(tokens: readonly Token[], last: number): { comparator: Comparator; from: number } | undefined {
  const low = (at: number) => tokens[at]?.low ?? '';
  for (const { words, comparator } of BY_LAST.get(low(last)) ?? []) {
    if (words.every((word, at) => low(last - words.length + 1 + at) === word)) {
      return { comparator, from: last - words.length + 1 };
    }
  }
  if (low(last) !== 'than') return undefined;
  // "nearer to the trunk than 2 m"
  for (let at = last - 2; at > last - 6; at--) {
    if (/^(?:to|from)$/.test(low(at + 1)) && /^(?:nearer|closer)$/.test(low(at)))
      return { comparator: 'under', from: last };
    if (/^(?:to|from)$/.test(low(at + 1)) && /^(?:farther|further)$/.test(low(at)))
      return { comparator: 'over', from: last };
  }
  if (MORE.has(low(last - 1))) return { comparator: 'over', from: last - 1 };
  if (LESS.has(low(last - 1))) return { comparator: 'under', from: last - 1 };
  // Any other comparative (louder, brighter, rougher) asks for more of what it names.
  if (/^\p{L}{3,}er$/u.test(low(last - 1)) && !/^(other|rather|either|whether)$/.test(low(last - 1)))
    return { comparator: 'over', from: last - 1 };
  return undefined;
}

/** Whether the words right before a bound deny it: "no more than", "shall not be less than" is found by `negatedFar`. */
function negatedAt(tokens: readonly Token[], from: number): number | undefined {
  const low = tokens[from - 1]?.low ?? '';
  return low === 'not' || low === 'no' ? from - 1 : undefined;
}

/** A minimum stays one under any negation; "within" turns into a distance to keep, "more than" into a maximum. */
const flips = (comparator: Comparator, word: string) =>
  comparator === 'over' || comparator === 'under' || word === 'within';

function flip(comparator: Comparator): Comparator {
  const flipped: Partial<Record<Comparator, Comparator>> = { over: 'max', under: 'min', max: 'min' };
  return flipped[comparator] ?? comparator;
}

/** Verbs of being somewhere or getting there: "not be, fall or rise above 5" bounds a value, "not paint above 5" bans a deed. */
const MOVING = new Set(
  `be is are become fall falls drop drops go goes rise rises sink sinks dip dips climb climbs come comes get gets extend extends
reach reaches run runs move moves slip slips lie lies stand stands stay remain measure measures weigh weighs exceed project projects
case event place point`.split(/\s+/),
);

const isMoving = (tokens: readonly Token[], denied: number, from: number) =>
  from - denied === 1 || (from - denied === 2 && MOVING.has(tokens[from - 1]!.low));

const KEEPING = /^(?:ke(?:ep|eps|pt|eping)|prevent(?:s|ed|ing)?|stop(?:s|ped|ping)?)$/;

/** The token that denies the bound beginning at `from`, within its clause. */
function negatedFar(tokens: readonly Token[], from: number): number | undefined {
  for (let at = from - 1; at >= 0 && at > from - 16; at--) {
    const { low, kind } = tokens[at]!;
    if (NEGATIONS.has(low) || low.endsWith("n't")) return at;
    // "kept from falling below 5"
    const isKept = low === 'from' && tokens[at + 1]!.low.endsWith('ing');
    if (isKept && tokens.slice(Math.max(0, at - 4), at).some(t => KEEPING.test(t.low))) return at;
    if (BARRIERS.has(low) || kind === 'number') return undefined;
  }
  return undefined;
}

const SMALLEST = new Set('shortest lowest smallest earliest narrowest thinnest shallowest lightest slowest'.split(' '));

/** 50 mm or more · 3 m apart at most · 20 mm minimum · 5 days or longer. */
function behind(tokens: readonly Token[], next: number): ReadComparator | undefined {
  for (let at = next; at < next + 4 && at < tokens.length; at++) {
    const [low, after, third] = [tokens[at]!.low, tokens[at + 1]?.low ?? '', tokens[at + 2]?.low ?? ''];
    if (low === 'or' || low === 'and') {
      if (MORE.has(after) || /^(?:above|up|upwards|steeper|over)$/.test(after))
        return { comparator: 'min', from: at, to: at + 1 };
      if (LESS.has(after) || /^(?:below|flatter|under)$/.test(after))
        return { comparator: 'max', from: at, to: at + 1 };
      return undefined;
    }
    if (low === '+' && tokens[at]!.glued) return { comparator: 'min', from: at, to: at };
    if (low === 'minimum' || low === 'min')
      return tokens[at + 1]?.kind === 'word' && third !== '' && at > next
        ? undefined
        : { comparator: 'min', from: at, to: at };
    if (low === 'maximum' || low === 'max')
      return tokens[at + 1]?.kind === 'word' && third !== '' && at > next
        ? undefined
        : { comparator: 'max', from: at, to: at };
    // "at 90 °C for at least 3 min": the bound of the next value.
    if (low === 'at' && numberAt(tokens, at + 2)) return undefined;
    if (low === 'at' && after === 'least') return { comparator: 'min', from: at, to: at + 1 };
    if (low === 'at' && after === 'the' && third.endsWith('est'))
      return { comparator: SMALLEST.has(third) ? 'min' : 'max', from: at, to: at + 2 };
    if (low === 'at' && (after === 'most' || (after === 'the' && third === 'most')))
      return { comparator: 'max', from: at, to: at + 1 };
    if (tokens[at]!.kind !== 'word' && low !== '(') return undefined;
    if (BARRIERS.has(low) && low !== '(') return undefined;
  }
  return undefined;
}

/** "150 mm at each end, as a minimum": said at the end of the clause, behind a comma. */
function farBehind(tokens: readonly Token[], next: number): ReadComparator | undefined {
  for (let at = next; at < next + 12 && at < tokens.length; at++) {
    const [low, second, third] = [tokens[at]!.low, tokens[at + 1]?.low, tokens[at + 2]?.low];
    if (low === '.' || low === ';' || tokens[at]!.kind === 'number') return undefined;
    if ((low !== 'as' && low !== 'at') || tokens[at - 1]!.low !== ',') continue;
    const last = second === 'a' || second === 'the' ? third : second;
    if (last === 'minimum' || last === 'least') return { comparator: 'min' };
    if (last === 'maximum' || last === 'most') return { comparator: 'max' };
  }
  return undefined;
}

/** "The minimum clear width of an opening is 800 mm", "a maximum spacing of 300 mm". */
function farBefore(tokens: readonly Token[], first: number): ReadComparator | undefined {
  for (let at = first - 1; at >= 0 && at > first - 16; at--) {
    const { low, kind } = tokens[at]!;
    // "at least 3 min at 134 °C": minutes.
    const isMinutes = low === 'min' && tokens[at - 1]?.kind === 'number';
    if (low === 'minimum' || (low === 'min' && !isMinutes) || low === 'smallest' || low === 'least')
      return { comparator: 'min' };
    // "most switches shall be greased weekly" says how many; "at the most" bounds a value.
    const isMost = low === 'most' && /^(?:at|the)$/.test(tokens[at - 1]?.low ?? '');
    if (low === 'maximum' || low === 'max' || low === 'largest' || isMost) return { comparator: 'max' };
    if (low === 'exceed' || low === 'exceeding')
      return at <= first - 8
        ? undefined
        : negatedFar(tokens, at) === undefined
          ? { comparator: 'over' }
          : { comparator: 'max', denied: true };
    if (low === ':' && at === first - 1) continue; // "maximum distance: 30 m"
    if (kind === 'number' || low === ',' || low === ';' || low === '.' || low === ':' || low === 'and' || low === 'or')
      return undefined;
  }
  return undefined;
}
