import type { Candidate } from './candidates.ts';
import { labelBefore } from './left-word.ts';
import { startsLine } from './words-behind.ts';

/**
 * What the other numbers of a document make believe of one: like stands by like. The sum of their log-odds, over one more
 * than there are, so that a single neighbour says less than many; 0 where there are none.
 */
export interface Neighbourhood {
  readonly sentence: number;
  readonly passage: number;
  readonly document: number;
  /** Those that stand as it does: at the start of a line, or behind the same word. A list is of one kind. */
  readonly list: number;
}

const MOST = 3;

/** @param odds log-odds of each candidate of the document, by its own evidence */
export function neighbourhoods(candidates: readonly Candidate[], odds: readonly number[]): readonly Neighbourhood[] {
  const held = odds.map(o => Math.max(-MOST, Math.min(MOST, o)));
  const sentences = sums(sentencesOf(candidates), held);
  const passages = sums(
    candidates.map(c => c.passage),
    held,
  );
  const documents = sums(
    candidates.map(() => 'all'),
    held,
  );
  const lists = sums(candidates.map(placeOf), held);
  return candidates.map((_, at) => ({
    sentence: sentences(at),
    passage: passages(at),
    document: documents(at),
    list: lists(at),
  }));
}

/** How a number stands, where others may stand likewise; one that stands in running text is like no other. */
function placeOf(candidate: Candidate): unknown {
  const { passage, before, cue } = candidate;
  if (cue) return candidate;
  return startsLine(before) ? `line ${passage.columnHead ?? ''}` : (labelBefore(before) ?? candidate);
}

/** For each candidate the shrunken mean of the others that have the same key. */
function sums(keys: readonly unknown[], odds: readonly number[]): (at: number) => number {
  const rows = new Map<unknown, { sum: number; count: number }>();
  keys.forEach((key, at) => {
    const row = rows.get(key) ?? { sum: 0, count: 0 };
    rows.set(key, { sum: row.sum + odds[at]!, count: row.count + 1 });
  });
  return at => {
    const { sum, count } = rows.get(keys[at])!;
    return (sum - odds[at]!) / count;
  };
}

/** A key for each candidate's sentence: the first candidate that stands in it. */
function sentencesOf(candidates: readonly Candidate[]): readonly Candidate[] {
  const keys: Candidate[] = [];
  candidates.forEach((candidate, at) => {
    const before = candidates[at - 1];
    const between =
      before?.passage === candidate.passage ? candidate.text.slice(before.group.end, candidate.group.start) : undefined;
    keys.push(
      between === undefined || /[.!?]["”)]?\s+(?=["“(]?\p{Lu})|[\r\n]/u.test(between) ? candidate : keys[at - 1]!,
    );
  });
  return keys;
}
