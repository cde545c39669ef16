import { tokens } from './text-tokens.ts';
import type { TextChange } from './word-diff.ts';

/** Fewer words in a row than this move in any change and say nothing. */
const LEAST = 3;
/** Stretches are compared with so many others at most; a text rewritten in a thousand places has no moved phrase to show. */
const MOST = 40;

/**
 * Marks runs of words that are removed in one place and added in another, but for capitals and punctuation; a stretch that
 * holds more is cut, so that what moved stands alone.
 *
 *   old: Before the pour, the clerk looks.     "the clerk looks" stays; "Before the pour" moved. Shown as removed and added
 *   new: The clerk looks before the pour.      it would seem that a condition was dropped.
 */
export function markMoved(changes: readonly TextChange[]): TextChange[] {
  let marked = [...changes];
  for (let looked = 0; looked < MOST; looked++) {
    const found = longestMoved(marked);
    if (!found) break;
    const parts = new Map([found.from, found.to].map(run => [run.at, cut(marked[run.at]!, run)]));
    marked = marked.flatMap((change, at) => parts.get(at) ?? [change]);
  }
  return marked;
}

/** Tokens `first` to before `next` of the change at `at`. */
interface Run {
  readonly at: number;
  readonly first: number;
  readonly next: number;
}

function longestMoved(changes: readonly TextChange[]): { from: Run; to: Run } | undefined {
  const open = (kind: string) =>
    changes.flatMap((c, at) => (c.kind === kind && !c.moved ? [{ at, pieces: pieces(c.text) }] : [])).slice(0, MOST);
  let best: { from: Run; to: Run; length: number } | undefined;
  for (const removed of open('removed')) {
    for (const added of open('added')) {
      // Side by side they are one change: nothing stands between that could have been passed.
      if (Math.abs(removed.at - added.at) <= 1) continue;
      const run = commonRun(removed.pieces, added.pieces);
      if (run.length < LEAST || run.length <= (best?.length ?? 0)) continue;
      const stretch = (at: number, list: readonly Piece[], first: number): Run => ({
        at,
        first: list[first]!.place,
        next: list[first + run.length - 1]!.place + 1,
      });
      best = {
        from: stretch(removed.at, removed.pieces, run.i),
        to: stretch(added.at, added.pieces, run.j),
        length: run.length,
      };
    }
  }
  return best;
}

interface Piece {
  readonly word: string;
  readonly place: number;
}

const pieces = (text: string): Piece[] =>
  tokens(text).flatMap((token, place) => (/[\p{L}\p{N}]/u.test(token) ? [{ word: token.toLowerCase(), place }] : []));

/** The longest run of equal words of two lists: where it begins in each, and how long it is. */
function commonRun(a: readonly Piece[], b: readonly Piece[]): { i: number; j: number; length: number } {
  let best = { i: 0, j: 0, length: 0 };
  let before = new Uint16Array(b.length + 1);
  for (let i = 0; i < a.length; i++) {
    const now = new Uint16Array(b.length + 1);
    for (let j = 0; j < b.length; j++) {
      if (a[i]!.word !== b[j]!.word) continue;
      const length = before[j]! + 1;
      now[j + 1] = length;
      if (length > best.length) best = { i: i - length + 1, j: j - length + 1, length };
    }
    before = now;
  }
  return best;
}

function cut({ kind, text }: TextChange, { first, next }: Run): TextChange[] {
  const all = tokens(text);
  const [head, run, tail] = [all.slice(0, first), all.slice(first, next), all.slice(next)].map(t => t.join(''));
  const parts: TextChange[] = [
    { kind, text: head! },
    { kind, text: run!, moved: true },
    { kind, text: tail! },
  ];
  return parts.filter(p => p.text !== '');
}
