import { clauseBefore, clauseBehind, phraseList, spotsOf } from './phrases.ts';
import type { Rule } from './rule.ts';

/** The safety of those who do the work is law, and the employer's; a requirement on the finished work does not repeat it. */
export const workerSafety: Rule = {
  name: 'worker-safety',
  bad: [
    { text: 'Operatives shall wear hard hats on site.' },
    { text: 'Use a harness when working on the roof edge.' },
    { text: 'Secure ladders at the top before climbing.' },
  ],
  good: [
    { text: 'Clip the wiring harness every 300 mm.' },
    { text: 'Fix the cable ladder to the soffit with M10 rods.' },
    { text: 'Fit a guard rail 1.1 m high along the landing.' },
  ],
  find: text => [
    ...spotsOf(text, GEAR, MESSAGE),
    ...spotsOf(
      text,
      HARNESS,
      MESSAGE,
      m => !/\b(?:wiring|cable|wire|loom|electrical)\s$/i.test(clauseBefore(text.plain, m.index)),
    ),
    ...spotsOf(text, LADDER, MESSAGE, m => !PRODUCT.test(clauseBefore(text.plain, m.index))),
    ...spotsOf(text, WORKERS, MESSAGE, m => DANGER.test(clauseBehind(text.plain, m.index + m[0].length, 200))),
  ],
};

const MESSAGE = (words: string) =>
  `"${words}" is about the safety of those who do the work, which law and the employer govern; refer to them instead.`;

const PEOPLE =
  '(?:workers?|operatives?|workmen|crews?|crew members|personnel|employees|installers?|technicians?|labou?rers|roofers|fitters|painters|welders|electricians|drivers|handlers|operators?|staff|site staff|anyone|everyone|nobody|no one|no person|helpers?|gangs?|riggers?|plumbers|cleaners|scaffolders|plasterers|bricklayers|joiners|carpenters|glaziers|divers|climbers|trainees|apprentices|colleagues|hands|all persons|persons|people)';

const GEAR = phraseList(
  'p\\.?p\\.?e',
  '(?:personal|respiratory|head|eye|hearing|foot|hand|ear|face|fall|skin) protect(?:ion|ive)(?: (?:equipment|gear|clothing))?',
  'protective (?:clothing|equipment|gear|footwear|gloves|eyewear|headgear|goggles|suits?|overalls|boots|helmets?)',
  '(?:hard|bump) hats?',
  'safety (?:helmets?|glasses|goggles|footwear|boots|shoes|harness(?:es)?|lines?|nets?|netting|vests?|spectacles|gear|clothing|belts?|lanyards?|briefings?|induction)',
  '(?:high[- ]visibility|hi[- ]?vis) (?:vests?|jackets?|clothing|garments?|waistcoats?|workwear)',
  'hi-vis',
  'lanyards?',
  'fall[- ](?:arrest(?:ers?)?|prevention|restraint)',
  'ear (?:defenders|plugs|muffs)',
  'earplugs|ear-plugs',
  'respirators?',
  'dust masks?',
  'face (?:shields?|masks?)',
  'goggles',
  'steel[- ](?:toe|toed|toecap|capped) (?:boots|shoes|footwear|caps?)',
  '(?:cut[- ]resistant|work|insulating|welding|leather|rubber) gloves',
  'wear(?:s|ing)? (?:[\\p{L}-]{1,20} ){0,2}?(?:gloves|helmets?|boots|masks?|overalls|coveralls|aprons?|visors?)',
  '(?:gloves|helmets?|boots|masks?|overalls|coveralls|visors?) (?:shall|must|should|are to|to) be worn',
  'work(?:ing)? (?:at|from) heights?',
  '(?:from|off|on|up|using|use|erect|foot|footed|secure|tie|place|set up|position|inspect|climb) (?:an? |the |all |any )?(?:portable |extension |leaning |wooden |step ?)?ladders?(?= |[.,;]|$)',
  'step ?ladders?',
  'edge protection',
  'lock[- ]?out',
  'tag[- ]?out',
  'permit[- ]to[- ]work',
  'toolbox talks?',
  'safe system of work',
  'method statements?',
  'manual handling',
  'first[- ]aid(?:ers?| kits?| boxes)?',
  'confined[- ]space (?:entry|training|permit|rescue)',
  '(?:trench|excavation)s? (?:shall|must|should|is|are) (?:to )?(?:be )?(?:shored|sheeted|battered|supported) (?:[\\p{L}-]{1,20} ){0,4}?(?:workers?|operatives?|entry|enters?|persons?|anyone)',
  '(?:half|full[- ]face|breathing|filter)[- ]?masks?',
  'toe[- ]?boards?',
  '(?:under|beneath|below) (?:an? |the |any )?(?:suspended|raised|hanging|lifted) (?:loads?|platforms?|buckets?|bod(?:y|ies)|beds?)',
  '(?:suspended|overhead) loads?',
  'safety props?',
  'position of safety',
  'lean out',
  'test(?:s|ed)? for dead',
  'prove[ds]? dead',
  '(?:hold|holds|steady) (?:the )?(?:foot|bottom|base) of (?:the|a) ladder',
  'tie(?:d|s)? back (?:long |loose )?hair',
  '(?:rings|jewell?ery|watches|loose clothing|long hair) (?:shall|must|should|is|are)',
  '(?:lift|lifts|lifted|lifting|carry|carries) (?:more than|over|above|loads over|loads above|anything over) [0-9]{1,4} ?(?:kg|lb|pounds)',
  'dust extraction for (?:the )?(?:workers?|operatives?|operators?)',
  'occupational (?:health|safety|exposure)',
  'health and safety',
  '(?:worker|operative|site|personnel|crew|staff|employee|operator) safety',
  'safety of (?:the |all )?(?:workers?|operatives?|crews?|personnel|employees|staff)',
  'welfare facilities',
  'rest breaks?',
  'heat stress',
  'collective protection',
  'scaffold(?:ing|s)? (?:for access|to protect)',
);

const HARNESS = phraseList('harness(?:es)?');
const LADDER = phraseList('ladders? (?:shall|must|should|is|are|used|angle)');
const PRODUCT =
  /\b(?:fixed|cable|roof|loft|access|manhole|vertical|permanent|rope|jack|tray|hatch|ship|ships|rescue|escape)\s$/i;
const WORKERS = phraseList(PEOPLE);
const DANGER =
  /^(?:[^.;]{0,120})\b(?:from falling|falls?\b|falling|injur(?:y|ies|ed)|protected (?:from|against)|exposure|exposed to|tied off|tie off|clipped on|clip on|safe(?:ly)? (?:working|lifting|access)|burns?|impal\w{1,8}|electrocut\w{1,4}|electric shock|shocks?|crush(?:ed|ing)?|drown(?:ing|ed)?|struck by|trapped|entangle\w{1,6}|inhal(?:e|ing|ation)|breath(?:e|ing) in|fumes|under the|stands? under|lean out|climbs?|lifts? more|alone|lifting|two[- ]person|lift more|hydrat(?:ed|ion)|sun ?screen|shade)\b/i;
