import * as git from 'isomorphic-git';
import { CatalogError } from '../model/errors.ts';
import { locate } from './names.ts';
import type { Catalog } from './open.ts';
import { isAncestor } from './repository.ts';

/**
 * The full name of a commit in the history of an edition or draft, by its first seven digits or more.
 *
 * @throws CatalogError UnknownItem: no such commit, several of them, or one that this edition does not rest on
 */
export async function findCommit(catalog: Catalog, name: string, short: string): Promise<string> {
  const { repo } = catalog;
  const unknown = (what: string) =>
    new CatalogError('UnknownItem', `${short} ${what}; look it up with: git log ${name}`, { commit: short });
  const oid = await git.expandOid({ ...repo.git, oid: short.toLowerCase() }).catch(() => {
    throw unknown('is no commit of this catalog, or the beginning of several');
  });
  const { type } = await git.readObject({ ...repo.git, oid, format: 'parsed' });
  if (type !== 'commit') throw unknown(`is a ${type} and no commit`);
  const { commit } = await locate(catalog, name);
  if (oid !== commit && !(await isAncestor(repo, oid, commit))) throw unknown(`is no commit that ${name} rests on`);
  return oid;
}
