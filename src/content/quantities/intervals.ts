import type { Token } from '../reading/tokens.ts';
import { numberAt } from './numbers.ts';
import { unitAt } from './read-unit.ts';
import type { ReadValue } from './read-value.ts';
import { UNIT_SPELLINGS, type Unit } from './unit-names.ts';

const PERIODS: Readonly<Record<string, readonly [count: number, unit: string]>> = {
  hourly: [1, 'hour'],
  daily: [1, 'day'],
  nightly: [1, 'day'],
  weekly: [1, 'week'],
  fortnightly: [2, 'week'],
  biweekly: [2, 'week'],
  monthly: [1, 'month'],
  quarterly: [3, 'month'],
  annually: [1, 'year'],
  annual: [1, 'year'],
  yearly: [1, 'year'],
  biennially: [2, 'year'],
  biennial: [2, 'year'],
};
/** "every second day", "every other week" */
export const ORDINALS = new Map(
  Object.entries({ other: 2, second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8, tenth: 10 }),
);
const TIMES: Readonly<Record<string, number>> = { once: 1, twice: 2, thrice: 3 };
const TIME_OF: Unit = { name: 'times', dimension: 'times', factor: 1, offset: 0 };
const MULTIPLE: Unit = { name: 'multiple', dimension: 'multiple', factor: 1, offset: 0 };

/**
 * How often, or how far apart: every 6 months, once a year, monthly, twice per shift, every 300 mm, rinse three times.
 * Often is a short time between: twice a year and every six months are the same interval.
 */
export function intervalAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  const low = tokens[at]?.low ?? '';
  const period = Object.hasOwn(PERIODS, low) ? PERIODS[low] : undefined;
  if (period) return interval(period[0], UNIT_SPELLINGS.get(period[1])!, at + 1);
  // "at once" is no number of times.
  if (low === 'once' && tokens[at - 1]?.low === 'at') return undefined;
  const often = Object.hasOwn(TIMES, low) ? { value: TIMES[low]!, next: at + 1 } : timesAt(tokens, at);
  if (often) return oftenAt(tokens, often);
  if (low !== 'every' && (low !== 'each' || tokens[at + 1]?.low === 'one')) return undefined;
  return everyAt(tokens, at);
}

/** "3 times", "three times". */
function timesAt(tokens: readonly Token[], at: number): { value: number; next: number } | undefined {
  const number = numberAt(tokens, at);
  return number && tokens[number.next]?.low === 'times' ? { value: number.value, next: number.next + 1 } : undefined;
}

function oftenAt(tokens: readonly Token[], often: { value: number; next: number }): ReadValue | undefined {
  const low = tokens[often.next]?.low ?? '';
  if (low === 'every' || low === 'per' || low === 'a' || low === 'an' || low === 'each' || low === 'in') {
    const every = everyAt(tokens, often.next);
    if (every) return { ...every, low: every.low / often.value, high: every.high / often.value };
  }
  const daily = Object.hasOwn(PERIODS, low) ? PERIODS[low] : undefined;
  if (daily) return interval(daily[0] / often.value, UNIT_SPELLINGS.get(daily[1])!, often.next + 1);
  if (/^(the|its|their|that|as|this)$/.test(low)) {
    // "twice the diameter" measures by something else; "once the paint is dry" is a condition.
    if (often.value === 1) return undefined;
    return { kind: 'value', low: often.value, high: often.value, unit: MULTIPLE, next: often.next };
  }
  // "once dry", "once installed" are conditions as well; only a count at the end of a clause is one.
  if (often.value === 1 && tokens[often.next]?.kind === 'word') return undefined;
  return { kind: 'count', low: often.value, high: often.value, unit: TIME_OF, next: often.next };
}

function everyAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  if (tokens[at + 1]?.low === 'quarter') return interval(3, UNIT_SPELLINGS.get('month')!, at + 2);
  const turn = ORDINALS.get(tokens[at + 1]?.low ?? '');
  const period = turn ? unitAt(tokens, at + 2) : undefined;
  if (turn && period?.unit.dimension === 'second1') return interval(turn, period.unit, period.next);
  const number = numberAt(tokens, at + 1);
  const unit = unitAt(tokens, number?.next ?? at + 1);
  if (!unit) return undefined;
  if (!number && unit.unit.dimension !== 'second1') return undefined;
  return interval(number?.value ?? 1, unit.unit, unit.next);
}

function interval(count: number, unit: Unit, next: number): ReadValue {
  const size = count * unit.factor;
  return { kind: 'interval', low: size, high: size, unit, next };
}
