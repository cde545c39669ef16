import { describe, expect, it } from 'vitest';
import { marksOf } from '../../src/content/links/marks.ts';
import { retentionBetween } from '../../src/content/links/retention.ts';
import { readerForType } from '../../src/content/reading/for-type.ts';
import { smallEditions } from './small-editions.ts';

const TYPES = [
  { id: 'villa', name: 'Villa' },
  { id: 'shop', name: 'Shop' },
  { id: 'court', name: 'Courtyard block' },
];
const read = (text: string, type: string) => readerForType(type, TYPES)(text).text.trim();

describe('a text read for one type', () => {
  it.each([
    ['Sockets at least 450 mm high, or 600 mm in a shop.', 'Sockets at least 450 mm high.'],
    ['Sockets at least 450 mm high (600 mm in shops).', 'Sockets at least 450 mm high.'],
    ['Sockets at least 450 mm high in villas and 600 mm in shops.', 'Sockets at least 450 mm high.'],
    ['Sockets 450 mm high on villas, elsewhere 600 mm.', 'Sockets 450 mm high.'],
    ['Fix rails. In shops paint them.', 'Fix rails.'],
    ['Fix rails; for courtyards: paint them.', 'Fix rails;'],
    ['Fix rails, except in shops.', 'Fix rails.'],
    ['Fix rails to the shop window in the street.', 'Fix rails to the shop window in the street.'],
  ])('has nothing of what others are told: %s', (text, villa) => {
    expect(read(text, 'villa')).toBe(villa);
  });

  it.each([
    ['Sockets at least 450 mm high, or 600 mm in a shop.', 'Sockets at least 600 mm high.'],
    ['Sockets at least 450 mm high in villas and 600 mm in shops.', 'Sockets at least 600 mm high.'],
    ['In villas locks shall have 5 bolts, in shops 3 bolts.', 'locks shall have 3 bolts.'],
    ['Sockets are 450 mm high. In shops they shall be 600 mm high.', 'Sockets are 600 mm high.'],
    ['Fix rails, except in shops.', ''],
    ['In a courtyard block or shop, sweep it.', 'sweep it.'],
  ])('has its own value in the place of the one that all are told: %s', (text, shop) => {
    expect(read(text, 'shop')).toBe(shop);
  });

  it('keeps every word at its place where it is asked to', () => {
    const text = 'Fix rails. In villas paint them. Sweep.';
    const { inPlace } = readerForType('shop', TYPES)(text);
    expect(inPlace.length).toBe(text.length);
    expect(inPlace.indexOf('Sweep')).toBe(text.indexOf('Sweep'));
  });
});

/** What the audit says of each old item of a merge, by type. */
function merged(villa: string, shop: string, now: string) {
  const { joint, texts } = smallEditions(
    [
      ['1', 'Works', villa, ['villa']],
      ['2', 'Works', shop, ['shop']],
    ],
    [['3', 'Works', now, ['villa', 'shop']]],
    [
      ['1', '3'],
      ['2', '3'],
    ],
  );
  return retentionBetween(joint, texts).map(r => ({
    types: r.types,
    said: [...r.lost.map(l => l.text), ...r.changed.map(c => `${c.text} → ${c.to}`)],
  }));
}

describe('an audit asks what the heirs say for the type of the old item', () => {
  it('a demand that the heir has for another type only is lost', () => {
    expect(
      merged(
        'Panes shall be 6 mm thick.',
        'Panes shall be 6 mm thick. Bed panes in putty.',
        'Panes shall be 6 mm thick. In villas bed panes in putty.',
      ),
    ).toEqual([
      { types: ['villa'], said: [] },
      { types: ['shop'], said: ['Bed panes in putty'] },
    ]);
  });

  it('values that were exchanged between types have changed', () => {
    expect(
      merged(
        'Locks shall have 3 bolts.',
        'Locks shall have 5 bolts.',
        'In villas locks shall have 5 bolts. In shops locks shall have 3 bolts.',
      ),
    ).toEqual([
      { types: ['villa'], said: ['3 → 5'] },
      { types: ['shop'], said: ['5 → 3'] },
    ]);
  });

  it('a value that stands in brackets for the type is stated', () => {
    expect(
      merged(
        'Sockets shall be at least 450 mm high.',
        'Sockets shall be at least 600 mm high.',
        'Sockets shall be at least 450 mm high (600 mm in shops).',
      ).flatMap(r => r.said),
    ).toEqual([]);
  });

  it('one item of both types is asked for each, and told once where they agree', () => {
    const { joint, texts } = smallEditions(
      [['1', 'Doors', 'Doors shall be 900 mm wide. Oil hinges yearly.', ['villa', 'shop']]],
      [['2', 'Doors', 'In villas doors shall be 900 mm wide.', ['villa', 'shop']]],
      [['1', '2']],
    );
    const told = retentionBetween(joint, texts).map(r => [r.types, r.lost.map(l => l.text)]);
    expect(told).toEqual([
      [['villa'], ['Oil hinges yearly']],
      [['shop'], ['900 mm', 'Oil hinges yearly']],
    ]);
  });

  it('the duty of a type is not that of another', () => {
    const { joint, texts } = smallEditions(
      [['1', 'Doors', 'Doors shall be at least 900 mm wide.', ['villa', 'shop']]],
      [['2', 'Doors', 'Doors shall be at least 900 mm wide, or 1200 mm in shops.', ['villa', 'shop']]],
      [['1', '2']],
    );
    const [link] = joint.leaving('1');
    expect(marksOf(joint, link as Parameters<typeof marksOf>[1], texts).dutyByType).toEqual([
      { type: 'villa', duty: 'same' },
      { type: 'shop', duty: 'stricter' },
    ]);
  });
});
