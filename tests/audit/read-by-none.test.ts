import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { retentionBetween } from '../../src/content/links/retention.ts';
import { type TypeReader, typeReader } from '../../src/content/reading/for-type.ts';
import { tokensLately } from '../../src/content/reading/tokens.ts';
import { mentionsOf, type NamedType } from '../../src/content/reading/type-names.ts';
import { publishedDemo } from '../demo-catalog.ts';
import { smallEditions } from './small-editions.ts';

const TYPES = [
  { id: 'stable', name: 'Stable' },
  { id: 'kennel', name: 'Kennel' },
  { id: 'office', name: 'Office' },
];
const read = typeReader(TYPES);

/** Words and numbers of a text that none of some types reads, apart from the names of types with what leads them. */
function readByNone(reader: TypeReader, named: readonly NamedType[], text: string, types: readonly string[]): string[] {
  const kept = types.map(type => reader(text, type, types).inPlace);
  const tokens = tokensLately(text);
  const mentions = mentionsOf(named)(tokens);
  const asked = tokens.filter(
    (t, at) =>
      t.kind !== 'mark' && !/^(?:and|or|but)$/.test(t.low) && !mentions.some(m => at >= m.first && at < m.next),
  );
  return asked.filter(t => kept.every(k => k[t.start] === ' ')).map(t => t.text);
}

describe('a type that an item does not hold for is a place, and parts nothing', () => {
  it.each([
    ['stable', 'Records shall be kept in offices for 5 years. Paint posts white.'],
    ['kennel', 'Saddles shall be hung on racks in stables with a padlock. Feed oats.'],
    ['kennel', 'A sign at least 300 mm high shall hang at stables within 50 m. Bark twice.'],
    ['stable', 'Provide 500 mm of filter soil, of the same mix as for kennels.'],
    ['stable', 'Smoking is forbidden, except in offices.'],
  ])('for %s alone: %s', (type, text) => {
    expect(read(text, type, [type])).toEqual({ text, inPlace: text });
  });

  it('such demands are asked of the heirs', () => {
    const { joint, texts } = smallEditions(
      [['1', 'Works', 'Records shall be kept in shops for 5 years. Paint posts white.', ['villa']]],
      [['2', 'Works', 'Paint posts white.', ['villa']]],
      [['1', '2']],
    );
    expect(retentionBetween(joint, texts).flatMap(r => r.lost.map(l => l.text))).toEqual([
      'Records shall be kept in shops for 5 years',
    ]);
  });
});

describe('of a text for several types', () => {
  it.each([
    'The points shall be agreed with the owner, or with the council in the case of a stable, before digging is begun.',
    'Felt shall be lapped 80 mm in stables with a strip of lead.',
  ])('a type reads all of a sentence of which only a piece would be left: %s', text => {
    for (const type of ['stable', 'kennel']) {
      const { text: said } = read(text, type, ['stable', 'kennel']);
      expect(said === text || /^[A-Z].*\b(?:shall|Lap)\b/.test(said)).toBe(true);
    }
  });

  it('a value that stands beside others is exchanged together with them', () => {
    const text = 'Troughs shall hold at least 20 L at 15 °C in stables and at least 5 L at 12 °C in kennels.';
    expect(read(text, 'stable', ['stable', 'kennel']).text).toBe('Troughs shall hold at least 20 L at 15 °C.');
    expect(read(text, 'kennel', ['stable', 'kennel']).text).toBe('Troughs shall hold at least 5 L at 12 °C.');
  });

  it('a value takes the place of that of its own dimension', () => {
    const text = 'Pegs shall be set 20 mm deep at 3 h in stables and at 4 h in kennels.';
    expect(read(text, 'kennel', ['stable', 'kennel']).text).toBe('Pegs shall be set 20 mm deep at 4 h.');
  });

  it('every word is read by at least one of its types', () => {
    const piece = fc.constantFrom(
      ...'Records shall be kept|at least 20 L|at 15 °C|5 L|80 mm|in stables|in offices|for kennels|on a kennel or stable|elsewhere|except in stables|and|or|,|, or|(|)|.|;|:|it shall be|Feed oats|with a padlock|before digging|which must be dry|of oak|100 mm'.split(
        '|',
      ),
    );
    const types = fc.subarray(['stable', 'kennel', 'office'], { minLength: 1 });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), types, (pieces, own) => {
        const text = pieces.join(' ').replace(/ (?=[,.;:)])/g, '');
        expect(readByNone(read, TYPES, text, own)).toEqual([]);
      }),
      { numRuns: 600 },
    );
  });

  it('of the demo, every word of an old item is read by at least one of its types', async () => {
    const published = await (await publishedDemo())();
    for (const [old, now] of [
      ['2014', '2018'],
      ['2018', '2024'],
    ] as const) {
      const [from, to, items] = [
        await published.edition(old),
        await published.edition(now),
        await published.items(old),
      ];
      const named = [...from.settings.installationTypes, ...to.settings.installationTypes];
      const reader = typeReader(named);
      for (const { id, number, text } of items.values()) {
        const types = from.places.types(id);
        if (types.length > 0 && text) expect([number, ...readByNone(reader, named, text, types)]).toEqual([number]);
      }
    }
  });

  it.each([
    ['4.1.3.2', /^There shall be .* of the same mix as for house lots\.$/],
    ['1.3.3.2', /^The points to be set out shall be shown on a drawing to a scale of 1:100 .* digging is begun\.$/],
  ])('of the demo, %s is a sentence from its head to its end for each of its types', async (number, whole) => {
    const published = await (await publishedDemo())();
    const { settings, places } = await published.edition('2018');
    const reader = typeReader(settings.installationTypes);
    const found = [...(await published.items('2018')).values()].filter(i => i.number === number);
    expect(found.length).toBeGreaterThan(0);
    for (const { id, text } of found)
      for (const type of places.types(id)) expect(reader(text!, type, places.types(id)).text).toMatch(whole);
  });
});
