import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('what changed places', () => {
  it.each([
    [
      'Lap the sheets by 150 mm and space the fixings at 75 mm.',
      'Lap the sheets by 75 mm and space the fixings at 150 mm.',
    ],
    [
      'Lap the sheets by 150 mm and space the fixings at 75 mm.',
      'Space the fixings at 150 mm; the lap of the sheets is 75 mm.',
    ],
    [
      'The flow pipe is insulated to 25 mm and the return pipe to 19 mm.',
      'Insulate the return pipe to 25 mm and the flow pipe to 19 mm.',
    ],
  ])('values of two things are mixed: %s / %s', (from, to) => {
    const { duty, evidence } = compareTexts(from, to);
    expect([duty, evidence.length > 0]).toEqual(['mixed', true]);
  });

  it('a value that went to another thing is never the same', () => {
    const told = compareTexts(
      'Seams are lapped 150 mm and battens fixed as drawn.',
      'Seams are lapped as drawn and battens fixed at 150 mm.',
    );
    expect(told.duty).toBe('unclear');
    expect(told.evidence.map(e => e.what)).toContain('value moved to another thing');
  });

  it('words that are now said of another thing are never the same', () => {
    const inner = 'Coving is scribed at internal corners and mitred at external corners.';
    const outer = 'Coving is mitred at internal corners and scribed at external corners.';
    expect(compareTexts(inner, outer).duty).toBe('unclear');
  });

  it('values that moved with their things are the same', () => {
    const from = 'The flow pipe is insulated to 25 mm and the return pipe to 19 mm.';
    const to = 'Insulate the return pipe to 19 mm and the flow pipe to 25 mm.';
    expect(compareTexts(from, to).duty).toBe('same');
  });
});
