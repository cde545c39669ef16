import { stemmer } from 'stemmer';
import { words } from '../text/words.ts';

/** So many values have to be the same, and so many things, before a text in other words is taken for the same one. */
export const LEAST_VALUES = 2;
const LEAST_THINGS = 3;
/** Share of things and values. */
const LEAST_SHARE = 0.7;

/** Words that say how much, where or how strictly, and not what: two sentences about one thing differ in them first. */
const MANNER = new Set(
  'a an the of in on at to by for from with within over above below under and or nor not no be is are was been being shall must should may will can have has each every any all it its they their this that these those which as also both between least most minimum maximum min max less more than lower higher nearer closer further away fewer greater exceed exceeds exceeding up down'.split(
    ' ',
  ),
);

/** What a text is about, without how it says it: stems of its things, and each number with the unit behind it. */
export interface Asked {
  /** As the text spells them. */
  readonly things: ReadonlyMap<string, string>;
  readonly values: ReadonlySet<string>;
  /** In order, each value with the thing that follows it. */
  readonly said: readonly { readonly value: string; readonly of: string }[];
  /** How it binds: "at least" and "no lower than" are one, "at most" is another; so are a ban and a "may". */
  readonly bounds: string;
}

export function askedOf(text: string): Asked {
  const things = new Map<string, string>();
  const values = new Set<string>();
  const all = words(text);
  const said: { value: string; of: string }[] = [];
  all.forEach((word, i) => {
    if (/^-?\p{N}/u.test(word)) {
      const value = `${word} ${/^\p{L}{1,3}$|^[%°]$/u.test(all[i + 1] ?? '') ? all[i + 1] : ''}`.trim();
      values.add(value);
      said.push({ value, of: '' });
    } else if (word.length > 2 && !MANNER.has(word)) {
      const thing = stemmer(word);
      things.set(thing, word);
      for (const s of said) if (s.of === '') s.of = thing;
    }
  });
  return { things, values, said, bounds: boundsOf(text) };
}

const AT_LEAST =
  /\b(?:at least|minimum|min|(?:not?|never) (?:be )?(?:less|lower|nearer|fewer|closer|smaller|shorter|under|below)|(?:not|never|no)\b[^.;,]{0,40}\bwithin|or more)\b/gi;
const AT_MOST =
  /\b(?:at most|maximum|max|(?:not?|never) (?:be )?(?:more|greater|higher|further|larger|longer|over|above|exceed(?:s|ing)?)|up to|or less|within)\b/gi;

function boundsOf(text: string): string {
  const open = text.replace(AT_LEAST, '');
  const rest = open.replace(AT_MOST, '');
  return [
    open === text ? '' : 'at least',
    rest === open ? '' : 'at most',
    /\b(?:not|no|never|nor|neither|none|cannot|without)\b/i.test(rest) ? 'denied' : '',
    /\b(?:may|can|could|should)\b/i.test(rest) ? 'weak' : '',
  ].join(' ');
}

/**
 * Whether each value is that of the same thing: an inlet of 100 mm and an outlet of 50 mm are not the reverse. The thing
 * behind a value tells ("450 mm above the floor and 600 mm from a sink"); where it is the same of all of them ("100 mm
 * wide and 50 mm wide"), only an order that did not change does.
 */
function sameValuesOf(a: Asked, b: Asked): boolean {
  const told = ({ said }: Asked) => said.map(({ value, of }) => `${value} ${of}`);
  if (new Set(a.said.map(s => s.of)).size === a.said.length && !a.said.some(s => s.of === '')) {
    return told(a).sort().join('|') === told(b).sort().join('|');
  }
  const order = (one: Asked, other: Asked) =>
    [...one.said.map(s => s.value), ...[...one.things.keys()].filter(w => other.things.has(w))].join('|');
  return order(a, b) === order(b, a);
}

export function shareOf(a: Asked, b: Asked): number {
  const shared = [...a.things.keys()].filter(w => b.things.has(w)).length;
  // The values are the same, all of them.
  return (shared + a.values.size) / (a.things.size + b.things.size - shared + a.values.size);
}

export function isReworded(a: Asked, b: Asked): boolean {
  const things = [...a.things.keys()].filter(w => b.things.has(w)).length;
  return a.bounds === b.bounds && sameValuesOf(a, b) && things >= LEAST_THINGS && shareOf(a, b) >= LEAST_SHARE;
}

export function onlyIn(first: Asked, here: Asked): { first: string; here: string }[] {
  return [
    ...[...first.things].filter(([w]) => !here.things.has(w)).map(([, said]) => ({ first: said, here: '' })),
    ...[...here.things].filter(([w]) => !first.things.has(w)).map(([, said]) => ({ first: '', here: said })),
  ];
}

/** Words that come and go with order and voice: "shall sand the door", "the door shall be sanded by". */
const VOICE = new Set('a an the of by be is are shall must it its which that'.split(' '));

/** The same words in another order: to show that word by word hides that nothing differs. */
export function isSameAsked(from: string, to: string): boolean {
  const said = (text: string) =>
    words(text)
      .filter(w => !VOICE.has(w))
      .map(stemmer)
      .sort()
      .join(' ');
  const [a, b] = [askedOf(from), askedOf(to)];
  return said(from) === said(to) && a.bounds === b.bounds && sameValuesOf(a, b);
}
