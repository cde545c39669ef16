import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { secondsOf, secondsOfOurs } from './measure.mjs';
import { blobsOfCrosswalk } from './objects-read.mjs';

/**
 * Rows of the table for one crosswalk in one catalog, as cold commands, against an empty node start, the git library's
 * bare reading of the same blobs, and native git's. The ratio is (ours − start) / (bare read − start).
 */
export async function againstRivals(name, dir, from, to) {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-'));
  try {
    const start = secondsOf(process.execPath, ['-e', '0']);
    const row = async (what, reading, ...options) => {
      const blobs = await blobsOfCrosswalk(reading, dir, from, to);
      const list = join(folder, 'blobs');
      writeFileSync(list, `${blobs.join('\n')}\n`);
      const seconds = secondsOfOurs('crosswalk', from, to, ...options, '--catalog', dir);
      const bare = secondsOf(process.execPath, [join(import.meta.dirname, 'bare-read.mjs'), dir, list]);
      const native = secondsOf('git', ['--git-dir', dir, 'cat-file', '--batch'], { input: list });
      return {
        name: `${name}, ${what}`,
        ours: seconds,
        rival: bare,
        ratio: (seconds - start) / (bare - start),
        aim: '1.5',
        note: `${blobs.length} blobs; node start ${ms(start)}, native git reads them in ${ms(native)}: ${((seconds - start) / native).toFixed(1)} ×`,
      };
    };
    return [
      await row('statistics', 'readJoint', '--statistics'),
      await row('csv', 'readCrosswalk', '--out', join(folder, 'out.csv')),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const ms = seconds => `${Math.round(seconds * 1000)} ms`;
