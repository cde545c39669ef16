// Installs the exact packages of the lock file where they are missing or older than it.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '..');

export const tool = (...path) => join(root, 'node_modules', ...path);

export function ensureInstalled() {
  const installed = tool('.package-lock.json');
  const lock = join(root, 'package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  process.stdout.write('Installing packages (npm ci) …\n');
  // On Windows npm is a script that only a shell can start.
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    process.stderr.write('npm ci failed; see above. A registry must be reachable the first time.\n');
    process.exit(status || 1);
  }
}
