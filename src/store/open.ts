import { dirname, join, resolve } from 'node:path';
import * as git from 'isomorphic-git';
import { CatalogError } from '../model/errors.ts';
import { type RawFs, realFs, scratchFolder } from './durable-fs.ts';
import { dropPublishedDrafts, followMain } from './main-branch.ts';
import type { Located } from './names.ts';
import { readPackedRefs, sweepLocks } from './refs.ts';
import { type Repository, repositoryAt } from './repository.ts';
import { saidFailure, saidFailures } from './said-failures.ts';
import { isLeft } from './scratch-names.ts';

/** A catalog: a bare git repository that we can read and write. */
export interface Catalog {
  readonly dir: string;
  readonly repo: Repository;
  /** Where editions and drafts stand for who reads with this value, by name; see {@link holding}. */
  readonly held?: ReadonlyMap<string, Located>;
}

/** The folder inside which a catalog may lie beside other files, so that commands find it without being told. */
const USUAL_NAME = 'catalog.git';

/**
 * The nearest catalog at or above a folder: the folder itself, or `catalog.git` in it.
 * Throws NotACatalog where there is none up to the root.
 */
export async function findCatalog(start: string, fs: RawFs = realFs): Promise<string> {
  for (let folder = resolve(start); ; folder = dirname(folder)) {
    for (const candidate of [folder, join(folder, USUAL_NAME)]) {
      if (await isBareRepository(fs, candidate)) return candidate;
    }
    if (dirname(folder) === folder) break;
  }
  throw new CatalogError(
    'NotACatalog',
    `No catalog is in ${resolve(start)} or above it; name one with --catalog DIR, or make one with: fishplate import TABLE --edition NAME --catalog DIR`,
  );
}

/** Opens a catalog for reading. Nothing is written, not even repairs. */
export async function openCatalog(dir: string, fs: RawFs = realFs): Promise<Catalog> {
  if (!(await isBareRepository(fs, dir))) {
    const workTree = await exists(fs, join(dir, '.git'));
    throw new CatalogError(
      'NotACatalog',
      workTree
        ? `${dir} is a work tree; a catalog is a bare repository - name the one it was cloned from, or make one with git clone --bare.`
        : `${dir} is not a catalog; name another with --catalog DIR, or make one with: fishplate import TABLE --edition NAME --catalog ${dir}`,
      { dir },
    );
  }
  await checkKind(fs, dir);
  // The git library passes over lines of packed-refs that it cannot read.
  await readPackedRefs(fs, dir);
  return { dir, repo: repositoryAt(saidFailures(fs, dir), dir) };
}

/** Opens a catalog for writing; a publication that was killed between its tag and its branches is completed first. */
export async function openForWriting(dir: string, fs: RawFs = realFs): Promise<Catalog> {
  const catalog = await openCatalog(dir, fs);
  await sweepScratch(fs, dir);
  await sweepLocks(fs, dir);
  await followMain(catalog.repo);
  await dropPublishedDrafts(catalog.repo);
  return catalog;
}

/** Opens a catalog for writing; a folder that is missing, empty or only half a repository becomes one. */
export async function openOrCreate(dir: string, fs: RawFs = realFs): Promise<Catalog> {
  if (!(await isBareRepository(fs, dir))) {
    const names = await fs.readdir(dir).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      if (error.code !== 'ENOTDIR') throw saidFailure(error, dir);
      throw new CatalogError('NotACatalog', `${dir} is a file; name a folder with --catalog DIR.`, { dir });
    });
    const foreign = names.filter(name => !SKELETON.has(String(name)));
    if (foreign.length > 0) {
      throw new CatalogError(
        'NotEmpty',
        `${dir} is no catalog and holds other files (${foreign.slice(0, 3).join(', ')}); name an empty or a new folder with --catalog DIR.`,
        { dir },
      );
    }
    const repo = repositoryAt(saidFailures(fs, dir), dir);
    // git.init takes a config for a finished repository; here it is one that was killed while being made.
    await fs.unlink(join(dir, 'config')).catch(() => {});
    await git.init({ fs: repo.git.fs, gitdir: dir, bare: true, defaultBranch: 'main' });
  }
  return openForWriting(dir, fs);
}

/** What `git init --bare` makes, and our own folder. */
const SKELETON = new Set(['HEAD', 'config', 'description', 'hooks', 'info', 'objects', 'refs', 'fishplate']);

async function isBareRepository(fs: RawFs, dir: string): Promise<boolean> {
  const parts = await Promise.all(['HEAD', 'objects', 'refs', 'config'].map(name => exists(fs, join(dir, name))));
  return parts.every(Boolean);
}

async function exists(fs: RawFs, path: string): Promise<boolean> {
  return fs.stat(path).then(
    () => true,
    () => false,
  );
}

/** Repositories of a kind whose refs or objects we cannot write are refused before anything is read. */
async function checkKind(fs: RawFs, dir: string): Promise<void> {
  const config = (await fs.readFile(join(dir, 'config'), 'utf8')).toLowerCase();
  const kind = /^\s*refstorage\s*=\s*reftable/m.test(config)
    ? 'keeps its refs as reftable'
    : /^\s*objectformat\s*=\s*sha256/m.test(config)
      ? 'uses SHA-256 object names'
      : undefined;
  if (kind === undefined) return;
  throw new CatalogError(
    'RepositoryKind',
    `${dir} ${kind}, which cannot be written here; make a copy with: git init --bare --object-format=sha1 --ref-format=files NEW && git push --mirror NEW`,
    { dir },
  );
}

/** Removes what killed processes of ours left half-written. */
async function sweepScratch(fs: RawFs, dir: string): Promise<void> {
  const folder = scratchFolder(dir);
  const names = await fs.readdir(folder).catch(() => []);
  for (const name of names.map(String)) {
    if (isLeft(name)) await fs.unlink(join(folder, name)).catch(() => {});
  }
}
