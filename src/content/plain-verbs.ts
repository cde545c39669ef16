import { meaning } from './meaning.ts';

/** Verbs that a shorter text does without. */
export const PLAIN = new Set(
  'provide install fit use make carry do have keep take give place apply ensure require allow lie stand run set put be get bring hold form equip rest sit bear lay leave consist remain'
    .split(' ')
    .map(meaning),
);
