import * as git from 'isomorphic-git';
import { CatalogError } from '../model/errors.ts';
import { gitFs, type RawFs } from './durable-fs.ts';
import { soundObject } from './sound-object.ts';

/** A bare repository opened for reading and writing objects. Refs are in refs.ts. */
export interface Repository {
  readonly fs: RawFs;
  readonly gitdir: string;
  /** isomorphic-git's options; one shared cache, or each object of a packed repository costs 41 ms. */
  readonly git: { readonly fs: ReturnType<typeof gitFs>; readonly gitdir: string; readonly cache: object };
}

export function repositoryAt(fs: RawFs, gitdir: string): Repository {
  return { fs, gitdir, git: { fs: gitFs(fs, gitdir), gitdir, cache: {} } };
}

export interface Person {
  readonly name: string;
  readonly email: string;
  readonly date: Date;
}

const AT_ONCE = 16;

/**
 * Runs work over a list, 16 at a time, results in order. The first failure is thrown when all lanes are at rest:
 * Promise.all alone would throw while the others go on writing to the full disk.
 */
async function inBatches<T, R>(list: readonly T[], work: (item: T) => Promise<R>): Promise<R[]> {
  const results: R[] = new Array(list.length);
  let next = 0;
  let failure: { readonly error: unknown } | undefined;
  const lane = async () => {
    while (!failure && next < list.length) {
      const at = next++;
      try {
        results[at] = await work(list[at]!);
      } catch (error) {
        failure ??= { error };
      }
    }
  };
  await Promise.all(Array.from({ length: Math.min(AT_ONCE, list.length) }, lane));
  if (failure) throw failure.error;
  return results;
}

export async function readText(repo: Repository, oid: string): Promise<string> {
  const { blob } = await soundObject(oid, git.readBlob({ ...repo.git, oid }));
  return new TextDecoder('utf-8', { fatal: false }).decode(blob);
}

/** The blobs below a folder of a tree (`items/`), path → oid; empty where the folder does not exist. */
export async function listFiles(repo: Repository, tree: string, folder: string): Promise<Map<string, string>> {
  const files = new Map<string, string>();
  const oid = await fileAt(repo, tree, folder);
  if (oid !== null) await collect(repo, oid, folder, files);
  return files;
}

async function collect(repo: Repository, oid: string, prefix: string, files: Map<string, string>): Promise<void> {
  const { tree } = await soundObject(oid, git.readTree({ ...repo.git, oid }));
  for (const entry of tree) {
    const path = `${prefix}${entry.path}`;
    if (entry.type === 'tree') await collect(repo, entry.oid, `${path}/`, files);
    else if (entry.type === 'blob') files.set(path, entry.oid);
  }
}

/** The texts of files, 16 at a time. */
export async function readTexts(repo: Repository, files: ReadonlyMap<string, string>): Promise<Map<string, string>> {
  const list = [...files];
  const texts = await inBatches(list, ([, oid]) => readText(repo, oid));
  return new Map(list.map(([path], at) => [path, texts[at]!]));
}

export async function treeOf(repo: Repository, commit: string): Promise<string> {
  return (await soundObject(commit, git.readCommit({ ...repo.git, oid: commit }))).commit.tree;
}

/**
 * Writes a tree that differs from `base` by `changes` (path → text, or null = removed; a path that ends in `/` and maps
 * to null removes the folder). Only what changed is written.
 */
export async function writeChanges(
  repo: Repository,
  base: string | null,
  changes: ReadonlyMap<string, string | null>,
): Promise<string> {
  const list = [...changes];
  const oids = await inBatches(list, async ([path, text]) => {
    checkPath(path);
    return text === null ? null : git.writeBlob({ ...repo.git, blob: new TextEncoder().encode(text) });
  });
  return (
    (await writeTree(
      repo,
      base,
      list.map(([path], at) => ({ path, oid: oids[at]! })),
    )) ?? emptyTree(repo)
  );
}

interface Change {
  readonly path: string;
  /** A blob, or a whole tree where the path ends in a slash; null removes. */
  readonly oid: string | null;
}

/** A tree that takes the named paths (folders end in a slash) from `source` and everything else from `base`. */
export async function writeTreeFrom(
  repo: Repository,
  base: string,
  source: string,
  paths: readonly string[],
): Promise<string> {
  const changes = await inBatches(paths, async path => ({ path, oid: await fileAt(repo, source, path) }));
  return (await writeTree(repo, base, changes)) ?? emptyTree(repo);
}

/** The object at a path of a tree, or null. */
export async function fileAt(repo: Repository, tree: string, path: string): Promise<string | null> {
  let oid = tree;
  for (const name of path.split('/').filter(Boolean)) {
    const found = (await soundObject(oid, git.readTree({ ...repo.git, oid }))).tree.find(e => e.path === name);
    if (!found) return null;
    oid = found.oid;
  }
  return oid;
}

async function writeTree(repo: Repository, base: string | null, changes: readonly Change[]): Promise<string | null> {
  const entries = new Map<string, git.TreeEntry>();
  if (base)
    for (const e of (await soundObject(base, git.readTree({ ...repo.git, oid: base }))).tree) entries.set(e.path, e);
  const deeper = new Map<string, Change[]>();
  for (const { path, oid } of changes) {
    const slash = path.indexOf('/');
    if (slash < 0) {
      if (oid === null) entries.delete(path);
      else entries.set(path, { mode: '100644', path, oid, type: 'blob' });
    } else if (slash === path.length - 1) {
      const name = path.slice(0, -1);
      if (oid === null) entries.delete(name);
      else entries.set(name, { mode: '040000', path: name, oid, type: 'tree' });
    } else {
      const folder = path.slice(0, slash);
      const list = deeper.get(folder) ?? [];
      list.push({ path: path.slice(slash + 1), oid });
      deeper.set(folder, list);
    }
  }
  for (const [folder, list] of deeper) {
    const known = entries.get(folder);
    const oid = await writeTree(repo, known?.type === 'tree' ? known.oid : null, list);
    if (oid === null) entries.delete(folder);
    else entries.set(folder, { mode: '040000', path: folder, oid, type: 'tree' });
  }
  if (entries.size === 0) return null;
  return git.writeTree({ ...repo.git, tree: [...entries.values()] });
}

const emptyTree = (repo: Repository) => git.writeTree({ ...repo.git, tree: [] });

/** git.writeTree takes `..`, `.git` and `a/b` as names, and native git then refuses the repository. */
function checkPath(path: string): void {
  const bad = path
    .replace(/\/$/, '')
    .split('/')
    .some(name => name === '' || name === '.' || name === '..' || /^\.git$/i.test(name));
  if (bad) throw new Error(`not a path of a catalog: ${JSON.stringify(path)}`);
}

export async function writeCommit(
  repo: Repository,
  commit: { tree: string; parents: readonly string[]; message: string; author: Person },
): Promise<string> {
  const who = signature(commit.author);
  return git.writeCommit({
    ...repo.git,
    commit: {
      tree: commit.tree,
      parent: [...commit.parents],
      message: endInNewline(commit.message),
      author: who,
      committer: who,
    },
  });
}

/** Who made a commit, for one that only follows it: the same input then gives the same bytes. */
export async function authorOf(repo: Repository, commit: string): Promise<Person> {
  const { name, email, timestamp } = (await soundObject(commit, git.readCommit({ ...repo.git, oid: commit }))).commit
    .author;
  return { name, email, date: new Date(timestamp * 1000) };
}

export async function writeTagObject(
  repo: Repository,
  tag: { object: string; name: string; message: string; tagger: Person },
): Promise<string> {
  return git.writeTag({
    ...repo.git,
    tag: {
      object: tag.object,
      type: 'commit',
      tag: tag.name,
      message: endInNewline(tag.message),
      tagger: signature(tag.tagger),
    },
  });
}

/** The commit that an annotated tag (or, pushed by hand, a lightweight one) names. */
export async function commitOfTag(repo: Repository, oid: string): Promise<string> {
  const object = await soundObject(oid, git.readObject({ ...repo.git, oid, format: 'parsed' }));
  if (object.type === 'commit') return oid;
  if (object.type === 'tag') return commitOfTag(repo, (object.object as git.TagObject).object);
  throw new CatalogError(
    'BadCatalog',
    `The tag object ${oid} names no commit; delete the tag or restore it from a clone.`,
  );
}

export async function isAncestor(repo: Repository, ancestor: string, of: string): Promise<boolean> {
  return ancestor === of || soundObject(of, git.isDescendent({ ...repo.git, oid: of, ancestor }));
}

function signature({ name, email, date }: Person) {
  // Angle brackets and line ends inside a name would forge the header of the commit.
  const clean = (text: string) => text.replace(/[<>\n\r\0]/g, ' ').trim();
  return {
    name: clean(name) || 'unknown',
    email: clean(email),
    timestamp: Math.floor(date.getTime() / 1000),
    timezoneOffset: 0,
  };
}

const endInNewline = (text: string) => (text.endsWith('\n') ? text : `${text}\n`);
