import { MAIN } from './names.ts';
import type { Catalog } from './open.ts';
import { readRef } from './refs.ts';
import { listFiles, readTexts, treeOf } from './repository.ts';

/** The texts below a folder of `main` that belongs to no edition (`answers/loss/`), by path; empty where there is none. */
export async function readBeside({ repo }: Catalog, folder: string): Promise<Map<string, string>> {
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  if (main === null) return new Map();
  return readTexts(repo, await listFiles(repo, await treeOf(repo, main), folder));
}
