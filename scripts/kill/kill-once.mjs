// One process of ours, killed a given time after it first changed the catalog.
import { spawn } from 'node:child_process';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { CLI, ENV } from './operations.mjs';

/**
 * Starts `args` in a folder and kills it `delay` ms after its first change to the catalog (undefined = lets it end).
 * Counting from the start instead would miss: most of a command's time is start-up and reading, and it varies by more
 * than the whole of the writing. Gives { status, killed, wrote: ms between the first change and the end }.
 */
export async function runAndKill(folder, args, delay) {
  const seen = () => changed(join(folder, 'catalog.git'));
  const before = seen();
  const child = spawn(process.execPath, [CLI, '--quiet', ...args, '--catalog', 'catalog.git'], {
    cwd: folder,
    env: ENV,
    stdio: 'ignore',
  });
  let ended = false;
  const end = new Promise(done => {
    child.once('close', (status, signal) => {
      ended = true;
      done({ status, killed: signal === 'SIGKILL' });
    });
  });
  while (!ended && seen() === before) await pause(1);
  const firstChange = performance.now();
  if (delay !== undefined) {
    await pause(delay);
    child.kill('SIGKILL');
  }
  return { ...(await end), wrote: performance.now() - firstChange };
}

/** Changes with every file that is begun: all of them begin in the folder for half-written ones. */
function changed(catalog) {
  const at = path => statSync(path, { throwIfNoEntry: false })?.mtimeMs;
  return `${at(catalog)} ${at(join(catalog, 'fishplate', 'tmp'))}`;
}

const pause = ms => new Promise(done => setTimeout(done, ms));
