import type { Quantity } from '../quantities/quantities.ts';
import type { Reading } from '../reading/reading.ts';
import { remembered } from '../reading/remembered.ts';
import type { Stretch } from '../reading/sentences.ts';

const REACH = 10;

/** The words of the phrase that holds a value: up to the next value, joint or mark on both sides. */
export function aboutValue(reading: Reading, { spanFirst, spanNext }: Quantity): Set<string> {
  const owners = ownersIn(reading);
  const isOther = (at: number) => (owners.get(at) ?? spanFirst) !== spanFirst;
  return about(reading, { first: spanFirst, next: spanNext }, isOther);
}

/** For each token of a value the first one. */
const ownersIn = remembered(({ quantities }: Reading) => {
  const owners = new Map<number, number>();
  for (const q of quantities) for (let at = q.spanFirst; at < q.spanNext; at++) owners.set(at, q.spanFirst);
  return owners;
});

/** What a text talks about. */
export const wordsIn = remembered(({ meanings }: Reading): ReadonlySet<string> => new Set(meanings));

/** The words of the phrase that holds a stretch of a text, up to whatever else ends it. */
export function about({ tokens, meanings }: Reading, stretch: Stretch, isOther: (at: number) => boolean): Set<string> {
  const ends = (at: number) =>
    tokens[at] === undefined || /^(?:,|;|\.|:|and|but|or)$/.test(tokens[at]!.low) || isOther(at);
  let { first, next } = stretch;
  while (!ends(first - 1) && stretch.first - first < REACH) first--;
  while (!ends(next) && next - stretch.next < REACH) next++;
  return new Set(meanings.slice(first, next).filter(Boolean));
}

/** Without the words that both have: "pipe" tells no flow pipe from a return pipe. */
export function apart(a: ReadonlySet<string>, b: ReadonlySet<string>): [Set<string>, Set<string>] {
  return [new Set([...a].filter(w => !b.has(w))), new Set([...b].filter(w => !a.has(w)))];
}

export const common = (a: ReadonlySet<string>, b: ReadonlySet<string>) => [...a].filter(w => b.has(w)).length;

/**
 * Whether something that an old text says of one thing is said in the heirs of another thing that the old text speaks of as
 * well: beside that one's words, and beside none of its own, though its own words are there.
 *
 *   old: doors 900 mm, windows 600 mm        new: doors 600 mm, windows 900 mm
 *
 * Where its own words are nowhere, the thing may be named otherwise now, and nothing is proved.
 *
 * @param now the words beside each place where an heir says it
 */
export function standsBesideAnother(
  own: ReadonlySet<string>,
  rivals: readonly ReadonlySet<string>[],
  now: readonly ReadonlySet<string>[],
  stated: ReadonlySet<string>,
): boolean {
  return (
    now.length > 0 &&
    now.every(words =>
      rivals.some(rival => {
        const [mine, its] = apart(own, rival);
        return common(mine, stated) > 0 && common(mine, words) === 0 && common(its, words) > 0;
      }),
    )
  );
}
