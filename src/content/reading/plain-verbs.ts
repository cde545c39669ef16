import { meaning } from './meaning.ts';
import type { Reading } from './reading.ts';

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

/** "cool down to 5 °C"; "through the frame" tells where. */
export function isParticle({ tags, meanings }: Reading, at: number): boolean {
  const behind = tags[at + 1] ?? '';
  return (
    PARTICLES.has(meanings[at] ?? '') && tags[at - 1] === 'VERB' && !/^(?:DET|NOUN|PROPN|ADJ|NUM|PRON)$/.test(behind)
  );
}
