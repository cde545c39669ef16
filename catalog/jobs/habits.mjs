/** How the two invented agencies order work, write it down, and get it wrong. */

/** Work items of edition 2018 that are ordered together, for each installation type, and what goes with any works. */
export const packages = {
  works: {
    house: [
      ['3.1.1', '3.2.1', '2.3.1', '2.2.1', '2.3.5'],
      ['3.3.1', '3.3.4', '2.1.1', '2.2.1', '9.2.1'],
      ['4.1.1', '8.1.1', '7.2.1', '4.4.1', '2.3.5'],
      ['4.2.1', '4.4.1', '8.2.1', '9.2.1'],
      ['5.1.1', '5.1.5', '5.2.1', '5.3.2', '5.3.1'],
      ['6.1.1', '6.1.2', '6.2.1', '6.3.1', '6.3.2', '6.3.3'],
      ['7.1.1', '7.1.2', '7.2.1', '7.2.5', '7.3.1'],
      ['2.1.1', '2.2.1', '8.3.1', '2.3.5'],
    ],
    terrace: [
      ['3.1.2', '3.2.2', '2.3.2', '2.2.2', '2.3.5'],
      ['3.3.1', '3.3.4', '2.2.2', '9.2.2'],
      ['4.2.2', '4.4.1', '8.2.1', '8.1.2'],
      ['2.1.2', '2.1.5', '2.2.2', '8.3.4'],
      ['5.2.1', '5.1.5', '5.3.2', '5.2.6'],
      ['6.1.1', '6.1.3', '6.2.2', '6.3.1', '6.3.2'],
      ['7.1.1', '7.1.3', '7.2.1', '7.2.5', '7.3.1'],
    ],
    court: [
      ['3.1.3', '3.2.3', '2.3.3', '2.2.3', '2.3.5'],
      ['3.3.2', '3.3.4', '2.3.3', '9.2.3'],
      ['4.1.2', '4.4.1', '8.1.3', '7.2.2'],
      ['4.2.3', '4.4.1', '8.2.2', '9.2.3'],
      ['4.3.1', '7.2.5', '8.3.2'],
      ['5.1.2', '5.1.5', '5.2.2', '5.2.4', '5.3.1', '5.3.2'],
      ['6.1.1', '6.1.3', '6.2.3', '6.3.1', '6.3.2', '6.3.3'],
      ['7.1.1', '7.1.4', '7.2.2', '7.2.3', '7.3.1'],
      ['2.1.3', '2.1.5', '2.2.3'],
    ],
    street: [
      ['4.1.3', '8.1.4', '4.4.1', '7.2.2', '7.2.3'],
      ['4.3.3', '8.1.4', '7.2.5', '8.3.2'],
      ['5.1.3', '5.1.5', '5.2.3', '5.3.1', '5.3.2'],
      ['2.2.4', '2.3.5', '8.3.4', '8.2.3'],
      ['7.1.1', '7.1.4', '7.2.3', '7.3.1'],
    ],
  },
  around: [
    '1.1.1',
    '1.1.2',
    '1.1.3',
    '1.1.4',
    '1.2.1',
    '1.2.2',
    '1.3.1',
    '1.3.2',
    '1.3.3',
    '1.3.5',
    '1.4.1',
    '1.4.2',
    '9.1.1',
    '9.1.2',
    '9.1.3',
    '9.2.5',
    '9.3.1',
    '9.3.2',
    '9.3.3',
    '9.3.5',
  ],
};

/** Addresses; `#` stands for a house number. */
export const places = {
  house: [
    '# Otterbrook Lane',
    '# Sallow Close',
    '# Pound Field',
    '# Teasel Garth',
    '# Old Sluice Lane',
    '# Fennel Rise',
    '# Coppice End',
    '# Dipper Lane',
    '# Hazelstock Road',
    '# Marl Pit Lane',
  ],
  terrace: [
    '# Millrace Row',
    '# Tanyard Row',
    '# Candlewick Row',
    '# Lower Weir Row',
    '# Ropemaker Row',
    '# Dyehouse Row',
    '# Plaster Row',
    '2 to 20 Fuller Row',
  ],
  court: [
    'Quincetree Court',
    'Ferryman Court, block #',
    'Rookwood Court',
    'Linden Yard Court',
    'Osier Court',
    'Saddler Court',
  ],
  street: [
    'Weirgate, east side',
    'Bridgefoot, nos # and up',
    'Stepstone Street, bay #',
    'Sheepwash Street',
    'Tollbar Street, by the pump',
  ],
};

/** What the crews call the items that edition 2018 left without a title. */
export const untitled = {
  '1.1.4.3': 'due care, look of the street',
  '2.1.2.5': 'gutter front edge',
  '2.2.4.7': 'look of downpipes',
  '3.1.3.6': 'tank opaque',
  '4.1.2.5': 'stones at inlet',
  '5.2.4.4': 'porous concrete, code',
  '8.1.2.2': 'stone apron',
  '9.1.2.5': 'drawing on disc',
};

/** A crew's short form of a title: "Capacity of the overflow" is "overflow capacity". */
export function crewForm(title) {
  const turned = /^(\w+) of (?:the )?(.+)$/.exec(title);
  return (turned && !/ and |,/.test(title) ? `${turned[2]} ${turned[1]}` : title)
    .toLowerCase()
    .replace(/, (house lot|terrace row|apartment court|street frontage).*$/, '')
    .replace('distance from buildings', 'dist. from bldgs')
    .replace('buildings', 'bldgs')
    .replace('drinking water', 'DW')
    .replace('infiltration', 'infiltr.')
    .replace('requirements', 'reqs')
    .replace('photographs', 'photos')
    .replace(' and ', ' + ');
}

/** Remarks of the Lower Vale inspectors, by the state of the line. */
export const remarks = {
  planned: [
    '',
    'waiting for a dry week',
    'material ordered',
    'ask the caretaker for the key',
    'after the scaffold is down',
  ],
  'in hand': [
    'one half open',
    'second visit needed',
    '= as at no. 3',
    'gate was locked, come back',
    'crew says "nearly"',
  ],
  done: ['photo on file', 'look again after rain', '+ 2 brackets by the door', 'measured twice; fine'],
  inspected: [
    'photo on file',
    'seen before covering',
    '-5 mm at the door, within limits',
    'label to be moved, otherwise good',
  ],
  signed: ['sheet in the folder', 'signed by the household', 'signed,\nsee back of the sheet'],
  invoiced: ['invoice sent', 'paid in part', 'invoice sent, second copy asked for'],
  'not applicable': ['no such thing here', 'left out by order', 'neighbour did not take part'],
};

const serial = (iso, shown) => ({ date: iso, shown });

/**
 * Citations that are wrong, drawn once for each agency. `number` as it reads in csv, `cell` as the spreadsheet holds
 * it where that differs, `type` where the slip needs a job of one type, `near` the work it is about.
 */
export const citationsGoneWrong = [
  // Numbers that the edition does not have, most of them in its gaps.
  { number: '3.2.1.6', near: '3.2.1' },
  { number: '1.1.1.5', near: '1.1.1' },
  { number: '2.3.4.1', near: '2.3.5' },
  { number: '4.2.2.5', near: '4.2' },
  { number: '10.1.2', near: '9.' },
  { number: '9.2.5.8', near: '9.2.5' },
  // Slips of the keys.
  { garble: number => number.replace(/\.(\d)$/, '..$1') },
  { garble: number => number.replace('.', ',') },
  { garble: number => number.replace('.', '') },
  { number: '3.2.l.4', title: 'Discharge of the overflow', type: 'house', near: '3.2.1' },
  { number: '2.3.5.I', title: 'Cutting of downpipe', near: '2.3.5' },
  // Cut by the spreadsheet: it was typed 3.10 and 4.20.
  {
    number: '3.1',
    cell: 3.1,
    near: '3.2',
    title: 'overflow, all of it',
    remark: 'was 3.10 in my notes, the sheet shows 3.1',
  },
  // Numbers of edition 2014, under its titles.
  { number: '3.3.1', title: 'Spill pipe', type: 'house', near: '3.2', remark: 'from the old 2014 book' },
  { number: '4.1.3', title: 'Overflow', type: 'terrace', near: '3.2' },
  { number: '2.3.5', title: 'Old gully', type: 'house', near: '2.3.5', remark: '2014' },
  // Turned into dates.
  { number: '4-May', cell: serial('2024-05-04', '4-May'), title: 'rain garden', near: '4.1' },
  { number: '2001-02-03', cell: serial('2001-02-03', '2001-02-03'), title: 'overflow capacity', near: '3.2' },
  { number: '3-Feb', cell: serial('2024-02-03', '3-Feb'), title: 'overflow', near: '3.2' },
];
