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

  it('of the whole goes on in those of its parts', () => {
    const parts = (one: string, other: string) => {
      const { joint, texts } = smallEditions(
        [['1', 'Pipe', 'Wrap each pipe in felt. Close every socket with a cap.']],
        [
          ['2', one, 'Wrap each pipe in felt.'],
          ['3', other, 'Close every socket with a cap.'],
        ],
        [
          ['1', '2'],
          ['1', '3'],
        ],
      );
      return joint.crosswalk.links.filter(isPair).map(link => marksOf(joint, link, texts).duty);
    };
    expect(parts('Pipe felt', 'Pipe sockets')).toEqual(['same', 'same']);
    expect(parts('Felt', 'Sockets')).toEqual(['unclear', 'unclear']);
  });

  it('names something else where it names another type, another thing, or nothing but a type', () => {
    expect(marks(['villa'], ['villa', 'shop'], ['Lid, shop', 'Lid'], REVOICED).duty).toBe('unclear');
    expect(marks(['villa'], ['villa', 'shop'], ['Lid, villa', 'Cover'], REVOICED).duty).toBe('unclear');
    expect(marks(['villa'], ['villa', 'shop'], ['Villa', 'Lid'], REVOICED).duty).toBe('unclear');
  });
});

describe('what a work item tells', () => {
  const outcome = (was: string, is: string) => {
    const { joint, texts } = smallEditions([['1', 'Gutter', '']], [['2', 'Gutter', '-']], [['1', '2']]);
    const item = (id: string, outcome: string) => ({
      id,
      number: id,
      level: 1,
      parent: null,
      title: 'Gutter',
      outcome,
    });
    return marksOf(joint, joint.crosswalk.links.find(isPair)!, {
      ...texts,
      from: () => item('1', was),
      to: () => item('2', is),
    }).duty;
  };

  it('is the same or has to be read: an outcome binds nobody, so that "can" permits nothing', () => {
    expect(outcome('A gutter which drains to its outlet.', 'A gutter that drains to its outlet.')).toBe('same');
    expect(outcome('A gutter that drains and is firm.', 'A gutter that drains and can be cleared.')).toBe('unclear');
    expect(outcome('Each test can be read.', 'Each test can be read and done again.')).toBe('unclear');
  });
});
