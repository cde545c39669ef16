import type { Pairs } from './pairs.ts';
import type { Sides } from './sides.ts';

/**
 * Words that one edition uses where the other used another one (`downpipe` → `leader`), learned from pairs that are
 * believed already. A dictionary would know "begin" and "start", but not what this office renamed.
 */
export interface Lexicon {
  /** Share (by rarity) of the old row's words that the new row has, or has under their new name; and the reverse. */
  readonly old: Float32Array;
  readonly new: Float32Array;
}

const BELIEVED = 0.7;
const LONGEST = 60;

export function lexiconOf({ from, to, words }: Sides, pairs: Pairs, beliefs: Float32Array): Lexicon {
  const together = new Map<number, number>();
  const lost = new Map<number, number>();
  const won = new Map<number, number>();
  const changed: [number[], number[]][] = [];
  const add = (map: Map<number, number>, key: number) => map.set(key, (map.get(key) ?? 0) + 1);
  for (let p = 0; p < pairs.size; p++) {
    if (beliefs[p]! < BELIEVED) continue;
    const a = from.all[pairs.from[p]!]!.ids;
    const b = to.all[pairs.to[p]!]!.ids;
    if (a.length > LONGEST || b.length > LONGEST) continue;
    const gone = without(a, b);
    const come = without(b, a);
    for (const w of gone) add(lost, w);
    for (const w of come) add(won, w);
    changed.push([gone, come]);
  }
  // Words that went or came once were renamed nowhere else; they are most of all pairs of words.
  for (const [gone, come] of changed) {
    const repeated = come.filter(v => won.get(v)! > 1);
    for (const w of gone) if (lost.get(w)! > 1) for (const v of repeated) add(together, w * words.size + v);
  }
  const forth: Map<number, number>[] = new Array(words.size);
  const back: Map<number, number>[] = new Array(words.size);
  for (const [key, count] of together) {
    if (count < 2) continue;
    const w = Math.floor(key / words.size);
    const v = key % words.size;
    const dice = (2 * count) / (lost.get(w)! + won.get(v)!);
    if (dice < 0.3) continue;
    put(forth, w, v, dice);
    put(back, v, w, dice);
  }
  const old = new Float32Array(pairs.size);
  const next = new Float32Array(pairs.size);
  for (let p = 0; p < pairs.size; p++) {
    const a = from.all[pairs.from[p]!]!;
    const b = to.all[pairs.to[p]!]!;
    old[p] = covered(a.ids, b.ids, a.mass, forth, words.rarity);
    next[p] = covered(b.ids, a.ids, b.mass, back, words.rarity);
  }
  return { old, new: next };
}

function put(lists: Map<number, number>[], id: number, other: number, value: number): void {
  lists[id] ??= new Map();
  lists[id].set(other, value);
}

/** For each term, where there are any, the terms that may stand for it, with how well they do. */
export type Translations = readonly (ReadonlyMap<number, number> | undefined)[];

/** The share of a's words, by rarity, that b has too, in full or through a translation. */
export function covered(
  a: Int32Array,
  b: Int32Array,
  mass: number,
  translations: Translations,
  rarity: Float32Array,
): number {
  if (mass === 0) return Number.NaN;
  let found = 0;
  for (let i = 0, j = 0; i < a.length; i++) {
    const id = a[i]!;
    while (j < b.length && b[j]! < id) j++;
    if (b[j] === id) found += rarity[id]!;
    else {
      const known = translations[id];
      if (!known) continue;
      let best = 0;
      for (const [other, value] of known) if (value > best && b.includes(other)) best = value;
      found += rarity[id]! * best;
    }
  }
  return found / mass;
}

function without(a: Int32Array, b: Int32Array): number[] {
  const rest: number[] = [];
  for (let i = 0, j = 0; i < a.length; i++) {
    while (j < b.length && b[j]! < a[i]!) j++;
    if (b[j] !== a[i]) rest.push(a[i]!);
  }
  return rest;
}
