/**
 * The one-to-one choice of pairs with the greatest sum of values, by shortest augmenting paths over sparse pairs
 * (Jonker and Volgenant, 1987). A row may stay alone at value zero, so pairs of negative value are never chosen. Greedy
 * choice takes the best pair first and then pays for it: it is 1 to 9 % worse on real tables.
 *
 * @param starts the pairs of old row i are those from starts[i] up to starts[i + 1]
 * @returns for each old row the pair chosen, or -1
 */
export function assignPairs(
  starts: Int32Array,
  to: Int32Array,
  values: Float32Array | Float64Array,
  news: number,
): Int32Array {
  const olds = starts.length - 1;
  const chosen = new Int32Array(olds).fill(-1);
  // Each old row also has a place of its own, at cost zero, behind the new ones.
  const taken = new Int32Array(news + olds).fill(-1);
  const price = new Float64Array(news + olds);
  const distance = new Float64Array(news + olds);
  const via = new Int32Array(news + olds);
  const done = new Uint8Array(news + olds);
  const ALONE = -2;
  for (let start = 0; start < olds; start++) {
    const touched: number[] = [];
    const heap = new Heap();
    const relax = (i: number, base: number, own: number) => {
      const reach = (j: number, cost: number, pair: number) => {
        if (done[j]) return;
        const length = base + cost - price[j]! - own;
        if (via[j] === 0 || length < distance[j]!) {
          if (via[j] === 0) touched.push(j);
          distance[j] = length;
          via[j] = pair;
          heap.push(length, j);
        }
      };
      for (let p = starts[i]!; p < starts[i + 1]!; p++) if (values[p]! > 0) reach(to[p]!, -values[p]!, p + 1);
      reach(news + i, 0, ALONE - i);
    };
    const ownerOf = (j: number) => (via[j]! > 0 ? ownerOfPair(starts, via[j]! - 1) : -(via[j]! - ALONE));
    relax(start, 0, 0);
    let end = -1;
    for (;;) {
      const j = heap.pop(done);
      done[j] = 1;
      if (taken[j]! < 0) {
        end = j;
        break;
      }
      const i = taken[j]!;
      const c = chosen[i]! >= 0 ? -values[chosen[i]!]! : 0;
      // The old row's own price is what makes the pair it holds now cost nothing more.
      relax(i, distance[j]!, c - price[j]!);
    }
    const length = distance[end]!;
    for (const j of touched) if (done[j] && j !== end) price[j]! += distance[j]! - length;
    for (let j = end; ; ) {
      const i = ownerOf(j);
      const held = chosen[i]! >= 0 ? to[chosen[i]!]! : news + i;
      const was = i === start ? -1 : held;
      chosen[i] = via[j]! > 0 ? via[j]! - 1 : -1;
      taken[j] = i;
      if (i === start) break;
      j = was;
    }
    for (const j of touched) {
      done[j] = 0;
      via[j] = 0;
    }
  }
  return chosen;
}

function ownerOfPair(starts: Int32Array, pair: number): number {
  let low = 0;
  let high = starts.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= pair) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** A heap of columns by distance; entries that were overtaken are skipped when they come up. */
class Heap {
  readonly #keys: number[] = [];
  readonly #items: number[] = [];

  push(key: number, item: number): void {
    let at = this.#keys.length;
    this.#keys.push(key);
    this.#items.push(item);
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (this.#keys[up]! <= key) break;
      this.#keys[at] = this.#keys[up]!;
      this.#items[at] = this.#items[up]!;
      at = up;
    }
    this.#keys[at] = key;
    this.#items[at] = item;
  }

  pop(done: Uint8Array): number {
    for (;;) {
      const item = this.#items[0]!;
      const key = this.#keys.pop()!;
      const last = this.#items.pop()!;
      const size = this.#keys.length;
      if (size > 0) {
        let at = 0;
        for (;;) {
          let child = 2 * at + 1;
          if (child >= size) break;
          if (child + 1 < size && this.#keys[child + 1]! < this.#keys[child]!) child++;
          if (this.#keys[child]! >= key) break;
          this.#keys[at] = this.#keys[child]!;
          this.#items[at] = this.#items[child]!;
          at = child;
        }
        this.#keys[at] = key;
        this.#items[at] = last;
      }
      if (!done[item]) return item;
    }
  }
}
