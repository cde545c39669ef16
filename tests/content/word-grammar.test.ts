import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('the grammar around a word that came, went or was exchanged', () => {
  it.each([
    // What a thing has to cover is more the wider it is.
    [
      'The shelf shall be adjustable from 400 mm to 800 mm.',
      'The shelf shall be adjustable from 350 mm to 800 mm.',
      'stricter',
    ],
    ['The gap shall be from 4 mm to 8 mm.', 'The gap shall be from 3 mm to 8 mm.', 'relaxed'],
    // Which deviations have to be gone before work goes on.
    [
      'Work shall not go on until errors of more than 1 mm have been corrected.',
      'Work shall not go on until errors of more than 2 mm have been corrected.',
      'relaxed',
    ],
    // Both cases of "unless A and B" have to be met; of "except A and B" each is let off.
    ['Close the hatch unless it has been tested and sealed.', 'Close the hatch unless it has been tested.', 'relaxed'],
    ['Close all hatches except vents and drains.', 'Close all hatches except vents.', 'stricter'],
    // "permit" before a noun permits nothing.
    ['Riders shall show their name and permit number.', 'Riders shall show their name.', 'relaxed'],
    // Of several things that are all asked for one is less and one more; of two that will do, nobody can tell.
    ['Wear gloves and goggles.', 'Wear gloves and boots.', 'mixed'],
    ['Wear gloves or goggles.', 'Wear gloves or boots.', 'unclear'],
    ['Pads are of rubber and shall be glued.', 'Pads are of cork and shall be glued.', 'unclear'],
    // A number that names a class rises where a bound stands before it.
    ['Seals shall be of class at least QP 54.', 'Seals shall be of class at least QP 65.', 'stricter'],
    ['The wear shall be below 3 mm at every point.', 'The wear shall be below 3 mm on average.', 'relaxed'],
    ['The wear at the points shall be 3 mm.', 'The wear at the points shall on average be 3 mm.', 'relaxed'],
    // Values that exchanged their things, told as that and not as two names.
    [
      'Tape shall be used within 12 months and glue within 9 months.',
      'Glue shall be used within 12 months and tape within 9 months.',
      'mixed',
    ],
    // What is asked for the second time is asked for.
    [
      'Lamps are replaced when the light drop exceeds 20 %. The keeper notes it, giving the date and the light drop.',
      'Lamps are replaced when the light drop exceeds 20 %. The keeper notes it, giving the date.',
      'relaxed',
    ],
    ['The soup shall cool to 5 °C.', 'The soup shall cool down to 5 °C.', 'same'],
    ['The rope runs free.', 'The rope starting runs free.', 'unclear'],
    [
      'Seals shall be kept in padded bags.',
      'Seals shall be kept in padded bags. This prevents breakage of the wax.',
      'same',
    ],
    [
      'Seals shall be kept in padded bags.',
      'Seals shall be kept in padded bags. This is done by two guards.',
      'stricter',
    ],
    ['Press the head board against the back rest.', 'Against the backrest press the headboard.', 'same'],
    [
      'Frames are wired with steel wire, drawn tight, with three runs.',
      'Frames are wired with three runs of steel wire, drawn tight.',
      'same',
    ],
    [
      'Lids are oiled on the outside. The inside of lids is waxed.',
      'Lids are oiled on the outside and the inside is waxed.',
      'same',
    ],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });
});
