import { phraseList, spotsOf } from './phrases.ts';
import type { Rule } from './rule.ts';

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
  ],
  find: text =>
    spotsOf(
      text,
      CHOICE,
      words =>
        `"${words}" finds out or chooses which work to do; say how good the work must be, and leave the choice to the survey.`,
    ),
};

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
  `${DECIDES} (?:which|what|how much|how many|how far|why|where)(?= )`,
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
  `(?:identify|identifies|trace|find|locate|pinpoint|discover|detect|track down) ${SOME}(?:[\\p{L}-]{1,20} )?(?:causes?|source|reasons?|origin|faults?|defects?|problems?|failure|weak(?:ness|nesses)|work (?:required|needed)|repairs?)(?= |[.,;]|$)`,
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
  'troubleshoot(?:ing)?',
  'root cause',
);
