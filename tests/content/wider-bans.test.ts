import { describe, expect, it } from 'vitest';
import { compareDuty } from '../../src/content/duty/compare-duty.ts';

describe('a ban that reaches further is stricter, and one that reaches less far is relaxed', () => {
  it.each([
    ['Smoking is forbidden within 10 m of the store.', 'Smoking is forbidden within 15 m of the store.'],
    ['Smoking is prohibited within 10 m.', 'Smoking is prohibited within 15 m.'],
    ['Fires are not allowed within 10 m of trees.', 'Fires are not allowed within 15 m of trees.'],
    ['Gaps between 8 and 25 mm are not allowed.', 'Gaps between 5 and 30 mm are not allowed.'],
    ['Openings between 89 mm and 230 mm are forbidden.', 'Openings between 80 mm and 250 mm are forbidden.'],
    ['Water with between 2 and 6 ppm is prohibited.', 'Water with between 1 and 8 ppm is prohibited.'],
    ['Gaps shall not be between 8 and 25 mm.', 'Gaps shall not be between 5 and 30 mm.'],
  ])('%s → %s', (narrow, wide) => {
    expect(compareDuty(narrow, wide).duty).toBe('stricter');
    expect(compareDuty(wide, narrow).duty).toBe('relaxed');
  });

  it('what is allowed in a wider range is relaxed', () => {
    const [narrow, wide] = ['Gaps between 8 and 25 mm are allowed.', 'Gaps between 5 and 30 mm are allowed.'];
    expect(compareDuty(narrow, wide).duty).toBe('relaxed');
    expect(compareDuty(wide, narrow).duty).toBe('stricter');
  });
});

describe('"most" for "all" with a time behind it', () => {
  it.each([
    ['All switch blades shall be greased weekly.', 'Most switch blades shall be greased weekly.'],
    ['Every gate shall be greased every 6 months.', 'Most gates shall be greased every 6 months.'],
    ['All filters shall be cleaned every 30 days.', 'Most filters shall be cleaned every 30 days.'],
  ])('is relaxed, and the time is no maximum: %s → %s', (all, most) => {
    const { duty, evidence } = compareDuty(all, most);
    expect(duty).toBe('relaxed');
    expect(evidence.map(e => e.what)).toEqual(['reach changed']);
  });

  it.each([
    ['Every tank shall have a lid.', 'At least one tank shall have a lid.'],
    ['Check every tank.', 'Check at least one tank.'],
    ['Hang a float in every tank.', 'Hang a float in at least one tank.'],
    ['Lids shall be fitted to all tanks.', 'Lids shall be fitted to at least one tank.'],
  ])('at least one for every is relaxed: %s → %s', (every, one) => {
    expect(compareDuty(every, one).duty).toBe('relaxed');
    expect(compareDuty(one, every).duty).toBe('stricter');
  });

  it('at the most, far before its value, is a maximum still', () => {
    expect(compareDuty('At the most the gap may be 30 mm.', 'At the most the gap may be 20 mm.').duty).not.toBe(
      'relaxed',
    );
  });
});
