import { markMoved } from './moved-words.ts';
import { tokens } from './text-tokens.ts';

/** A stretch of two texts read side by side. `same` and `removed` make the old text, `same` and `added` the new one. */
export interface TextChange {
  readonly kind: 'same' | 'added' | 'removed';
  readonly text: string;
  /** The same words stand elsewhere in the other text: removed here and added there, so nothing came or went. */
  readonly moved?: true;
}

/** Above this many pairs of differing words the middle is shown as removed and added whole. */
const MOST_PAIRS = 4_000_000;

/**
 * What changed between two texts, word by word: numbers stay whole (2.5, 1:80), punctuation stands alone. Within a
 * change, what is removed comes before what is added.
 *
 *   old: at least 100 mm deep        A lone space or comma that happens to be equal between two changed words is
 *   new: not less than 150 mm deep   drawn into the change: five islands of one letter each are correct and unreadable.
 */
export function diffWords(from: string, to: string): TextChange[] {
  const [a, b] = [tokens(from), tokens(to)];
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < a.length - start && end < b.length - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  const changes: TextChange[] = a.slice(0, start).map(text => ({ kind: 'same', text }));
  changes.push(...diffMiddle(a.slice(start, a.length - end), b.slice(start, b.length - end)));
  changes.push(...a.slice(a.length - end).map((text): TextChange => ({ kind: 'same', text })));
  return markMoved(joinStretches(changes));
}

/** Longest common subsequence by the plain table; equal beginnings and ends are already taken off. */
function diffMiddle(a: readonly string[], b: readonly string[]): TextChange[] {
  const removed = a.map((text): TextChange => ({ kind: 'removed', text }));
  const added = b.map((text): TextChange => ({ kind: 'added', text }));
  if (a.length * b.length > MOST_PAIRS || a.length === 0 || b.length === 0) return [...removed, ...added];
  const width = b.length + 1;
  const longest = new Uint32Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      const here = i * width + j;
      longest[here] =
        a[i] === b[j] ? longest[here + width + 1]! + 1 : Math.max(longest[here + width]!, longest[here + 1]!);
    }
  }
  const changes: TextChange[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      changes.push({ kind: 'same', text: a[i]! });
      i++;
      j++;
    } else if (j >= b.length || (i < a.length && longest[(i + 1) * width + j]! >= longest[i * width + j + 1]!)) {
      changes.push(removed[i++]!);
    } else changes.push(added[j++]!);
  }
  return changes;
}

/** Joins neighbours of one kind; an equal stretch without a letter or digit between two changes joins them as well. */
function joinStretches(changes: readonly TextChange[]): TextChange[] {
  const joined: TextChange[] = [];
  let [removed, added, island] = ['', '', ''];
  const flush = () => {
    if (removed !== '') joined.push({ kind: 'removed', text: removed });
    if (added !== '') joined.push({ kind: 'added', text: added });
    [removed, added] = ['', ''];
  };
  for (const { kind, text } of changes) {
    if (kind === 'same') {
      island += text;
      continue;
    }
    const changing = removed !== '' || added !== '';
    if (island !== '' && (!changing || /[\p{L}\p{N}]/u.test(island))) {
      flush();
      joined.push({ kind: 'same', text: island });
    } else if (island !== '') {
      removed += island;
      added += island;
    }
    island = '';
    if (kind === 'removed') removed += text;
    else added += text;
  }
  flush();
  if (island !== '') joined.push({ kind: 'same', text: island });
  return joined;
}
