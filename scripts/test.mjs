// npm test: everything that a fresh clone needs, then types, lint and all tests. Dependency-free, so that it can install.
import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { findBrowser, installBrowser } from './browser.mjs';
import { ensureInstalled, root, tool } from './install.mjs';

/** Starts a step beside others; what it prints is kept, so that two of them do not speak at once. */
function begin(name, ...args) {
  const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', piece => said.push(piece));
  const ended = new Promise(done => {
    child.on('error', error => said.push(Buffer.from(`${error.message}\n`)));
    child.on('close', status => done(status ?? 1));
  });
  return { name, child, said, ended };
}

function endWith(name, status) {
  process.stderr.write(`\n${name} failed.\n`);
  process.exit(status || 1);
}

ensureInstalled();
const browser = findBrowser() ?? installBrowser();
if (!browser) {
  process.stdout.write(
    '\nNo Chromium is here and none could be installed: the browser tests are skipped, and say so below.\n',
  );
}
process.stdout.write('\nbuild, types and lint, beside each other …\n');
const steps = [
  begin('build', join(root, 'scripts', 'build.mjs')),
  begin('types', tool('typescript', 'bin', 'tsc'), '--noEmit', '-p', 'tsconfig.tests.json'),
  begin('lint', tool('@biomejs', 'biome', 'bin', 'biome'), 'check'),
];
for (const { name, said, ended } of steps) {
  const status = await ended;
  process.stdout.write(`\n== ${name}\n${Buffer.concat(said)}`);
  if (status === 0) continue;
  for (const { child } of steps) child.kill();
  endWith(name, status);
}
process.stdout.write('\n== tests\n');
const { status } = spawnSync(process.execPath, [tool('vitest', 'vitest.mjs'), 'run', ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
  env: browser ? { ...process.env, FISHPLATE_CHROMIUM: browser } : process.env,
});
if (status !== 0) endWith('tests', status);
