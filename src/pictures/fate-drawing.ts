import { FATES, type Fate } from '../model/crosswalk.ts';

/** A fate as a line drawing of 56 by 24: the old bars `o`, the new ones `n`, the plate `p`, thin lines `l`. */
export const FATE_DRAWINGS: Readonly<
  Record<Fate, readonly (readonly [part: 'o' | 'n' | 'p' | 'l' | 'o dash', path: string])[]>
> = {
  kept: [
    ['o', 'M28 9H3v6h25'],
    ['n', 'M28 9h25v6H28'],
    ['p', 'M20 6h16v12H20z'],
  ],
  merged: [
    ['o', 'M3 2v5h12l9 5v-4l-7-6zM3 22v-5h12l9-5v4l-7 6z'],
    ['n', 'M28 9h25v6H28'],
    ['p', 'M22 6h12v12H22z'],
  ],
  split: [
    ['o', 'M28 9H3v6h25'],
    ['n', 'M53 2v5H41l-9 5V8l7-6zM53 22v-5H41l-9-5v4l7 6z'],
    ['p', 'M22 6h12v12H22z'],
  ],
  recombined: [
    ['o', 'M18 2H3v5h15M18 17H3v5h15'],
    ['n', 'M38 2h15v5H38M38 17h15v5H38'],
    ['l', 'M18 4.5h20M18 19.5h20M18 4.5l20 15M18 19.5l20-15'],
  ],
  withdrawn: [
    ['o', 'M34 9H3v6h31'],
    ['l', 'M39 12h3M45 12h3M51 12h2'],
  ],
  new: [
    ['n', 'M22 9h31v6H22'],
    ['l', 'M3 12h2M8 12h3M14 12h3'],
  ],
  unaccounted: [
    ['o dash', 'M34 9H3v6h31'],
    ['l', 'M45 8v5M45 16v1'],
  ],
};

/** All drawings as symbols: a page of five hundred lines that repeated them would weigh more than its text. */
export function fateSymbols(): string {
  const symbols = FATES.map(fate => {
    const paths = FATE_DRAWINGS[fate].map(([part, d]) => `<path class="${part}" d="${d}"/>`).join('');
    return `<symbol id="fate-${fate}" viewBox="0 0 56 24">${paths}</symbol>`;
  });
  return `<svg width="0" height="0" class="said" aria-hidden="true" focusable="false">${symbols.join('')}</svg>`;
}
