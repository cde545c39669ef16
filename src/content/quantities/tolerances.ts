import type { Token } from '../reading/tokens.ts';
import { numberAt } from './numbers.ts';
import { unitAt } from './read-unit.ts';
import type { ReadValue } from './read-value.ts';
import { COUNT } from './unit-names.ts';

/** ± 3 mm · +/- 2 % · plus or minus 5 °C · +5/-0 mm. */
export function toleranceAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  const behindSign = signEnd(tokens, at);
  if (behindSign !== undefined) {
    const number = numberAt(tokens, behindSign);
    if (!number) return undefined;
    const unit = unitAt(tokens, number.next);
    const size = number.value * (unit?.unit.factor ?? 1);
    return {
      kind: 'tolerance',
      low: -size,
      high: size,
      unit: unit?.unit ?? COUNT,
      next: unit?.next ?? number.next,
      first: at,
    };
  }
  if (tokens[at]?.low !== '+' || tokens[at + 1]?.kind !== 'number') return undefined;
  const above = numberAt(tokens, at + 1)!;
  const aboveUnit = unitAt(tokens, above.next);
  let minus = aboveUnit?.next ?? above.next;
  while (tokens[minus]?.low === '/' || tokens[minus]?.low === ',' || tokens[minus]?.low === 'and') minus++;
  if (tokens[minus]?.low !== '-') return undefined;
  const below = numberAt(tokens, minus + 1);
  if (!below) return undefined;
  const unit = unitAt(tokens, below.next);
  const measure = unit?.unit ?? aboveUnit?.unit ?? COUNT;
  return {
    kind: 'tolerance',
    low: -below.value * measure.factor,
    high: above.value * measure.factor,
    unit: measure,
    next: unit?.next ?? below.next,
  };
}

function signEnd(tokens: readonly Token[], at: number): number | undefined {
  const [a, b, c] = [tokens[at]?.low, tokens[at + 1]?.low, tokens[at + 2]?.low];
  if (a === '±') return at + 1;
  if (a === 'give' && b === 'or' && c === 'take') return at + 3;
  if (a === '+' && b === '/' && c === '-') return at + 3;
  if (a === 'plus' && (b === 'or' || b === '/') && c === 'minus') return at + 3;
  return undefined;
}
