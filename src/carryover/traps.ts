/**
 * Tells numbers that only look like citations. Each trap looks at the text right before or right after the number; a
 * list of words for each kind, so that a new one is added in one place.
 */
const WORDS = {
  version: 'v|ver|version|release|firmware|software|app|rev|revision|build|edition no',
  picture:
    'fig|figs|figure|figures|table|tables|tab|drawing|drawings|dwg|sheet|plate|photo|chart|diagram|annex|appendix|chapter|chapters|page|pages|p|pp|equation|eq|slide|step|steps|plot|lot|question|lesson|module|exercise|worksheet|box|note|map|plan',
  address: 'ip|host|server|gateway|address|subnet|dns|router|network',
  phone: 'tel|telephone|phone|call|ring|fax|mobile|hotline|extension|ext',
  date: 'dated|date|due|deadline|valid until|valid from',
  unit: 'mm|cm|dm|m|km|m2|m3|m²|m³|ha|l|L|ml|mL|s|h|min|mins|kg|g|t|N|kN|Pa|kPa|MPa|bar|W|kW|kWh|V|A|Hz|K|ft|lb|psi|gal|litres?|liters?|metres?|meters?|inches|feet|hours?|minutes?|seconds?|days?|weeks?|months?|years?|percent|per cent|degrees?|times|points?|EUR|USD|GBP|CHF|euros?|dollars?|pounds?',
  book: 'Code|Codes|Standards?|Methods?|Regulations?|Act|Bylaws?|Ordinance|Handbook|Manual|Guide|Guidelines|Specifications?|Rules|Directive|Contract|Agreement|Instructions',
  ours: 'course|form|report|series|module|manual|handbook|guide|contract|exam|quiz|survey|plan|worksheet|agreement|instructions|policy|booklet|leaflet|video',
} as const;

const VERSION = new RegExp(`(?<![\\p{L}])(?:${WORDS.version})\\.?\\s*$`, 'iu');
const PICTURE = new RegExp(
  `(?<![\\p{L}])(?:${WORDS.picture})\\.?\\s*(?:\\d+(?:\\.\\d+)*\\s*(?:,|and|or|to|-|&)\\s*)*$`,
  'iu',
);
const ADDRESS = new RegExp(`(?<![\\p{L}])(?:${WORDS.address})(?:\\s+address)?\\s*(?:is)?[:\\s]*$`, 'iu');
const PHONE = new RegExp(`(?<![\\p{L}])(?:${WORDS.phone})\\b[.:]?[\\s\\d+().-]*$`, 'iu');
const DATED = new RegExp(`(?<![\\p{L}])(?:${WORDS.date})[:\\s]*$`, 'iu');
const MONEY_BEFORE = /(?:[€$£¥]|\b(?:EUR|USD|GBP|CHF))\s*$/;
const MONEY_AFTER = /^\s?[€$£¥]/;
const UNIT = new RegExp(`^\\s?(?:[%‰°]|(?:${WORDS.unit})(?![\\p{L}\\p{N}]))`, 'u');
const CLOCK = /^\s?(?:[ap]\.?m\b|o['’]clock|hrs\b)/i;
const FILE = /^\.(?:pdf|docx?|xlsx?|pptx?|md|txt|csv|jpe?g|png|html?|zip|tar|gz|dwg|dxf|json|xml|js|ts)\b/i;
const PRERELEASE = /^-(?:alpha|beta|rc|dev|snapshot|pre|next|canary)\b/i;

// "section 4.2 of the Valley Drainage Code", "3.2.1 in STM 4", "Part 3 of this course"
const BOOK_AFTER = new RegExp(
  `^\\s*(?:,\\s*)?(?:of|in|to|from|under)\\s+(?:the\\s+)?((?:(?!the\\b)[\\p{L}\\p{N}'’-]+\\s+){0,5}?(?:${WORDS.book}))(?![\\p{L}])`,
  'u',
);
const BOOK_CODE_AFTER = /^\s*(?:,\s*)?(?:of|in|to|from|under)\s+(?:the\s+)?[A-Z]{2,}\b(?:[ -]?\d+)?/;
const OURS_AFTER = new RegExp(
  `^\\s+of\\s+(?:this|the|our|your|that|a)\\s+(?:\\p{L}+\\s+)?(?:${WORDS.ours})(?![\\p{L}])`,
  'u',
);
// "Valley Drainage Code, section 4.2", "STM 4, 3.2.1", "VDC 12:2015, clause 3.2.1"
const REFERENCE = '[,;:]?\\s*(?:(?:section|sections|clause|clauses|item|items|part|no\\.?|§+)\\s*)?';
const BOOK_BEFORE = new RegExp(`\\p{Lu}[\\p{L}-]*\\s+(?:${WORDS.book})${REFERENCE}$`, 'u');
const BOOK_CODE_BEFORE = new RegExp(`(?<![\\p{L}\\p{N}])([A-Z]{2,}(?:[ -]?\\d+(?::\\d{4})?)?)${REFERENCE}$`, 'u');
const SHOUTED =
  /^(?:SEE|NOTE|ITEM|ITEMS|PART|SECTION|SHALL|MUST|AND|OR|TO|OF|IN|AS|PER|THE|BY|FOR|WITH|WORK|GROUP|REQUIREMENT|CLAUSE|NO|JOB|TODO)$/;

export interface Candidate {
  readonly number: string;
  readonly before: string;
  readonly after: string;
  /** The catalog's own title: a book of that name is no other book. */
  readonly catalog: string;
}

/** Whether a number is a date, a version, a price, a measure, an address, a picture or a place in another book. */
export function isTrap(c: Candidate): boolean {
  return looksOtherwise(c) || standsOtherwise(c);
}

function looksOtherwise({ number, before, after }: Candidate): boolean {
  const parts = number.split('.');
  if (parts.some(p => /^0\d/.test(p))) return true;
  if (parts.length === 3 && (year(parts[0]!) || year(parts[2]!))) return true;
  if (parts.length === 4 && (/^(?:\/\d{1,2}(?![.\d])|:\d)/.test(after) || ADDRESS.test(before))) return true;
  if (parts.length === 3 && DATED.test(before)) return true;
  return FILE.test(after) || PRERELEASE.test(after) || (parts.length < 3 && (UNIT.test(after) || CLOCK.test(after)));
}

function standsOtherwise({ before, after, catalog }: Candidate): boolean {
  if ([VERSION, PICTURE, PHONE, MONEY_BEFORE].some(trap => trap.test(before)) || MONEY_AFTER.test(after)) return true;
  if (OURS_AFTER.test(after)) return true;
  const book = BOOK_AFTER.exec(after)?.[1];
  if (book !== undefined && !catalog.toLowerCase().includes(book.toLowerCase())) return true;
  if (BOOK_CODE_AFTER.test(after) || BOOK_BEFORE.test(before)) return true;
  const code = BOOK_CODE_BEFORE.exec(before)?.[1];
  return code !== undefined && !SHOUTED.test(code);
}

function year(part: string): boolean {
  return /^(?:19|20)\d\d$/.test(part);
}
