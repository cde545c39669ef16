// Fits the matcher on all catalogs and writes src/matching/learned.ts. Takes some minutes; the same catalogs give the
// same file. Needs a built dist/, which itself needs some learned.ts: the one that lies there.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allCatalogs, harder } from './catalogs.mjs';
import { fit, withEvidence } from './fitting.mjs';

const base = allCatalogs();
const catalogs = [...base, ...base.flatMap(harder)].map(withEvidence);
const learned = fit(catalogs);
const short = trees => ({
  base: round(trees.base),
  trees: trees.trees.map(t => ({ ...t, threshold: t.threshold.map(round), value: t.value.map(round) })),
});
const round = x => Number(x.toPrecision(6));
const names = base.map(c => c.name).join(', ');
const source = `// Written by scripts/matching/fit.mjs on: ${names},
// and on harder versions of each. Not edited by hand.
import type { Learned } from './believe.ts';

export const LEARNED = JSON.parse(
  '${JSON.stringify({ early: short(learned.early), late: short(learned.late) })}',
) as Learned;
`;
writeFileSync(join(import.meta.dirname, '..', '..', 'src', 'matching', 'learned.ts'), source);
