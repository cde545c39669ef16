import type { Quantity } from './quantities.ts';

/** Whether two quantities allow the same values, however they are written. */
export function sameValue(a: Quantity, b: Quantity): boolean {
  return a.dimension === b.dimension && near(a.low, b.low) && near(a.high, b.high);
}

function near(a: number, b: number): boolean {
  if (a === b) return true;
  return Number.isFinite(a) && Number.isFinite(b) && Math.abs(a - b) <= 1e-4 * Math.max(Math.abs(a), Math.abs(b));
}
