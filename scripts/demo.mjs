// npm run demo: installs and builds what is missing, makes the demo catalog, runs the main job on it, then serves it.
// `npm run demo -- --no-serve` stops before serving.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root } from './install.mjs';

const main = join(root, 'dist', 'cli', 'main.js');
const node = (...args) => {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  // 1 is "done, and there are findings".
  if (status !== 0 && status !== 1) process.exit(status ?? 1);
};

ensureInstalled();
if (!existsSync(main)) node(join(root, 'scripts', 'build.mjs'));
node(main, 'demo', '.demo', '--quiet');
if (!process.argv.includes('--no-serve')) node(main, 'serve', '--catalog', join('.demo', 'catalog.git'));
