import { lately } from '../reading/lately.ts';
import { type Token, tokensLately } from '../reading/tokens.ts';
import { type Comparator, comparatorOf } from './comparators.ts';
import { intervalAt } from './intervals.ts';
import { ratingAt } from './ratings.ts';
import { unitAt } from './read-unit.ts';
import { type ReadValue, valueAt } from './read-value.ts';
import { toleranceAt } from './tolerances.ts';

/**
 * A quantity as the set of values that it allows, in base units: at least 50 mm = from 0.05 to infinity, of dimension
 * `meter1`. Shares, ratios and falls have the dimension `` and convert into each other (2 % = 1:50); counts and bare
 * numbers have `count`.
 */
export interface Quantity {
  readonly kind: 'value' | 'range' | 'tolerance' | 'ratio' | 'count' | 'interval' | 'rating';
  readonly dimension: string;
  readonly unit: string;
  readonly comparator: Comparator;
  readonly low: number;
  readonly high: number;
  /** The bound itself is left out: more than 5, less than 5. */
  readonly open: boolean;
  /** A denial turned the comparator, so that the deed or state it stands beside is bounded and not banned. */
  readonly denied?: true;
  /** Words of the text, comparator included. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Tokens of the value and its unit, from and behind. */
  readonly first: number;
  readonly next: number;
  /** Tokens of value, unit and adjacent comparator. */
  readonly spanFirst: number;
  readonly spanNext: number;
}

/** All quantities of a text in order. Clause numbers, years, dates, clock times and codes of standards are none. */
export function quantitiesOf(text: string, tokens: readonly Token[] = tokensLately(text)): Quantity[] {
  const found: Quantity[] = [];
  for (let at = 0; at < tokens.length; ) {
    const value =
      intervalAt(tokens, at) ??
      oneTimeAt(tokens, at) ??
      ratingAt(tokens, at) ??
      toleranceAt(tokens, at) ??
      valueAt(tokens, at);
    if (!value) {
      at++;
      continue;
    }
    const first = value.first ?? at;
    found.push(boundBy(text, tokens, value, first));
    at = Math.max(value.next, at + 1);
  }
  return found;
}

/** The same, of texts that are asked for again and again. */
export const quantitiesLately = lately(1_000, (text: string): readonly Quantity[] => quantitiesOf(text));

function boundBy(text: string, tokens: readonly Token[], value: ReadValue, first: number): Quantity {
  const bound = comparatorOf(tokens, first, value.next);
  const ranged = value.kind === 'tolerance' || value.low !== value.high;
  let comparator: Comparator = ranged && value.kind !== 'interval' ? 'exact' : bound.comparator;
  if (value.comparator && (comparator === 'exact' || comparator === 'about')) comparator = value.comparator;
  let { low, high } = value;
  if (value.kind === 'interval') {
    // At least every 6 months: the time between may be shorter. At most once a week: it may be longer.
    const seldom = comparator === 'max' || comparator === 'under';
    [low, high] = seldom ? [low, Number.POSITIVE_INFINITY] : [0, high];
  } else if (comparator === 'min' || comparator === 'over') high = Number.POSITIVE_INFINITY;
  else if (comparator === 'max' || comparator === 'under') low = Number.NEGATIVE_INFINITY;
  const spanFirst = Math.min(first, bound.from ?? first);
  const spanNext = Math.max(value.next, (bound.to ?? value.next - 1) + 1);
  const [start, end] = [tokens[spanFirst]!.start, tokens[spanNext - 1]!.end];
  return {
    kind: value.kind,
    dimension: value.unit.dimension,
    unit: value.unit.name,
    comparator,
    low,
    high,
    open: comparator === 'over' || comparator === 'under',
    ...(bound.denied && { denied: true }),
    text: text.slice(start, end),
    start,
    end,
    first,
    next: value.next,
    spanFirst,
    spanNext,
  };
}

const LASTING = new Set(['for', 'within', 'after', 'least', 'most', 'than', 'over', 'under', 'about', 'of']);

/** "for a week", "within an hour", "half the time of a day" is none: one of a unit of time behind a word of duration. */
function oneTimeAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  const low = tokens[at]!.low;
  if ((low !== 'a' && low !== 'an') || !LASTING.has(tokens[at - 1]?.low ?? '')) return undefined;
  if (tokens[at + 1]?.kind !== 'word' || tokens[at + 1]!.text.length < 3) return undefined;
  const unit = unitAt(tokens, at + 1);
  if (unit?.unit.dimension !== 'second1' || tokens[unit.next]?.low === "'") return undefined;
  const size = unit.unit.factor;
  return { kind: 'value', low: size, high: size, unit: unit.unit, next: unit.next };
}
