import type { ReadText, Sentence } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/** A reader turns a sentence round at each denial; at the third nobody is sure any more. */
const MOST_DENIALS = 2;
/** "the verification of the completion of the installation of": acts made into things, each hanging on the next. */
const MOST_ACTS_AS_THINGS = 2;

/** A sentence that has to be read twice though it is short. {@link longSentence} counts words. */
export const hardToRead: Rule = {
  name: 'hard-to-read',
  bad: [
    { text: 'No bolt that is not one of those that are not listed shall be left loose.' },
    { text: 'The documentation of the verification of the completion of the work is the duty of the foreman.' },
  ],
  good: [
    { text: 'The tank shall hold no less than 5 l and no more than 6 l, and shall not leak.' },
    { text: 'There shall be no rust, no scale, no grease and no dust.' },
    { text: 'Neither lid nor rim shall have cracks that are not sealed.' },
    { text: 'The insulation of the pipe shall reach the foundation of the wall.' },
  ],
  find: text => text.sentences.flatMap(sentence => [...denials(text, sentence), ...actsAsThings(text, sentence)]),
};

/** "no more than 5" is a limit; "no rust, no scale" is a list, so each stretch between commas is asked by itself. */
function denials({ plain }: ReadText, { start, end }: Sentence): Spot[] {
  const said = plain.slice(start, end);
  let from = start;
  return said.split(/[,;:]/).flatMap(stretch => {
    const at = from;
    from += stretch.length + 1;
    const found = [...stretch.matchAll(DENIAL)];
    if (found.length <= MOST_DENIALS) return [];
    const words = found.map(m => `"${m[0].toLowerCase()}"`).join(', ');
    return [
      {
        start: at + found[0]!.index,
        end: at + found.at(-1)!.index + found.at(-1)![0].length,
        message: `${found.length} denials stand in one clause (${words}); say what shall be, in a sentence of its own.`,
      },
    ];
  });
}

const DENIAL =
  /(?<![\p{L}-])(?:not(?! (?:more|less|fewer|later|earlier|greater|smaller|only|exceed))|cannot|never|none|neither|no(?! (?:more|less|later|earlier|greater|smaller)(?![\p{L}])))(?![\p{L}-])/giu;

function actsAsThings({ plain, text }: ReadText, { start, end }: Sentence): Spot[] {
  const found = [...plain.slice(start, end).matchAll(ACT_OF)];
  if (found.length <= MOST_ACTS_AS_THINGS) return [];
  const first = start + found[0]!.index;
  const last = start + found.at(-1)!.index + found.at(-1)![0].length;
  const words = found.slice(0, 3).map(m => `"${text.slice(start + m.index, start + m.index + m[0].length)}"`);
  return [
    {
      start: first,
      end: last,
      message: `${words.join(', ')}: acts stand here as things that hang on one another; say who does what.`,
    },
  ];
}

const ACT_OF = /(?<![\p{L}])[\p{L}-]{4,24}(?:tion|sion|ment|ance|ence|ility|ality|ivity)s?(?= of )/giu;
