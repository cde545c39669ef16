/**
 * Whether the word right before a number leaves no doubt that the number is cited by itself: "check 3.2.1", "under
 * 3.2.1", "3.2.1" at the start. A noun may say what is numbered ("ticket 3.2.1"), a name may be a program's, and no list
 * of such words is ever complete; the words that are safe are few.
 */
const SAFE = new Set(
  `a about according accordance add after again against all also an and any applies apply are as ask asks at answer answers
  back be because been before behind below beside besides between beyond both break breach breaches breaks bring brings
  but by call calls can cannot carry case check checked checks cite cited cites clear close closed closes compare complies
  comply consider contradicts could cover covers delete demand demands did do does done drop during each either enforce
  even every except exactly explain explains fail failed fails find first follow followed follows for forget former from
  fulfil fulfils give gives had has have hence how if in include includes including inspect inspected instead into is it
  its just keep keeps know learn let like list lists make makes may mean means meet meets might must name names namely
  near need needs neither new not note nor now obey of old on once only open or other our out over own pass passed passes
  per plus point points quote quoted quotes read reads record recall reference references ref refs refer refers remember
  remembers repeat repeats replace replaced replaces require requires review same satisfied satisfies satisfy say says
  see seen show shows sign signed since so some state states still subject such take taken takes teach teaches than that
  the their them then these they this those though through to too touches toward towards treat under unless until unlike
  up upon use used uses using verify verified versus via violate violates vs was we were what when where whereas whether
  which while who why will with within without worded would yet you your`
    .split(/\s+/)
    .filter(Boolean),
);

export function isSafeBefore(before: string): boolean {
  const word = /([\p{L}][\p{L}'’-]*)\s+$/u.exec(before)?.[1];
  if (word === undefined) return true;
  const lower = word.toLowerCase();
  return SAFE.has(lower) || /(?:ing|ed)$/.test(lower);
}
