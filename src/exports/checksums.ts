import { createHash } from 'node:crypto';

/** One line a file, as `sha256sum -c` reads them, by path. */
export function sha256Lines(files: ReadonlyMap<string, string | Uint8Array>): string {
  return [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, content]) => `${createHash('sha256').update(content).digest('hex')}  ${path}\n`)
    .join('');
}
