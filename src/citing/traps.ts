/**
 * Tells numbers that only look like citations. Each trap looks at the text right before or right after the number; a
 * list of words for each kind, so that a new one is added in one place.
 */
const WORDS = {
  version:
    'v|ver|vers|version|versions|release|firmware|software|app|apps|rev|revision|build|patch|update|upgrade|updated to|upgraded to|plug-?in|driver|script|library|browser|schema|api',
  figure:
    'fig|figs|figure|figures|ill|table|tables|tab|drawing|drawings|dwg|sheet|plate|photo|photos|chart|diagram|sketch|picture|image|map|plan',
  counted:
    'grid ref(?:erence)?|cost code|annex|appendix|chapter|chapters|ch|page|pages|p|pp|equation|eq|formula|slide|slides|step|steps|plot|lot|question|questions|q|lesson|lessons|module|modules|exercise|worksheet|box|note|footnote|grid|square|detail|elevation|view|zone|room|bay|unit|floor|flat|locker|shelf|rack|drawer|bin|folder|file|ticket|invoice|purchase order|quote|quotation|receipt|batch|model|serial|part no|part number|part nos|parts nos|stock no|stock code|catalogue no|catalog no|cat\\. no|order no|order number|invoice no|ticket no|job no|job number|account no|serial no|serial number|drawing no|sheet no|house no|phone no|meter no|reference no|ref no|sku|kit|size|type|grade|class|mark|volume|vol|track|row|column|col|line|gate|platform|route|bus|door|manhole|node|pipe run|stage|phase|task|activity|milestone|score|ratio|mix|recipe|scale|layer|level|lift|dose|setting|channel|port|pin|item code|code|art|reading|asset|tag|pump|valve|cell|block',
  address:
    'ip|ipv4|host|server|gateway|address|addresses|subnet|mask|dns|router|network|ping|controller|logger|modem|lan|node|device',
  phone: 'tel|telephone|phone|call|ring|fax|mobile|hotline|extension|ext|text|sms',
  date: 'dated|date|due|deadline|valid until|valid from|expires|expired|expiry|week of|week from',
  perhapsDate:
    'on|since|signed|delivered|issued|received|posted|visited|visit of|inspected|by|until|before|after|from|of',
  unit: 'mm|cm|dm|m|km|m2|m3|m²|m³|ha|l|L|ml|mL|s|h|min|mins|kg|g|t|N|kN|Pa|kPa|MPa|bar|W|kW|kWh|V|A|Hz|K|ft|lb|psi|gal|in\\.?(?=\\s*[,.;)]|\\s+(?:long|wide|deep|thick|high))|litres?|liters?|metres?|meters?|millimetres?|millimeters?|inch|inches|feet|foot|hours?|minutes?|seconds?|days?|weeks?|months?|years?|percent|per cent|degrees?|times|points?|tonnes?|tons?|kilos?|square|cubic|EUR|USD|GBP|CHF|euros?|dollars?|pounds?|out of|stars?|people|pieces?|pcs|bags?|loads?|coats?|visits?',
} as const;

const VERSION = new RegExp(`(?<![\\p{L}])(?:${WORDS.version})\\.?\\s*$|(?:[<>=~^]=|[<>^])\\s*$`, 'iu');
const labelled = (words: string) =>
  new RegExp(
    `(?<![\\p{L}])(?:${words})s?(?:(?<=(?<![\\p{L}])\\p{L}{1,4})\\.|\\s+(?:is|was|reads?))?\\s*[:#]?\\s*(?:\\d+(?:\\.\\d+)*\\s*(?:,|and|or|to|-|&)\\s*)*$`,
    'iu',
  );
const FIGURE = labelled(WORDS.figure);
const COUNTED = labelled(WORDS.counted);
const ADDRESS = new RegExp(`(?<![\\p{L}])(?:${WORDS.address})(?:\\s+address)?\\s*(?:is|at|=|to)?[:\\s]*$`, 'iu');
const PHONE = new RegExp(`(?<![\\p{L}])(?:${WORDS.phone})\\b[.:]?(?:\\s+(?:on|at|us on))?[\\s\\d+().-]*$`, 'iu');
const DATED = new RegExp(`(?<![\\p{L}])(?:${WORDS.date})(?:\\s+on)?[:\\s]*$`, 'iu');
const PERHAPS_DATED = new RegExp(`(?<![\\p{L}])(?:${WORDS.perhapsDate})\\s*$`, 'iu');
const MONEY_BEFORE = /(?:[€$£¥]|\b(?:EUR|USD|GBP|CHF))\s*$/;
const MONEY_AFTER = /^\s?[€$£¥]/;
const UNIT = new RegExp(`^(?:\\s?(?:%|‰|°)|\\s?[-]?(?:${WORDS.unit})(?![\\p{L}\\p{N}]))`, 'u');
const CLOCK = /^\s?(?:[ap]\.?m\b|o['’]clock|hrs\b)/i;
const FILE = /^\.(?:pdf|docx?|xlsx?|pptx?|md|txt|csv|jpe?g|png|html?|zip|tar|gz|dwg|dxf|json|xml|js|ts|exe|bin)\b/i;
const PRERELEASE = /^-(?:alpha|beta|rc|dev|snapshot|pre|next|canary|lts)\b/i;
const RELEASED = /^\s+(?:is|was)\s+(?:the\s+|a\s+)?(?:\p{L}+\s+)?(?:version|release|build|update|firmware)\b/iu;
// "Hydroplan 3.2.1", "PumpCtl 4.2.3": a name of a program in mixed capitals.
const PROGRAM = /(?<![\p{L}])(?:\p{L}+\p{Ll}\p{Lu}[\p{L}]*|\p{Lu}\p{Ll}+(?:OS|DB|SQL|API))\s+$/u;

export interface Candidate {
  readonly number: string;
  readonly before: string;
  readonly after: string;
}

/** What a number is by its looks and its neighbours, where that is no citation: a date, a measure, an address … */
export function looksOtherwise({ number, before, after }: Candidate): string | undefined {
  const parts = number.split(/[.\-/]/);
  if (parts.some(p => /^0\d/.test(p))) return 'a date or a code, with a leading nought';
  if (parts.length === 3 && (isYear(parts[0]!) || isYear(parts[2]!))) return 'a date';
  if (parts.length === 3 && DATED.test(before) && isDay(parts)) return 'a date';
  if (parts.length === 3 && /^[2-9]\d$/.test(parts[2]!) && PERHAPS_DATED.test(before) && isDay(parts)) return 'a date';
  if (parts.length === 4 && (/^(?:\/\d{1,2}(?![.\d])|:\d)/.test(after) || ADDRESS.test(before))) return 'an address';
  if (parts.length === 4 && parts.every(p => Number(p) < 256) && Number(parts[0]) >= 100) return 'an address';
  if (FILE.test(after)) return 'a file';
  if (PRERELEASE.test(after)) return 'a version';
  if (parts.length < 3 && UNIT.test(after)) return 'a measure';
  if (parts.length < 3 && CLOCK.test(after)) return 'a time';
  return MONEY_BEFORE.test(before) || MONEY_AFTER.test(after) ? 'a price' : undefined;
}

/** Whether a unit or a word that counts follows: 4.1.2 points, 2-1-3 times. */
export function measures(after: string): boolean {
  return UNIT.test(after) || CLOCK.test(after);
}

const OTHER_WORDS = new RegExp(
  `(?<![\\p{L}])(?:${[WORDS.version, WORDS.address].join('|')}|shel(?:f|ves)|boxe?s?|tickets?|invoices?|orders?|flats?|doors?|rooms?|ports?|tracks?|drawings?|downloads?|install(?:ed)?|crash(?:es)?|bug|score[ds]?|won|lost|race|league)(?![\\p{L}])`,
  'iu',
);

/** Whether a sentence speaks of things that bear such numbers too: programs, addresses, shelves, matches. */
export function speaksOfOther(sentence: string): boolean {
  return OTHER_WORDS.test(sentence);
}

/** Whether a heading announces releases of a program: what begins a line below it is a version. */
export function listsReleases(heading: string | undefined): boolean {
  return (
    heading !== undefined &&
    /\b(?:release (?:notes|history)|releases|versions|version history|change ?log|what['’]s new)\b/i.test(heading)
  );
}

/** What a word before a number, or behind it, says that it numbers: a version, a figure, an address, a telephone. */
export function labelOf({ before, after }: Pick<Candidate, 'before' | 'after'>): string | undefined {
  if (RELEASED.test(after) || VERSION.test(before) || PROGRAM.test(before)) return 'a version';
  if (COUNTED.test(before)) return 'a number of something else';
  if (ADDRESS.test(before)) return 'an address';
  return PHONE.test(before) ? 'a telephone number' : undefined;
}

/** Whether a word before a number says that it numbers a figure, a table, a drawing. */
export function isFigure(before: string): boolean {
  return FIGURE.test(before);
}

/** Whether a date stands right behind, as behind a release: "3.2.1 (2024-02-03)". */
export function isDatedBehind(after: string): boolean {
  return /^\s*[-,(]?\s*\(?(?:(?:19|20)\d\d-\d\d-\d\d|\d{1,2}\.\d{1,2}\.(?:19|20)\d\d)/.test(after);
}

function isYear(part: string): boolean {
  return /^(?:19|20)\d\d$/.test(part);
}

/** Whether a number that the edition lacks is rather a day of this century: 4.1.24. */
export function isShortDate(number: string): boolean {
  const parts = number.split(/[.\-/]/);
  return parts.length === 3 && /^[0-4]\d$/.test(parts[2]!) && isDay(parts);
}

/** Whether three segments can be a day, a month and a short year, in whatever order; "3.2.1" after "dated" is one. */
function isDay(parts: readonly string[]): boolean {
  const [a, b] = parts.map(Number);
  return (a! <= 31 && b! <= 12) || (a! <= 12 && b! <= 31);
}
