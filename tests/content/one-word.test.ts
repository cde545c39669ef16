import { describe, expect, it } from 'vitest';
import { isPair, marksOf } from '../../src/content/links/marks.ts';
import { smallEditions } from '../audit/small-editions.ts';

type Types = readonly string[];

function marks(before: Types, now: Types, titles = ['Lid', 'Lid'], texts = ['Fit 2 bolts.', 'Fit at least 2 bolts.']) {
  const small = smallEditions(
    [['1', titles[0]!, texts[0]!, before]],
    [['2', titles[1]!, texts[1]!, now]],
    [['1', '2']],
  );
  return marksOf(small.joint, small.joint.crosswalk.links.find(isPair)!, small.texts);
}

const THICKER = ['The lid shall be at least 30 mm thick.', 'The lid shall be at least 40 mm thick.'];
const REVOICED = ['The lid shall be at least 30 mm thick.', 'Make the lid at least 30 mm thick.'];

describe('the one word of a line', () => {
  it('is that of the types that the old item had; new ones stand in a mark of their own', () => {
    expect(marks(['villa'], ['villa', 'shop'], ['Lid', 'Lid'], THICKER)).toMatchObject({
      duty: 'stricter',
      appliesTo: 'wider',
    });
    expect(marks(['villa'], ['villa', 'shop'], ['Lid', 'Cover'], ['Close it.', 'Close it.']).duty).toBe('unclear');
    expect(marks(['villa'], ['villa', 'shop'], ['Lid', 'Lid'], ['Close it.', 'Close it.'])).toMatchObject({
      duty: 'same',
      appliesTo: 'wider',
    });
  });

  it('is that of the types that go on where others end', () => {
    expect(marks(['villa', 'shop'], ['shop'], ['Lid', 'Lid'], THICKER)).toMatchObject({
      duty: 'stricter',
      appliesTo: 'narrower',
      dutyByType: [
        { type: 'villa', duty: 'ends' },
        { type: 'shop', duty: 'stricter' },
      ],
    });
  });

  it('is unclear where no type goes on', () => {
    expect(marks(['villa'], ['shop'])).toMatchObject({ duty: 'unclear', appliesTo: 'shifted' });
  });
});

describe('a title', () => {
  it('names the same thing with and without the name of a type that it holds for', () => {
    expect(marks(['villa'], ['villa', 'shop'], ['Lid, villa', 'Lid'], REVOICED).duty).toBe('same');
    expect(marks(['villa', 'shop'], ['villa', 'shop'], ['Lid, villas and shops', 'Lid'], REVOICED).duty).toBe('same');
  });

  it('names something else where it names another type, another thing, or nothing but a type', () => {
    expect(marks(['villa'], ['villa', 'shop'], ['Lid, shop', 'Lid'], REVOICED).duty).toBe('unclear');
    expect(marks(['villa'], ['villa', 'shop'], ['Lid, villa', 'Cover'], REVOICED).duty).toBe('unclear');
    expect(marks(['villa'], ['villa', 'shop'], ['Villa', 'Lid'], REVOICED).duty).toBe('unclear');
  });
});
