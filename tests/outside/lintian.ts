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
import { dirname, join, relative } from 'node:path';
import { gunzipSync } from 'node:zlib';

const KEPT = join(import.meta.dirname, '..', '..', '.cache', 'outside', 'lintian.json');
const PACKAGES = ['lintian', 'debian-policy'] as const;

/** What the system's packages say, read as text, never run. */
export interface Lintian {
  readonly versions: Readonly<Record<(typeof PACKAGES)[number], string>>;
  /** The policy manual as plain text: `usr/share/doc/debian-policy/policy.txt.gz`. */
  readonly policy: string;
  /** Descriptions of tags, by their path under `usr/share/lintian/tags`. */
  readonly tags: readonly (readonly [path: string, text: string])[];
}

/**
 * lintian and the policy that it cites, fetched once with `apt-get download`, unpacked with `dpkg -x` and kept in the
 * git-ignored `.cache/outside`; installed is nothing. Where that cannot be done, undefined comes back and a line says why.
 */
export function readLintian(checks: string): Lintian | undefined {
  if (!existsSync(KEPT)) {
    const fetched = fetchPackages();
    if (typeof fetched === 'string') {
      process.stderr.write(`Not checked: ${checks}. ${fetched}\n`);
      return undefined;
    }
    mkdirSync(dirname(KEPT), { recursive: true });
    const temporary = `${KEPT}.${process.pid}`;
    writeFileSync(temporary, JSON.stringify(fetched));
    renameSync(temporary, KEPT);
  }
  return JSON.parse(readFileSync(KEPT, 'utf8')) as Lintian;
}

function fetchPackages(): Lintian | string {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-lintian-'));
  const run = (program: string, ...args: string[]) => {
    const done = spawnSync(program, args, { cwd: folder, encoding: 'utf8', timeout: 40_000 });
    if (done.status === 0) return undefined;
    const told = done.error?.message ?? done.stderr.trim().split('\n').at(-1);
    return `${program} ${args[0]} did not work: ${told || `it ended with ${done.status ?? done.signal}`}`;
  };
  try {
    const trouble = run('apt-get', 'download', '-q', ...PACKAGES);
    if (trouble !== undefined) return trouble;
    const files = readdirSync(folder).filter(name => name.endsWith('.deb'));
    const versions: Record<string, string> = {};
    for (const file of files) {
      const [name, version] = file.split('_') as [string, string];
      versions[name] = decodeURIComponent(version);
      const unpacked = run('dpkg', '-x', file, 'unpacked');
      if (unpacked !== undefined) return unpacked;
    }
    const share = join(folder, 'unpacked', 'usr', 'share');
    const policy = gunzipSync(readFileSync(join(share, 'doc', 'debian-policy', 'policy.txt.gz'))).toString('utf8');
    const tags = join(share, 'lintian', 'tags');
    const paths = readdirSync(tags, { recursive: true, encoding: 'utf8' }).filter(path => path.endsWith('.tag'));
    const read = paths.sort().map(path => [relative('.', path), readFileSync(join(tags, path), 'utf8')] as const);
    return { versions: versions as Lintian['versions'], policy, tags: read };
  } catch (error) {
    return `The packages could not be read: ${(error as Error).message}`;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export interface Section {
  readonly number: string;
  readonly title: string;
  readonly text: string;
}

const HEAD = /^(\d+(?:\.\d+)*)\. (\S.*)$/;

/** The manual's own sections: number, title and text. Its appendices count from 1 again and are left out. */
export function policySections(policy: string): readonly Section[] {
  const lines = policy.split('\n');
  const heads = lines.flatMap((line, at) => {
    const found = HEAD.exec(line);
    return found && /^([*=~-])\1{3,}$/.test(lines[at + 1] ?? '') ? [{ at, number: found[1]!, title: found[2]! }] : [];
  });
  const chapters = heads.map(h => Number(h.number.split('.')[0]));
  const appendix = chapters.findIndex((chapter, at) => chapter < (chapters[at - 1] ?? 0));
  const own = appendix < 0 ? heads : heads.slice(0, appendix);
  return own.map(({ at, number, title }, n) => {
    const text = lines
      .slice(at + 2, heads[n + 1]?.at ?? lines.length)
      .join('\n')
      .trim();
    return { number, title, text: text || title };
  });
}

/** A number of the policy that a tag cites, with its place in the file. */
export interface CitedThere {
  readonly number: string;
  readonly start: number;
  readonly end: number;
}

/** Where a tag's fields `See-Also` stand in it. */
export function seeAlsoFields(tag: string): readonly { readonly start: number; readonly end: number }[] {
  return [...tag.matchAll(/^See-Also:.*(?:\n[ \t].*)*/gim)].map(f => ({ start: f.index, end: f.index + f[0].length }));
}

/** The fields say what they cite in a form of their own: `debian-policy 7.3, debian-policy 7.4, Bug#605744`. */
export function citedInFields(tag: string): readonly CitedThere[] {
  return seeAlsoFields(tag).flatMap(({ start, end }) =>
    numbersIn(tag.slice(start, end), start, /(?<=[,\s])debian-policy\s+(\d+(?:\.\d+)*)(?=\s*(?:,|\n|$))/g),
  );
}

/**
 * The other text of a tag names the policy in words, of which these are all that version 2.116.3 has; "Perl Policy 4.1"
 * is another book. "Since Debian Policy 4.1.4" is a version of it, in four figures or three that no section has.
 */
export function citedInText(tag: string, printed: ReadonlySet<string>): readonly CitedThere[] {
  const named =
    /(?<!(?:perl|java|menu|python|emacs|ruby|php)[ -])(?<![\w-])policy(?:\s+manual)?,?\s+\(?(?:sections?\s+|§\s*)?(\d+(?:\.\d+)+)/gi;
  const fields = seeAlsoFields(tag);
  return numbersIn(tag, 0, named).filter(
    c => printed.has(c.number) && !fields.some(f => c.start >= f.start && c.end <= f.end),
  );
}

function numbersIn(text: string, at: number, pattern: RegExp): CitedThere[] {
  return [...text.matchAll(pattern)].map(found => {
    const end = at + found.index + found[0].length;
    return { number: found[1]!, start: end - found[1]!.length, end };
  });
}
