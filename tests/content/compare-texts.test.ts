import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { lostFrom } from '../../src/content/lost/lost.ts';
import { tellEvidence } from '../../src/model/duty-evidence.ts';

describe('two texts', () => {
  it.each([
    ['same', 'Bond the pipe.', 'Bond the pipe.'],
    ['editorial', 'Do not use water-based colour.', "DON'T use waterbased color"],
    ['editorial', 'Use 12 screws, at 50mm.', 'Use twelve screws at 50 mm.'],
    ['editorial', 'The guard shall close the gate.', 'The gate shall be closed by the guard.'],
    ['editorial', 'Boards, panels and doors are numbered.', 'Panels, doors and boards are numbered.'],
    ['substantive', 'Clean, prime and paint the rail.', 'Prime, clean and paint the rail.'],
    ['substantive', 'Use 12 screws.', 'Use 13 screws.'],
    ['substantive', 'Do not enter.', 'Do enter.'],
  ])('are %s in wording: %s / %s', (wording, from, to) => {
    expect(compareTexts(from, to).wording).toBe(wording);
  });

  it.each([
    ['stricter', 'Lap sheets at least 100 mm.', 'Lap sheets at least 6 in.'],
    ['relaxed', 'The drain falls at least 1:60.', 'The drain falls at least 1:80.'],
    ['stricter', 'The leak shall not exceed 4 L/s.', 'The leak shall not exceed 3 L/s.'],
    ['relaxed', 'Walls higher than 2 m are braced.', 'Walls higher than 3 m are braced.'],
    ['stricter', 'Test it every 12 months.', 'Test it every 6 months.'],
    ['stricter', 'Guests should sign the book.', 'Guests must sign the book.'],
    ['stricter', 'The fan may be removed.', 'The fan may not be removed.'],
    ['relaxed', 'Lock the hatch.', 'Lock the hatch unless a guard is present.'],
    ['stricter', 'Lock the hatch if it is wet.', 'Lock the hatch.'],
    ['relaxed', 'Weld or bolt the joint.', 'Weld, bolt or glue the joint.'],
    [
      'stricter',
      'Where a pipe runs inside it shall be lagged 25 mm deep at least.',
      'Where a pipe runs inside it shall be lagged 50 mm deep at least.',
    ],
    ['stricter', 'Fit the lid.', 'Fit the lid. Gaskets shall be greased.'],
    ['unclear', 'Do not work at night where it is wet.', 'Do not work at night it is wet.'],
    ['mixed', 'Leave 50 mm above and 25 mm beside the duct.', 'Leave 25 mm above and 50 mm beside the duct.'],
    ['unclear', 'Join the rails by welding.', 'Join the rails by bolting.'],
    ['unclear', 'Lock the hatch if it is wet.', 'Lock the hatch unless it is wet.'],
    ['same', 'The hatch must be locked.', 'Lock the hatch.'],
  ])('make a duty %s: %s / %s', (duty, from, to) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });

  it('are shown with the words on which the verdict rests', () => {
    const { evidence } = compareTexts('Lap sheets at least 100 mm.', 'Lap sheets at least 150 mm when it rains.');
    expect(evidence.map(tellEvidence)).toEqual([
      'condition added: "when it rains"',
      'value changed: "at least 100 mm" → "at least 150 mm"',
    ]);
  });

  it('take names that every object has as words', () => {
    const words = 'constructor toString __proto__ hasOwnProperty valueOf';
    expect(compareTexts(`Call the ${words}.`, `Call the ${words} twice.`).wording).toBe('substantive');
  });
});

describe('what is lost', () => {
  it('is told in the words of the old text, whatever its heirs share out', () => {
    const from = 'Sills of oak shall project 40 mm, except above doors, as Table 4 shows.';
    expect(lostFrom(from, ['Sills of oak project 40 mm.']).map(l => [l.kind, l.text])).toEqual([
      ['exception', 'except above doors'],
      ['reference', 'Table 4'],
    ]);
    expect(lostFrom(from, ['Sills project.', 'Oak sills: Table 4. Above doors none.']).map(l => l.text)).toEqual([
      '40 mm',
    ]);
  });

  it('leaves out a value that is stated anew: that changes a duty and loses nothing', () => {
    expect(lostFrom('Lap sheets at least 100 mm.', ['Sheets lap at least 150 mm.'])).toEqual([]);
    // Another thing is measured: the lap's value is gone.
    expect(
      lostFrom('Lap sheets at least 100 mm and clamp them.', ['Lap sheets. The gutter bracket is 150 mm long.']).map(
        l => l.text,
      ),
    ).toEqual(['at least 100 mm']);
  });
});

describe('hostile texts', () => {
  it.each(['a', '1 ', '(a) ', 'and ', '1/2 ', 'every ', 'by be ', ', ', 'ae', '5 mm ', 'unless ', 'at the '])(
    'of many times "%s" are read in time that grows with their length',
    piece => {
      const time = (n: number) => {
        const start = performance.now();
        compareTexts(piece.repeat(n), `${piece.repeat(n)} end`);
        return performance.now() - start;
      };
      time(500);
      const [short, long] = [time(1000), time(4000)];
      // Four times the text in sixteen times the time would be quadratic; small times are noise, on a busy machine more of it.
      expect(long).toBeLessThan(Math.max(12 * short, 8000));
    },
    30_000,
  );
});
