import { expect, it } from 'vitest';
import { dateOption, isoDate } from '../../src/cli/dates.ts';
import { dayOf, isDay } from '../../src/model/day.ts';

it('the day of a moment is that of universal time', () => {
  expect(dayOf(new Date('2030-01-01T00:30:00+01:00'))).toBe('2029-12-31');
});

it.each(['2024-13-01', '2024-99-99', '2023-02-29', '2024-7-1', '01.07.2024', 'soon', ''])(
  '%s is no day, and is refused as a sentence',
  text => {
    expect(isDay(text)).toBe(false);
    // Months that no calendar has ended in a RangeError, which looks like a defect of ours.
    for (const read of [dateOption, isoDate]) expect(() => read(text)).toThrow(/rite it as year-month-day/);
  },
);
