import type { Token } from '../reading/tokens.ts';
import { power, times, UNIT_SPELLINGS, type Unit } from './unit-names.ts';

export interface ReadUnit {
  readonly unit: Unit;
  readonly next: number;
}

/** Units of one letter count only in the case in which they are written: 20 A is a current, 20 a is not. */
const CAPITALS = new Set(['A', 'V', 'W', 'K', 'J', 'N']);
const ONE_SMALL = new Set(['m', 's', 'h', 'd', 'g', 't', 'l']);
/** After "2 in", these show that "in" is no inch. */
const PLACES = new Set(
  'the a an each any all every this that these those its their which place case series parallel total number addition advance accordance use service turn order front'.split(
    ' ',
  ),
);

/** The unit that begins at a token, after a number: mm, square feet, °C, degrees F, L/s, kg/m³, miles per hour. */
export function unitAt(tokens: readonly Token[], at: number): ReadUnit | undefined {
  let start = at;
  // 50-mm, 24-hour
  if (tokens[start]?.low === '-' && tokens[start]!.glued && tokens[start + 1]?.glued) start++;
  const first = factorAt(tokens, start);
  if (!first) return undefined;
  let { unit, next } = first;
  for (;;) {
    const sign = tokens[next]?.low;
    if (
      sign === '/' ||
      sign === 'per' ||
      (sign === 'a' && (unit.dimension === '' || WORDED_POWERS.has(tokens[next + 1]?.low ?? ''))) ||
      sign === '·'
    ) {
      const more = factorAt(tokens, next + 1);
      // "6 in / 150 mm" has a number behind the stroke and so never comes here.
      if (!more || (sign === '·' && !tokens[next]!.glued)) break;
      unit = times(unit, sign === '·' ? more.unit : power(more.unit, -1));
      next = more.next;
    } else break;
  }
  return { unit, next };
}

const WORDED_POWERS = new Map(Object.entries({ square: 2, sq: 2, cubic: 3, cu: 3 }));
const GLUED_POWERS = new Map(Object.entries({ '²': 2, '2': 2, '³': 3, '3': 3 }));
const SCALES = new Map([
  ['c', 'celsius'],
  ['celsius', 'celsius'],
  ['f', 'fahrenheit'],
  ['fahrenheit', 'fahrenheit'],
]);

function factorAt(tokens: readonly Token[], at: number): ReadUnit | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const worded = WORDED_POWERS.get(token.low);
  if (worded) {
    const base = simpleAt(tokens, afterPoint(tokens, at + 1, token.low.length <= 2));
    return base && { unit: power(base.unit, worded), next: base.next };
  }
  const base = simpleAt(tokens, at);
  if (!base) return undefined;
  const caret = tokens[base.next]?.low === '^' ? 1 : 0;
  const raised = tokens[base.next + caret];
  const exponent = raised?.glued ? GLUED_POWERS.get(raised.text) : undefined;
  if (exponent && /^\p{L}/u.test(token.text)) return { unit: power(base.unit, exponent), next: base.next + caret + 1 };
  if ((tokens[base.next]?.low === 'squared' || tokens[base.next]?.low === 'cubed') && base.unit.dimension === 'meter1')
    return { unit: power(base.unit, tokens[base.next]!.low === 'squared' ? 2 : 3), next: base.next + 1 };
  return base;
}

function simpleAt(tokens: readonly Token[], at: number): ReadUnit | undefined {
  const [token, second, third] = tokens.slice(at, at + 3);
  if (!token) return undefined;
  if (token.low === '°' || token.low === 'degree' || token.low === 'degrees' || token.low === 'deg') {
    const scale = SCALES.get(second?.low ?? '');
    if (scale) return { unit: UNIT_SPELLINGS.get(scale)!, next: at + 2 };
  }
  if (token.low === 'per' && second?.low === 'cent') return { unit: UNIT_SPELLINGS.get('percent')!, next: at + 2 };
  if (token.low === 'fl' && (second?.low === 'oz' || third?.low === 'oz'))
    return { unit: UNIT_SPELLINGS.get('floz')!, next: at + (second?.low === 'oz' ? 2 : 3) };
  if (token.low === "'" && second?.low === "'" && second.glued) return { unit: UNIT_SPELLINGS.get('"')!, next: at + 2 };
  if (token.low === 'c' && token.text === 'C' && tokens[at - 1]?.kind === 'number')
    return { unit: UNIT_SPELLINGS.get('celsius')!, next: at + 1 };
  const unit = UNIT_SPELLINGS.get(token.low);
  if (!unit) return undefined;
  if (token.text.length === 1 && /[a-z]/i.test(token.text)) {
    const isKnown = CAPITALS.has(token.text) || ONE_SMALL.has(token.text) || token.text === 'L';
    if (!isKnown && !(ONE_SMALL.has(token.low) && inCapitals(tokens, at))) return undefined;
    // "4 s" and "4 d" are units only if nothing like a word goes on: plural marks and list letters come apart here.
    if (second?.low === '.' && second.glued && third?.glued) return undefined;
  }
  if ((token.low === '"' || token.low === "'") && !token.glued) return undefined;
  if (token.low === 'in' && !token.text.includes('"')) {
    if (PLACES.has(second?.low ?? '') && !(second?.low === '.' && second.glued)) return undefined;
    if (second?.kind === 'number' && !second.glued) return undefined; // 1 in 80
  }
  return {
    unit,
    next: afterPoint(
      tokens,
      at + 1,
      /^(in|ft|yd|lb|lbs|oz|gal|min|sec|hr|hrs|sq|cu|approx|yr|yrs|deg|qt|pt)$/.test(token.low),
    ),
  };
}

/** "THE FLUE SHALL BE 3 M HIGH": a text in capitals has its small units so as well. */
function inCapitals(tokens: readonly Token[], at: number): boolean {
  const near = tokens.slice(Math.max(0, at - 9), at + 6).filter(t => t.kind === 'word' && t.text.length > 1);
  return near.length > 1 && near.every(t => t.text === t.text.toUpperCase());
}

/** Behind the point of an abbreviation, where one stands and does not end the sentence. */
function afterPoint(tokens: readonly Token[], at: number, abbreviation: boolean): number {
  const [point, after] = tokens.slice(at, at + 2);
  if (!abbreviation || point?.low !== '.' || !point.glued) return at;
  return after && /^\p{Lu}/u.test(after.text) ? at : at + 1;
}
