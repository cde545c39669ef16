import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

export const MAIN = join(import.meta.dirname, '..', '..', 'dist', 'cli', 'main.js');

/** Runs the compiled command line as a user would; `npm test` builds it first. */
export function fishplate(cwd: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, '--quiet', ...args], { cwd, encoding: 'utf8' });
  return { status, stdout, stderr };
}
