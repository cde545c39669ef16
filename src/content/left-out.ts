import type { Evidence } from '../model/duty-evidence.ts';
import { isForceWord } from './force.ts';
import type { Reading } from './reading.ts';
import { spelled, writtenOut } from './spelling.ts';

/** What grammar may do without: "The hatch must be locked", "Lock the hatch". */
const SPARED = new Set(
  `a an the of to is are be been being was were do does and it its they them their there he she who by so shall must please need needs required`.split(
    /\s+/,
  ),
);

/**
 * The last look at two texts in which nothing was found that asks more or less: words that one of them only leaves out.
 * "Keep out where it is wet" without "where", "unless" or "same" is no other wording of the same.
 */
export function leftOut(from: Reading, to: Reading): Evidence[] {
  const [gone, come] = [only(from, to), only(to, from)];
  if ((gone.length === 0) === (come.length === 0)) return [];
  const what = gone.length > 0 ? 'words left out' : 'words put in';
  return [{ direction: 'unclear', what, from: gone.join(', '), to: come.join(', ') }];
}

function only(reading: Reading, other: Reading): string[] {
  const left = new Map<string, number>();
  for (const word of written(other)) left.set(word, (left.get(word) ?? 0) + 1);
  return written(reading).filter(word => {
    const n = left.get(word) ?? 0;
    if (n > 0) left.set(word, n - 1);
    return n === 0;
  });
}

function written({ tokens, quantities }: Reading): string[] {
  // "at 1.5 m above" = "1.5 m above", "at 900 mm centres" = "every 900 mm"
  const measured = (at: number) =>
    quantities.some(
      q =>
        (at >= q.spanFirst && at < q.spanNext) ||
        (at === q.spanFirst - 1 && tokens[at]!.low === 'at') ||
        (at === q.spanNext && /^(?:cent(?:re|er)s?|apart|spacing|intervals?)$/.test(tokens[at]!.low)),
    );
  return tokens
    .filter(({ kind, low }, at) => kind === 'word' && !SPARED.has(low) && !isForceWord(low) && !measured(at))
    .flatMap(t => writtenOut(t.low).map(spelled));
}
