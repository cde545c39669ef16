import { describe, expect, it } from 'vitest';
import { isPair, marksOf } from '../../src/content/links/marks.ts';
import { retentionBetween } from '../../src/content/links/retention.ts';
import { smallEditions } from './small-editions.ts';

type Editions = ReturnType<typeof smallEditions>;

/** What the audit says is lost of the first old item, and what the crosswalk calls dropped of it. */
function told({ joint, texts }: Editions) {
  const [first] = retentionBetween(joint, texts);
  const links = joint.crosswalk.links.filter(isPair).filter(l => l.from === first!.item);
  const evidence = links.flatMap(link => marksOf(joint, link, texts).evidence);
  return {
    lost: first!.lost.map(l => l.text),
    dropped: evidence.filter(e => /^(?:sentence|demand) dropped$/.test(e.what)).map(e => e.from),
  };
}

const pair = (title: string, old: string, now: string) =>
  smallEditions([['1', title, old]], [['2', title, now]], [['1', '2']]);

describe('a sentence that an heir does without', () => {
  it.each([
    ['Lid', 'The lid shall be lockable.', 'The lid shall be painted'],
    ['Soakaway', 'The pit shall drain to a soakaway.', 'The soakaway shall be inspected before filling'],
    ['Tank', 'The tank shall stand level.', 'The tank shall not be buried'],
    ['Pipe', 'The pipe shall be laid to a fall.', 'The pipe shall be tested and the test recorded'],
    ['Pit', 'The pit shall be dug by hand.', 'The crew shall photograph the pit before filling'],
    ['Bark', 'The bark shall be 300 mm deep.', 'The bark shall be swept daily'],
  ])('is lost as a whole, as the crosswalk has it, and not as a word of it: %s', (title, kept, gone) => {
    expect(told(pair(title, `${kept} ${gone}.`, kept))).toEqual({ lost: [gone], dropped: [gone] });
  });

  it('is lost of a merged item too, where its sibling goes on', () => {
    const editions = smallEditions(
      [
        ['1', 'Lid', 'The lid shall be lockable. The lid shall be painted.'],
        ['2', 'Tap', 'The tap shall be of brass.'],
      ],
      [['3', 'Lid and tap', 'The lid shall be lockable. The tap shall be of brass.']],
      [
        ['1', '3'],
        ['2', '3'],
      ],
    );
    expect(told(editions).lost).toEqual(['The lid shall be painted']);
  });

  it('is not lost where another heir says it', () => {
    const editions = smallEditions(
      [['1', 'Lid', 'The lid shall be lockable. The lid shall be painted.']],
      [
        ['2', 'Lock', 'The lid shall be lockable.'],
        ['3', 'Paint', 'The lid shall be painted.'],
      ],
      [
        ['1', '2'],
        ['1', '3'],
      ],
    );
    expect(told(editions)).toEqual({ lost: [], dropped: [] });
  });
});

it('a sentence of which a value goes on is not called lost as a whole', () => {
  const old = 'The kerb shall be of oak. It shall be at least 300 mm wide, and at least 500 mm wide below windows.';
  const { lost } = told(pair('Kerb', old, 'The kerb shall be at least 300 mm wide and of oak.'));
  expect(lost.join()).toContain('500 mm');
  expect(lost.join()).not.toContain('300 mm');
});

it('a demand of several words that the crosswalk calls dropped is lost as a whole', () => {
  const now = 'Fill in layers. Lay warning tape above the pipe.';
  const old = 'Lay warning tape above the pipe and photograph it before backfilling. Fill in layers.';
  expect(told(pair('Tape', old, now)).lost).toEqual(['photograph it before backfilling']);
});
