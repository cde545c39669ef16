import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('a text written anew', () => {
  const old = (verb: string) =>
    `Before the shift, the supply valve of each boiler shall be ${verb} by the fitter and the gauge read.`;
  const anew = (verb: string) =>
    `The fitter shall read the gauge and the supply valve of each boiler shall be ${verb} before the shift.`;

  it.each([
    ['opened', 'closed'],
    ['raised', 'lowered'],
    ['connected', 'disconnected'],
    ['cleaned', 'rinsed'],
    ['inspected', 'replaced'],
    ['added', 'removed'],
    ['welded', 'bolted'],
  ])('is never the same where another deed is asked: %s, %s', (a, b) => {
    expect(compareTexts(old(a), anew(a)).duty).toBe('same');
    expect(compareTexts(old(a), anew(b)).duty).not.toBe('same');
  });

  it.each([
    ['above', 'below'],
    ['before', 'after'],
    ['inside', 'outside'],
    ['over', 'under'],
    ['with', 'without'],
  ])('is never the same where a word became its opposite: %s, %s', (a, b) => {
    const from = `Fix the bracket ${a} the window with two brass screws and check it every year.`;
    const to = (word: string) => `With two brass screws, fix the bracket ${word} the window; every year it is checked.`;
    expect(compareTexts(from, to(b)).duty).not.toBe('same');
  });

  it('is the same where a phrase stands for a word', () => {
    const from = 'The damaged rope of a hoist shall be taken out of use at once.';
    expect(compareTexts(from, 'Without delay, remove the damaged rope of a hoist.').duty).toBe('same');
  });

  it('is relaxed where it only leaves a demand out, and stricter where it only adds one', () => {
    const long = 'Bearings of the pump are greased every month with lithium grease and a brush.';
    const short = 'Every month, grease the bearings of the pump.';
    expect(compareTexts(long, short).duty).toBe('relaxed');
    expect(compareTexts(short, long).duty).toBe('stricter');
  });
});

describe('who acts', () => {
  const named = 'A licensed electrician shall disconnect the heater.';
  const unnamed = 'The heater shall be disconnected.';

  it('is a demand where it says what the person has to be', () => {
    expect(compareTexts(named, unnamed).duty).toBe('relaxed');
    expect(compareTexts(unnamed, named).duty).toBe('stricter');
  });
});

describe('an exact value beside a bound', () => {
  it.each([
    ['Gutters fall at 1:350.', 'Gutters fall at 1:200 at least.', 'stricter'],
    ['Joists are 400 mm apart.', 'Joists are at most 300 mm apart.', 'stricter'],
    ['Clips stand at 900 mm centres.', 'Clips stand every 900 mm.', 'same'],
    ['Concrete is cured for 7 days.', 'Concrete is cured for at least 7 days.', 'unclear'],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });
});
