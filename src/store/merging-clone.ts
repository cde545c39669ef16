import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import * as git from 'isomorphic-git';
import { CatalogError } from '../model/errors.ts';
import { realFs } from './durable-fs.ts';
import type { Catalog } from './open.ts';
import { listFiles, repositoryAt, treeOf } from './repository.ts';

/** A clone of a catalog in the middle of a native `git merge`. */
export interface MergingClone {
  readonly catalog: Catalog;
  readonly ours: string;
  readonly theirs: string;
}

/** Opens a clone that native git has left with a merge to finish. Throws where there is none. */
export async function openMergingClone(dir: string): Promise<MergingClone> {
  const gitdir = join(dir, '.git');
  const read = (name: string) =>
    readFile(join(gitdir, name), 'utf8').then(
      text => text.trim(),
      () => undefined,
    );
  const head = await read('HEAD');
  if (head === undefined) {
    throw new CatalogError(
      'NotACatalog',
      `${dir} is no clone of a catalog; go to the folder in which git merge was run.`,
    );
  }
  const theirs = (await read('MERGE_HEAD'))?.split('\n')[0];
  if (theirs === undefined) {
    throw new CatalogError('BadArgument', `No merge is going on in ${dir}; begin one with: git merge BRANCH`);
  }
  const repo = repositoryAt(realFs, gitdir);
  const ours = await git.resolveRef({ ...repo.git, ref: 'HEAD' });
  return { catalog: { dir, repo }, ours, theirs };
}

/** Puts files into the clone's work tree; those of these folders that are not among them are removed. */
export async function writeWorkTree(
  { catalog: { dir, repo }, ours, theirs }: MergingClone,
  files: ReadonlyMap<string, string>,
  folders: readonly string[],
): Promise<void> {
  for (const [path, text] of files) {
    const file = join(dir, path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(`${file}.new`, text);
    await rename(`${file}.new`, file);
  }
  for (const commit of [ours, theirs]) {
    const tree = await treeOf(repo, commit);
    for (const folder of folders) {
      for (const path of (await listFiles(repo, tree, folder)).keys()) {
        if (!files.has(path)) await rm(join(dir, path), { force: true });
      }
    }
  }
}
