// Builds dist/ from src/. Dependency-free itself, so that `npm ci` can call it as its `prepare` step.
import { spawnSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildBrowser } from './build-browser.mjs';

const root = join(import.meta.dirname, '..');
const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
if (!existsSync(compiler)) {
  // `npm ci --omit=dev` runs `prepare` too; without the compiler there is nothing to build from.
  process.stderr.write('TypeScript is not installed, so dist/ is left as it is. Run npm ci to build.\n');
} else {
  rmSync(join(root, 'dist'), { recursive: true, force: true });
  const { status } = spawnSync(process.execPath, [compiler, '-p', join(root, 'tsconfig.json')], { stdio: 'inherit' });
  process.exitCode = status ?? 1;
  if (status === 0 && !(await buildBrowser())) {
    process.stderr.write(
      'rolldown is not installed, so the page that carries files over is left out of published sites.\n',
    );
  }
}
