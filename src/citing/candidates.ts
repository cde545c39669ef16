import type { Passage } from '../model/document.ts';
import { type Beside, titleAfter, titleBefore } from './beside.ts';
import { type CitedBook, prints } from './cited-book.ts';
import type { Cue, CueReader } from './cues.ts';
import type { SaidEdition } from './edition-said.ts';
import { type Group, groupFrom, groupOfCounters } from './groups.ts';
import type { MeantEditions } from './meant-edition.ts';
import { type Plain, plainDashes } from './plain-dashes.ts';
import { printedNumbers } from './printed-numbers.ts';
import { bearsLevel, brokenSpotAt, hasSiblings, namedSpotAt, runLength, type Spot, segments, spotAt } from './spots.ts';
import { looksOtherwise } from './traps.ts';

/** Editions against which a document is read, and what their settings and names say of how numbers are called. */
export interface Books {
  /** The edition that is meant where the text does not say. */
  readonly own: CitedBook;
  readonly others: readonly CitedBook[];
  readonly cues: CueReader;
  readonly editions: MeantEditions;
}

/** Numbers that may be citations, with all that stands around them. */
export interface Candidate {
  readonly group: Group;
  /** The passage with dashes in one form; offsets of the group count in it. */
  readonly text: string;
  readonly plain: Plain;
  readonly passage: Passage;
  readonly before: string;
  readonly after: string;
  readonly cue: Cue | undefined;
  readonly title: Beside | undefined;
  readonly said: SaidEdition | undefined;
}

/** How much of a passage is looked at to each side of a number, in characters. */
const AROUND = 160;

/**
 * All numbers of a passage that an edition prints or that something calls an item, less those that are plainly a date, a
 * measure, an address …
 *
 * @param standing the edition that was named above the list whose member the passage is
 */
export function candidatesIn(books: Books, passage: Passage, standing?: string): readonly Candidate[] {
  const plain = plainDashes(passage.text);
  const { text } = plain;
  const found: Candidate[] = [];
  const starts = /[\p{L}\p{N}]+/gu;
  for (let next = starts.exec(text); next; next = starts.exec(text)) {
    const numeral = /\p{N}/u.test(next[0]);
    if (!numeral && next[0].length > 6) continue;
    const before = text.slice(Math.max(0, next.index - AROUND), next.index);
    const cue = books.cues.before(before);
    if (!numeral && cue?.kind !== 'level' && !/^[. -]?\p{N}/u.test(text.slice(next.index + next[0].length))) continue;
    const group = groupAt(books, text, next.index, cue);
    if (group && mayBeCited(books, group, cue)) {
      // "On 12.03.2021, 4.1.1 failed": what is joined to a date is looked at for itself.
      const other = isPlainlyOther(text, group, before, cue);
      starts.lastIndex = other ? next.index + runLength(text, next.index) : group.end;
      if (!other) found.push(candidate(books, plain, passage, group, before, cue, standing));
    } else if (numeral) {
      // What was looked at as one number is not looked at again from its middle.
      starts.lastIndex = Math.max(starts.lastIndex, next.index + runLength(text, next.index));
    }
  }
  return found;
}

function candidate(
  books: Books,
  plain: Plain,
  passage: Passage,
  group: Group,
  before: string,
  cue: Cue | undefined,
  standing: string | undefined,
): Candidate {
  const { text } = plain;
  const first = group.members[0]!;
  const alone = group.members.length === 1 && !first.through && !first.short;
  const { titles } = books.own;
  const title = alone ? (titleAfter(text, first.end, titles) ?? titleBefore(text, first.start, titles)) : undefined;
  const after = text.slice(group.end, group.end + AROUND);
  const titleEnd = title && title.at > group.end ? title.at : group.end;
  const said =
    books.editions.of(text, group.start, group.end, titleEnd, passage.columnHead) ??
    (standing === undefined ? undefined : { edition: standing, bracketed: false, beside: false });
  return { group, text, plain, passage, before, after, cue, title, said };
}

function groupAt({ own, others, cues }: Books, text: string, at: number, cue: Cue | undefined): Group | undefined {
  if (cue && cue.kind !== 'pointing') {
    const counted = groupOfCounters(own, text, at, cues);
    if (counted) return counted;
    const named = cue.kind === 'level' && !/\d/.test(text[at]!) ? namedSpotAt(own, text, at, cue) : undefined;
    if (named) return { members: [named], start: named.start, end: named.end };
  }
  const broken = brokenSpotAt(own, text, at);
  if (broken) return { members: [broken], start: broken.start, end: broken.end };
  const spot = spotAt(own, text, at) ?? (/\p{N}/u.test(text[at]!) ? undefined : codedSpotAt(others, text, at));
  return spot && groupFrom(own, text, spot, cue, cues);
}

/** "WC 1.2": a code of another edition, which this one prints no more. */
function codedSpotAt(others: readonly CitedBook[], text: string, at: number): Spot | undefined {
  return others.map(book => spotAt(book, text, at)).find(spot => spot !== undefined);
}

/** One numeral alone needs the name of its level; what no edition prints needs a word that calls it an item, or siblings. */
function mayBeCited(books: Books, group: Group, cue: Cue | undefined): boolean {
  const first = group.members[0]!;
  if (first.short) return true;
  if (/^\p{N}+$/u.test(first.number)) return mayBePlain(books, first.number, cue);
  if (isKnown(books, first.number) || printedNumbers(books.own).hasCode(first.number)) return true;
  return (cue !== undefined && cue.kind !== 'pointing') || segments(first.number) >= 3;
}

/** "Part 3"; where items are numbered through, whatever is printed, and what the items' own word calls one: rule 327. */
function mayBePlain(books: Books, number: string, cue: Cue | undefined): boolean {
  if (cue !== undefined && bearsLevel(books.own, number, cue)) return true;
  if (!printedNumbers(books.own).plainItems || number.length < 2) return false;
  return isKnown(books, number) || cue?.kind === 'level';
}

function isPlainlyOther(text: string, group: Group, before: string, cue: Cue | undefined): boolean {
  const first = group.members[0]!;
  if (first.short) return false;
  const after =
    cue?.kind === 'level' && /^\p{N}+$/u.test(first.number) ? '' : text.slice(first.end, first.end + AROUND);
  return looksOtherwise({ number: first.number, before: cue?.kind === 'level' ? '' : before, after }) !== undefined;
}

/** Whether any edition at hand prints a number. */
export function isKnown({ own, others }: Books, number: string): boolean {
  return prints(own, number) || others.some(book => prints(book, number));
}

/** Whether an edition prints a number, or numbers right beside it: somebody who cites 2.2.1.4 may have miscounted. */
export function mayBeMeant(books: Books, number: string): boolean {
  return isKnown(books, number) || hasSiblings(books.own, number);
}
