import { expect, it } from 'vitest';
import { loadLanguage } from '../../src/drafting/language.ts';
import { remarksOn } from '../../src/drafting/rules.ts';

it('a second thing is named by words that say what it is: "be" alone asks for nothing', async () => {
  const text =
    'The lid shall remain on site while others pour. Anchors shall be tested to 5 kN. Washers shall be of stainless steel.';
  const said = remarksOn((await loadLanguage()).read(text)).filter(r => r.rule === 'more-than-one-thing');
  expect(said.map(r => r.words)).toEqual(['tested', 'be of stainless steel']);
  for (const { start, end, words } of said) expect(text.slice(start, end)).toBe(words);
});

it('a tank that shall open, close or be primed is told to do so, whatever the tagger takes these words for', async () => {
  const language = await loadLanguage();
  for (const [one, two] of [
    ['clean', 'close'],
    ['flush', 'prime'],
    ['open', 'empty'],
    ['dry', 'level'],
  ]) {
    const text = `The fitter shall ${one} the pipe, and shall ${two} the tank.`;
    const said = remarksOn(language.read(text)).filter(r => r.rule === 'more-than-one-thing');
    expect(
      said.map(r => r.words),
      text,
    ).toEqual([two]);
  }
});
