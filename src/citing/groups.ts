import { type CitedBook, childNumber, prints } from './cited-book.ts';
import type { Cue, CueReader } from './cues.ts';
import { memberSpotAt, namedSpotAt, type Spot, segments, shortSpotAt, spotAt } from './spots.ts';
import { measures } from './traps.ts';
import { endsThere, saysSomething } from './words-behind.ts';

/** A member of a list of numbers; a range is one member. */
export interface Member extends Spot {
  /** The last number of a range, and where it stands. */
  readonly through?: Spot;
  /** Written short, so that the digits that stand here are not the whole number: the 2 of "items 2 and 5 of 4.1". */
  readonly short?: true;
}

/** Numbers that are said together, and so share their cue, their edition and what stands around them. */
export interface Group {
  readonly members: readonly Member[];
  readonly start: number;
  readonly end: number;
}

const LIST = /^\s*(?:,\s*(?:and\/or|and|or|plus)?|;|and\/or\b|and\b|or\b|as well as\b|plus\b|nor\b|&|\/)\s*/i;
const RANGE = /^\s*(?:to\b|through\b|thru\b|until\b|up to(?: and including)?\b|\.{2,3}|…|-)\s*/i;
const AHEAD = 80;

/** Takes in the further members of the list that a number begins, and the children that it names. */
export function groupFrom(book: CitedBook, text: string, first: Spot, cue: Cue | undefined, cues: CueReader): Group {
  const children = childrenBehind(book, text, first, cues);
  if (children) return children;
  const members: Member[] = [first];
  let end = first.end;
  for (;;) {
    const rest = text.slice(end, end + AHEAD);
    const list = LIST.exec(rest);
    const link = list ?? RANGE.exec(rest);
    if (!link || link[0] === '') break;
    const leads = cues.leads(rest.slice(link[0].length));
    const at = end + link[0].length + leads;
    const previous = members.at(-1)!;
    const member = memberAt(book, text, at, previous, !list && link[0] === '-', cue);
    if (!member || (!list && previous.through) || isCounted(text, member, cue)) break;
    if (list && leads > 0 && isCalledAnew(text, member, cue, cues.before(text.slice(end, at)))) break;
    if (list) members.push(member);
    else members[members.length - 1] = { ...previous, through: member };
    end = member.end;
  }
  return { members, start: first.start, end };
}

/**
 * "Part 4 and items 3 and 4 of 5.1", "our item 3.2 and section 3.3 of the Act": another word stands for another citation,
 * and so does the same one where something is said of the second number alone.
 */
function isCalledAnew(text: string, { end }: Member, cue: Cue | undefined, own: Cue | undefined): boolean {
  if (own === undefined || own.kind === 'pointing') return false;
  const singular = (word: string) => word.replace(/s?\.?$/, '');
  if (cue === undefined || singular(cue.word) !== singular(own.word)) return true;
  return /^\s*,?\s*(?:of|in|from|under|to)\s/i.test(text.slice(end, end + 12));
}

/** "Part 3 and 4 weeks later": a bare numeral behind one part counts what is named behind it. */
function isCounted(text: string, { number, end }: Member, cue: Cue | undefined): boolean {
  if (!/^\p{N}+$/u.test(number) || cue === undefined || /s\.?$/.test(cue.word)) return false;
  const after = text.slice(end, end + AHEAD);
  return measures(after) || (/^\s+\p{Ll}+s(?!\p{L})/u.test(after) && !endsThere(after) && !saysSomething(after));
}

/** A further member: known to the edition, or at least as long as the first and called by the same word. */
function memberAt(
  book: CitedBook,
  text: string,
  at: number,
  previous: Member,
  hyphen: boolean,
  cue: Cue | undefined,
): Member | undefined {
  const short = shortSpotAt(book, text, at, previous.number);
  if (short) return { ...short, short: true };
  const spot = memberSpotAt(book, text, at);
  if (!spot) return undefined;
  // "SB 2.2.1 and 2.2.2": the code is said once for all.
  const code = /^\p{L}+[ .-]?(?=\p{N})/u.exec(previous.number)?.[0];
  if (code && /^[\p{N}.]+$/u.test(spot.number) && !prints(book, spot.number) && prints(book, code + spot.number))
    return { ...spot, number: code + spot.number, short: true };
  if (hyphen && segments(spot.number) === 1 && segments(previous.number) >= 2) {
    // "3.2.1-4" means 3.2.1 to 3.2.4.
    const whole = previous.number.replace(/[^.]+$/, spot.number);
    return prints(book, whole) ? { ...spot, number: whole } : undefined;
  }
  if (segments(spot.number) < Math.min(2, segments(previous.number))) return undefined;
  if (prints(book, spot.number))
    return segments(spot.number) === 2 && !cue && segments(previous.number) > 2 ? undefined : spot;
  return cue && cue.kind !== 'pointing' && segments(spot.number) >= segments(previous.number) ? spot : undefined;
}

/** Counters of one list: "2", "2 and 5", "2 to 4, 6"; where each stands. */
function countersAt(
  text: string,
  start: number,
): { readonly counters: readonly Member[]; readonly end: number } | undefined {
  const counter = /\(?([1-9]\d?|[a-z])\)?(?![\p{L}\p{N}])(?!\.\d)/uy;
  const read = (at: number): Spot | undefined => {
    counter.lastIndex = at;
    const found = counter.exec(text);
    if (!found) return undefined;
    const begin = at + found[0].indexOf(found[1]!);
    return { number: found[1]!, start: begin, end: begin + found[1]!.length };
  };
  const first = read(start);
  if (!first) return undefined;
  const counters: Member[] = [first];
  let end = counter.lastIndex;
  for (;;) {
    const rest = text.slice(end, end + 40);
    const list = LIST.exec(rest);
    const link = list ?? RANGE.exec(rest);
    const next = link && link[0] !== '' ? read(end + link[0].length) : undefined;
    if (!next) return { counters, end };
    if (list) counters.push(next);
    else counters[counters.length - 1] = { ...counters.at(-1)!, through: next };
    end = counter.lastIndex;
  }
}

/** "items 2 and 5 of 4.1": counters before the number whose children they count. */
export function groupOfCounters(book: CitedBook, text: string, start: number, cues: CueReader): Group | undefined {
  const found = countersAt(text, start);
  const link = found && /^\s*(?:of|in|under|from|within)\s+(?:the\s+)?/i.exec(text.slice(found.end, found.end + 30));
  if (!found || !link) return undefined;
  const at = found.end + link[0].length;
  const lead = cues.leads(text.slice(at, at + AHEAD));
  const cue = cues.before(text.slice(at, at + lead));
  // "article 4 of Book II"
  const parent = spotAt(book, text, at + lead) ?? (cue && namedSpotAt(book, text, at + lead, cue));
  const members = parent && childrenOf(book, parent.number, found.counters);
  return members ? { members, start, end: parent.end } : undefined;
}

/** "4.1, items 2 and 5", "II.4 (letters b to d)": counters behind the number whose children they count. */
function childrenBehind(book: CitedBook, text: string, parent: Spot, cues: CueReader): Group | undefined {
  const rest = text.slice(parent.end, parent.end + AHEAD);
  const gap = /^\s*,?\s*\(?\s*/.exec(rest)![0].length;
  const called = gap > 0 ? cues.calls(rest.slice(gap)) : 0;
  const found = called > 0 ? countersAt(text, parent.end + gap + called) : undefined;
  const members = found && childrenOf(book, parent.number, found.counters);
  return members ? { members, start: parent.start, end: found.end } : undefined;
}

function childrenOf(book: CitedBook, parent: string, counters: readonly Member[]): readonly Member[] | undefined {
  const members = counters.map((counter): Member | undefined => {
    const number = childNumber(book, parent, counter.number);
    const last = counter.through && childNumber(book, parent, counter.through.number);
    if (number === undefined || (counter.through && last === undefined)) return undefined;
    const { start, end, through } = counter;
    return { number, start, end, short: true, ...(through ? { through: { ...through, number: last! } } : {}) };
  });
  return members.every(m => m !== undefined) ? members : undefined;
}
