// Writes src/content/quantities/units.ts from CLDR's units data (cldr-core, supplemental/units.json). Run again when CLDR changes.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const require = createRequire(import.meta.url);
const { supplemental } = JSON.parse(readFileSync(require.resolve('cldr-core/supplemental/units.json'), 'utf8'));
const constants = supplemental.unitConstants;

/** Of CLDR's 155 units, those that requirement texts use; each a name of ours may be built on. */
const WANTED =
  'meter inch foot yard mile nautical-mile acre hectare liter gallon gallon-imperial quart pint cup fluid-ounce tablespoon teaspoon gram kilogram tonne ton pound ounce second minute hour day week month year celsius fahrenheit kelvin pascal bar atmosphere newton kilogram-force pound-force joule watt watt calorie british-thermal-unit horsepower ampere volt ohm farad siemens hertz lux lumen candela mole percent permille part degree radian revolution bit byte knot item tesla becquerel gray sievert'.split(
    ' ',
  );

/** CLDR writes a/b*c for a/(b*c): everything behind the first stroke divides. */
function evaluate(expression) {
  const [above, ...below] = expression.replaceAll(' ', '').split('/');
  const product = factors => factors.split('*').reduce((all, f) => all * worth(f), 1);
  return below.reduce((all, factors) => all / product(factors), product(above));
}

function worth(factor) {
  if (constants[factor]) return evaluate(constants[factor]._value);
  return Number(factor);
}

const POWERS = { square: 2, cubic: 3 };

/** `kilogram-meter-per-square-second` as [['kilogram', 1], ['meter', 1], ['second', -2]]. */
function dimensionsOf(base) {
  const found = new Map();
  let [sign, power] = [1, 1];
  for (const part of base.split('-')) {
    if (part === 'per') sign = -1;
    else if (POWERS[part]) power = POWERS[part];
    else {
      found.set(part, (found.get(part) ?? 0) + sign * power);
      power = 1;
    }
  }
  // A part of a whole has no dimension: 2 % and 1:50 are the same. A year is 365.25 days (CLDR: sec_per_julian_year).
  found.delete('part');
  return [...found].filter(([, p]) => p !== 0).sort();
}

const lines = [...new Set(WANTED)].map(id => {
  const unit = supplemental.convertUnits[id];
  let factor = evaluate(unit._factor ?? '1');
  let dimensions = dimensionsOf(unit._baseUnit);
  if (unit._baseUnit === 'year') {
    factor *= evaluate('sec_per_julian_year');
    dimensions = [['second', 1]];
  }
  const offset = unit._offset ? `, ${evaluate(unit._offset)}` : '';
  return `  '${id}': [${factor}, ${JSON.stringify(Object.fromEntries(dimensions))}${offset}],`;
});

const source = `// Made by scripts/make-units.mjs from cldr-core ${require('cldr-core/package.json').version}, supplemental/units.json; not edited by hand.

/** A unit of CLDR: factor to the base units, their powers, and what is added after the factor (temperatures). */
export type CldrUnit = readonly [factor: number, powers: Readonly<Record<string, number>>, offset?: number];

export const CLDR_UNITS: Readonly<Record<string, CldrUnit>> = {
${lines.join('\n')}
};
`;
writeFileSync(join(import.meta.dirname, '..', 'src', 'content', 'quantities', 'units.ts'), source);
