import { words } from '../text/words.ts';
import { phraseList } from './phrases.ts';
import type { Rule, Spot } from './rule.ts';

/** A purpose said once is help; said twice, or said again below an item that states it, it is a second text to maintain. */
export const purposeTwice: Rule = {
  name: 'purpose-twice',
  bad: [
    { text: 'In order to stop leaks, seal the joint so that no water gets in.' },
    { text: 'Tape the seam to prevent drafts and to ensure that no air leaks.' },
    {
      text: 'Seal the hatch so that warm air stays below the attic.',
      context: { purpose: 'Keep warm air below the attic.' },
    },
  ],
  good: [
    { text: 'Seal the joint to prevent leaks.' },
    { text: 'The clip is designed to allow movement.' },
    { text: 'Seal the hatch so that warm air stays below.', context: { purpose: 'Reduce noise from the street.' } },
  ],
  find: ({ plain, text }, { purpose }) => {
    const said = [...plain.matchAll(PURPOSE)].filter(
      m => !COMPLEMENT.test(plain.slice(Math.max(0, m.index - 40), m.index)),
    );
    const spots: Spot[] = said.slice(1).map(m => ({
      start: m.index,
      end: m.index + m[0].length,
      message: `"${text.slice(m.index, m.index + m[0].length)}" states a purpose a second time; state it once.`,
    }));
    const first = said[0];
    if (first && purpose !== undefined && repeats(plain.slice(first.index + first[0].length), purpose)) {
      const message = 'The item states this purpose already; leave it out here.';
      spots.unshift({ start: first.index, end: first.index + first[0].length, message });
    }
    return spots;
  },
};

const AIM_VERBS =
  '(?:ensure|make sure|prevent|avoid|protect|allow|enable|reduce|minimi[sz]e|guarantee|maintain|stop|limit|achieve|facilitate|guard|safeguard|preserve|permit|help|improve|exclude|eliminate|keep|give|provide|promote|assure|secure|deter|discourage|resist|accommodate|guarantee|retain|aid|assist|save|lessen|control|support|hold)';

const PURPOSE = phraseList(
  'in order (?:to|that|for)',
  'so that',
  'so as (?:not )?to',
  `to (?:help |better |further )?${AIM_VERBS}`,
  'for the purposes? of',
  '(?:the|its|their|whose) (?:purpose|aim|intention|intent|object|objective|goal|function|job|point) (?:of this |being |here )?(?:is|being)',
  'with the (?:aim|intention|purpose|object|goal|objective) of',
  '(?:this|which|thus|thereby|thereby|and so|hence) (?:will |helps? to |helps? |serves? to |is to |is done to |is intended to )?(?:ensur|prevent|avoid|protect|allow|enabl|reduc|minimi[sz]|guarantee|keep|stop|maintain)(?:e?s|ing|e)?(?= )',
  'such that',
  'thereby',
  'lest',
  'because',
);

/** "designed to allow", "shall be able to resist": what a thing does, not why it is asked for. */
const COMPLEMENT =
  /(?:\b(?:designed|required|able|unable|needed|sufficient|enough|sized|rated|intended|made|used|arranged|set|configured|likely|necessary|shall|must|should|is|are|has|have|needs?|due|adequate|suitable|capable|programmed|tested|proved|proven|proportioned)|so that [^.;,]{0,30}|in order(?: not)?|so as(?: not)?)\s$/i;

/** Whether most of what a short purpose says stands in the words that follow. */
function repeats(said: string, purpose: string): boolean {
  const clause = new Set(
    words(said.slice(0, said.search(/[.;]|$/)))
      .filter(isContent)
      .map(stem),
  );
  const asked = words(purpose).filter(isContent).map(stem);
  const shared = asked.filter(w => clause.has(w)).length;
  return shared >= 2 && shared >= 0.5 * Math.min(asked.length, clause.size);
}

const isContent = (word: string) =>
  word.length > 3 && !/^(?:that|this|with|from|into|which|their|they|will|shall|must)$/.test(word);
const stem = (word: string) => word.replace(/(?:ing|ed|es|s)$/, '');
