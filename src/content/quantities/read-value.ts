import type { Token } from '../reading/tokens.ts';
import type { Comparator } from './comparators.ts';
import { isNoQuantity, NAMING, namesCount } from './not-quantities.ts';
import { numberAt, type ReadNumber } from './numbers.ts';
import type { Quantity } from './quantities.ts';
import { unitAt } from './read-unit.ts';
import { toleranceAt } from './tolerances.ts';
import { COUNT, type Unit } from './unit-names.ts';

/** A value as read, before words bound it. */
export interface ReadValue {
  readonly kind: Quantity['kind'];
  readonly low: number;
  readonly high: number;
  readonly unit: Unit;
  readonly next: number;
  readonly first?: number;
  readonly comparator?: Comparator;
}

const RATIO: Unit = { name: 'ratio', dimension: '', factor: 1, offset: 0 };

/** A value, a range or a ratio with its unit, in any usual spelling; undefined where none begins. */
export function valueAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  const number = numberAt(tokens, at);
  if (!number) return undefined;
  const ratio = ratioAt(tokens, number);
  if (ratio) return ratio;
  // In "20 ± 2 mm" the unit stands behind the tolerance and measures both.
  const deviation = toleranceAt(tokens, number.next);
  const own =
    unitAt(tokens, number.next) ??
    (deviation?.unit.dimension ? { unit: deviation.unit, next: number.next } : undefined);
  const range = rangeAt(tokens, at, number, own?.unit, own?.next ?? number.next);
  if (range) return range;
  const before = tokens[at - 1];
  if (own?.unit.name === 'inch' && tokens[number.next]?.low === 'in' && NAMING.has(before?.low ?? '')) return undefined; // code 5 in
  const isName = tokens[at]!.glued && before?.kind === 'word'; // IP44 and 600 mm
  const listed = own ?? (isName ? undefined : unitOfList(tokens, number.next));
  if (!listed) {
    if (number.fraction) {
      return { kind: 'ratio', low: number.value, high: number.value, unit: RATIO, next: number.next };
    }
    if (isNoQuantity(tokens, at, number) || !namesCount(tokens, at, number)) return undefined;
    return { kind: 'count', low: number.value, high: number.value, unit: COUNT, next: number.next };
  }
  const { unit } = listed;
  let value = signed(tokens, at, number.value) * unit.factor + unit.offset;
  let next = own ? own.next : number.next;
  // 6 ft 2 in · 6'-2" · 1 h 30 min
  const smaller = own && smallerAt(tokens, next, unit);
  if (smaller) {
    value += smaller.value;
    next = smaller.next;
  }
  const tolerance = toleranceAt(tokens, tokens[next]?.low === ',' ? next + 1 : next);
  if (
    tolerance &&
    (tolerance.unit.dimension === unit.dimension || tolerance.unit.dimension === '' || tolerance.unit.name === 'count')
  ) {
    const scale =
      tolerance.unit.dimension === unit.dimension ? 1 : tolerance.unit.dimension === '' ? value : unit.factor;
    return {
      kind: 'range',
      low: value + tolerance.low * scale,
      high: value + tolerance.high * scale,
      unit,
      next: behindEquivalent(tokens, tolerance.next, unit),
    };
  }
  return { kind: 'value', low: value, high: value, unit, next: behindEquivalent(tokens, next, unit) };
}

/** −5 °C and "from -5": a minus stands right before the digit and behind nothing that could be a range. */
function signed(tokens: readonly Token[], at: number, value: number): number {
  const [before, sign] = [tokens[at - 2], tokens[at - 1]];
  const minus =
    sign?.low === 'minus' || (sign?.low === '-' && tokens[at]!.glued && (!sign.glued || before?.kind === 'mark'));
  return minus ? -value : value;
}

/** 1:80 · 1 in 80 · 1/4 inch per foot is a unit of its own. */
function ratioAt(tokens: readonly Token[], number: ReadNumber): ReadValue | undefined {
  const colon = tokens[number.next];
  const second = tokens[number.next + 1];
  // one weld in twenty
  if (number.value === 1 && colon?.kind === 'word' && second?.low === 'in') {
    const whole = numberAt(tokens, number.next + 2);
    if (whole && whole.value > 2 && !whole.fraction && !unitAt(tokens, whole.next)) {
      return { kind: 'ratio', low: 1 / whole.value, high: 1 / whole.value, unit: RATIO, next: whole.next };
    }
  }
  const asColon = colon?.low === ':' && second?.kind === 'number' && second.glued === colon.glued;
  const asIn = colon?.low === 'in' && second?.kind === 'number' && number.value === 1 && !number.inWords;
  if (!asColon && !asIn) return undefined;
  const other = numberAt(tokens, number.next + 1);
  // 14:30 is a time of day; so is 8:00.
  if (
    !other ||
    other.value === 0 ||
    (asColon && /^[0-5]\d$/.test(second!.text) && number.value > 3 && number.value < 25)
  )
    return undefined;
  if (asColon && /^(19|20)\d\d$/.test(second!.text)) return undefined; // a standard and its year
  if (asIn && unitAt(tokens, other.next)) return undefined;
  const value = number.value / other.value;
  return { kind: 'ratio', low: value, high: value, unit: RATIO, next: other.next };
}

/** 5 to 10 mm · 5-10 mm · between 5 and 10 mm · from 5 mm up to 10 mm. */
function rangeAt(tokens: readonly Token[], at: number, from: ReadNumber, own: Unit | undefined, behind: number) {
  const before = tokens[at - 1]?.low;
  const joint = tokens[behind]?.low;
  const upTo = joint === 'up' && before === 'from' && tokens[behind + 1]?.low === 'to';
  const closed =
    joint === 'to' ||
    upTo ||
    (joint === '-' && tokens[behind]!.glued === (tokens[behind + 1]?.glued ?? false)) ||
    (joint === 'and' && before === 'between') ||
    (joint === 'through' && from.next === behind);
  if (!closed) return undefined;
  const to = numberAt(tokens, behind + (upTo ? 2 : 1));
  if (!to || (from.fraction && !own && to.fraction && joint === 'to')) return undefined;
  const second = unitAt(tokens, to.next);
  if (own && !second && joint === '-') return undefined;
  const unit = second?.unit ?? own;
  if (own && second && own.dimension !== second.unit.dimension) return undefined;
  if (!unit && isNoQuantity(tokens, at, from)) return undefined;
  const measure = unit ?? COUNT;
  const first = own ?? measure;
  const low = signed(tokens, at, from.value) * first.factor + first.offset;
  const high = to.value * measure.factor + measure.offset;
  if (low > high) return undefined;
  const next = second?.next ?? to.next;
  return {
    kind: 'range' as const,
    low,
    high,
    unit: measure,
    next: behindEquivalent(tokens, next, measure),
    first: before === 'between' || before === 'from' ? at - 1 : at,
  };
}

/** The unit that a list of sizes has at its end only: 20 × 40 mm, 50 and 75 mm, 10, 20 or 30 minutes. */
function unitOfList(tokens: readonly Token[], next: number): { unit: Unit } | undefined {
  for (let at = next, links = 0; links < 4; links++) {
    const low = tokens[at]?.low ?? '';
    if (!['x', '×', 'by', 'and', 'or', ',', '/'].includes(low)) return undefined;
    const more = numberAt(tokens, at + 1) ?? numberAt(tokens, ++at + 1);
    if (!more) return undefined;
    const unit = unitAt(tokens, more.next);
    if (unit) return unit.unit.dimension === '' && low === '/' ? undefined : unit;
    at = more.next;
  }
  return undefined;
}

function smallerAt(tokens: readonly Token[], at: number, bigger: Unit): { value: number; next: number } | undefined {
  const start = tokens[at]?.low === '-' && tokens[at]!.glued ? at + 1 : tokens[at]?.low === 'and' ? at + 1 : at;
  const number = numberAt(tokens, start);
  const unit = number && unitAt(tokens, number.next);
  if (!unit || unit.unit.dimension !== bigger.dimension || bigger.dimension === '') return undefined;
  if (unit.unit.factor >= bigger.factor || number.value * unit.unit.factor >= bigger.factor) return undefined;
  if (start > at && tokens[at]!.low === 'and' && bigger.dimension !== 'second1') return undefined;
  return { value: number.value * unit.unit.factor, next: unit.next };
}

/** Behind the same value in another unit: 1 in. (25 mm), 25 mm [1 in.], 150 mm / 6 in. */
function behindEquivalent(tokens: readonly Token[], at: number, unit: Unit): number {
  const opener = tokens[at]?.low;
  if (opener !== '(' && opener !== '[' && opener !== '/') return at;
  const number = numberAt(tokens, at + 1);
  if (!number) return at;
  const first = unitAt(tokens, number.next);
  const range = first ? undefined : rangeAt(tokens, at + 1, number, undefined, number.next);
  const other = first?.unit ?? range?.unit;
  if (!other || other.dimension !== unit.dimension || other.name === unit.name) return at;
  let next = first?.next ?? range!.next;
  const smaller = first && smallerAt(tokens, next, first.unit);
  if (smaller) next = smaller.next;
  if (opener === '/') return next;
  const closer = opener === '(' ? ')' : ']';
  return tokens[next]?.low === closer ? next + 1 : at;
}
