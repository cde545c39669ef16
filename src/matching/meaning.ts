import type { Bag, Vocabulary } from './bags.ts';
import { VECTOR_BYTES, VECTOR_SIZE, VECTOR_STEMS } from './word-vectors.ts';

/** What a text is about: the mean of its words' vectors, of length 1; all zeros where no word is known. */
export type Meaning = Float32Array;

/**
 * Reads meanings for the words of a vocabulary. General English knows that a sheave is near a pulley; it does not know
 * that minimum and maximum differ, so meanings find candidates and are one piece of evidence among others.
 */
export function meaningReader(words: Vocabulary): (bag: Bag) => Meaning {
  const vectors = vectorsOf(words);
  return bag => {
    const mean = new Float32Array(VECTOR_SIZE);
    for (const id of bag.ids) {
      const vector = vectors.get(id);
      const weight = words.rarity[id]!;
      if (vector) for (let d = 0; d < VECTOR_SIZE; d++) mean[d]! += weight * vector[d]!;
    }
    return unit(mean);
  };
}

export function likenessOfMeanings(a: Meaning, b: Meaning): number {
  let dot = 0;
  for (let d = 0; d < VECTOR_SIZE; d++) dot += a[d]! * b[d]!;
  return dot;
}

/** Whether any word of a text was known. */
export function isKnownMeaning(meaning: Meaning): boolean {
  return meaning.some(x => x !== 0);
}

function vectorsOf(words: Vocabulary): ReadonlyMap<number, Float32Array> {
  const bytes = vectorBytes();
  const vectors = new Map<number, Float32Array>();
  VECTOR_STEMS.split(' ').forEach((stem, row) => {
    const id = words.idOf(stem);
    if (id === undefined) return;
    vectors.set(id, unit(Float32Array.from(bytes.subarray(row * VECTOR_SIZE, (row + 1) * VECTOR_SIZE))));
  });
  return vectors;
}

/** Without node's Buffer: the matcher also runs in a browser. */
function vectorBytes(): Int8Array {
  const signs = atob(VECTOR_BYTES);
  const bytes = new Int8Array(signs.length);
  for (let at = 0; at < signs.length; at++) bytes[at] = signs.charCodeAt(at);
  return bytes;
}

function unit(vector: Float32Array): Float32Array {
  let squares = 0;
  for (const x of vector) squares += x * x;
  const length = Math.sqrt(squares);
  return length > 0 ? vector.map(x => x / length) : vector;
}
