// The crosswalk of ECMA-262 from 2.0.2285 to 2.2.3180 (@tc39/ecma262-biblio), 2,029 and 2,341 clauses, cold.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { againstRivals } from './crosswalk-rivals.mjs';
import { root } from './measure.mjs';

const BUILDS = { 2285: 'ecma262-2022', 3180: 'ecma262-2025c' };

export async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-'));
  try {
    const dir = join(folder, 'catalog.git');
    for (const [build, alias] of Object.entries(BUILDS)) {
      const { entries } = JSON.parse(readFileSync(createRequire(import.meta.url).resolve(alias), 'utf8'));
      const clauses = entries.filter(e => e.type === 'clause').map(({ id, number, title }) => ({ id, number, title }));
      const table = join(folder, `${build}.json`);
      writeFileSync(table, JSON.stringify(clauses));
      const main = join(root, 'dist', 'cli', 'main.js');
      execFileSync(process.execPath, [main, 'import', table, '--edition', build, '--catalog', dir, '--quiet']);
    }
    return await againstRivals('ECMA-262 crosswalk', dir, '2285', '3180');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
