import * as git from 'isomorphic-git';
import { tagOf } from './names.ts';
import type { Catalog } from './open.ts';
import { readRef } from './refs.ts';
import { commitOfTag } from './repository.ts';
import { soundObject } from './sound-object.ts';

/** What is on record about the publication of an edition. */
export interface Publication {
  readonly by: string;
  /** ISO 8601, in universal time. */
  readonly at: string;
  /** Below its first line: release notes, and why it was published although findings were open. */
  readonly said: string;
}

/** Who published an edition, and what was said about it; undefined for a name that no edition has. */
export async function readPublication({ repo }: Catalog, name: string): Promise<Publication | undefined> {
  const tag = await readRef(repo.fs, repo.gitdir, `refs/tags/${tagOf(name, 0)}`);
  if (tag === null) return undefined;
  // The tag says the same as its commit, and one that was pushed by hand may say nothing.
  const oid = await commitOfTag(repo, tag);
  const { author, message } = (await soundObject(oid, git.readCommit({ ...repo.git, oid }))).commit;
  const [, ...rest] = message.split('\n');
  return { by: author.name, at: new Date(author.timestamp * 1000).toISOString(), said: rest.join('\n').trim() };
}
