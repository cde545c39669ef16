import type { Pairs } from './pairs.ts';
import type { Side } from './sides.ts';

/** How far two printed numbers agree, from the front: equal, all but the last segment, …, nothing. */
export const AGREEMENTS = 5;

/** A number as its segments, without leading zeros: `03.01.4-B` → 3, 1, 4, b. A bare row of digits goes sign by sign. */
export function segmentsOf(number: string): string[] {
  const segments = number.toLowerCase().match(/\p{N}+|\p{L}+/gu) ?? [];
  if (segments.length === 1 && /^\d{3,}$/.test(segments[0]!)) return [...segments[0]!];
  return segments.map(s => s.replace(/^0+(?=\p{N})/u, ''));
}

export const numberKey = (number: string) => segmentsOf(number).join('.');

/** 0 equal · 1, 2, 3: so many segments at the end differ · 4 nothing in common, or no number on one side. */
export function agreementOf(a: readonly string[], b: readonly string[]): number {
  const longest = Math.max(a.length, b.length);
  if (a.length === 0 || b.length === 0) return AGREEMENTS - 1;
  let same = 0;
  while (same < a.length && same < b.length && a[same] === b[same]) same++;
  return same === 0 ? AGREEMENTS - 1 : Math.min(AGREEMENTS - 2, longest - same);
}

/**
 * What an agreement of numbers is worth in these two editions: the log of how much more often it is found among rows
 * that are believed to belong together than among any two rows (Fellegi and Sunter, 1969). In one catalog an equal
 * number is right nearly always, in the next every number was re-used; so it is learned from the pair itself, by beliefs
 * that come from the words.
 */
export function numberEvidence(from: Side, to: Side, pairs: Pairs, beliefs: Float32Array): NumberEvidence {
  const old = from.rows.map(r => segmentsOf(r.number));
  const next = to.rows.map(r => segmentsOf(r.number));
  const agreements = new Int8Array(pairs.size);
  const seen = new Float64Array(AGREEMENTS);
  const met = new Float64Array(AGREEMENTS);
  let believed = 0;
  for (let p = 0; p < pairs.size; p++) {
    const agreement = agreementOf(old[pairs.from[p]!]!, next[pairs.to[p]!]!);
    agreements[p] = agreement;
    // Weak beliefs are many and mostly wrong; squared, they cannot drown the strong ones.
    const weight = beliefs[p]! ** 2;
    seen[agreement]! += weight;
    met[agreement]!++;
    believed += weight;
  }
  const chance = chanceAgreements(old, next);
  const worth = Float64Array.from(seen, (count, a) =>
    Math.log((count + PRIOR * chance[a]!) / (believed + PRIOR) / Math.max(chance[a]!, 1e-7)),
  );
  const trust = Float64Array.from(met, (count, a) => Math.log((seen[a]! + 0.5) / (count - seen[a]! + 0.5)));
  trust[0] = trustInEqual(pairs, agreements, beliefs);
  return {
    worth: Float32Array.from(agreements, a => Math.max(-4, Math.min(8, worth[a]!))),
    trust: Float32Array.from(agreements, a => trust[a]!),
    elsewhere: equalElsewhere(pairs, agreements, trust[0]!),
  };
}

/**
 * How often an equal number was right where the words alone settle it: the log-odds over old rows that have one likely
 * heir and could also have gone to the row of their own number. Rows whose words say little must not count as refusals.
 */
function trustInEqual(pairs: Pairs, agreements: Int8Array, beliefs: Float32Array): number {
  let right = 0.5;
  let wrong = 0.5;
  for (let i = 0; i + 1 < pairs.starts.length; i++) {
    let best = 0;
    let equal = 0;
    let found = false;
    for (let p = pairs.starts[i]!; p < pairs.starts[i + 1]!; p++) {
      best = Math.max(best, beliefs[p]!);
      if (agreements[p] !== 0) continue;
      found = true;
      equal = Math.max(equal, beliefs[p]!);
    }
    if (!found || best < SETTLED) continue;
    // A group and its only member have one title: words cannot tell them apart, and that is no refusal either.
    if (equal > best - 0.05) right++;
    else wrong++;
  }
  return Math.log(right / wrong);
}

const SETTLED = 0.75;

export interface NumberEvidence {
  readonly worth: Float32Array;
  /**
   * The log-odds that a pair with this agreement is a link. Worth alone misleads where most equal numbers
   * were re-used: the few that were kept are still far more than chance would give.
   */
  readonly trust: Float32Array;
  /** What an equal number is trusted with, where either row has it with another row than this; NaN where none has. */
  readonly elsewhere: Float32Array;
}

function equalElsewhere(pairs: Pairs, agreements: Int8Array, trust: number): Float32Array {
  const olds = new Uint8Array(pairs.starts.length);
  const news = new Uint8Array(pairs.ofNew.length);
  for (let p = 0; p < pairs.size; p++) {
    if (agreements[p] !== 0) continue;
    olds[pairs.from[p]!] = 1;
    news[pairs.to[p]!] = 1;
  }
  return Float32Array.from(agreements, (agreement, p) =>
    agreement !== 0 && (olds[pairs.from[p]!] || news[pairs.to[p]!]) ? trust : Number.NaN,
  );
}

/** Pairs that are taken to agree by chance before anything was seen, so that few rows prove little. */
const PRIOR = 3;

/** How often two rows drawn at random agree so far. Counted by beginnings, not pair by pair. */
function chanceAgreements(old: readonly (readonly string[])[], next: readonly (readonly string[])[]): Float64Array {
  const groups = (side: readonly (readonly string[])[]) => {
    const counts = new Map<string, number>();
    for (const segments of side) {
      for (let length = 1; length <= segments.length; length++) {
        for (const key of [`${segments.length}:${segments.slice(0, length).join('.')}`]) {
          counts.set(key, (counts.get(key) ?? 0) + 1);
        }
      }
    }
    return counts;
  };
  const mine = groups(old);
  const theirs = groups(next);
  const lengths = [...new Set([...old, ...next].map(s => s.length))].filter(l => l > 0);
  const all = old.length * next.length || 1;
  const chance = new Float64Array(AGREEMENTS);
  for (const [key, count] of mine) {
    const [length, rest] = [Number(key.slice(0, key.indexOf(':'))), key.slice(key.indexOf(':') + 1)];
    const depth = rest.split('.').length;
    for (const other of lengths) {
      const both = theirs.get(`${other}:${rest}`);
      if (both === undefined) continue;
      const apart = Math.max(length, other) - depth;
      const share = (count * both) / all;
      const agreement = Math.min(AGREEMENTS - 2, apart);
      chance[agreement]! += share;
      // Pairs that agree further were counted for the shorter beginning too.
      const shorter = Math.min(AGREEMENTS - 2, apart + 1);
      if (depth > 1) chance[shorter]! -= share;
    }
  }
  chance[AGREEMENTS - 1] = Math.max(0, 1 - chance.slice(0, AGREEMENTS - 1).reduce((a, b) => a + b, 0));
  return chance;
}
