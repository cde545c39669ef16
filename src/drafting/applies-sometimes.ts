import { phraseList, spotsOf } from './phrases.ts';
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
    ...byJobs(text.text.length, notApplicable),
  ],
};

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
  'as applicable',
  'where (?:this|it|one) (?:applies|exists)',
  'if (?:there is|there are|one exists|it exists|any exist)',
  'where (?:there is|there are)',
  'when there (?:is|are)',
  'on request',
  'upon request',
  'optional(?:ly)?',
  `(?:if|where|when) ${NOUN_PHRASE}(?:is|are|has been|have been|was|were) (?:also )?(?:present|applicable|ordered|fitted|provided|installed|supplied|requested|included|part of the (?:order|job|scope|contract|work|package)|in (?:the )?scope|specified|commissioned|instructed|bought|purchased|chosen|available)`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:exists?|(?:has|have|contains?|includes?|features?) (?:an?|any|one|been ordered))(?= )`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:orders?|requests?|requires?|asks? for|opts? for|wants?|chooses?|selects?|specif(?:y|ies))(?= )`,
);
