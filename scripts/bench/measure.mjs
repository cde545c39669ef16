// Whole processes measured by the wall clock. Files are in the system's cache, since the first run is not counted.
import { spawnSync } from 'node:child_process';
import { openSync } from 'node:fs';
import { devNull } from 'node:os';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '..', '..');
const ROUNDS = 5;
/** Slower work than this is measured once; the table says so. */
const SLOW = 10;

/** Seconds that a command takes: the median of five runs after one that is not counted. */
export function secondsOf(command, args, { input, allowed = [0] } = {}) {
  const once = () => {
    const stdin = input === undefined ? 'ignore' : openSync(input, 'r');
    const start = performance.now();
    const { status, error, stderr } = spawnSync(command, args, {
      stdio: [stdin, openSync(devNull, 'w'), 'pipe'],
      maxBuffer: 1 << 28,
    });
    if (error || !allowed.includes(status)) throw error ?? new Error(`${command} ${args.join(' ')}: ${stderr}`);
    return (performance.now() - start) / 1000;
  };
  const first = once();
  return first > SLOW ? first : median(Array.from({ length: ROUNDS }, once));
}

/** The compiled command line. Exit code 1 is done as well: there are findings. */
export function secondsOfOurs(...args) {
  return secondsOf(process.execPath, [join(root, 'dist', 'cli', 'main.js'), ...args], { allowed: [0, 1] });
}

export function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}
