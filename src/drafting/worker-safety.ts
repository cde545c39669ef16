import { clauseBefore, clauseBehind, phraseList, spotsOf } from './phrases.ts';
import type { ReadText, Word } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

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
    ...bodily(text),
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
  '(?:gloves|helmets?|boots|masks?|overalls|coveralls|visors?) are worn',
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
  'rebar caps?',
  'spotters?|banksm[ae]n|lookout man|flagg?er',
  'exclusion zones?',
  '(?:work|working|enter|entering|entered) (?:alone|unaccompanied|without a second person)',
  'lone work(?:ing|ers?)',
  'two[- ]person lifts?',
  '(?:eyewash|eye wash|emergency shower|rescue plan|rescue kit|sharps injur(?:y|ies)|safe distance from the (?:machine|plant|load|edge))',
  'gas[- ]free certificate|atmosphere test before entry',
  'fire watch(?:er)?',
  'isolat(?:e|ed) (?:[\\p{L}-]{1,20} ){1,4}?before (?:work|working|anyone|opening|touching|they)',
  'slips?,? trips?(?:,? and| or)? falls?',
  '(?:noise|vibration|dust|heat) exposure',
  'stop work (?:in|during|if) (?:[\\p{L}-]{1,20} )?(?:lightning|storms?|thunder|high winds?)',
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
/** People at work told where to stand and what to lift, wear or climb: their own body, not the installed work. */
function bodily({ text, sentences }: ReadText): Spot[] {
  return sentences.flatMap(sentence =>
    sentence.segments.flatMap(({ words, orderAt }) =>
      words
        .filter((word, at) => {
          if (
            word.tag !== 'VERB' ||
            FOR_THE_PRODUCT.test(
              words
                .slice(at + 1, at + 6)
                .map(w => w.lower)
                .join(' '),
            )
          )
            return false;
          if (at === orderAt) return WORN.has(word.lower);
          return BODY.has(word.lower) && words.slice(Math.max(0, at - 8), at).some(w => isPeople(w));
        })
        .map(({ start, end }) => ({ start, end, message: MESSAGE(text.slice(start, end)) })),
    ),
  );
}

/** Hairnets keep the food clean and cotton gloves the photograph: they are workmanship. */
const FOR_THE_PRODUCT = /\b(?:hair ?nets?|clean|sterile|cotton|lint|overshoes|shoe covers|badges?|aprons?|uniforms?)\b/;

const WORN = new Set(['wear', 'don']);
const BODY = new Set(
  'wear wears worn stand stands lean leans climb climbs lift lifts walk walks reach reaches kneel kneels tie ties jump jumps sit sits rest rests drink drinks ride rides clip clips crouch crouches enter enters'.split(
    ' ',
  ),
);

/** Trades and other names for people at work; "layers", "fasteners" and the like name things. */
function isPeople({ lower, tag }: Word): boolean {
  return NAMES_PEOPLE.test(lower) || (/NOUN|PROPN/.test(tag) && TRADE.test(lower));
}

const NAMES_PEOPLE =
  /^(?:workers?|operatives?|workmen|crews?|personnel|employees?|staff|gangs?|nobody|anyone|everyone|persons?|people|technicians?|trainees?|apprentices?|handlers?|operators?|labou?rers?|foremen|helpers?)$/;
const TRADE =
  /^(?:riggers?|plumbers?|cleaners?|scaffolders?|plasterers?|bricklayers?|joiners?|carpenters?|glaziers?|divers?|climbers?|electricians?|painters?|roofers?|welders?|fitters?|installers?|drivers?|masons?|tilers?|pavers?|slaters?|porters?|loaders?|surveyors?|inspectors?|builders?|diggers?|gardeners?|mechanics?|engineers?|fixers?|erectors?|steeplejacks?|laggers?|drillers?|blasters?)$/;

const LADDER = phraseList('ladders? (?:shall|must|should|is|are|used|angle)');
const PRODUCT =
  /\b(?:fixed|cable|roof|loft|access|manhole|vertical|permanent|rope|jack|tray|hatch|ship|ships|rescue|escape)\s$/i;
const WORKERS = phraseList(PEOPLE);
const DANGER =
  /^(?:[^.;]{0,120})\b(?:from falling|falls?\b|falling|injur(?:y|ies|ed)|protected (?:from|against)|exposure|exposed to|tied off|tie off|clipped on|clip on|safe(?:ly)? (?:working|lifting|access)|burns?|impal\w{1,8}|electrocut\w{1,4}|electric shock|shocks?|crush(?:ed|ing)?|drown(?:ing|ed)?|struck by|trapped|entangle\w{1,6}|inhal(?:e|ing|ation)|breath(?:e|ing) in|fumes|under the|stands? under|lean out|climbs?|lifts? more|alone|lifting|two[- ]person|lift more|hydrat(?:ed|ion)|sun ?screen|shade)\b/i;
