import { type Books, type Candidate, isKnown, mayBeMeant } from './candidates.ts';
import { numbersBetween, prints } from './cited-book.ts';
import { printedNumbers } from './printed-numbers.ts';
import { segments } from './spots.ts';
import { isShortDate } from './traps.ts';

/** What the numbers themselves say: whether an edition prints them, how long they are, whether they are a list or a range. */
export function numberEvidence(books: Books, { group, cue }: Candidate) {
  const { own } = books;
  const first = group.members[0]!;
  const numbers = group.members.map(m => m.number);
  const depth = first.short ? 3 : segments(first.number);
  const printed = prints(own, first.number);
  const known = isKnown(books, first.number);
  const { hasCode, most, plainItems } = printedNumbers(own);
  const ownForm = hasCode(first.number);
  const plain = plainItems && /^\p{N}+$/u.test(first.number);
  return {
    // Where items have numbers of two segments, one that is called an item says as much as three do elsewhere.
    printed3: printed && (depth === 3 || (depth === 2 && cue !== undefined && most === 2)),
    printedLeaf2: printed && depth === 2 && most === 2,
    printed4: printed && depth > 3,
    lettered: printed && /\p{L}/u.test(first.number),
    ownForm,
    ownPrinted2: ownForm && printed && depth === 2,
    calledPlain: plain && printed && cue !== undefined,
    plainList: plain && numbers.length > 1 && numbers.every(n => prints(own, n)),
    short: first.short === true,
    wholeList: numbers.length > 1 && numbers.every(n => isKnown(books, n)),
    range: first.through !== undefined && numbersBetween(own, first.number, first.through.number) !== undefined,
    printedElsewhere: !printed && known,
    sibling: !known && mayBeMeant(books, first.number),
    shortDate: isShortDate(first.number),
  };
}
