import type { Rule } from './rule.ts';

/** Above this many words few readers keep the beginning in mind at the end. */
const MOST_WORDS = 40;

/** One sentence that is too long to be read once. */
export const longSentence: Rule = {
  name: 'long-sentence',
  bad: [
    {
      text: 'The panel, which is to be fixed to the frame by means of the screws that are delivered with it in a separate bag, shall be set in such a way that its lower edge stands above the finished floor by a distance of 30 mm at each end of the wall.',
    },
  ],
  good: [{ text: 'Fix the panel with its own screws. Its lower edge stands 30 mm above the floor.' }],
  find: ({ plain, sentences }) =>
    sentences.flatMap(({ start, end }) => {
      const words = plain.slice(start, end).match(/[\p{L}\p{N}][^\s]*/gu)?.length ?? 0;
      return words > MOST_WORDS
        ? [
            {
              start,
              end,
              message: `This sentence has ${words} words; make two or more of it, of ${MOST_WORDS} at most.`,
            },
          ]
        : [];
    }),
};
