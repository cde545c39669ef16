import { CatalogError } from '../model/errors.ts';
import type { RawFs } from './durable-fs.ts';

/** The calls that a full disk or a read-only place refuses. */
const WRITING = ['open', 'rename', 'mkdir', 'rmdir', 'unlink', 'symlink', 'link'] as const;

/**
 * The same file system, with the failures that its user can mend said as a sentence. Codes that the git library and we
 * steer by (ENOENT, EEXIST …) go through as they are.
 */
export function saidFailures(fs: RawFs, gitdir: string): RawFs {
  const said = { ...fs } as Record<string, unknown>;
  for (const name of WRITING) {
    const call = fs[name] as (...args: unknown[]) => Promise<unknown>;
    said[name] = (...args: unknown[]) =>
      call(...args).catch(error => {
        throw saidFailure(error, gitdir);
      });
  }
  return said as unknown as RawFs;
}

/** `WriteFailed` with `data.why` for a full disk or a read-only place; any other error as it is. */
export function saidFailure(error: unknown, gitdir: string): unknown {
  const { code } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return failed('the disk is full', 'free some space and run again.');
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return failed(
        'its place is read-only for you',
        'get the right to write there, or name another with --catalog DIR.',
      );
    default:
      return error;
  }

  function failed(why: string, next: string) {
    const data = { dir: gitdir, code, why };
    return new CatalogError('WriteFailed', `The catalog ${gitdir} was not changed, ${why}; ${next}`, data);
  }
}
