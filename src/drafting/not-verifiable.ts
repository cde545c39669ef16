import { obligationsOf } from './obligations.ts';
import { clauseBefore, clauseBehind, phraseList, spotsOf } from './phrases.ts';
import type { ReadText } from './read-text.ts';
import type { Rule } from './rule.ts';

/**
 * Conduct, attitude, what people like, and what only decades show: they leave nothing to see, to measure or to read
 * before covering, at completion or later.
 */
export const notVerifiable: Rule = {
  name: 'not-verifiable',
  bad: [
    { text: 'Take care when lifting the glass.' },
    { text: 'Operators must be aware of the weather.' },
    { text: 'Staff shall understand the purpose of the drill.' },
    { text: 'The fitter shall keep tidiness in mind.' },
    { text: 'The facade shall look pleasing from the street.' },
    { text: 'The seal shall last for at least 50 years.' },
    { text: 'Guests shall be comfortable in all weathers.' },
    { text: 'The weld shall never fail during the life of the bridge.' },
  ],
  good: [
    { text: 'Each operator signs that they have read and understood the sheet.' },
    { text: 'Fix the care label inside the hem.' },
    { text: 'The load is considered uniform over 2 m.' },
    { text: 'Records shall be kept for 10 years.' },
    { text: 'The lamp shall remain lit for 5 years by its data sheet.' },
    { text: 'The surface shall look uniform under a raking light.' },
    { text: 'Keep the manual in the plant room for the life of the boiler.' },
  ],
  find: text => {
    const conduct = [CONDUCT, LIKING, LASTING].flatMap(pattern =>
      spotsOf(text, pattern, message, m => !recorded(text, m.index, m.index + m[0].length)),
    );
    const orders = text.sentences
      .flatMap(obligationsOf)
      .filter(
        o =>
          o.modal === 'order' &&
          ATTITUDES.has(o.verb.lower) &&
          !/\bwhether\b/.test(clauseBehind(text.plain, o.verb.end)) &&
          !recorded(text, o.verb.start, o.verb.end),
      )
      .map(({ verb: { start, end } }) => ({ start, end, message: message(text.text.slice(start, end)) }));
    return [...conduct, ...orders.filter(o => !conduct.some(c => c.start <= o.start && o.end <= c.end))];
  },
};

const message = (words: string) =>
  `"${words}" leaves nothing to see, measure or read; state what shows that it was done.`;

/** Orders to the mind. */
const ATTITUDES = new Set(
  'understand appreciate consider recognise recognize remember endeavour endeavor strive respect realise realize know think try attempt aim reflect anticipate behave value acknowledge treat familiarise familiarize cooperate co-operate'.split(
    ' ',
  ),
);

function recorded({ plain }: ReadText, start: number, end: number): boolean {
  return leavesRecord(clauseBefore(plain, start)) || leavesRecord(clauseBehind(plain, end, 240));
}

/** A signature or a record can be read afterwards. */
function leavesRecord(clause: string): boolean {
  return /\b(?:sign(?:s|ed|ing)?|signature|record(?:s|ed|ing)?|register|logged|log|certificate|in writing|minuted|minutes|documented|written test|test paper|quiz)\b/i.test(
    clause,
  );
}

const BE = '(?:be|is|are|being|remain|stay|become|becomes)';
const DO = '(?:shall|must|should|will|(?:is|are|need|needs|has|have|ought) to|always|never|not)';

const CONDUCT = phraseList(
  '(?:take|takes|taking|exercise|exercises|with|use|uses|show|using) (?:all |every |the |due |great |special |extra |particular |reasonable |proper |appropriate |utmost |necessary |adequate |sufficient |full ){0,2}(?:care|caution|diligence|judge?ment|discretion|prudence|vigilance|attention|consideration|respect|courtesy|common sense|pride|thought|precautions?|initiative)',
  '(?:great |due |special |extra |particular |every |reasonable |appropriate |proper |the utmost )?(?:care|caution|attention) (?:shall|must|should|is to|needs to|has to|to) be (?:taken|exercised|paid|given|used)',
  `${BE} (?:made |kept |fully |always |constantly |well |particularly |especially ){0,2}(?:aware|mindful|conscious|vigilant|alert|attentive|careful|cautious|considerate|courteous|polite|respectful|diligent|conscientious|prepared|familiar|sensitive|proactive|flexible|helpful|patient|sensible|responsible|professional|committed|cooperative|co-operative|friendly|honest|observant|wary|watchful|thoughtful|willing|knowledgeable|encouraged|motivated|considered by|taken into (?:account|consideration)|borne in mind)(?= (?:of|to|that|about|with|when|at|for|and|in|by|during|while)|[.,;]|$)`,
  "(?:bear|keep|have|bearing|keeping) (?:[\\p{L}'-]{1,24} ){0,3}?in mind",
  'mindful of',
  'make (?:every|all|a|their best|its best|reasonable|an?) (?:reasonable |possible |best |good faith |genuine |conscious )?efforts?',
  'every (?:reasonable |possible )?effort (?:shall|must|should|is to|will) be made',
  '(?:use|using) (?:their |all |its |your )?(?:best|reasonable) (?:endeavou?rs|efforts)',
  '(?:do|doing) (?:their|its|your|the) (?:best|utmost)',
  `${DO} (?:always |at all times |also |fully |clearly )?(?:understand|appreciate|consider|recogni[sz]e|remember|endeavou?r|strive|respect|realise|realize|know|think|try|attempt|aim|reflect|care|feel|believe|anticipate|cooperate|co-operate|behave|value|acknowledge|embrace|be familiar|want|hope|intend|wish|trust|feel proud|pay attention|foresee|conduct themselves|familiari[sz]e)(?= )`,
  '(?:pay|pays|paying) (?:close |particular |special |full |careful |due )?(?:attention|heed|regard)',
  'pay (?:close )?heed',
  '(?:give|giving|given) (?:due |careful |full |proper |some |serious |particular )?(?:thought|consideration|regard|attention) to',
  'have (?:due |proper )?regard (?:to|for)',
  'tak(?:e|en|ing) into (?:account|consideration)',
  'tak(?:e|es|ing) (?:pride|an interest|responsibility|ownership)',
  'common sense',
  'good judge?ment',
  '(?:in|with) (?:an? )?(?:careful|workmanlike|workman-like|professional|diligent|conscientious|courteous|responsible|respectful|considerate|sensible|skilful|skillful|orderly|friendly) (?:and [\\p{L}-]{1,20} )?(?:manner|way|fashion|attitude|spirit)',
  'conscientiously',
  'diligently',
  'carefully',
  'courteously',
  'politely',
  'thoughtfully',
  'sensibly',
  'vigilantly',
  'responsibly',
  'positive attitude',
  'sense of (?:urgency|ownership|responsibility)',
  'a culture of',
  'familiari[sz]e (?:themselves|yourself|himself|itself)',
  'remain (?:calm|alert|vigilant)',
  'avoid (?:rushing|haste|shortcuts|complacency|carelessness)',
  '(?:as if|as though|like) (?:it|they|this|that) (?:were|was|is|are) (?:their|his|her|your|its|one) own',
  'everything (?:possible|they can|in (?:their|its|his|your) power)',
  '(?:right|good|proper|correct|helpful|safe|professional|can-do) (?:attitude|mindset|mentality|spirit|frame of mind|approach to)',
  'attitudes?',
  'mindset',
  '(?:want|wish|intend|hope|desire|care enough) to(?= )',
  '(?:clear|cool|level|open) (?:head|mind)',
  'at heart',
  '(?:get|be|become|getting|being) (?:easily )?(?:distracted|complacent|careless|rushed|impatient|negligent|carried away|flustered)',
  'in (?:a|the) spirit of',
  'with (?:love|pride|passion|enthusiasm|dedication|patience|goodwill|good will|sensitivity|empathy|tact|commitment|professionalism|thought|heart|forethought|confidence|integrity|kindness|dignity)',
  'avoid (?:making )?(?:mistakes|errors|being careless|unnecessary risks)',
  '(?:team spirit|goodwill|professionalism|morale|craftsmanship|pride in (?:their|the|its|your) work)',
  '(?:think|plan|look) (?:ahead|twice|carefully)',
  'in good faith',
);

const PEOPLE =
  '(?:owner|customer|client|occupant|resident|tenant|guest|user|visitor|public|passenger|patient|reader|viewer|buyer|audience|everyone|everybody|people|pupil|neighbou?r)s?';

/** What somebody likes; a quality that can be seen, such as "look uniform", is none. */
const LIKING = phraseList(
  'pleasing (?:appearance|to the eye)',
  '(?:look|looks|appear|appears|seem|seems|sound|sounds|smell|smells|taste|tastes) (?:as )?(?:very |quite |always )?(?:pleasing|attractive|nice|beautiful|elegant|inviting|handsome|pretty|tasteful|harmonious|pleasant|appealing|impressive|good|right|natural|delicious)',
  `(?:shall|must|should|will) (?:always |never )?feel (?:[\\p{L}-]{1,24})(?= |[.,;]|$)`,
  'be (?:always |fully |perfectly |thermally )?(?:comfortable|happy|satisfied|content|pleased|delighted|at ease|proud)(?= (?:in|with|at|during|when|while|for|and|to|about)|[.,;]|$)',
  `(?:please|delight|satisfy|impress|reassure|inspire|charm) (?:(?:all|every|each|the|its|any|most) ){0,2}(?:[\\p{L}-]{1,20} )?${PEOPLE}`,
);

const LIFE = '(?:life|lifetime|service life|life span|lifespan)';

/** What only decades show. A time that something is kept on file is read there. */
const LASTING = phraseList(
  `(?:last|lasts|endure|survive|serve|function|perform|(?:remain|stay|be) (?:free (?:of|from) [\\p{L}-]{1,24}|tight|watertight|airtight|sound|intact|effective|serviceable|stable|bright|white|flexible|dry|level|straight)) (?:for )?(?:(?:at least|not less than|no less than|a minimum of|more than|over|about) )?(?:[1-9]\\d|ten|fifteen|twenty|twenty-five|thirty|forty|fifty|sixty|eighty|a hundred) years`,
  `(?:shall|must|should|will) (?:never|at no time) (?:fail|leak|break|crack|rust|corrode|rot|wear out|loosen|jam|collapse|freeze|fade|be (?:attacked|damaged|destroyed|lost|broken|stolen|vandali[sz]ed))`,
  `(?:fail|leak|break|crack|rust|corrode|rot|move|fade|last|remain|stay|function|perform|work) (?:[\\p{L}-]{1,24} ){0,4}?(?:during|throughout|over|for) (?:the|its|their) (?:(?:whole|entire|full|expected|intended|working|design|useful) ){0,2}${LIFE}`,
);
