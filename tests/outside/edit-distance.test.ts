import { describe, expect, it } from 'vitest';
import { editDistance } from '../../src/text/nearest.ts';

// Source: the worked examples that textbooks give for Levenshtein's distance.
describe('the edit distance', () => {
  it.each([
    ['kitten', 'sitting', 3],
    ['Saturday', 'Sunday', 3],
    ['', 'abc', 3],
    ['same', 'same', 0],
  ])('from %j to %j is %i, and the same back', (a, b, distance) => {
    expect([editDistance(a, b), editDistance(b, a)]).toEqual([distance, distance]);
  });
});
