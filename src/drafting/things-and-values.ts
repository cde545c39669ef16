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
  /** Ways in which its values bound: "at least" and "no lower than" are one, "at most" is another. */
  readonly bounds: string;
}

export function askedOf(text: string): Asked {
  const things = new Map<string, string>();
  const values = new Set<string>();
  const all = words(text);
  all.forEach((word, i) => {
    if (/^-?\p{N}/u.test(word))
      values.add(`${word} ${/^\p{L}{1,3}$|^[%°]$/u.test(all[i + 1] ?? '') ? all[i + 1] : ''}`.trim());
    else if (word.length > 2 && !MANNER.has(word)) things.set(stemmer(word), word);
  });
  return { things, values, bounds: boundsOf(text) };
}

const AT_LEAST =
  /\b(?:at least|minimum|min|(?:not?|never) (?:be )?(?:less|lower|nearer|fewer|closer|smaller|shorter|under|below)|(?:not|never|no)\b[^.;,]{0,40}\bwithin|or more)\b/gi;
const AT_MOST =
  /\b(?:at most|maximum|max|(?:not?|never) (?:be )?(?:more|greater|higher|further|larger|longer|over|above|exceed(?:s|ing)?)|up to|or less|within)\b/gi;

function boundsOf(text: string): string {
  const rest = text.replace(AT_LEAST, '');
  return `${rest === text ? '' : 'at least '}${rest.search(AT_MOST) < 0 ? '' : 'at most'}`;
}

export function shareOf(a: Asked, b: Asked): number {
  const shared = [...a.things.keys()].filter(w => b.things.has(w)).length;
  // The values are the same, all of them.
  return (shared + a.values.size) / (a.things.size + b.things.size - shared + a.values.size);
}

export function isReworded(a: Asked, b: Asked): boolean {
  const things = [...a.things.keys()].filter(w => b.things.has(w)).length;
  return a.bounds === b.bounds && things >= LEAST_THINGS && shareOf(a, b) >= LEAST_SHARE;
}

export function onlyIn(first: Asked, here: Asked): { first: string; here: string }[] {
  return [
    ...[...first.things].filter(([w]) => !here.things.has(w)).map(([, said]) => ({ first: said, here: '' })),
    ...[...here.things].filter(([w]) => !first.things.has(w)).map(([, said]) => ({ first: '', here: said })),
  ];
}

/** Nothing but the order, the voice or the manner of speaking: to show that word by word hides that nothing differs. */
export function isSameAsked(a: Asked, b: Asked): boolean {
  const same = (x: Iterable<string>, y: ReadonlySet<string> | ReadonlyMap<string, string>) =>
    [...x].every(w => y.has(w));
  return (
    a.bounds === b.bounds &&
    a.things.size === b.things.size &&
    a.values.size === b.values.size &&
    same(a.things.keys(), b.things) &&
    same(a.values, b.values)
  );
}
