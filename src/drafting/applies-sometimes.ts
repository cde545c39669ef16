import { hasNumber } from './measures.ts';
import { isParticiple, obligationsOf } from './obligations.ts';
import { phraseList, spotsOf } from './phrases.ts';
import type { ReadText, Word } from './read-text.ts';
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
    ...spotsOf(text, SOMETIMES, message),
    ...conditions(text),
    ...byJobs(text.text.length, notApplicable),
  ],
};

const message = (words: string) =>
  `"${words}" makes the requirement apply on some jobs only; give it an item or an installation type of its own.`;

/**
 * A condition on what the place of work happens to be like. Left alone are conditions that come up on every job or ask
 * for something else:
 *
 *   where the pipe leaves the wall        a place on the work itself
 *   when the first coat is dry            a moment of the work
 *   if the air is below 5 °C              a measure
 *   if the tank shows rust                a defect: chooses-work
 */
function conditions({ text, plain, sentences }: ReadText): Spot[] {
  // A condition in a later sentence varies a requirement that holds on every job.
  return sentences.slice(0, 1).flatMap(sentence => {
    const adds = obligationsOf(sentence).some(o => ADDS.has(o.verb.lower));
    const words = sentence.segments.flatMap(s => s.words);
    return words.flatMap((begin, at) => {
      if (!/^(?:if|when|where)$/.test(begin.lower)) return [];
      const clause = clauseFrom(plain, begin.start, sentence.end);
      const said = words.slice(at + 1, at + 40).filter(w => w.end <= begin.start + clause.length);
      if (
        !sometimes(begin.lower, said, adds) ||
        hasNumber(clause) ||
        DEFECT.test(clause) ||
        (!adds && BY_ITSELF.test(clause))
      )
        return [];
      if (NOT_SO.test(plain.slice(Math.max(0, begin.start - 8), begin.start))) return [];
      const [start, end] = [begin.start, begin.start + clause.length];
      return [{ start, end, message: message(text.slice(start, end)) }];
    });
  });
}

/** Up to a comma or semicolon, at most 240 characters. */
function clauseFrom(plain: string, start: number, end: number): string {
  const rest = plain.slice(start, Math.min(end, start + 240));
  return rest.slice(0, rest.search(/[,;]|[.]?$/));
}

function sometimes(opens: string, said: readonly Word[], adds: boolean): boolean {
  if (opens === 'if') return true;
  if (opens === 'when') return adds;
  const at = said.findIndex((w, i) => i > 0 && /VERB|AUX/.test(w.tag));
  const behind = said[at + 1];
  // "where a pipe is cut", "where paint has dried" tell of the work.
  return at > 0 && HAPPENS.has(said[at]!.lower) && behind !== undefined && !isParticiple(behind);
}

/** Verbs that say what is there, not where on the work. */
const HAPPENS = new Set(
  'is are has have contains contain includes include occurs occur exists exist serves serve'.split(' '),
);

const ADDS = new Set(
  'fit fitted provide provided install installed add added supply supplied include included'.split(' '),
);

/** A defect of what is there already, which chooses-work asks about. */
const DEFECT = /\b(?:rust\w*|worn|crack\w*|damage\w*|corro\w+|rot\w*|decay\w*|defect\w*|fault\w*|fail\w*|broken)\b/i;

/** Incidents and moments of the work; and conditions that other rules ask about. */
const BY_ITSELF =
  /\b(?:reject\w*|refus\w+|dropped|contaminat\w+|spill\w*|leak\w*|fire|accident|alarm\w*|rain\w*|frost|snow\w*|wind\w*|exceed\w*|doubt|interrupt\w*|delay\w*|late|missed|lost|stops?|dry|wet|cured?|set|hard|cool|cold|warm|hot|full|empty|ready|complete\w*|finished|closed|open|agreed|approved|authori[sz]ed|directed|possible|practica\w+|feasible|covered|buried|hidden|cut|joined|laid|tested|not|least|most)\b/i;
const NOT_SO = /\b(?:only|even|as|see|whether|or|and) $/i;

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
  '(?:in|for|with) (?:some|certain|a few|particular|older|special) (?:[\\p{L}-]{1,20} )?(?:cases|jobs|homes|houses|dwellings|buildings|rooms|sites|situations|circumstances|projects|properties|installations|systems|units)',
  'not (?:all|every) (?:jobs?|homes?|houses?|dwellings?|buildings?|sites?|orders?)',
  'as the case may be',
  'depending on whether',
  '(?:in|on|for|at) (?:any |all |those |each |every )?(?:homes|houses|dwellings|buildings|rooms|roofs|sites|properties|apartments|flats|premises|jobs|projects|vehicles|kitchens|attics|basements|a home|a house|a building|a dwelling) (?:with|that have|having|which have|that has|where|that contain|containing|equipped with|fitted with|that are)(?= )',
  '(?:in case|in the event|provided|assuming|supposing|on condition) (?:of|that|there)(?= )',
  '(?:any|an|existing) (?:[\\p{L}-]{1,20} ){0,2}?(?:that (?:is|are|may be|happens? to be) )?(?:present|encountered|found on site)',
  'may (?:or may not )?be (?:present|needed|required)(?= (?:where|if|when|on))',
  'sometimes',
  'in its absence|in their absence',
  `(?:if|where|when) ${NOUN_PHRASE}(?:is|are|has been|have been|was|were) (?:also )?(?:present|applicable|ordered|fitted|provided|installed|supplied|requested|included|part of the (?:order|job|scope|contract|work|package)|in (?:the )?scope|specified|commissioned|instructed|bought|purchased|chosen|available)`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:occurs?|exists?|is encountered|are encountered|is found|are found)(?= )`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:(?:has|have|contains?|includes?|features?) (?:an?|any|one|been ordered))(?= )`,
  `(?:if|where|when) ${NOUN_PHRASE}(?:orders?|requests?|requires?|asks? for|opts? for|wants?|chooses?|selects?|specif(?:y|ies))(?= )`,
);
