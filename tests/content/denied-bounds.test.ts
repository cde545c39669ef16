import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('a denied bound sets the opposite bound, whatever its verb', () => {
  it.each(
    [
      ['not be', 'below', 5, 10],
      ['not fall', 'below', 5, 10],
      ['not drop', 'under', 5, 10],
      ['never go', 'below', 5, 10],
      ['not be allowed to fall', 'below', 5, 10],
      ['be kept from falling', 'below', 5, 10],
      ['not rise', 'above', 10, 5],
      ['not be', 'over', 10, 5],
      ['not climb', 'over', 10, 5],
      ['not extend', 'beyond', 10, 5],
      ['not go', 'past', 10, 5],
      ['not be', 'beyond', 10, 5],
    ].map(([verb, bound, loose, strict]) => [`${verb} ${bound}`, loose, strict] as const),
  )('"shall %s %i mm" is looser than %i mm', (bound, loose, strict) => {
    const text = (value: number) => `The level shall ${bound} ${value} mm.`;
    expect(compareTexts(text(loose as number), text(strict as number)).duty).toBe('stricter');
    expect(compareTexts(text(strict as number), text(loose as number)).duty).toBe('relaxed');
  });

  it.each([
    ['No tile shall be laid below 5 °C.', 'No tile shall be laid below 8 °C.', 'stricter'],
    ['Do not lift loads over 30 kg by hand.', 'Do not lift loads over 25 kg by hand.', 'stricter'],
    ['The level shall not fall below 5 mm.', 'The level shall be at least 5 mm.', 'same'],
    // Another deed is banned; a bound swallows verbs of being and moving only.
    ['Do not paint below 5 °C.', 'Do not weld below 5 °C.', 'unclear'],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });
});
