import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

const duty = (from: string, to: string) => compareTexts(from, to).duty;

describe('where and when a duty holds', () => {
  it.each([
    ['In exposed sites, brace the posts.', 'Brace the posts.'],
    ['In lofts and cellars the cable shall be armoured.', 'The cable shall be armoured.'],
    ['In lofts, armour the cable.', 'Armour the cable.'],
    ['Clean the hoist monthly, weather permitting.', 'Clean the hoist monthly.'],
    ['Weather permitting, clean the hoist monthly.', 'Clean the hoist monthly.'],
  ])('a limit dropped is stricter, and one added relaxes: %s', (limited, all) => {
    expect(duty(limited, all)).toBe('stricter');
    expect(duty(all, limited)).toBe('relaxed');
  });

  it('a place added to a permission permits less', () => {
    expect(duty('Lamps may be used.', 'In lofts, lamps may be used.')).toBe('stricter');
  });

  it('a sentence that lets less be enough relaxes', () => {
    const from = 'Courses shall be at least 150 mm above the ground.';
    expect(duty(from, `${from} On sloping sites 75 mm is enough.`)).toBe('relaxed');
  });
});

describe('values that are to be met', () => {
  it.each([
    ['Hold 150 kPa for 10 minutes with no loss.', 'Hold 150 kPa for 20 minutes with no loss.', 'stricter'],
    ['Water shall stand for 24 hours with no drop.', 'Water shall stand for 48 hours with no drop.', 'stricter'],
    ['Do not load the floor until 7 days after.', 'Do not load the floor until 14 days after.', 'stricter'],
    ['The torque shall be 50 N·m.', 'The torque shall be 60 N·m.', 'unclear'],
    ['The torque shall be at least 50 N·m.', 'The torque shall be at least 60 N·m.', 'stricter'],
    ['Mix 3 parts sand to 1 part cement.', 'Mix 4 parts sand to 1 part cement.', 'unclear'],
  ])('%s / %s: %s', (from, to, wanted) => {
    expect(duty(from, to)).toBe(wanted);
  });
});

describe('the same said otherwise', () => {
  it.each([
    ['Never paint the seal.', 'Do not paint the seal.'],
    ['The seal shall never be painted.', 'The seal shall not be painted.'],
  ])('"never" denies as "not" does: %s / %s', (from, to) => {
    expect(compareTexts(from, to)).toMatchObject({ duty: 'same', lost: [] });
    expect(
      duty(
        from,
        from.replace(/^Never p|never be/, m => (m === 'never be' ? 'be' : 'P')),
      ),
    ).not.toBe('same');
  });

  it.each([
    ['The fitter shall post a notice beside the meter.', 'A notice shall be posted beside the meter by the fitter.'],
    ['The roofer shall fix the tiles with two nails.', 'The tiles shall be fixed with two nails by the roofer.'],
    ['The firm shall send the drawings to the owner.', 'The drawings shall be sent to the owner by the firm.'],
    ['THE FLUE SHALL BE 3 M HIGH', 'The flue shall be 3 m high'],
    ['KEEP PAINT AT 20 °C FOR 2 H.', 'Keep paint at 20 °C for 2 h.'],
    ['FLOW SHALL BE AT LEAST 2 L/S.', 'Flow shall be at least 2 L/s.'],
  ])('in the passive or in capitals is editorial: %s', (from, to) => {
    expect(compareTexts(from, to).wording).toBe('editorial');
  });

  it('is substantive where the passive says more', () => {
    const from = 'The roofer shall fix the tiles with two nails.';
    expect(compareTexts(from, 'The tiles shall be fixed with three nails by the roofer.').wording).toBe('substantive');
  });
});
