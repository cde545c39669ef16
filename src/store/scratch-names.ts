import { randomBytes } from 'node:crypto';
import { hostname } from 'node:os';

/** This machine, in letters that a file name may have. */
const host = () =>
  hostname()
    .replace(/[^A-Za-z0-9.-]/g, '_')
    .slice(0, 80);

/** A name for a file that waits in the scratch folder: it says which process on which machine makes it. */
export const scratchName = (kind = '') => `${kind}${process.pid}-${randomBytes(8).toString('hex')}@${host()}`;

/**
 * Whether the process that made a file in the scratch folder is gone. Of another machine on the same disk that cannot be
 * known: a process of its number may run here, or none, whatever became of it there. That machine sweeps its own.
 */
export function isLeft(name: string): boolean {
  const [, pid, at] = /^\.?(?:lock-)?(\d+)-[^@]*(?:@(.*))?$/.exec(name) ?? [];
  if (pid === undefined) return true;
  if (at !== undefined && at !== host()) return false;
  return Number(pid) !== process.pid && !isRunning(Number(pid));
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ESRCH';
  }
}
