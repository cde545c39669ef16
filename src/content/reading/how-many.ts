/**
 * Words that say of how many things, or how often, something holds, on one scale: 4 all and always, 3 most and usually,
 * 2 many and often, 1 one or some and sometimes. They name no thing, so they carry no content of their own; what they say is
 * compared on its own (duty/reach.ts), since "all" for "most" is another duty.
 */
const SCALE = new Map(
  Object.entries({
    4: 'all each every any both always continuously constantly everywhere throughout',
    3: 'most mostly majority usually normally generally mainly largely typically',
    2: 'many half several often frequently',
    1: 'one single some few either sample samples selection sometimes occasionally partly',
    0: 'rarely seldom',
  }).flatMap(([level, words]) => words.split(' ').map(word => [word, Number(level)] as const)),
);

export const howMany = (word: string): number | undefined => SCALE.get(word);

/** Those that stand like an article or adverb and name nothing, however they are compared. */
const BARE = new Set('each every all any both either most always ever'.split(' '));

export const isBareQuantifier = (word: string): boolean => BARE.has(word);
