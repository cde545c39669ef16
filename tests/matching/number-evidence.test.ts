import { describe, expect, it } from 'vitest';
import { AGREEMENTS, agreementOf, segmentsOf } from '../../src/matching/number-evidence.ts';

describe('printed numbers', () => {
  it('are the same with and without leading zeros, whatever stands between', () => {
    expect(segmentsOf('03.01.04-B')).toEqual(segmentsOf('3.1.4 b'));
  });

  it('agree from the front, segment by segment', () => {
    const agree = (a: string, b: string) => agreementOf(segmentsOf(a), segmentsOf(b));
    expect([agree('4.2.3', '4.2.3'), agree('4.2.3', '4.2.9'), agree('4.2.3', '4.2'), agree('4.2.3', '5.2.3')]).toEqual([
      0,
      1,
      1,
      AGREEMENTS - 1,
    ]);
  });

  it('that are codes without points agree digit by digit', () => {
    expect(agreementOf(segmentsOf('311222'), segmentsOf('311224'))).toBe(1);
  });

  it('say nothing where one side has none', () => {
    expect(agreementOf(segmentsOf(''), segmentsOf('4.2'))).toBe(AGREEMENTS - 1);
  });
});
