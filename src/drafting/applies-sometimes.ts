import { hasNumber } from './measures.ts';
import { obligationsOf } from './obligations.ts';
import { phraseList, spotsOf } from './phrases.ts';
import type { ReadText } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/** Whenever a work item is ordered, every one of its requirements should apply; jobs show it where they do not. */
export const appliesSometimes: Rule = {
  name: 'applies-sometimes',
  bad: [
    { text: 'If present, seal the attic hatch.' },
    { text: 'Fit a drip tray where applicable.' },
    { text: 'Where the building has a basement, seal the wall.' },
    { text: 'Seal the hatch.', context: { notApplicable: { lines: 40, notApplicable: 18 } } },
  ],
  good: [
    { text: 'Where the pipe crosses a wall, fit a sleeve.' },
    { text: 'If the air is below 5 °C, stop painting.' },
    { text: 'Seal the hatch.', context: { notApplicable: { lines: 40, notApplicable: 1 } } },
  ],
  find: (text, { notApplicable }) => [
    ...spotsOf(
      text,
      SOMETIMES,
      words =>
        `"${words}" makes the requirement apply on some jobs only; give it an item or an installation type of its own.`,
    ),
    ...partsAdded(text),
    ...byJobs(text.text.length, notApplicable),
  ],
};

const message = (words: string) =>
  `"${words}" makes the requirement apply on some jobs only; give it an item or an installation type of its own.`;

/**
 * A part that is added only if something is so: on other jobs the requirement is empty. A condition with a measure, or
 * on the work's own place ("where the pipe crosses a wall"), holds somewhere on every job.
 */
function partsAdded({ text, plain, sentences }: ReadText): Spot[] {
  return sentences.flatMap(sentence => {
    const adds = obligationsOf(sentence).some(o => ADDS.has(o.verb.lower));
    const words = sentence.segments.flatMap(s => s.words);
    const at = adds ? words.findIndex(w => /^(?:if|when)$/.test(w.lower)) : -1;
    const begin = words[at];
    if (!begin) return [];
    const clause = plain.slice(begin.start, begin.start + plain.slice(begin.start, sentence.end).search(/[,;]|[.]?$/));
    if (hasNumber(clause)) return [];
    const [start, end] = [begin.start, begin.start + clause.length];
    return [{ start, end, message: message(text.slice(start, end)) }];
  });
}

const ADDS = new Set(
  'fit fitted provide provided install installed add added supply supplied include included'.split(' '),
);

/** Fewer lines than this say nothing; above this share a requirement does not belong to its item. */
const LEAST_LINES = 10;
const OFTEN = 0.2;

function byJobs(end: number, told: { lines: number; notApplicable: number } | undefined): Spot[] {
  if (!told || told.lines < LEAST_LINES || told.notApplicable < OFTEN * told.lines) return [];
  const share = `${told.notApplicable} of ${told.lines} job lines`;
  const message = `${share} marked this as not applicable; give it an item or an installation type of its own.`;
  return [{ start: 0, end, message }];
}

const NOUN_PHRASE = '(?:the |an? |any |its )?(?:[\\p{L}-]{1,24} ){1,3}?';

const SOMETIMES = phraseList(
  '(?:if|where|when|whenever|wherever|unless) (?:one is |any are |any is |they are |it is |these are |already )?(?:present|applicable|ordered|fitted|provided|installed|supplied|requested|instructed|commissioned|any|existing|included|existent|purchased|selected|chosen|specified|contracted|called for|in scope|used|available|relevant)',
  '(?:if|when|whenever) (?:deemed |considered |found )?(?:necessary|needed|required)',
  'as applicable',
  'where (?:they|these|those|such) (?:exist|occur|are (?:found|present|fitted|used|installed))',
  '(?:if|when|where|should) (?:weather|conditions|time|circumstances|budget|funds|space) (?:allows?|permits?)',
  'where (?:this|it|one) (?:applies|exists)',
  'if (?:there is|there are|one exists|it exists|any exist)',
  'where (?:there is|there are)',
  'when there (?:is|are)',
  'on request',
  'upon request',
  'optional(?:ly)?',
  `(?:if|where|when) ${NOUN_PHRASE}(?:is|are|has been|have been|was|were) (?:also )?(?:present|applicable|ordered|fitted|provided|installed|supplied|requested|included|part of the (?:order|job|scope|contract|work|package)|in (?:the )?scope|specified|commissioned|instructed|bought|purchased|chosen|available)`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:occurs?|exists?|is encountered|are encountered|is found|are found)(?= )`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:(?:has|have|contains?|includes?|features?) (?:an?|any|one|been ordered))(?= )`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:orders?|requests?|requires?|asks? for|opts? for|wants?|chooses?|selects?|specif(?:y|ies))(?= )`,
);
