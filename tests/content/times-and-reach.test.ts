import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('how often, how early and how far', () => {
  it.each([
    ['Sheets shall be washed after each guest.', 'Sheets shall be washed once a week.', 'relaxed'],
    ['Sheets shall be washed once a week.', 'Sheets shall be washed after each guest.', 'stricter'],
    ['Beds shall be made daily.', 'Beds shall be made every second day.', 'relaxed'],
    ['Beds shall be made every week.', 'Beds shall be made every other day.', 'stricter'],
    ['Doors shall be kept locked.', 'Doors shall be kept locked at all times.', 'stricter'],
    ['The fan shall run while the room is used.', 'The fan shall run at all times.', 'stricter'],
    ['No cart may enter the hall.', 'No cart other than the tug may enter the hall.', 'relaxed'],
    ['Guests may cancel up to 24 hours before arrival.', 'Guests may cancel up to 12 hours before arrival.', 'relaxed'],
    [
      'Plans shall be sent no later than 3 days before the visit.',
      'Plans shall be sent no later than 5 days before the visit.',
      'stricter',
    ],
    ['Trees within 5 m of the pit shall be fenced.', 'Trees within 3 m of the pit shall be fenced.', 'relaxed'],
    [
      'The lamp shall be visible from a distance of 50 m.',
      'The lamp shall be visible from a distance of 100 m.',
      'stricter',
    ],
    ['Toilets are emptied daily, or more often where the smell demands it.', 'Toilets are emptied daily.', 'relaxed'],
    [
      'The hoist shall not be used in wind above 10 m/s.',
      'The hoist shall not be used in wind above 12 m/s.',
      'relaxed',
    ],
    ['Paint shall not be applied below 5 °C.', 'Paint shall not be applied below 8 °C.', 'stricter'],
    ['Take one sample from every tenth bag.', 'Take one sample from every fifth bag.', 'stricter'],
    ['A person shall be present.', 'A trained person shall be present.', 'stricter'],
    ['A ladder shall be removed.', 'A damaged ladder shall be removed.', 'relaxed'],
    ['A spare fuse of the same rating shall be kept in the box.', 'A spare fuse shall be kept in the box.', 'relaxed'],
    ['Lifejackets shall be worn on deck.', 'Lifejackets shall be worn on deck at night.', 'relaxed'],
    ['Light the stairs at all workplaces.', 'Light the stairs at permanent workplaces.', 'relaxed'],
    ['Smoking is not permitted in the store.', 'Smoking is prohibited in the store.', 'same'],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });
});
