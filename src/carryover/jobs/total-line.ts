import type { Outcome } from '../../model/citation.ts';

const TOTAL = /^(?:(?:grand |sub-? ?)?totals?|sums?|(?:gesamt|zwischen)?summe|gesamt|total général|totale)\s*:?$/i;

/**
 * The word by which a line says that it sums up the lines above: the first cell that is filled, and nothing else in it.
 * A job may be called so; then it has a state or a type, which a sum has not.
 */
export function totalWord(cells: readonly string[]): string | undefined {
  const first = cells.find(cell => cell !== '' && cell.trim() !== '')?.trim();
  return first !== undefined && first.length < 20 && TOTAL.test(first) ? first : undefined;
}

export function totalLine(word: string): Outcome {
  return {
    kind: 'unknown',
    cause: 'total',
    why: `This line is headed “${word}”: it sums up others and is no job.`,
    toDo: 'Leave it as it is.',
    heirs: [],
  };
}
