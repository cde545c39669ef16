import { meaning } from './meaning.ts';

/** Verbs that a shorter text does without. */
export const PLAIN = new Set(
  'provide install fit use make carry do have keep take give place apply ensure require allow lie stand run set put be get bring hold form equip rest sit bear lay leave consist remain'
    .split(' ')
    .map(meaning),
);

/** The "off" of "taken off": they ask for nothing by themselves. */
export const PARTICLES = new Set(
  'away down off out up back through over past along across together'.split(' ').map(meaning),
);
