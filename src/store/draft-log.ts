import * as git from 'isomorphic-git';
import { DRAFT_PATH } from './names.ts';
import type { Catalog } from './open.ts';
import { fileAt, type Person } from './repository.ts';
import { soundObject } from './sound-object.ts';

/** One step of work on a draft, as its commit tells it. */
export interface DraftCommit {
  readonly oid: string;
  readonly parents: readonly string[];
  readonly message: string;
  readonly author: Person;
}

/**
 * The commits of a draft by their first parents, newest first, down to the one that began it, or the first that is among
 * the known.
 */
export async function draftLog(
  { repo }: Catalog,
  tip: string,
  known: ReadonlySet<string> = new Set(),
): Promise<DraftCommit[]> {
  const commits: DraftCommit[] = [];
  for (let oid: string | undefined = tip; oid !== undefined && !known.has(oid); ) {
    const { commit }: git.ReadCommitResult = await soundObject(oid, git.readCommit({ ...repo.git, oid }));
    if ((await fileAt(repo, commit.tree, DRAFT_PATH)) === null) break;
    const { name, email, timestamp } = commit.author;
    const author = { name, email, date: new Date(timestamp * 1000) };
    commits.push({ oid, parents: commit.parent, message: commit.message.trimEnd(), author });
    oid = commit.parent[0];
  }
  return commits;
}

/** Every commit of a draft that led to this one, those of branches that were merged included. */
export async function draftCommits({ repo }: Catalog, tip: string): Promise<ReadonlySet<string>> {
  const seen = new Set<string>();
  const work = [tip];
  for (let oid = work.pop(); oid !== undefined; oid = work.pop()) {
    if (seen.has(oid)) continue;
    const { commit }: git.ReadCommitResult = await soundObject(oid, git.readCommit({ ...repo.git, oid }));
    if ((await fileAt(repo, commit.tree, DRAFT_PATH)) === null) continue;
    seen.add(oid);
    work.push(...commit.parent);
  }
  return seen;
}

/**
 * The commits from which two branches of a draft went apart: several where each has taken in the other, none where they
 * have nothing in common.
 */
export async function mergeBases({ repo }: Catalog, a: string, b: string): Promise<readonly string[]> {
  return soundObject(a, git.findMergeBase({ ...repo.git, oids: [a, b] }));
}
