import { hasMeasure } from './measures.ts';
import { clauseBefore, phraseList, spotsOf } from './phrases.ts';
import type { ReadText, Word } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/** Which work to do, or what is wrong, is settled before a work item is ordered; a requirement says how good the work is. */
export const choosesWork: Rule = {
  name: 'chooses-work',
  bad: [
    { text: 'Determine whether the boiler should be replaced.' },
    { text: 'Select the most economical method of repair.' },
    { text: 'Identify the cause of the damp before work starts.' },
  ],
  good: [
    { text: 'Determine the moisture content with a pin meter at three points.' },
    { text: 'Identify each cable with a printed tag at both ends.' },
    { text: 'Check whether the door closes by itself.' },
    { text: 'The nurse shall weigh the animal before the dose is drawn.' },
  ],
  find: text => [
    ...spotsOf(text, CHOICE, message),
    ...spotsOf(text, /(?<![\p{L}-])whether(?= )/giu, message, m => asksFor(clauseBefore(text.plain, m.index))),
    ...judging(text),
  ],
};

const message = (words: string) =>
  `"${words}" finds out or chooses which work to do; say how good the work must be, and leave the choice to the survey.`;

/** "check whether it closes" verifies, "the wall, whether old or new," covers both; elsewhere "whether" asks what to do. */
function asksFor(before: string): boolean {
  if (/(?:,|regardless of|irrespective of|no matter|on|of)\s*$/i.test(before) || before.trim() === '') return false;
  return !/\b(?:check|checks|verif\w+|records?|recorded|confirms?|test|tests|notes?|shows?|measures?)\b/i.test(before);
}

/** Whoever is told to judge, and given no measure to judge by, chooses. */
function judging({ text, plain, sentences }: ReadText): Spot[] {
  return sentences.flatMap(({ segments, end }) =>
    segments.flatMap(({ words, orderAt }) =>
      words
        .filter((word, at) => JUDGES.has(word.lower) && (at === orderAt || isTold(words, at)))
        .filter(word => !hasMeasure(plain.slice(word.end, Math.min(end, word.end + 240))))
        .map(({ start, end }) => ({ start, end, message: message(text.slice(start, end)) })),
    ),
  );
}

const JUDGES = new Set(
  'decide decides decided choose chooses chosen judge judges judged diagnose diagnoses diagnosed prioritise prioritize prioritises prioritizes rank ranks recommend recommends recommended evaluate evaluates evaluated assess assesses assessed'.split(
    ' ',
  ),
);

function isTold(words: readonly Word[], at: number): boolean {
  const before = words.slice(Math.max(0, at - 3), at).map(w => w.lower);
  if (before.some(w => /^(?:shall|must|should|to|be)$/.test(w))) return true;
  return /s$/.test(words[at]!.lower) && words[at]!.tag === 'VERB';
}

const DECIDES =
  '(?:determin(?:e|es|ed|ing)|decid(?:e|es|ed|ing)|assess(?:es|ed|ing)?|judg(?:e|es|ed|ing)|establish(?:es|ed|ing)?|evaluat(?:e|es|ed|ing)|consider(?:s|ed|ing)?|investigat(?:e|es|ed|ing)|ascertain(?:s|ed|ing)?|work(?:s|ed|ing)? out|find out|diagnos(?:e|es|ed|ing)|conclude|advise|recommend)';
const LOOKS = '(?:check|checks|see|inspect|examine|test|survey|review)';
const SOME =
  '(?:(?:the|an?|any|all|each|every|its|their|which|what|most|best|more|right|correct|root|underlying|likely|probable|possible|exact) ){0,3}';
const ONE = '(?:[\\p{L}-]{1,24} ){0,3}?';
/** Kinds of work done on what is there already; a choice between two of them is a choice of work. */
const TREATS =
  '(?:repair|replace|renew|rebuild|patch|rework|re-?lay|re-?line|refurbish|overhaul|restore|retain|re-?use|discard|scrap|reject|salvage|remove|demolish|upgrade|re-?coat|repaint|refinish|re-?fix|re-?bed|mend|reset|re-?set|reseal|regrout|re-?point|rewire|recover|rebind|clean|treat|keep)(?:e?d|s|ing|led)?';
const DEFECT =
  '(?:rust(?:y|ed)?|worn|cracked|cracks|damaged?|corroded|corrosion|rotten|rot|decay(?:ed)?|defective|faulty|leaks?|leaking|failed|fails|broken|wear|deteriorated|loose|split|old|perished|beyond)';
const NEEDS =
  '(?:(?:needs?|requires?|warrants?|justif(?:y|ies)|merits?|calls? for) |(?:should|must|shall|is to|are to|can|could|may|needs? to|has to|have to|ought to) be (?:saved|kept|re-?used|replaced|repaired|renewed|removed|upgraded|retained|salvaged|overhauled|rebuilt|refurbished|relined|restored|demolished|patched)|is worth|are worth|is beyond|are beyond|is economical|is (?:repairable|salvageable|reusable|viable|feasible|needed|required|necessary|justified)|are (?:repairable|salvageable|reusable|needed|required|necessary))';

const CHOICE = phraseList(
  `${DECIDES} ${ONE}(?:if|whether)`,
  `${DECIDES} (?:which|what|how|why|where)(?= )`,
  `${DECIDES} (?:on|upon|between|for or against)(?= )`,
  `${DECIDES} ${SOME}(?:[\\p{L}-]{1,20} ){0,2}?(?:extent|scope|need|necessity|feasibility|viability|suitability|options?|method|approach|technique|strategy|remedy|treatment|course of action|priority|cause|source|reason|origin|fault|repairs?|replacement|alternatives?|causes|reasons|solution|type of)(?= |[.,;]|$)`,
  `${LOOKS} (?:if|whether) ${ONE}${NEEDS}`,
  `(?:${LOOKS}|judge) (?:if|whether) ${ONE}(?:is|are) ${ONE}(?:enough|fit|worth)`,
  `${TREATS} or (?:else |to |be )?${TREATS}`,
  `${TREATS} (?:[\\p{L}-]{1,24} ){1,6}?(?:if|when|where) (?:[\\p{L}-]{1,24} ){1,5}?${DEFECT}`,
  'depending (?:on|upon) (?:its|their|the) (?:[\\p{L}-]{1,20} )?(?:condition|state|severity|extent|findings|results?|damage|age|cause)',
  '(?:as|where|when|if) (?:[\\p{L}-]{1,24} ){1,4}?(?:thinks?|sees?|deems?|considers?|judges?|finds?) (?:fit|best|proper|necessary|appropriate|it best|advisable)',
  "at (?:the|its|their|his) (?:[\\p{L}'-]{1,24} )?discretion",
  'diagnos(?:e|es|ed|ing|is|tic)',
  `(?:identify|identifies|trace|find|locate|pinpoint|discover|detect|track down) ${SOME}(?:[\\p{L}-]{1,20} )?(?:causes?|source|reasons?|origin|faults?|defects?|problems?|failure|weak(?:ness|nesses)|work (?:required|needed)|repairs?|leak(?:s|age)?)(?= |[.,;]|$)`,
  '(?:identify|identifies|find|see) (?:out )?(?:which|what|why|how|where|if)(?= )',
  '(?:look|looks|looking) into(?= )',
  "(?:at|of) (?:the |its |their )?(?:[\\p{L}'-]{1,24} ){0,2}?(?:option|choice|preference)(?= |[.,;]|$)",
  'as (?:preferred|seems best|seems right|suits)',
  '(?:make|makes|prepare|draw up|propose) (?:an? |the )?(?:scope|list|schedule|plan) of (?:works?|repairs|remedial)',
  `either ${TREATS} `.trimEnd(),
  `(?:select|selects|choose|chooses|pick|selecting|choosing|selected|chosen|opt for|adopt) ${SOME}(?:[\\p{L}-]{1,20} ){0,2}?(?:methods?|approach|technique|systems?|options?|remedy|treatment|measures?|solution|strategy|course of action|scope|repair|extent|way|type of|kind of|procedure)(?= |[.,;]|$)`,
  '(?:select|choose|pick|choosing|selecting) (?:the )?(?:most|best|between|whether|which|from among|either)',
  '(?:selection|choice) of (?:the )?(?:[\\p{L}-]{1,20} )?(?:method|approach|technique|system|option|remedy|treatment|repair|measure)',
  '(?:repair(?:ed)?|patch(?:ed)?|clean(?:ed)?|reuse[d]?|keep|kept|retain(?:ed)?|mend(?:ed)?|restore[d]?|refurbish(?:ed)?|overhaul(?:ed)?) or (?:to )?(?:be )?(?:replace|renew)d?',
  'replace[d]? or (?:be )?repair(?:ed)?',
  'beyond (?:economic(?:al)? )?(?:repair|saving|salvage)',
  '(?:uneconomic(?:al)?|not economic(?:al)?|cheaper|too (?:costly|expensive|damaged|worn|far gone|badly [\\p{L}-]{1,20})|more cost[- ]effective|not worthwhile|not worth) to (?:repair|replace|restore|keep)',
  'rather than (?:repair(?:ing|ed)?|replac(?:e|ing|ed)|patch(?:ing|ed)?|renew(?:ing|ed)?)',
  '(?:instead of|in preference to) (?:repair|replac|patch)ing',
  'cost[- ]benefit',
  'whether to(?= )',
  'whether (?:or not )?(?:repair|replacement|renewal|treatment|work|remedial work|intervention|an upgrade)',
  'weigh(?: up)? (?:the )?(?:options|costs?|benefits)',
  `weigh (?:up|whether|(?:the )?${TREATS})(?= )`,
  'troubleshoot(?:ing)?',
  'root cause',
  'whichever (?:is|of|method|way|option|material|system|the|suits|proves|costs|looks|works)',
  '(?:most|best) (?:suitable|appropriate|suited|economical|cost-effective|effective) (?:method|approach|technique|system|option|remedy|treatment|material|product|solution|repair|way|one)',
  '(?:as|if|where) (?:site |local |the )?(?:conditions?|situation|circumstances|findings|survey|budget|inspection) (?:dictates?|demands?|requires?|warrants?|suggests?|shows?|indicates?)',
  '(?:find|figure|make|work) out (?:the |what|why|which|how|where|if|whether)',
  '(?:look|search|hunt|check|inspect|test|probe) for (?:the )?(?:likely |probable |real |true )?(?:cause|source|origin|reason)s?',
  '(?:consider|considers|recommend|recommends|propose|proposes|suggest|suggests) [\\p{L}-]{2,20}ing(?= )',
  "(?:advise|advises|tell|tells|inform|informs) [\\p{L}' -]{1,40} (?:whether|which|if)(?= )",
  '(?:needs?|requires?) (?:repair|repairing|replacing|replacement|renewal|renewing|upgrading|attention)',
  '(?:if|where|when) (?:it|they|this|that) (?:cannot|can not|can no longer) be (?:saved|repaired|reused|cleaned|restored)',
  '(?:good|sound|fit|bad|leaky|worn|dirty|damaged|serviceable) enough to (?:be|warrant|justify|leave|keep|stay|remain|need)(?= )',
);
