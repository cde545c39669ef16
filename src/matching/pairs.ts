/** Pairs of an old and a new row that are worth looking at: sorted by old row, then by new row. */
export interface Pairs {
  readonly size: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** The pairs of old row i are those from starts[i] up to starts[i + 1]. */
  readonly starts: Int32Array;
  /** The pairs of each new row, as positions in this list, in the order of the old rows. */
  readonly ofNew: readonly Int32Array[];
  /** The position of a pair; -1 where it is none of them. */
  find(from: number, to: number): number;
}

export function pairsOf(candidates: readonly ReadonlySet<number>[], news: number): Pairs {
  const size = candidates.reduce((sum, set) => sum + set.size, 0);
  const from = new Int32Array(size);
  const to = new Int32Array(size);
  const starts = new Int32Array(candidates.length + 1);
  const counts = new Int32Array(news);
  let at = 0;
  candidates.forEach((set, i) => {
    starts[i] = at;
    for (const j of Int32Array.from(set).sort()) {
      from[at] = i;
      to[at++] = j;
      counts[j]!++;
    }
  });
  starts[candidates.length] = at;
  const ofNew = Array.from(counts, count => new Int32Array(count));
  counts.fill(0);
  for (let p = 0; p < size; p++) ofNew[to[p]!]![counts[to[p]!]!++] = p;
  return {
    size,
    from,
    to,
    starts,
    ofNew,
    find: (i, j) => {
      let low = starts[i]!;
      let high = starts[i + 1]! - 1;
      while (low <= high) {
        const middle = (low + high) >> 1;
        const here = to[middle]!;
        if (here === j) return middle;
        if (here < j) low = middle + 1;
        else high = middle - 1;
      }
      return -1;
    },
  };
}
