import { CLDR_UNITS } from './units.ts';

/** A unit as a text spells it: its dimension (equal for units that convert into each other) and the way to convert. */
export interface Unit {
  readonly name: string;
  /** Powers of base units, sorted: `meter1 second-1`; empty for shares, ratios and counts. */
  readonly dimension: string;
  readonly factor: number;
  readonly offset: number;
}

/** The unit of a number of things, and of a bare number. */
export const COUNT: Unit = { name: 'count', dimension: 'count', factor: 1, offset: 0 };

/** Expressions over CLDR's names, and the spellings that stand for them. Spellings are folded and end at a letter. */
const SPELLINGS: Readonly<Record<string, string>> = {
  'milli.meter': 'mm millimeter millimeters millimetre millimetres',
  'centi.meter': 'cm centimeter centimeters centimetre centimetres',
  'deci.meter': 'dm decimeter decimetre decimeters decimetres',
  meter: 'm meter meters metre metres',
  'kilo.meter': 'km kilometer kilometers kilometre kilometres',
  'micro.meter': 'μm um micron microns micrometre micrometres micrometer micrometers',
  inch: 'in inch inches "',
  'inch*0.001': 'mil mils',
  foot: "ft foot feet '",
  yard: 'yd yds yard yards',
  mile: 'mi mile miles',
  'milli.meter^2': 'sqmm',
  'meter^2': 'sqm',
  'foot^2': 'sqft sf',
  'inch^2': 'sqin',
  'foot^3': 'cuft cf',
  'meter^3': 'cum',
  hectare: 'ha hectare hectares',
  acre: 'acre acres',
  liter: 'l liter liters litre litres',
  'milli.liter': 'ml milliliter milliliters millilitre millilitres',
  gallon: 'gal gallon gallons',
  quart: 'qt quart quarts',
  pint: 'pt pint pints',
  cup: 'cup cups',
  'fluid-ounce': 'floz',
  tablespoon: 'tbsp tablespoon tablespoons',
  teaspoon: 'tsp teaspoon teaspoons',
  'milli.gram': 'mg milligram milligrams',
  gram: 'g gram grams gramme grammes',
  'kilo.gram': 'kg kilogram kilograms kilo kilos kilogramme kilogrammes',
  'micro.gram': 'μg ug mcg microgram micrograms',
  tonne: 't tonne tonnes',
  ton: 'ton tons',
  pound: 'lb lbs pound pounds',
  ounce: 'oz ounce ounces',
  'milli.second': 'ms millisecond milliseconds',
  second: 's sec secs second seconds',
  minute: 'min mins minute minutes',
  hour: 'h hr hrs hour hours',
  day: 'd day days',
  week: 'wk wks week weeks',
  month: 'month months',
  year: 'yr yrs year years',
  celsius: '°c degc celsius',
  fahrenheit: '°f degf fahrenheit',
  kelvin: 'k kelvin kelvins',
  pascal: 'pa pascal pascals',
  'kilo.pascal': 'kpa kilopascal kilopascals',
  'mega.pascal': 'mpa megapascal megapascals',
  'hecto.pascal': 'hpa hectopascal hectopascals',
  bar: 'bar bars',
  'milli.bar': 'mbar millibar millibars',
  atmosphere: 'atm',
  'pound-force/inch^2': 'psi psig',
  'pound-force/foot^2': 'psf',
  newton: 'n newton newtons',
  'kilo.newton': 'kn kilonewton kilonewtons',
  'newton*meter': 'nm',
  'pound-force': 'lbf',
  'pound-force*foot': 'lbft ftlb ftlbs',
  joule: 'j joule joules',
  'kilo.joule': 'kj',
  'mega.joule': 'mj',
  'watt*hour': 'wh',
  'kilo.watt*hour': 'kwh',
  'british-thermal-unit': 'btu btus',
  'british-thermal-unit/hour': 'btuh',
  calorie: 'cal',
  'kilo.calorie': 'kcal',
  watt: 'w watt watts',
  'kilo.watt': 'kw kilowatt kilowatts',
  'mega.watt': 'mw megawatt megawatts',
  horsepower: 'hp horsepower',
  ampere: 'a amp amps ampere amperes',
  'milli.ampere': 'ma milliamp milliamps milliampere milliamperes',
  'kilo.ampere': 'ka',
  volt: 'v volt volts vac vdc',
  'kilo.volt': 'kv kilovolt kilovolts',
  'milli.volt': 'mv millivolt millivolts',
  'volt*ampere': 'va',
  'kilo.volt*ampere': 'kva',
  ohm: 'ohm ohms ω',
  'milli.ohm': 'milliohm milliohms',
  'kilo.ohm': 'kilohm kilohms kω',
  'mega.ohm': 'megohm megohms mω megaohm megaohms',
  hertz: 'hz hertz',
  'kilo.hertz': 'khz kilohertz',
  'mega.hertz': 'mhz megahertz',
  'giga.hertz': 'ghz gigahertz',
  lux: 'lx lux',
  lumen: 'lm lumen lumens',
  'lumen/foot^2': 'footcandle footcandles fc',
  percent: '% percent pct',
  permille: '‰',
  'part*0.000001': 'ppm',
  'part*0.000000001': 'ppb',
  degree: '° deg degree degrees',
  radian: 'rad radian radians',
  bit: 'bit bits',
  byte: 'byte bytes',
  'kilo.byte': 'kb kilobyte kilobytes',
  'mega.byte': 'mb megabyte megabytes',
  'giga.byte': 'gb gigabyte gigabytes',
  'tera.byte': 'tb terabyte terabytes',
  'kilo.bit/second': 'kbps',
  'mega.bit/second': 'mbps',
  'giga.bit/second': 'gbps',
  'mile/hour': 'mph',
  'kilo.meter/hour': 'kph kmh',
  knot: 'kt knot knots',
  'foot^3/minute': 'cfm',
  'gallon/minute': 'gpm',
  'gallon/hour': 'gph',
  'revolution/minute': 'rpm',
  'liter/minute': 'lpm',
  'liter/second': 'lps',
  'item*1': 'acph ach',
  mole: 'mol mole moles',
  sievert: 'sv',
  'milli.sievert': 'msv',
};

/** Units of their own that CLDR does not have. They convert into nothing else. */
const OWN: Readonly<Record<string, string>> = {
  decibel: 'db dba decibel decibels',
  ph: 'ph',
  euro: '€ eur euro euros',
  dollar: '$ usd dollar dollars',
  sterling: '£ gbp',
};

const PREFIXES: Readonly<Record<string, number>> = {
  micro: 1e-6,
  milli: 1e-3,
  centi: 1e-2,
  deci: 0.1,
  hecto: 100,
  kilo: 1000,
  mega: 1e6,
  giga: 1e9,
  tera: 1e12,
};

/** Every spelling, folded, with the unit that it stands for. `"` and `'` count only where a digit stands before. */
export const UNIT_SPELLINGS: ReadonlyMap<string, Unit> = new Map([
  ...Object.entries(SPELLINGS).flatMap(([expression, names]) => entries(names, unitOf(expression))),
  ...Object.entries(OWN).flatMap(([name, names]) => entries(names, { name, dimension: name, factor: 1, offset: 0 })),
]);

function entries(names: string, unit: Unit): [string, Unit][] {
  return names.split(' ').map(name => [name, unit]);
}

/** `pound-force/inch^2` as a unit; what stands behind a stroke divides. */
function unitOf(expression: string): Unit {
  const [above, ...below] = expression.split('/');
  const units = [...above!.split('*').map(simple), ...below.map(part => power(simple(part), -1))];
  return units.slice(1).reduce(times, units[0]!);
}

function simple(part: string): Unit {
  const [name, exponent = '1'] = part.split('^');
  const [, prefix, base] = /^(?:([a-z]+)\.)?([a-z-]+|[\d.]+)$/.exec(name!)!;
  const cldr = CLDR_UNITS[base!];
  const unit: Unit = cldr
    ? {
        name: name!.replace('.', ''),
        dimension: spell(new Map(Object.entries(cldr[1]))),
        factor: cldr[0] * (prefix ? PREFIXES[prefix]! : 1),
        offset: cldr[2] ?? 0,
      }
    : { name: '', dimension: '', factor: Number(base), offset: 0 };
  return power(unit, Number(exponent));
}

/** The unit to an integer power: `power(meter, -1)` is "per metre". */
export function power(unit: Unit, exponent: number): Unit {
  if (exponent === 1) return unit;
  const powers = new Map([...read(unit.dimension)].map(([base, p]) => [base, p * exponent]));
  return { name: `${unit.name}^${exponent}`, dimension: spell(powers), factor: unit.factor ** exponent, offset: 0 };
}

export function times(a: Unit, b: Unit): Unit {
  const powers = read(a.dimension);
  for (const [base, p] of read(b.dimension)) powers.set(base, (powers.get(base) ?? 0) + p);
  return { name: `${a.name}.${b.name}`, dimension: spell(powers), factor: a.factor * b.factor, offset: 0 };
}

function read(dimension: string): Map<string, number> {
  if (dimension === '') return new Map();
  return new Map(
    dimension.split(' ').map(part => {
      const [, base, p] = /^(.*?)(-?\d+)?$/.exec(part)!;
      return [base!, Number(p ?? 1)];
    }),
  );
}

function spell(powers: ReadonlyMap<string, number>): string {
  return [...powers]
    .filter(([, p]) => p !== 0)
    .map(([base, p]) => `${base}${p}`)
    .sort()
    .join(' ');
}
