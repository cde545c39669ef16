import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statfsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** Why no file system of its own can be mounted here, or undefined where it can: asked once, by doing it. */
export const noMount: string | undefined = whyNot();

function whyNot(): string | undefined {
  if (process.platform !== 'linux') return `mounting is not tried on ${process.platform}`;
  const dir = mkdtempSync(join(tmpdir(), 'fishplate-mount-'));
  const { status, stderr } = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', dir], { encoding: 'utf8' });
  if (status === 0) execFileSync('umount', [dir]);
  rmSync(dir, { recursive: true });
  return status === 0
    ? undefined
    : `no file system can be mounted here: ${(stderr ?? '').trim() || 'mount is missing'}`;
}

/** A disk of its own, gone when the test is. */
export function smallDisk(kilobytes: number): string {
  const dir = mkdtempSync(join(tmpdir(), 'fishplate-disk-'));
  execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', dir]);
  onTestFinished(() => {
    execFileSync('umount', [dir]);
    rmSync(dir, { recursive: true });
  });
  return dir;
}

/** Makes a mounted disk read-only, or writable again. */
export function remount(dir: string, how: 'ro' | 'rw'): void {
  execFileSync('mount', ['-o', `remount,${how}`, dir]);
}

/** Fills a disk up to so many free kilobytes with a file of its own; call what comes back to have the room again. */
export function fillUpTo(dir: string, freeKilobytes: number): () => void {
  const filler = join(dir, 'filler');
  const { bavail, bsize } = statfsSync(dir);
  const free = Math.floor((bavail * bsize) / 1024);
  // Without megabytes that are written from here: once in many runs closing the written file failed with EBADF.
  const kilobytes = Math.max(0, free - freeKilobytes);
  if (kilobytes > 0) execFileSync('fallocate', ['-l', `${kilobytes}KiB`, filler]);
  return () => rmSync(filler, { force: true });
}
