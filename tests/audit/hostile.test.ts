import { describe, expect, it } from 'vitest';
import { lostFrom } from '../../src/content/lost/lost.ts';

describe('hostile texts', () => {
  it.each([
    'at least 5 mm ',
    'unless it is wet ',
    'if oak and shall ',
    'non-woven ',
    'the oak is sawn and ',
    'since ',
    'at once ',
    'Table 4. ',
    'oak beam steel ',
    '__proto__ constructor ',
  ])('of many times "%s" are audited in time that grows with their length', piece => {
    const time = (n: number) => {
      const start = performance.now();
      lostFrom(`${piece.repeat(n)} end`, [`${piece.repeat(n >> 1)} fin`]);
      return performance.now() - start;
    };
    time(100);
    const [short, long] = [time(500), time(2000)];
    // Four times the text in sixteen times the time would be quadratic; small times are noise.
    expect(long).toBeLessThan(Math.max(12 * short, 8000));
  });
});
