// npm test: everything that a fresh clone needs, then types, lint and all tests. Dependency-free, so that it can install.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { findBrowser, installBrowser } from './browser.mjs';
import { ensureInstalled, root, tool } from './install.mjs';

function step(name, command, args, env = {}) {
  process.stdout.write(`\n== ${name}\n`);
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
  if (status === 0) return;
  process.stderr.write(`\n${name} failed${error ? `: ${error.message}` : ''}.\n`);
  process.exit(status || 1);
}

ensureInstalled();
const browser = findBrowser() ?? installBrowser();
if (!browser) {
  process.stdout.write(
    '\nNo Chromium is here and none could be installed: the browser tests are skipped, and say so below.\n',
  );
}
step('build', process.execPath, [join(root, 'scripts', 'build.mjs')]);
step('types', process.execPath, [tool('typescript', 'bin', 'tsc'), '--noEmit', '-p', 'tsconfig.tests.json']);
step('lint', process.execPath, [tool('@biomejs', 'biome', 'bin', 'biome'), 'check']);
step(
  'tests',
  process.execPath,
  [tool('vitest', 'vitest.mjs'), 'run', ...process.argv.slice(2)],
  browser ? { FISHPLATE_CHROMIUM: browser } : {},
);
