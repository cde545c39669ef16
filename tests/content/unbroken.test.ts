import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { exchangedValues } from '../../src/content/duty/exchanged.ts';
import type { Quantity } from '../../src/content/quantities/quantities.ts';
import { valueIndex } from '../../src/content/quantities/value-index.ts';
import { inPieces, LONGEST_RUN } from '../../src/content/reading/parts-of-speech.ts';
import { type Reading, readText } from '../../src/content/reading/reading.ts';

const SIGNS = [...Array(0x250).keys()].slice(33).map(code => String.fromCodePoint(code));

describe('texts that nobody writes', () => {
  it('of one sign, and of two, reach the language library in pieces that are no longer than a word may be', () => {
    const long = SIGNS.flatMap(sign => [sign, `${sign}a`, `1${sign}`])
      .map(piece => inPieces(piece.repeat(5_000)))
      .filter(text => text.split(/\s+/).some(run => run.length > LONGEST_RUN));
    expect(long).toEqual([]);
  });

  it('are cut without losing a sign, and usual texts are not cut', () => {
    expect(inPieces('-'.repeat(1_000)).replaceAll(' ', '')).toBe('-'.repeat(1_000));
    const text = 'See https://example.org/a-rather-long-address/of-a-page/with-many-parts for the lid.';
    expect(inPieces(text)).toBe(text);
  });

  it.each(['-', "'", '½', '/', 'a', '1/', '%', '½ ', '1 mm '])('20,000 times "%s" are compared', piece => {
    expect(compareTexts(piece.repeat(20_000), `${piece.repeat(20_000)} end`).wording).toBe('substantive');
  });

  /** How often any value is looked at while two texts of so many values are compared. */
  function looks(n: number): number {
    let count = 0;
    const watched = (reading: Reading): Reading => ({
      ...reading,
      quantities: reading.quantities.map(
        q =>
          new Proxy(q, {
            get(target, name) {
              count++;
              return Reflect.get(target, name);
            },
          }),
      ),
    });
    const text = (step: number) => [...Array(n).keys()].map(i => `a part of ${(i + 2) * step} mm, `).join('');
    exchangedValues(watched(readText(text(3))), watched(readText(text(7))));
    return count;
  }

  it('of twice as many values take twice as many looks, and not four times', () => {
    expect(looks(800)).toBeLessThan(2.6 * looks(400));
  });

  it('values are found again by their bounds, however near they lie to another', () => {
    const value = (low: number, high = low) => ({ dimension: 'meter1', low, high, kind: 'value' }) as Quantity;
    const index = valueIndex(
      [value(1), value(1.00005), value(2, Number.POSITIVE_INFINITY), value(0), value(-3)],
      q => q,
    );
    expect([1, 1.00009, 0, -3].map(n => index.has(value(n)))).toEqual([true, true, true, true]);
    expect(index.has(value(2))).toBe(false);
    expect(index.has(value(2, Number.POSITIVE_INFINITY))).toBe(true);
    expect(index.only(value(-3))).toMatchObject({ low: -3 });
  });
});

it('leaves a text of over a hundred thousand signs to a person, and says why', () => {
  const text = 'Bolts shall be tightened. '.repeat(4_000);
  expect(compareTexts(text, `${text} Nuts too.`)).toMatchObject({
    duty: 'unclear',
    evidence: [{ what: 'too long to be compared' }],
    lost: [],
  });
  expect(compareTexts(text, text)).toMatchObject({ duty: 'same', wording: 'same' });
});
