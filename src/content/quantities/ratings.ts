import type { Token } from '../reading/tokens.ts';
import { numberAt } from './numbers.ts';
import type { ReadValue } from './read-value.ts';

const rating = (name: string) => ({ name, dimension: name, factor: 1, offset: 0 });

/**
 * Ratings that are measured along a scale of their own: R-8, R8, U-0.30, an R-value of 8, 12 AWG, No. 12 AWG. Wire gauges
 * run backwards (a smaller number is a thicker wire), so they are counted below zero: "at least 12 AWG" allows 10 AWG.
 */
export function ratingAt(tokens: readonly Token[], at: number): ReadValue | undefined {
  const token = tokens[at]!;
  if (token.text === 'R' || token.text === 'U') {
    if (at > 0 && token.glued && tokens[at - 1]!.kind !== 'mark') return undefined;
    let next = at + 1;
    if (tokens[next]?.low === '-') next++;
    if (tokens[next]?.low === 'value' || tokens[next]?.low === 'factor') {
      next++;
      for (let skipped = 0; skipped < 3 && tokens[next]?.kind === 'word' && !numberAt(tokens, next); skipped++) {
        if (!/^(of|at|least|is|be|shall|not|less|than|more|no|must|minimum|maximum)$/.test(tokens[next]!.low))
          return undefined;
        next++;
      }
      const number = numberAt(tokens, next);
      if (!number) return undefined;
      const unit = rating(`${token.text}-value`);
      return { kind: 'rating', low: number.value, high: number.value, unit, next: number.next, first: next };
    }
    if (tokens[next]?.kind !== 'number' || !tokens[next]!.glued) return undefined;
    const number = numberAt(tokens, next)!;
    return {
      kind: 'rating',
      low: number.value,
      high: number.value,
      unit: rating(`${token.text}-value`),
      next: number.next,
    };
  }
  const start = token.low === '#' ? at + 1 : token.low === 'no' && tokens[at + 1]?.low === '.' ? at + 2 : at;
  const number = numberAt(tokens, start);
  if (!number || tokens[number.next]?.low !== 'awg') return undefined;
  return { kind: 'rating', low: -number.value, high: -number.value, unit: rating('gauge'), next: number.next + 1 };
}
