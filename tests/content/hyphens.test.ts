import { expect, it } from 'vitest';
import { tagsOf } from '../../src/content/reading/parts-of-speech.ts';
import { tokensOf } from '../../src/content/reading/tokens.ts';

it('tags a chain of 12,000 hyphened letters like other words, within the time that any test has', () => {
  const text = `The joint ${'x-y-z-'.repeat(4000)} is sealed.`;
  const tokens = tokensOf(text);
  const tags = tagsOf(text, tokens);
  expect(tags).toHaveLength(tokens.length);
  expect(tags.at(-3)).toBe('AUX');
});
