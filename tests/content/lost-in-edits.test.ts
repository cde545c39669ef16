import { describe, expect, it } from 'vitest';
import { lostFrom } from '../../src/content/lost/lost.ts';

const lost = (from: string, to: string) => lostFrom(from, [to]).map(l => l.text);

describe('in a text that goes on word for word', () => {
  it.each([
    ['Pads shall be of cork and glued at 40 mm centres.', 'Pads shall be of felt and glued at 40 mm centres.', 'cork'],
    [
      'Only untreated screws of brass may be used in the hut.',
      'Only screws of brass may be used in the hut.',
      'untreated',
    ],
    ['Oil is kept in drums marked as such and sold each week.', 'Oil is kept in drums and sold each week.', 'marked'],
    [
      'Riders shall show their name and permit number on a board of wood.',
      'Riders shall show their name on a board of wood.',
      'permit number',
    ],
    ['The gate shall be shut by the guard each night.', 'The gate shall be shut by the clerk each night.', 'guard'],
    [
      'The noise shall not pass 30 dB at its highest setting.',
      'The noise shall not pass 30 dB at its normal setting.',
      'highest',
    ],
  ])('what is left out or has another in its place is lost: %s / %s', (from, to, phrase) => {
    expect(lost(from, to)).toEqual([phrase]);
  });

  it.each([
    // said again
    ['Lids are oiled outside. The inside of lids is waxed.', 'Lids are oiled outside. The inside is waxed.'],
    // whom a command speaks to
    ['The fitter shall leave the keys with the guard.', 'Leave the keys with the guard.'],
    // a name of a grade that rises
    ['Seals shall be of class at least QP 54 when wet.', 'Seals shall be of class at least QP 65 when wet.'],
    // one word or two
    ['Press the head board down firmly by hand.', 'Press the headboard down firmly by hand.'],
    ['Use screws of stainless steel at each joist of the deck.', 'Use stainless screws at each joist of the deck.'],
  ])('nothing else is: %s / %s', (from, to) => {
    expect(lost(from, to)).toEqual([]);
  });
});

describe('a sentence of which no heir says one word', () => {
  it('is lost as a whole, whatever was put in its place', () => {
    expect(
      lost(
        'The base shall drain to a ditch. The outlet shall be inspected before covering.',
        'The base shall drain to a ditch; a geotextile shall be laid below the base course.',
      ),
    ).toEqual(['The outlet shall be inspected before covering']);
  });

  it('is not lost where it is put in other words that share one', () => {
    expect(lost('The outlet shall be inspected before covering.', 'Outlets are looked at while open.')).not.toContain(
      'The outlet shall be inspected before covering',
    );
  });
});
