import { type Books, type Candidate, isKnown, mayBeMeant } from './candidates.ts';
import { numbersBetween, prints } from './cited-book.ts';
import { standsBefore } from './left-word.ts';
import { isOfSomething, otherBook, ourBook } from './other-books.ts';
import { bearsLevel, segments } from './spots.ts';
import { topicOf } from './topic.ts';
import { isShortDate, labelOf, measures, speaksOfOther } from './traps.ts';

/** What a document as a whole says of the numbers in it. */
export interface Document {
  /** Numbers of its own headings and clauses; see ownNumbers. */
  readonly own: ReadonlySet<string>;
  /** The share of its words that are words of the edition's titles. */
  readonly share: number;
}

/**
 * What speaks for a candidate, 0 to 1 each, and what against it. A weight never turns a reason round: what speaks for
 * has one of nought or more, what speaks against one of nought or less.
 */
export const SPEAKS = {
  printed2: 'for',
  printed3: 'for',
  printed4: 'for',
  lettered: 'for',
  short: 'for',
  wholeList: 'for',
  range: 'for',
  unprinted: 'against',
  printedElsewhere: 'for',
  sibling: 'for',
  level: 'for',
  item: 'for',
  section: 'for',
  number: 'for',
  hash: 'for',
  pointing: 'for',
  otherBeforeCue: 'against',
  title: 'for',
  edition: 'for',
  ourBook: 'for',
  lineStart: 'for',
  safeWord: 'for',
  ownWord: 'for',
  labelled: 'against',
  otherWord: 'against',
  nameBefore: 'against',
  digitBefore: 'against',
  bracketed: 'for',
  endsThere: 'for',
  saysSomething: 'for',
  otherWordBehind: 'against',
  nameBehind: 'against',
  goesOn: 'against',
  trap: 'against',
  trapNear: 'against',
  unitBehind: 'against',
  bearsLevel: 'for',
  otherBookBefore: 'against',
  otherBookBehind: 'against',
  calledShort: 'for',
  pointedShort: 'for',
  calledLong: 'for',
  calledElsewhere: 'against',
  ofSomething: 'against',
  changed: 'for',
  ownHeading: 'against',
  shortDate: 'against',
  near: 'for',
  nearSentence: 'for',
  nearest: 'for',
  passageShare: 'for',
  documentShare: 'for',
  strange: 'against',
} as const satisfies Record<string, 'for' | 'against'>;

export type Reason = keyof typeof SPEAKS;
export type Evidence = Readonly<Partial<Record<Reason, number>>>;

/** Reads what speaks for and against one candidate, without regard to the other numbers of its document. */
export function evidenceOf(books: Books, document: Document, candidate: Candidate): Evidence {
  const { group, text, before, after, cue, title, said, passage } = candidate;
  const { own } = books;
  const catalog = own.edition.settings.title;
  const first = group.members[0]!;
  const numbers = group.members.map(m => m.number);
  const depth = first.short ? 3 : segments(first.number);
  const printed = prints(own, first.number);
  const left = standsBefore(
    own,
    first.number,
    cue ? before.slice(0, before.toLowerCase().lastIndexOf(cue.word)) : before,
  );
  const word = /([\p{L}][\p{L}'’-]*)[ \t]+$/u.exec(before)?.[1];
  const startsLine = /(?:^|[\r\n])[\s#*_>|([-]*$/.test(before);
  const behind = /^[ \t]+([\p{L}][\p{L}'’-]*)/u.exec(after)?.[1];
  const topic = topicOf(own);
  const near = topic.nearness(`${passage.heading ?? ''} ${text}`, numbers);
  const share = topic.share(text);
  const sentence = sentenceAround(text, group);
  const through = first.through;
  const is = (yes: unknown) => (yes ? 1 : 0);
  const place = /^(?:no|nr|number|numbered|nos|nrs|numbers)\.?$/.test(cue?.word ?? '');
  const named = cue?.kind === 'common' && !place && cue.word !== '#';
  const bare = cue === undefined;
  const other = otherBook(before, after, catalog);
  const annex = /^(?:annex|append)/.test(cue?.word ?? '');
  return {
    printed2: is(printed && depth === 2),
    printed3: is(printed && depth === 3),
    printed4: is(printed && depth > 3),
    lettered: is(printed && /\p{L}/u.test(first.number)),
    short: is(first.short),
    wholeList: is(numbers.length > 1 && numbers.every(n => isKnown(books, n))),
    range: is(through && numbersBetween(own, first.number, through.number)),
    unprinted: is(!isKnown(books, first.number)),
    printedElsewhere: is(!printed && isKnown(books, first.number)),
    sibling: is(!isKnown(books, first.number) && mayBeMeant(books, first.number)),
    level: is(cue?.kind === 'level'),
    item: is(named && /^(?:items?|req)/.test(cue!.word)),
    section: is(named && !/^(?:items?|req)/.test(cue!.word)),
    number: is(place),
    hash: is(cue?.word === '#'),
    pointing: is(cue?.kind === 'pointing'),
    otherBeforeCue: is(!bare && cue.kind !== 'pointing' && left !== 'safe'),
    title: is(title),
    edition: is(said?.beside),
    ourBook: is(ourBook(before, after, catalog)),
    lineStart: is(startsLine),
    safeWord: is(bare && !startsLine && left === 'safe'),
    ownWord: is(word && topic.names(word, numbers)),
    labelled: is(bare && left === 'label'),
    otherWord: is(bare && left === 'other' && !/\d[ \t]*$/.test(before)),
    nameBefore: is(bare && word && /^\p{Lu}/u.test(word) && !/(?:^|[.!?:\n]\s+)\S+\s+$/.test(before)),
    digitBefore: is(bare && /\d[ \t]+$/.test(before)),
    bracketed: is(/[([]\s*$/.test(before) && /^\s*[)\]]/.test(after)),
    endsThere: is(endsThere(after)),
    saysSomething: is(SAYS.test(after)),
    otherWordBehind: is(behind && /^\p{Ll}/u.test(behind) && !endsThere(after) && !SAYS.test(after) && !title),
    nameBehind: is(behind && /^\p{Lu}/u.test(behind) && !title && !topic.names(behind, numbers)),
    goesOn: is(/^[-/#_][\p{L}\p{N}]/u.test(after)),
    trap: is(cue?.kind !== 'level' && labelOf({ before, after: text.slice(first.end, first.end + 160) })),
    otherBookBefore: is(other?.where === 'before' && !annex),
    otherBookBehind: is(other?.where === 'behind'),
    ofSomething: is(isOfSomething(after, catalog)),
    calledElsewhere: is(other && cue && cue.kind !== 'pointing' && !annex),
    pointedShort: is(cue?.kind === 'pointing' && depth === 2 && printed && endsThere(after)),
    calledLong: is(cue && depth > 2),
    calledShort: is(named && depth === 2 && printed),
    changed: is(CHANGED.test(before)),
    ownHeading: is(cue?.kind !== 'level' && !said && numbers.some(n => document.own.has(n))),
    trapNear: is(speaksOfOther(sentence)),
    unitBehind: is(measures(after)),
    bearsLevel: is(cue && bearsLevel(own, first.number, cue)),
    shortDate: is(isShortDate(first.number)),
    near,
    nearSentence: topic.nearness(sentence, numbers),
    nearest: is(near > 0.6),
    passageShare: share,
    documentShare: document.share,
    strange: is(share === 0),
  };
}

/** Only what can follow a citation stands behind it. */
function endsThere(after: string): boolean {
  return /^\s*(?:$|[.,;:!?)\]"”’|*]|(?:and|or|to|for|in|is|are|was|on|before|after|when|if|first|again|where|with|as|which|that|also|instead|too|but|because|since|so|by|of|from|at|not|than|then|here|there|now|still|only|about|under|over|until|while|who|has|have|had|will|would|can|cannot|may)\b)/i.test(
    after,
  );
}

const SAYS =
  /^\s*(?:\([^)]{0,60}\)\s*)?,?\s*(?:also|only|still|now|then|already|expressly|clearly|plainly|merely|simply|never|no longer|does not|did not|do not)?\s*(?:appl(?:y|ies|ied)|asks?|asked|requires?|required|says?|said|must|shall|should|demands?|demanded|wants?|allows?|allowed|forbids?|permits?|permitted|reads?|covers?|covered|speaks?|deals?|tells?|gives?|leaves?|sets?|is (?:met|kept|fulfilled|clear|not|violated|satisfied|breached|silent|observed)|are (?:met|kept|fulfilled|clear|not|satisfied|observed)|was (?:met|kept|fulfilled|not|violated|satisfied|breached)|were (?:met|kept|not)|has been|have been|needs?|means?|names?|calls?|limits?|prescribes?|states?|stated|holds?|concerns?|replaces?|replaced|disappeared|became|becomes)(?![\p{L}])/iu;

/** The number is said to be an old one or a new one, so it is one of a thing that has editions. */
const CHANGED =
  /(?<![\p{L}])(?:old|older|former|formerly|previous|previously|ex|now|new|newer|present|current|today['’]s|renumbered|became|becomes|become|instead of|replaced by|replaces|→|->|=>)\s+(?:the\s+)?(?:\p{L}+\s+)?$/iu;

function sentenceAround(text: string, { start, end }: { start: number; end: number }): string {
  const from = text
    .slice(Math.max(0, start - 300), start)
    .replace(/^.*(?:[.!?]["”)]?\s+(?=["“(]?\p{Lu})|[\r\n])/su, '');
  const to = /^.*?(?:[.!?](?=\s)|[\r\n]|$)/su.exec(text.slice(end, end + 300))![0];
  return `${from} ${to}`;
}
