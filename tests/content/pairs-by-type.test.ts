import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { comparePairs } from '../../src/commands/texts/compare-pairs.ts';
import { testPorts } from '../demo-catalog.ts';

it('pairs with a type are compared by what both texts say for it', async () => {
  const pairs = join(mkdtempSync(join(tmpdir(), 'pairs-')), 'pairs.csv');
  const rows = [
    'Sockets shall be at least 600 mm high.,Sockets shall be at least 450 mm high (600 mm in shops).,shop',
    'Sockets shall be at least 450 mm high.,Sockets shall be at least 450 mm high (600 mm in shops).,villa',
    'Sockets shall be at least 450 mm high.,Sockets shall be at least 450 mm high (600 mm in shops).,shop',
    'Sockets shall be at least 600 mm high.,Sockets shall be at least 600 mm high in villas.,shop',
  ];
  writeFileSync(pairs, `id,from_text,to_text,type\n${rows.map((row, at) => `${at},${row}\n`).join('')}`);
  const report = await comparePairs(testPorts(), { pairs });
  expect(report.pairs.map(p => p.duty)).toEqual(['same', 'same', 'stricter', 'relaxed']);
});
