import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';

describe('one phrase more or less', () => {
  it.each([
    [
      'A trained attendant shall be present throughout the session.',
      'An attendant shall be present throughout the session.',
      'relaxed',
    ],
    ['Wool shall be washed twice in clean soft water.', 'Wool shall be washed twice in clean water.', 'relaxed'],
    ['The lining shall be of felt 6 mm thick.', 'The lining shall be of felt.', 'relaxed'],
    ['Fresh feed shall be given daily.', 'Feed shall be given daily.', 'relaxed'],
    [
      'The driver shall sound the horn before reversing.',
      'The driver shall sound the horn before reversing near people.',
      'relaxed',
    ],
    [
      'Sand shall be sieved and dried to a moisture content of 2 % or less.',
      'Sand shall be sieved and dried.',
      'relaxed',
    ],
    [
      'Stitches shall not be spaced more than 5 mm apart or pulled tight.',
      'Stitches shall not be spaced more than 5 mm apart.',
      'relaxed',
    ],
    [
      'Stitches shall not be spaced more than 5 mm apart.',
      'Stitches shall not be spaced more than 5 mm apart or pulled tight.',
      'stricter',
    ],
    [
      'A warning notice in red letters shall be fixed to the gate.',
      'A warning notice shall be fixed to the gate.',
      'relaxed',
    ],
    [
      'The kiln shall be vented. The kiln shall be cooled below 60 °C before it is opened.',
      'The kiln shall be cooled below 60 °C before it is opened.',
      'relaxed',
    ],
    ['The valve shall be opened slowly by the operator.', 'The operator shall open the valve.', 'relaxed'],
    [
      'The mast shall be inspected for corrosion and cracks at least once a year.',
      'At least twice a year, inspect the mast for corrosion.',
      'mixed',
    ],
    [
      'The gate shall be at least 1.2 m high and 900 mm wide.',
      'The gate shall be at least 1.4 m high and 800 mm wide.',
      'mixed',
    ],
    ['Pits shall be covered when not in use.', 'Pits shall be covered.', 'stricter'],
    ['Waste shall be collected in sealed metal bins.', 'Waste shall be collected in bins.', 'relaxed'],
    ['Waste shall be collected in sealed metal bins.', 'Collect waste in metal bins.', 'relaxed'],
    ['Lamps shall be replaced in groups and the old lamps recycled.', 'Replace lamps in groups.', 'relaxed'],
    [
      'It is forbidden to store fuel in the workshop.',
      'Fuel shall not be stored in the workshop overnight.',
      'relaxed',
    ],
    ['The hatch must be closed and locked prior to departure.', 'Close the hatch before departure.', 'relaxed'],
    ['The crew shall be briefed in writing before departure.', 'Brief the crew before departure.', 'relaxed'],
    [
      'Where the slope exceeds 10 %, wheel chocks shall be used.',
      'Use wheel chocks on slopes of more than 15 %.',
      'relaxed',
    ],
    [
      'Glaze shall be sieved through a mesh of 0.2 mm and stirred before use.',
      'Before use, glaze shall be sieved through a 0.2 mm mesh.',
      'relaxed',
    ],
    ['Shelves shall carry 80 kg without visible sag.', 'Shelves shall carry 100 kg without visible sag.', 'stricter'],
    ['Dust masks shall be worn during sanding.', 'Dust masks shall be worn during sanding and sweeping.', 'stricter'],
    [
      'Animals shall be moved quietly, in groups of at most 20.',
      'Move animals in groups of no more than 20.',
      'relaxed',
    ],
    ['Animals shall be moved in groups of at most 20.', 'Animals are to be moved in groups not exceeding 20.', 'same'],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });

  it('is a faithful rewording where plain words of any requirement stand for each other', () => {
    const from = 'Visitors shall be informed of the closing time. Lost badges shall be returned to the office.';
    const to = 'The closing time shall be announced to visitors, and lost badges handed back to the office.';
    expect(compareTexts(from, to).duty).toBe('same');
  });

  it('is no faithful rewording where one of two ways is asked for and then both', () => {
    const told = compareTexts('Wires shall be tinned or crimped.', 'Crimp and tin all wires.');
    expect(told.duty).not.toBe('same');
  });
});

describe('what may be done', () => {
  it('binds as firmly as a duty where only that may be done, or nothing else', () => {
    const from = 'The mirror shall be cleaned by the scientist before each use.';
    expect(compareTexts(from, 'Only the scientist may clean the mirror, before each use.').duty).not.toBe('relaxed');
    const door = 'Doors of the hall shall be kept closed at all times.';
    expect(compareTexts(door, 'At no time may a door of the hall be left open.').duty).not.toBe('relaxed');
  });

  it('is a case, not leave, where a sentence begins with "should"', () => {
    const from = 'If a leaf is missing, work shall stop and the owner shall be told.';
    const to = 'Should a leaf be missing, work shall stop and the owner shall be told.';
    expect(compareTexts(from, to).duty).toBe('same');
  });
});

describe('values and cases', () => {
  it.each([
    ['Frames shall be bolted at four points.', 'Frames shall be bolted at two points.', 'relaxed'],
    ['Soak at 90 °C for at least 3 min.', 'Soak for at least 3 min at 90 °C.', 'same'],
    ['Oil the chain at intervals not exceeding six months.', 'Oil the chain at least every six months.', 'same'],
    ['Hoses shall be replaced after 4 years.', 'Hoses shall be replaced after 6 years.', 'relaxed'],
    [
      'Samples shall be read within 24 hours of receipt by two methods.',
      'Samples shall be read within 24 hours of receipt.',
      'relaxed',
    ],
    ['The drum shall hold 40 rubs when tested to sheet 7.', 'The drum shall hold 40 rubs.', 'relaxed'],
    [
      'Covers shall be fitted if it rains and sand is forecast.',
      'Covers shall be fitted if it rains or sand is forecast.',
      'stricter',
    ],
    [
      'Light shall not exceed 50 lux, and heat shall not exceed 20 °C.',
      'Light shall not exceed 50 lux, or heat shall not exceed 20 °C.',
      'relaxed',
    ],
    ['Restore a randomly chosen set.', 'Restore a chosen set.', 'relaxed'],
    ['Fuel shall be dry plant material such as hay or straw.', 'Fuel shall be dry plant material.', 'same'],
    [
      'Remove power after the pilot has confirmed it by hand signal or radio.',
      'Remove power after the pilot has confirmed it by radio.',
      'stricter',
    ],
    [
      'Carts shall be guided by a marshaller at walking pace.',
      'Carts shall move at walking pace; a marshaller may guide them.',
      'unclear',
    ],
  ])('%s / %s: %s', (from, to, duty) => {
    expect(compareTexts(from, to).duty).toBe(duty);
  });
});
