import type { Books, Candidate } from './candidates.ts';
import { prints } from './cited-book.ts';
import { standsBefore } from './left-word.ts';
import { isOfSomething, isPossessed, otherBook, ourBook, titleBefore } from './other-books.ts';
import { printedNumbers } from './printed-numbers.ts';
import { bearsLevel, segments } from './spots.ts';
import { endsThere } from './words-behind.ts';

/** A column for the numbers of an edition that is not named, or of one that nobody has here: "Old no.", "2024". */
const OF_EDITIONS =
  /(?<![\p{L}])(?:old|new|former|previous|current|present|edition)(?![\p{L}])|^\s*(?:19|20)\d\d\s*$/iu;

/** What calls the number something: an item, a level's name, a title, an edition, this book or another. */
export function callEvidence({ own, cues }: Books, { group, passage, before, after, cue, title, said }: Candidate) {
  const catalog = own.edition.settings.title;
  const first = group.members[0]!;
  const short = !first.short && segments(first.number) === 2 && prints(own, first.number);
  const counted = /^(?:no|nr|number|numbered|nos|nrs|numbers)\.?$/.test(cue?.word ?? '');
  const named = cue?.kind === 'common' && !counted && cue.word !== '#';
  const item = named && /^(?:items?|req)/.test(cue.word);
  // An annex is a part of a catalog that has one, though it sounds like another book.
  const annex = /^(?:annex|append)/.test(cue?.word ?? '');
  const called = cue !== undefined && cue.kind !== 'pointing';
  const ahead = called ? before.slice(0, before.toLowerCase().lastIndexOf(cue.word)) : before;
  // What calls the number is no book, though it may sound like one where a level is called Article or Letter.
  const found = otherBook(ahead, after, catalog);
  // "HT-501.3, HT-503": the first is no code of another book.
  const other = found && printedNumbers(own).hasForm(found.name) ? undefined : found;
  // A cell that begins with the number is what the head of its column says: "Clause", "Room".
  const head = before.trim() === '' ? passage.columnHead : undefined;
  const headCue = head === undefined ? undefined : cues.before(`${head} `);
  const headCalls =
    head !== undefined && ((headCue && headCue.kind !== 'pointing') || said !== undefined || OF_EDITIONS.test(head));
  return {
    headCalls,
    headOther: head !== undefined && !headCalls,
    level: cue?.kind === 'level',
    bearsLevel: cue !== undefined && bearsLevel(own, first.number, cue),
    item,
    section: named && !item,
    number: counted,
    pointing: cue?.kind === 'pointing',
    pointedShort: cue?.kind === 'pointing' && short && endsThere(after),
    calledShort: named && short,
    calledLong: cue !== undefined && (first.short === true || segments(first.number) > 2),
    otherBeforeCue: called && standsBefore(own, first.number, ahead) !== 'safe',
    title: title !== undefined,
    edition: said?.beside === true,
    ourBook: ourBook(before, after, catalog),
    otherBookBefore: other?.where === 'before' && !annex,
    otherBookBehind: other?.where === 'behind',
    calledElsewhere: other !== undefined && called && !annex,
    ofSomething: isOfSomething(after, catalog),
    possessed: isPossessed(before),
    bookBefore: titleBefore(before, catalog),
  };
}
