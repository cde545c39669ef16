import type { CitedBook } from './cited-book.ts';

/**
 * What the word right before a number says of it: "check 3.2.1", "under 3.2.1" and "3.2.1" at the start of a line leave
 * it a citation, and so does a word of the item's own title ("slab 3.1.3.1"). Any other noun says what is numbered: a
 * ticket, a berth, a spare part. No list of such nouns is ever complete; the words that are safe are few.
 */
const SAFE = new Set(
  `a about according accordance add after again against all alone also an and any applies apply are as ask asks at answer answers
  back be because been before behind below beside besides between beyond both break breach breaches breaks bring brings
  but by call calls can cannot carry case changed check checked checks cite cited cites clear close closed closes compare complies
  comply concern concerns consider contradicts could cover covers delete demand demands did do does done drop during each either enforce
  even every except exactly explain explains fail failed fails find finds first follow followed follows for forget former forbids allows from
  fulfil fulfils give gives had has have hence holds hold how if in include includes including inspect inspected instead into is it
  its just keep keeps know known learn leave leaves let like list lists make makes may mean meant means meet meets might mind must name names namely
  near need needs neither new not note now obey of old on once only open or other our out over own pass passed passes
  per plus prefers prefer put quote quoted quotes read reads recall reference references ref refs refer refers remains remember
  remembers repeat repeats replace replaced replaces require requires review same satisfied satisfies satisfy say says
  see seen show shows sign signed since so some state stated states stay stays still struck subject suits such take taken takes teach taught teaches tell tells than that
  the their them then these they this those though through thus to told too touches toward towards treat twice under unless until unlike
  up upon use used uses using verify verified versus via violate violates vs want wants was we were what when where whereas whether
  which while who why will with within without word worded would write writes wrote written yet you your yes no ok okay today tomorrow
  book’s catalog’s inspection verification compliance wording title`
    .split(/\s+/)
    .filter(Boolean),
);

/** The word right before a number that may say what is numbered, in lower case: a crate, a berth; undefined where none does. */
export function labelBefore(before: string): string | undefined {
  const word = /([\p{L}][\p{L}'’-]*):?[ \t]+$/u.exec(before.slice(-40))?.[1]?.toLowerCase();
  return word === undefined || SAFE.has(word) ? undefined : word;
}

/** A line shorter than this was broken on purpose, so that what ends it says nothing of what begins the next. */
const FULL_LINE = 45;

/** What stands before a number: it leaves it a citation, it gives it a label ("Spare jet: 3.2.1"), or numbers something else. */
export function standsBefore(book: CitedBook, number: string, before: string): 'safe' | 'label' | 'other' {
  const broken = /(?:^|[\r\n])([^\r\n]*)[\r\n]+[ \t]*$/.exec(before)?.[1];
  if (broken !== undefined && broken.length < FULL_LINE) return 'safe';
  const [, word, colon] = /([\p{L}][\p{L}'’-]*)(:?)\s+$/u.exec(before) ?? [];
  if (word === undefined) return /\d[ \t]$/.test(before) ? 'other' : 'safe';
  const lower = word.toLowerCase();
  // "that's 3.2.1"; "A 3.2.1 B 3.2.2", the answers of a quiz.
  if (
    /^(?:that|it|what|there|here|who|which)['’]s$|^\p{Lu}$/u.test(word) ||
    /^(?:that|it|what|there)['’]s$/.test(lower)
  )
    return 'safe';
  if (SAFE.has(lower) || /(?:ing|ed|ly)$/.test(lower) || isOfItem(book, number, lower)) return 'safe';
  return colon ? 'label' : 'other';
}

/** Whether a word stands in the title of the item, or of one above it. */
function isOfItem({ places }: CitedBook, number: string, word: string): boolean {
  const stem = word.replace(/(?:['’]s|es|s)$/, '');
  if (stem.length < 3) return false;
  return places.withNumber(number).some(item =>
    [item, ...places.ancestors(item.id)].some(i =>
      i.title
        .toLowerCase()
        .split(/[^\p{L}]+/u)
        .some(w => w.startsWith(stem)),
    ),
  );
}
