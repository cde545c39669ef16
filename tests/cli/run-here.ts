import { vi } from 'vitest';
import { run } from '../../src/cli/run.ts';

/**
 * Runs a command line inside the test's own process: the same code as the program's, without the half second that a new
 * process takes. For tests that run many commands; what a process does at its edges is tested by `fishplate`.
 */
export async function fishplateHere(...args: string[]) {
  const written = { stdout: '', stderr: '' };
  const spies = (['stdout', 'stderr'] as const).map(name =>
    vi.spyOn(process[name], 'write').mockImplementation(chunk => {
      written[name] += String(chunk);
      return true;
    }),
  );
  const before = process.exitCode;
  process.exitCode = 0;
  try {
    await run(['--quiet', ...args]);
    return { status: Number(process.exitCode), ...written };
  } finally {
    process.exitCode = before;
    for (const spy of spies) spy.mockRestore();
  }
}

/** The same, begun in a folder: names of files are told as a person there would tell them. */
export async function fishplateIn(dir: string, ...args: string[]) {
  const before = process.cwd();
  process.chdir(dir);
  try {
    return await fishplateHere(...args);
  } finally {
    process.chdir(before);
  }
}
