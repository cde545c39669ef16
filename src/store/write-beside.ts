import { CatalogError } from '../model/errors.ts';
import { MAIN } from './names.ts';
import type { Catalog } from './open.ts';
import { moveRef, readRef } from './refs.ts';
import { fileAt, type Person, readText, treeOf, writeChanges, writeCommit } from './repository.ts';

/** Writes new files that belong to no edition as one commit on main; what somebody may have changed goes through {@link changeBeside}. */
export async function writeBeside(
  catalog: Catalog,
  files: ReadonlyMap<string, string | null>,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const tree = await writeChanges(repo, main === null ? null : await treeOf(repo, main), files);
  const commit = await writeCommit(repo, { tree, parents: main === null ? [] : [main], message, author });
  await moveRef(repo.fs, repo.gitdir, MAIN, main, commit);
}

/** A file of main that belongs to no edition: what it said when it was read (null: it was not there), and what it says now. */
export interface BesideChange {
  readonly path: string;
  readonly before: string | null;
  readonly after: string;
}

/**
 * Writes files beside the editions as one commit on main, as `writeBeside` does, but only where each still says what it
 * said when it was read. Two who give the same code to two comments would otherwise leave one of them behind.
 *
 * @throws CatalogError Changed; nothing is written then
 */
export async function changeBeside(
  { repo }: Catalog,
  changes: readonly BesideChange[],
  author: Person,
  message: string,
): Promise<void> {
  for (let attempt = 0; ; attempt++) {
    const main = await readRef(repo.fs, repo.gitdir, MAIN);
    const base = main === null ? null : await treeOf(repo, main);
    for (const { path, before } of changes) {
      const oid = base === null ? null : await fileAt(repo, base, path);
      const now = oid === null ? null : await readText(repo, oid);
      if (now === before) continue;
      throw new CatalogError(
        'Changed',
        `${path} was written by somebody else in the meantime; run the command again.`,
        {
          path,
        },
      );
    }
    const tree = await writeChanges(repo, base, new Map(changes.map(c => [c.path, c.after])));
    const commit = await writeCommit(repo, { tree, parents: main === null ? [] : [main], message, author });
    try {
      return await moveRef(repo.fs, repo.gitdir, MAIN, main, commit);
    } catch (error) {
      // Main moved, perhaps for other files; those of ours are compared again.
      if (!(error instanceof CatalogError && error.code === 'Changed') || attempt >= 5) throw error;
    }
  }
}
