import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { isEmptyWord } from '../../src/content/reading/empty-words.ts';
import { howMany } from '../../src/content/reading/how-many.ts';

const less = (from: string, to: string) => {
  expect(compareTexts(from, to).duty).toBe('relaxed');
  expect(compareTexts(to, from).duty).toBe('stricter');
};

describe('of how many things, and how often', () => {
  const all = ['All welds', 'Every weld', 'Each weld', 'Both welds', 'Any weld'];
  const part = ['Most welds', 'Most of the welds', 'Some welds', 'Either weld', 'Several welds', 'A sample of welds'];
  it.each(all.flatMap(a => part.map(b => [a, b] as const)))('"%s" asks more than "%s"', (a, b) => {
    less(`${a} shall be tested.`, `${b} shall be tested.`);
  });

  it.each([
    ['at all times', 'at most times'],
    ['always', 'normally'],
    ['always', 'usually'],
    ['always', 'at most times'],
    ['always', 'sometimes'],
    ['always', 'often'],
  ])('"%s" asks more than "%s"', (a, b) => {
    less(`The doors shall ${a} be closed.`, `The doors shall ${b} be closed.`);
  });

  it('a case that needs all of them comes up less often than one that needs one', () => {
    less('If any lamp fails stop work.', 'If all lamps fail stop work.');
  });

  it('a permission for all permits more', () => {
    expect(compareTexts('Any door may be locked.', 'Some doors may be locked.').duty).toBe('stricter');
  });

  it('"either end" is each end, and "each" is "every"', () => {
    expect(compareTexts('Fix it at each end.', 'Fix it at either end.').duty).toBe('same');
    expect(compareTexts('Every door shall be shut.', 'All doors shall be shut.').duty).toBe('same');
  });

  it('texts that are otherwise rewritten are not the same where one says "most"', () => {
    const from = 'When it rains, every hatch shall be shut by the crew before they leave the deck.';
    const to = 'Before leaving the deck in rain the crew shall shut most hatches.';
    expect(compareTexts(from, to).duty).toBe('unclear');
  });

  it('no word that carries no content goes without a comparison of how many it says', () => {
    const words = 'each every all any both either most always some several many half often sometimes'.split(' ');
    expect(words.filter(w => isEmptyWord(w) && howMany(w) === undefined)).toEqual([]);
  });
});
